using System.Diagnostics;
using InspectLog.Photos.Developing;
using InspectLog.Photos.Tests.Support;
using InspectLog.Photos.Worker;
using SixLabors.ImageSharp;

namespace InspectLog.Photos.Tests.Worker;

/// <summary>Real processes, and pictures that misbehave in them in every way a decoder can.</summary>
public sealed class PhotoWorkersTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("inspectlog-photos-");

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Photo_is_developed_as_in_this_process_and_the_worker_is_kept()
    {
        using var workers = TestPhotoWorkers.Start();
        var file = Pictures.PhoneJpeg(6, 2400, 1600);
        var here = Assert.IsType<PhotoAnswer.Copies>(PhotoDeveloper.Develop(PhotoWork.Copies, file));

        var apart = Assert.IsType<PhotoAnswer.Copies>(await workers.DevelopAsync(file));
        var print = Assert.IsType<PhotoAnswer.Print>(await workers.DevelopAsync(file, PhotoWork.Print));
        var small = Assert.IsType<PhotoAnswer.Print>(await workers.DevelopAsync(file, PhotoWork.SmallPrint));

        Assert.Equal((here.Display, here.Thumbnail), (apart.Display, apart.Thumbnail), SameBytes);
        Assert.Equal((1600, 2400), (apart.Figures.Width, apart.Figures.Height));
        Assert.Equal(
            [new Size(1365, 2048), new Size(213, 320), new Size(1600, 2400), new Size(667, 1000)],
            new[] { apart.Display, apart.Thumbnail, print.Jpeg, small.Jpeg }.Select(jpeg => Image.Load(jpeg).Size()));
        Assert.Equal(1, workers.Started);
    }

    [Theory]
    [InlineData(TestPhotoWorkers.Endless, PhotoFault.TooSlow, 1)]
    [InlineData(TestPhotoWorkers.Sleeping, PhotoFault.TooSlow, 1)]
    [InlineData(TestPhotoWorkers.Greedy, PhotoFault.TooMuchMemory, 1)]
    [InlineData(TestPhotoWorkers.Deadly, PhotoFault.EndsDecoder, 2)]
    public async Task Hostile_picture_costs_itself_and_the_next_is_developed(int width, PhotoFault fault, int started)
    {
        using var workers = TestPhotoWorkers.Start(count: 1);

        Assert.Equal(fault, (await workers.DevelopAsync(width)).Fault());
        Assert.Equal(started, workers.Started);
        Assert.IsType<PhotoAnswer.Copies>(await workers.DevelopAsync(48));
    }

    [Fact]
    public async Task Others_go_on_while_a_picture_never_ends()
    {
        using var workers = TestPhotoWorkers.Start(bounds: TestPhotoWorkers.Impatience with { Processor = TimeSpan.FromMinutes(4), Wait = 1 });
        using var enough = CancellationTokenSource.CreateLinkedTokenSource(Stop);
        var file = Pictures.Jpeg(TestPhotoWorkers.Endless, 40);
        var endless = workers.DevelopAsync(PhotoWork.Copies, file, Expect.Taken(file), enough.Token);

        for (var other = 0; other < 5; other++)
            Assert.IsType<PhotoAnswer.Copies>(await workers.DevelopAsync(100 + other));

        Assert.False(endless.IsCompleted);
        await enough.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => endless);
    }

    [Fact]
    public async Task Worker_that_crashed_is_replaced_and_the_photo_tried_again()
    {
        using var workers = TestPhotoWorkers.Start(file: Path.Combine(_folder.FullName, "file"));

        Assert.IsType<PhotoAnswer.Copies>(await workers.DevelopAsync(TestPhotoWorkers.DeadlyOnce));
        Assert.Equal(2, workers.Started);
    }

    [Fact]
    public async Task Worker_killed_while_it_has_nothing_to_do_is_replaced()
    {
        using var workers = TestPhotoWorkers.Start();
        await workers.DevelopAsync(48);
        var idle = Assert.Single(workers.IdleIds);
        using (var process = Process.GetProcessById(idle))
            process.Kill();
        await TestPhotoWorkers.WaitUntilGoneAsync(idle);

        Assert.IsType<PhotoAnswer.Copies>(await workers.DevelopAsync(48));
        Assert.NotEqual([idle], workers.IdleIds);
    }

    [Fact]
    public async Task Thirty_photos_at_once_are_developed_by_no_more_workers_than_allowed()
    {
        using var workers = TestPhotoWorkers.Start(count: 2);

        var answers = await Task.WhenAll(Enumerable.Range(0, 30).Select(photo => workers.DevelopAsync(100 + photo)));

        Assert.Equal(Enumerable.Range(100, 30), answers.Select(answer => Assert.IsType<PhotoAnswer.Copies>(answer).Figures.Width));
        Assert.InRange(workers.Started, 1, 2);
    }

    [Fact]
    public async Task Photo_whose_turn_does_not_come_is_not_now()
    {
        using var workers = TestPhotoWorkers.Start(
            count: 1, bounds: TestPhotoWorkers.Impatience with { Processor = TimeSpan.FromMinutes(4), Wait = 1, Turn = TimeSpan.FromMilliseconds(50) });
        var endless = workers.DevelopAsync(TestPhotoWorkers.Endless);

        Assert.IsType<PhotoAnswer.NotNow>(await workers.DevelopAsync(48));

        workers.Dispose();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => endless);
    }

    [Theory]
    [InlineData("ends-at-once")]
    [InlineData("garbage")]
    public async Task Worker_that_never_becomes_one_is_not_now(string behaviour)
    {
        using var workers = TestPhotoWorkers.Start(command: TestPhotoWorkers.Command(behaviour));

        Assert.IsType<PhotoAnswer.NotNow>(await workers.DevelopAsync(48));
    }

    [Fact]
    public async Task Program_that_is_not_there_is_not_now()
    {
        using var workers = TestPhotoWorkers.Start(command: new(Path.Combine(_folder.FullName, "none")));

        Assert.IsType<PhotoAnswer.NotNow>(await workers.DevelopAsync(48));
    }

    [Fact]
    public async Task Worker_without_work_is_ended_and_another_started_when_needed()
    {
        using var workers = TestPhotoWorkers.Start(bounds: TestPhotoWorkers.Impatience with { Idle = TimeSpan.FromMilliseconds(200) });
        await workers.DevelopAsync(48);
        await TestPhotoWorkers.WaitUntilGoneAsync(workers.IdleIds is [var idle] ? idle : 0);

        Assert.IsType<PhotoAnswer.Copies>(await workers.DevelopAsync(48));
        Assert.Equal(2, workers.Started);
    }

    [Fact]
    public async Task Workers_end_with_the_program_that_started_them()
    {
        var workers = TestPhotoWorkers.Start();
        await workers.DevelopAsync(48);
        var idle = Assert.Single(workers.IdleIds);

        workers.Dispose();

        await TestPhotoWorkers.WaitUntilGoneAsync(idle);
    }

    [Theory]
    [InlineData(48)]
    [InlineData(TestPhotoWorkers.Endless)]
    public async Task Worker_ends_by_itself_when_its_parent_is_gone_whatever_it_is_at(int width)
    {
        var command = TestPhotoWorkers.Command("photos");
        using var worker = Process.Start(new ProcessStartInfo(command.FileName, command.Arguments)
        {
            RedirectStandardInput = true, RedirectStandardOutput = true,
        })!;
        await PhotoFrame.Question(PhotoWork.Copies, Pictures.Jpeg(width, 40)).WriteAsync(worker.StandardInput.BaseStream);

        worker.StandardInput.Close();

        await TestPhotoWorkers.WaitUntilGoneAsync(worker.Id);
    }

    public void Dispose() => _folder.Delete(recursive: true);

    private static bool SameBytes((byte[] A, byte[] B) one, (byte[] A, byte[] B) other) =>
        one.A.AsSpan().SequenceEqual(other.A) && one.B.AsSpan().SequenceEqual(other.B);
}

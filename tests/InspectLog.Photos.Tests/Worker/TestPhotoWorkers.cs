using System.Diagnostics;
using InspectLog.Photos.Developing;
using InspectLog.Photos.Tests.Support;
using InspectLog.Photos.Worker;

namespace InspectLog.Photos.Tests.Worker;

/// <summary>Workers of the program made for the tests, which misbehave on pictures of given widths.</summary>
internal static class TestPhotoWorkers
{
    public const int Endless = 61;
    public const int Greedy = 62;
    public const int Deadly = 63;
    public const int DeadlyOnce = 64;
    public const int Sleeping = 65;

    /// <summary>Short enough to wait for. How long a process takes to start is the machine's affair.</summary>
    public static PhotoBounds Impatience { get; } = PhotoBounds.Usual with
    {
        Processor = TimeSpan.FromSeconds(2.5), Wait = 12, Memory = 250_000_000, Turn = TimeSpan.FromMinutes(5),
    };

    /// <summary>When a test gives up waiting.</summary>
    public static TimeSpan GiveUp { get; } = TimeSpan.FromMinutes(5);

    public static PhotoWorkerCommand Command(params string[] arguments) =>
        new("dotnet", [Path.Combine(AppContext.BaseDirectory, "InspectLog.TestWorker.dll"), .. arguments]);

    public static PhotoWorkers Start(int count = 2, string? file = null, PhotoBounds? bounds = null, PhotoWorkerCommand? command = null) =>
        new(command ?? Command(file is null ? ["photos"] : ["photos", file]), bounds ?? Impatience, count, TimeProvider.System);

    public static Task<PhotoAnswer> DevelopAsync(this IPhotoDeveloper workers, int width, PhotoWork work = PhotoWork.Copies) =>
        workers.DevelopAsync(Pictures.Jpeg(width, 40), work);

    public static Task<PhotoAnswer> DevelopAsync(this IPhotoDeveloper workers, byte[] file, PhotoWork work = PhotoWork.Copies) =>
        workers.DevelopAsync(work, file, Expect.Taken(file), TestContext.Current.CancellationToken);

    public static PhotoFault Fault(this PhotoAnswer answer) => Assert.IsType<PhotoAnswer.NotShown>(answer).Fault;

    /// <summary>Waits until a process is gone.</summary>
    public static async Task WaitUntilGoneAsync(int id)
    {
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        patience.CancelAfter(GiveUp);
        while (IsThere(id))
            await Task.Delay(50, patience.Token);
    }

    private static bool IsThere(int id)
    {
        try
        {
            using var process = Process.GetProcessById(id);
            return !process.HasExited;
        }
        catch (ArgumentException)
        {
            return false;
        }
    }
}

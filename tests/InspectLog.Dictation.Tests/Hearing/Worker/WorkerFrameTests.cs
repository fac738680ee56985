using CsCheck;
using InspectLog.Dictation.Hearing;
using InspectLog.Dictation.Hearing.Worker;

namespace InspectLog.Dictation.Tests.Hearing.Worker;

public sealed class WorkerFrameTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Frames_are_read_as_written()
    {
        var audio = new PcmAudio(new[] { 0f, 0.5f, -1f });
        var transcript = new Transcript("9.4 kΩ", [new HeardWord("9.4", 0.1, 0.2, 0.3, 0), new HeardWord("kΩ", 0.2, 0.4, 0.5, 4)], true, TimeSpan.FromSeconds(1.5));
        using var pipe = new MemoryStream();
        await WorkerFrame.OfAudio(audio).WriteAsync(pipe, Stop);
        await WorkerFrame.OfShare(0.75).WriteAsync(pipe, Stop);
        await WorkerFrame.OfJson(WorkerMessage.Transcript, transcript).WriteAsync(pipe, Stop);
        pipe.Position = 0;

        Assert.Equal(audio.Samples.ToArray(), (await Next(pipe)).ToAudio().Samples.ToArray());
        Assert.Equal(0.75, (await Next(pipe)).Share);
        Assert.Equivalent(transcript, (await Next(pipe)).FromJson<Transcript>(), strict: true);
        Assert.Null(await WorkerFrame.ReadAsync(pipe, Stop));
    }

    [Fact]
    public async Task Length_that_no_frame_has_is_refused_before_it_is_allocated()
    {
        using var pipe = new MemoryStream([0xFF, 0xFF, 0xFF, 0x7F, 1]);
        await Assert.ThrowsAsync<InvalidDataException>(() => WorkerFrame.ReadAsync(pipe, Stop));
    }

    [Fact]
    public async Task Frame_that_is_cut_off_is_the_end()
    {
        using var pipe = new MemoryStream([9, 0, 0, 0, 4, 1, 2]);
        Assert.Null(await WorkerFrame.ReadAsync(pipe, Stop));
    }

    [Fact]
    public void Nonsense_in_a_body_is_told_as_such()
    {
        Assert.Throws<InvalidDataException>(() => WorkerFrame.OfText(WorkerMessage.Transcript, "{oh").FromJson<Transcript>());
        Assert.Throws<InvalidDataException>(() => WorkerFrame.OfText(WorkerMessage.Transcript, "null").FromJson<Transcript>());
    }

    [Fact]
    public async Task Random_bytes_are_frames_or_refused() =>
        await Gen.Byte.Array[0, 40].SampleAsync(
            async bytes =>
            {
                using var pipe = new MemoryStream(bytes);
                try
                {
                    while (await WorkerFrame.ReadAsync(pipe, Stop) is { } frame)
                        Assert.True(frame.Body.Length < bytes.Length);
                }
                catch (InvalidDataException)
                {
                    // Told as such.
                }
            },
            iter: 5_000);

    private static async Task<WorkerFrame> Next(Stream pipe) => (await WorkerFrame.ReadAsync(pipe, Stop))!.Value;
}

using InspectLog.Dictation.Hearing;

namespace InspectLog.Dictation.Tests.Hearing;

public sealed class WavFileTests
{
    private static readonly byte[] Junk = Wav.Chunk("LIST", [1, 2, 3]);

    public static TheoryData<string, byte[], short[]> Taken => new()
    {
        { "plain", Wav.File(Wav.Format(), Wav.Data(1, -2, 3)), [1, -2, 3] },
        { "odd chunk before the data", Wav.File(Wav.Format(), Junk, Wav.Data(1, 2)), [1, 2] },
        { "chunk before the format", Wav.File(Junk, Wav.Format(), Wav.Data(1, 2)), [1, 2] },
        { "chunk after the data", Wav.File(Wav.Format(), Wav.Data(1, 2), Junk), [1, 2] },
        { "extensible PCM", Wav.File(Wav.Extensible(1), Wav.Data(5)), [5] },
        { "format chunk of 18 bytes", Wav.File(Wav.Format(extra: [0, 0]), Wav.Data(5)), [5] },
        { "streamed, size 0", Wav.File(Wav.Format(), Wav.Chunk("data", Wav.Samples(7, 8), size: 0)), [7, 8] },
        { "streamed, largest size", Wav.File(Wav.Format(), Wav.Chunk("data", Wav.Samples(7, 8), size: uint.MaxValue)), [7, 8] },
        { "streamed by sox", Wav.File(Wav.Format(), Wav.Chunk("data", Wav.Samples(7, 8), size: 0x7FFF_F000)), [7, 8] },
        { "streamed, cut within a sample", [.. Wav.File(Wav.Format(), Wav.Chunk("data", Wav.Samples(7, 8), size: 0)), 1], [7, 8] },
        { "RIFF size that lies", Lying(Wav.File(Wav.Format(), Wav.Data(9))), [9] },
    };

    public static TheoryData<string, byte[], WavProblem> Refused => new()
    {
        { "nothing", [], WavProblem.Empty },
        { "text", "What is this?"u8.ToArray(), WavProblem.NotWav },
        { "an AVI file", [.. "RIFF"u8, 4, 0, 0, 0, .. "AVI "u8], WavProblem.NotWav },
        { "big-endian RIFX", [.. "RIFX"u8, .. Wav.File(Wav.Format(), Wav.Data(1)).AsSpan(4)], WavProblem.NotWav },
        { "data before the format", Wav.File(Wav.Data(1), Wav.Format()), WavProblem.NotWav },
        { "format chunk too short", Wav.File(Wav.Chunk("fmt ", [1, 0, 1, 0]), Wav.Data(1)), WavProblem.NotWav },
        { "no data chunk", Wav.File(Wav.Format()), WavProblem.Empty },
        { "no samples", Wav.File(Wav.Format(), Wav.Data()), WavProblem.Empty },
        { "no samples, chunk after", Wav.File(Wav.Format(), Wav.Data(), Wav.Chunk("LIST", [1, 2])), WavProblem.Empty },
        { "header only", "RIFF"u8.ToArray(), WavProblem.Truncated },
        { "ends in the format", Wav.File(Wav.Format())[..30], WavProblem.Truncated },
        { "ends in the data", Wav.File(Wav.Format(), Wav.Data(1, 2, 3))[..^2], WavProblem.Truncated },
        { "promises 2 GB before the data", Wav.File(Wav.Format(), Wav.Chunk("LIST", [1, 2], size: 0x7F00_0000)), WavProblem.Truncated },
        { "44.1 kHz", Wav.File(Wav.Format(rate: 44_100), Wav.Data(1)), WavProblem.OtherFormat },
        { "8 kHz", Wav.File(Wav.Format(rate: 8_000), Wav.Data(1)), WavProblem.OtherFormat },
        { "stereo", Wav.File(Wav.Format(channels: 2), Wav.Data(1, 1)), WavProblem.OtherFormat },
        { "8 bits", Wav.File(Wav.Format(bits: 8), Wav.Data(1)), WavProblem.OtherFormat },
        { "24 bits", Wav.File(Wav.Format(bits: 24), Wav.Chunk("data", [1, 2, 3])), WavProblem.OtherFormat },
        { "32-bit float", Wav.File(Wav.Format(coding: 3, bits: 32), Wav.Data(1, 2)), WavProblem.OtherFormat },
        { "extensible float", Wav.File(Wav.Extensible(3), Wav.Data(1)), WavProblem.OtherFormat },
        { "A-law", Wav.File(Wav.Format(coding: 6, bits: 8), Wav.Data(1)), WavProblem.OtherFormat },
    };

    [Theory]
    [MemberData(nameof(Taken))]
    public void Recording_of_the_one_format_is_read(string what, byte[] file, short[] samples)
    {
        Assert.NotEmpty(what);
        var read = Assert.IsType<WavResult.Ok>(WavFile.Read(file));
        Assert.Equal(samples.Select(s => s / 32_768f), read.Audio.Samples.ToArray());
    }

    [Theory]
    [MemberData(nameof(Refused))]
    public void Anything_else_is_refused_with_a_reason(string what, byte[] file, WavProblem problem)
    {
        Assert.NotEmpty(what);
        var refused = Assert.IsType<WavResult.Refused>(WavFile.Read(file));
        Assert.Equal(problem, refused.Problem);
        Assert.False(string.IsNullOrWhiteSpace(refused.Message));
    }

    [Fact]
    public void Other_format_is_named_in_the_message()
    {
        var refused = Assert.IsType<WavResult.Refused>(WavFile.Read(Wav.File(Wav.Format(channels: 2, rate: 44_100), Wav.Data(1, 1))));
        Assert.Contains("44.1 kHz, stereo, 16-bit PCM", refused.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(10 * 60 * 16_000, true)]
    [InlineData((10 * 60 * 16_000) + 1, false)]
    [InlineData(11 * 60 * 16_000, false)]
    public void Recording_up_to_ten_minutes_is_read(int samples, bool taken)
    {
        var result = WavFile.Read(Wav.File(Wav.Format(), Wav.Data(new short[samples])));
        if (taken)
            Assert.Equal(WavFile.LongestRecording, Assert.IsType<WavResult.Ok>(result).Audio.Duration);
        else
            Assert.Equal(WavProblem.TooLong, Assert.IsType<WavResult.Refused>(result).Problem);
    }

    [Fact]
    public void Longest_file_fits_the_largest_file_size() =>
        Assert.True(Wav.File(Wav.Format(), Wav.Data(new short[10 * 60 * 16_000])).Length <= WavFile.LargestFile);

    [Fact]
    public void Written_recording_reads_back_bit_for_bit()
    {
        var samples = Enumerable.Range(short.MinValue, 65_536).Select(s => s / 32_768f).ToArray();
        var file = WavFile.Write(new PcmAudio(samples));
        var read = Assert.IsType<WavResult.Ok>(WavFile.Read(file));
        Assert.Equal(samples, read.Audio.Samples.ToArray());
        Assert.Equal(Wav.File(Wav.Format(), Wav.Data([.. Enumerable.Range(short.MinValue, 65_536).Select(s => (short)s)])), file);
    }

    [Fact]
    public void Samples_out_of_range_are_clipped()
    {
        var file = WavFile.Write(new PcmAudio(new[] { 2f, -2f, float.NaN, float.PositiveInfinity }));
        var read = Assert.IsType<WavResult.Ok>(WavFile.Read(file));
        Assert.Equal([32_767 / 32_768f, -1f, 0f, 32_767 / 32_768f], read.Audio.Samples.ToArray());
    }

    [Fact]
    public void Recording_that_is_too_long_is_not_written() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => WavFile.Write(new PcmAudio(new float[(10 * 60 * 16_000) + 1])));

    private static byte[] Lying(byte[] file)
    {
        file.AsSpan(4, 4).Fill(0xFF);
        return file;
    }
}

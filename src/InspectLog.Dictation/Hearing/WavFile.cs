using System.Buffers.Binary;

namespace InspectLog.Dictation.Hearing;

/// <summary>Reads the one recording format the program takes: RIFF WAV, 16-bit PCM, mono, 16 kHz, up to
/// <see cref="LongestRecording"/>.</summary>
/// <remarks>Format: Microsoft and IBM, Multimedia Programming Interface and Data Specifications 1.0 (1991);
/// WAVE_FORMAT_EXTENSIBLE as in Microsoft's mmreg.h.</remarks>
public static class WavFile
{
    /// <summary>The longest recording taken.</summary>
    public static readonly TimeSpan LongestRecording = TimeSpan.FromMinutes(10);

    /// <summary>The largest file that can hold one, headers included.</summary>
    public const long LargestFile = (10 * 60 * PcmAudio.SampleRate * 2) + 65_536;

    private const int LongestSamples = 10 * 60 * PcmAudio.SampleRate;
    private const int HeaderSize = 44;
    private const float FullScale = 32_768f;

    /// <summary>Reads a whole recording. Sizes in the headers are never trusted beyond the bytes that are there.</summary>
    /// <param name="file">The bytes of the file.</param>
    /// <returns>The audio, or why there is none. Never throws.</returns>
    public static WavResult Read(ReadOnlySpan<byte> file)
    {
        if (file.IsEmpty)
            return Refuse(WavProblem.Empty, "The recording is empty. Record it again.");

        var layout = RiffLayout.Of(file);
        if (layout.Problem is { } problem)
            return Refuse(problem, MessageFor(problem));
        if (!layout.Format.IsTaken)
            return Refuse(WavProblem.OtherFormat, $"The recording is {layout.Format}. Only 16 kHz, mono, 16-bit PCM is taken: "
                + "record in the page, or convert the file first.");

        return Decode(file.Slice(layout.DataStart, layout.DataLength));
    }

    /// <summary>Writes a recording in the same format. Samples outside -1 to 1 are clipped.</summary>
    /// <param name="audio">The recording.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is longer than <see cref="LongestRecording"/>.</exception>
    public static byte[] Write(PcmAudio audio)
    {
        ArgumentNullException.ThrowIfNull(audio);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(audio.Samples.Length, LongestSamples, nameof(audio));

        var dataLength = audio.Samples.Length * sizeof(short);
        var file = new byte[HeaderSize + dataLength];
        WriteHeader(file, dataLength);
        var data = file.AsSpan(HeaderSize);
        foreach (var sample in audio.Samples.Span)
        {
            BinaryPrimitives.WriteInt16LittleEndian(data, ToInt16(sample));
            data = data[sizeof(short)..];
        }

        return file;
    }

    private static WavResult Decode(ReadOnlySpan<byte> data)
    {
        if (data.Length > LongestSamples * sizeof(short))
            return Refuse(WavProblem.TooLong, MessageFor(WavProblem.TooLong));
        if (data.Length < sizeof(short))
            return Refuse(WavProblem.Empty, MessageFor(WavProblem.Empty));

        var samples = new float[data.Length / sizeof(short)];
        for (var i = 0; i < samples.Length; i++)
            samples[i] = BinaryPrimitives.ReadInt16LittleEndian(data[(i * sizeof(short))..]) / FullScale;
        return new WavResult.Ok(new PcmAudio(samples));
    }

    private static void WriteHeader(Span<byte> file, int dataLength)
    {
        "RIFF"u8.CopyTo(file);
        BinaryPrimitives.WriteInt32LittleEndian(file[4..], HeaderSize - 8 + dataLength);
        "WAVEfmt "u8.CopyTo(file[8..]);
        BinaryPrimitives.WriteInt32LittleEndian(file[16..], 16);
        BinaryPrimitives.WriteUInt16LittleEndian(file[20..], WavFormat.Pcm);
        BinaryPrimitives.WriteInt16LittleEndian(file[22..], 1);
        BinaryPrimitives.WriteInt32LittleEndian(file[24..], PcmAudio.SampleRate);
        BinaryPrimitives.WriteInt32LittleEndian(file[28..], PcmAudio.SampleRate * sizeof(short));
        BinaryPrimitives.WriteInt16LittleEndian(file[32..], sizeof(short));
        BinaryPrimitives.WriteInt16LittleEndian(file[34..], 16);
        "data"u8.CopyTo(file[36..]);
        BinaryPrimitives.WriteInt32LittleEndian(file[40..], dataLength);
    }

    private static short ToInt16(float sample) =>
        float.IsNaN(sample) ? (short)0 : (short)Math.Clamp(MathF.Round(sample * FullScale), short.MinValue, short.MaxValue);

    private static string MessageFor(WavProblem problem) => problem switch
    {
        WavProblem.Empty => "The recording holds no sound. Record it again.",
        WavProblem.NotWav => "This is not a WAV recording. Choose an audio file the browser can play, or record in the page.",
        WavProblem.Truncated => "The recording ends too early: part of the file is missing. Send it again.",
        WavProblem.TooLong => "The recording is longer than 10 minutes. Record shorter notes, one finding or a few at a time.",
        _ => "The recording is of a format that is not taken. Record in the page.",
    };

    private static WavResult.Refused Refuse(WavProblem problem, string message) => new(problem, message);
}

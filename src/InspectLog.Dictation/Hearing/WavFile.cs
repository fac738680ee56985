namespace InspectLog.Dictation.Hearing;

/// <summary>Reads the one recording format the program takes: RIFF WAV, 16-bit PCM, mono, 16 kHz, up to
/// <see cref="LongestRecording"/>.</summary>
public static class WavFile
{
    /// <summary>The longest recording taken.</summary>
    public static readonly TimeSpan LongestRecording = TimeSpan.FromMinutes(10);

    /// <summary>The largest file that can hold one, headers included.</summary>
    public const long LargestFile = (10 * 60 * PcmAudio.SampleRate * 2) + 65_536;

    /// <summary>Reads a whole recording. Sizes in the headers are never trusted beyond the bytes that are there.</summary>
    public static WavResult Read(ReadOnlySpan<byte> file) => throw new NotSupportedException("Dictation room");

    /// <summary>Writes a recording in the same format.</summary>
    public static byte[] Write(PcmAudio audio) => throw new NotSupportedException("Dictation room");
}

/// <summary>A recording, or why the file is none.</summary>
public abstract record WavResult
{
    private WavResult()
    {
    }

    /// <summary>The file was read.</summary>
    public sealed record Ok(PcmAudio Audio) : WavResult;

    /// <summary>The file was refused.</summary>
    /// <param name="Problem">What is wrong.</param>
    /// <param name="Message">What is wrong and what to do, for the person who sent it.</param>
    public sealed record Refused(WavProblem Problem, string Message) : WavResult;
}

/// <summary>Why a file is not a recording the program takes.</summary>
public enum WavProblem
{
    /// <summary>No bytes, or no samples.</summary>
    Empty,

    /// <summary>Not a RIFF WAV file.</summary>
    NotWav,

    /// <summary>A WAV file of another rate, width, channel count or coding.</summary>
    OtherFormat,

    /// <summary>The file ends before what its header promises.</summary>
    Truncated,

    /// <summary>Longer than the longest recording.</summary>
    TooLong,
}

namespace InspectLog.Dictation.Hearing;

/// <summary>A recording, or why the file is none.</summary>
public abstract record WavResult
{
    private WavResult()
    {
    }

    /// <summary>The file was read.</summary>
    /// <param name="Audio">The recording; at least one sample.</param>
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

namespace InspectLog.Dictation.Hearing.Worker;

/// <summary>How to start the worker process.</summary>
/// <param name="FileName">The executable.</param>
/// <param name="Arguments">Its arguments, unquoted.</param>
public sealed record SpeechWorkerCommand(string FileName, params IReadOnlyList<string> Arguments)
{
    /// <summary>The running program again, with other arguments; also when it runs as <c>dotnet program.dll</c>.</summary>
    /// <param name="arguments">The arguments.</param>
    public static SpeechWorkerCommand OfThisProgram(params IReadOnlyList<string> arguments)
    {
        var executable = Environment.ProcessPath
            ?? throw new InvalidOperationException("The path of the running program is not known.");
        var runsUnderDotnet = Path.GetFileNameWithoutExtension(executable).Equals("dotnet", StringComparison.OrdinalIgnoreCase);
        return runsUnderDotnet
            ? new(executable, [Environment.GetCommandLineArgs()[0], .. arguments])
            : new(executable, arguments);
    }
}

/// <summary>How patient the client is with its worker.</summary>
/// <param name="Loading">How long a worker may take to start and to load its model.</param>
/// <param name="Step">The longest a worker may work without reporting progress before it is taken for stuck, however
/// short the recording.</param>
/// <param name="StepPerSecond">So much longer for each second of the recording, up to the longest clip of it that is
/// decoded at once. A clip of 28 s with every fallback takes most of a minute on an old, busy laptop.</param>
/// <param name="AfterCancel">How long a worker may take to give a note up before it is stopped.</param>
/// <param name="Attempts">How often one recording is tried, each with a new worker.</param>
/// <param name="BetweenStarts">How long after a worker that cannot transcribe the next one is started.</param>
public sealed record SpeechWorkerPatience(
    TimeSpan Loading, TimeSpan Step, double StepPerSecond, TimeSpan AfterCancel, int Attempts, TimeSpan BetweenStarts)
{
    private static readonly TimeSpan LongestClip = TimeSpan.FromSeconds((double)ClipCutter.LongestClip / PcmAudio.SampleRate);

    /// <summary>Two minutes; half a minute and four seconds for each second; three seconds; three times; half a minute.</summary>
    public static SpeechWorkerPatience Usual { get; } =
        new(TimeSpan.FromMinutes(2), TimeSpan.FromSeconds(30), 4, TimeSpan.FromSeconds(3), 3, TimeSpan.FromSeconds(30));

    /// <summary>How long a worker may be silent over a recording.</summary>
    /// <param name="recording">Length of the recording.</param>
    public TimeSpan StepOf(TimeSpan recording) =>
        Step + (StepPerSecond * (recording < LongestClip ? recording : LongestClip));
}

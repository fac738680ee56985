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
/// <param name="Silence">The longest a worker may work without reporting progress before it is taken for stuck. A clip of
/// 28 s is one step; on an old, busy laptop with every fallback it takes most of a minute.</param>
/// <param name="AfterCancel">How long a worker may take to give a note up before it is stopped.</param>
/// <param name="Attempts">How often one recording is tried, each with a new worker.</param>
/// <param name="BetweenStarts">How long after a worker that cannot transcribe the next one is started.</param>
public sealed record SpeechWorkerPatience(TimeSpan Silence, TimeSpan AfterCancel, int Attempts, TimeSpan BetweenStarts)
{
    /// <summary>Two minutes, ten seconds, twice, half a minute.</summary>
    public static SpeechWorkerPatience Usual { get; } =
        new(TimeSpan.FromMinutes(2), TimeSpan.FromSeconds(10), 2, TimeSpan.FromSeconds(30));
}

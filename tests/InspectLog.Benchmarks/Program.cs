using System.Globalization;
using InspectLog.Benchmarks.Dictation;

CultureInfo.DefaultThreadCurrentCulture = CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;

const string usage = """
    Usage: dotnet run -c Release --project tests/InspectLog.Benchmarks -- dictation [text|spoken] [--baseline]

      text        the sentences of tests/corpus as written -> findings
      spoken      their recordings -> transcript -> findings, with word error and time
      --baseline  the recordings through bare Whisper.net with its default settings too, and the ratio of the times

    Without text or spoken, both. Recordings are unpacked with Debian's package flac.
    """;

if (args is not ["dictation", .. var options] || options.Any(option => option is not ("text" or "spoken" or "--baseline")))
{
    Console.Error.WriteLine(usage);
    return 2;
}

try
{
    var both = !options.Contains("text") && !options.Contains("spoken");
    if (both || options.Contains("text"))
        TextScore.Run(Console.Out);
    if (both || options.Contains("spoken"))
        await SpokenScore.RunAsync(Console.Out, withBaseline: options.Contains("--baseline"));
    return 0;
}
catch (ScoringException e)
{
    Console.Error.WriteLine(e.Message);
    return 1;
}

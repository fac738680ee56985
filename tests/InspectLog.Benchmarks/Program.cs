using InspectLog.Benchmarks.Dictation;
using InspectLog.Benchmarks.Measuring;

return args switch
{
    ["dictation", .. var rest] => await DictationCommand.RunAsync(rest),
    ["measuring"] => MeasuringCommand.Run(),
    _ => Usage(),
};

static int Usage()
{
    Console.Error.WriteLine("""
        Usage:
          dictation [--misses] [--baseline]    score the corpus as text, then its recordings (Debian's flac unpacks them);
                                               --baseline times bare Whisper.net with its defaults on them too
          dictation --text [--misses]          the texts only
          measuring                            time decisions (build with -c Release)
        """);
    return 2;
}

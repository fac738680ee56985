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
          dictation --text [--misses] [FILE…]  the texts only; of the part only scored no misses are shown
          dictation --voices [--every N] [--look]
                                               the part only scored (or the one to look at) spoken by Debian's flite in
                                               several voices, clean and in noise; every Nth utterance only (8 takes
                                               some ten minutes on two cores)
          dictation --fuzz COUNT               read that many generated texts on every core, and show the slowest
          measuring                            time decisions (build with -c Release)
        """);
    return 2;
}

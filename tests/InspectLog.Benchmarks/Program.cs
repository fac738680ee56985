using InspectLog.Benchmarks.Dictation;
using InspectLog.Benchmarks.Measuring;

return args switch
{
    ["dictation", .. var rest] => DictationCommand.Run(rest),
    ["measuring"] => MeasuringCommand.Run(),
    _ => Usage(),
};

static int Usage()
{
    Console.Error.WriteLine("""
        Usage:
          dictation --text [--misses]    read the corpus as text and score the findings
          measuring                      time decisions (build with -c Release)
        """);
    return 2;
}

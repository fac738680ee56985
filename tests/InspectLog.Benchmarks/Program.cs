using InspectLog.Benchmarks.Dictation;

return args switch
{
    ["dictation", .. var rest] => DictationCommand.Run(rest),
    _ => Usage(),
};

static int Usage()
{
    Console.Error.WriteLine("""
        Usage:
          dictation --text [--misses]    read the corpus as text and score the findings
        """);
    return 2;
}

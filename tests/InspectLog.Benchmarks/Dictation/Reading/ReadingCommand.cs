using System.Diagnostics;
using InspectLog.Checks;
using InspectLog.Dictation.Understanding;

namespace InspectLog.Benchmarks.Dictation.Reading;

/// <summary>Reads a file of notes and says how well.</summary>
internal static class ReadingCommand
{
    public static int Run(string[] arguments)
    {
        if (arguments.FirstOrDefault(argument => argument.EndsWith(".jsonl", StringComparison.Ordinal)) is not { } file)
        {
            Console.Error.WriteLine("Name a file of notes in the corpus's form, ending in .jsonl.");
            return 2;
        }

        var readers = new SheetReaders();
        var chosen = Sheet(arguments) is { } sheet ? new FindingReader(sheet) : null;
        var tally = new ReadingTally();
        var times = new List<double>();
        foreach (var note in Utterance.Load(file))
        {
            var clock = Stopwatch.StartNew();
            var findings = chosen is null ? readers.Read(note) : chosen.Read(note.Text, note.OpenCheck);
            times.Add(clock.Elapsed.TotalMilliseconds);
            tally.Add(note, findings);
        }

        tally.Print(Console.Out, Path.GetFileName(file));
        times.Sort();
        Console.WriteLine($"  {times[times.Count / 2]:0.00} ms a note at the median, {times[^1]:0.0} at most");
        foreach (var miss in arguments.Contains("--misses") && Path.GetFileName(file) != Corpus.ScoredOnly ? tally.Misses : [])
        {
            Console.WriteLine($"  MISS {miss}");
        }

        return 0;
    }

    // The sheet that was chosen; null where each note says its own.
    private static CheckSheet? Sheet(string[] arguments)
    {
        var at = Array.IndexOf(arguments, "--sheet");
        if (at < 0 || at + 1 >= arguments.Length)
        {
            return null;
        }

        var name = arguments[at + 1];
        return File.Exists(name) ? CheckSheetFile.Parse(File.ReadAllBytes(name))
            : BuiltInSheets.Find(name) ?? throw new ScoringException($"There is no sheet {name}.");
    }
}

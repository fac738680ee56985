using System.Diagnostics;
using System.Globalization;
using CsCheck;
using InspectLog.Dictation.Understanding;

namespace InspectLog.Benchmarks.Dictation.Fuzz;

/// <summary>Reads a great many generated texts on every core, and tells which took the longest.</summary>
internal sealed class ReaderFuzz(FindingReader reader)
{
    private const int Shown = 5;
    private const int MostCharactersShown = 160;

    // The slowest are read again once all is read: the first time may have waited for the runtime to compile or collect.
    private const int ReadAgain = 100;
    private const int Again = 5;

    private readonly Lock _lock = new();
    private readonly SlowestTexts _slowest = new(ReadAgain);
    private double _sum;

    /// <summary>Reads that many texts and prints what was seen. A text that cannot be read ends the run with an
    /// exception that tells it.</summary>
    /// <returns>The exit code.</returns>
    public int Run(int count, TextWriter output)
    {
        var sentences = Utterance.Load(Corpus.File("look.jsonl")).Select(utterance => utterance.Text);
        var all = Stopwatch.GetTimestamp();
        new FuzzTexts(reader.Sheet, sentences).All.Sample(Time, iter: count, print: text => $"{text.Kind}: {text.Text}");
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{count} texts read without a fault in {Stopwatch.GetElapsedTime(all).TotalMinutes:0.0} min, {_sum / count:0.00} ms each; {(ProcessorTime.IsOfThread ? "processor time of the reading thread" : "time of day")}"));
        Print(output, "slowest at the first reading", _slowest);
        Print(output, $"slowest of these {ReadAgain} as the least of {Again} more readings", Repeated());
        return 0;
    }

    private void Time(FuzzText text)
    {
        var time = TimeOf(text);
        lock (_lock)
        {
            _sum += time;
            _slowest.Add(time, text);
        }
    }

    private SlowestTexts Repeated()
    {
        var repeated = new SlowestTexts(Shown);
        foreach (var (_, text) in _slowest.All)
        {
            repeated.Add(Enumerable.Range(0, Again).Min(_ => TimeOf(text)), text);
        }

        return repeated;
    }

    private double TimeOf(FuzzText text) => ProcessorTime.Of(() => reader.Read(text.Text));

    private static void Print(TextWriter output, string title, SlowestTexts texts)
    {
        output.WriteLine(title);
        foreach (var (time, text) in texts.All.Take(Shown))
        {
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {time,6:0.0} ms, {text.Text.Length,4} characters, {text.Kind}: {Opening(text.Text)}"));
        }
    }

    private static string Opening(string text)
    {
        var shown = text.Length <= MostCharactersShown ? text : text[..MostCharactersShown] + "…";
        return string.Concat(shown.Select(letter => char.IsControl(letter) || char.IsSurrogate(letter) ? '�' : letter));
    }
}

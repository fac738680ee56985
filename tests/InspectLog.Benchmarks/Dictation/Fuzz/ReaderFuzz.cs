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

    // A text slow enough to be shown is read again: the first time may have waited for the runtime to compile or collect.
    private const int Again = 5;

    private readonly Lock _lock = new();
    private readonly SlowestTexts _first = new(Shown);
    private readonly SlowestTexts _repeated = new(Shown);
    private double _sum;

    /// <summary>Reads that many texts and prints what was seen. A text that cannot be read ends the run with an
    /// exception that tells it.</summary>
    /// <returns>The exit code.</returns>
    public int Run(int count, TextWriter output)
    {
        var sentences = Utterance.Load(Corpus.File("look.jsonl")).Select(utterance => utterance.Text);
        var all = Stopwatch.GetTimestamp();
        new FuzzTexts(reader.Sheet, sentences).All.Sample(Time, iter: count, print: text => $"{text.Kind}: {text.Text}");
        Print(output, string.Create(
            CultureInfo.InvariantCulture,
            $"{count} texts read without a fault in {Stopwatch.GetElapsedTime(all).TotalMinutes:0.0} min, {_sum / count:0.00} ms each"));
        return 0;
    }

    private void Time(FuzzText text)
    {
        var first = ProcessorTime.Of(() => reader.Read(text.Text));
        lock (_lock)
        {
            _sum += first;
            _first.Add(first, text);
            if (!_repeated.Takes(first))
            {
                return;
            }
        }

        var least = Enumerable.Range(0, Again).Min(_ => ProcessorTime.Of(() => reader.Read(text.Text)));
        lock (_lock)
        {
            _repeated.Add(Math.Min(first, least), text);
        }
    }

    private void Print(TextWriter output, string title)
    {
        output.WriteLine($"{title}; {(ProcessorTime.IsOfThread ? "processor time of the reading thread" : "time of day")}");
        Print(output, "slowest at the first reading", _first);
        Print(output, $"slowest as the least of {Again + 1} readings", _repeated);
    }

    private static void Print(TextWriter output, string title, SlowestTexts texts)
    {
        output.WriteLine(title);
        foreach (var (time, text) in texts.All)
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

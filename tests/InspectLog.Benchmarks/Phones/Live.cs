using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;

namespace InspectLog.Benchmarks.Phones;

/// <summary>How soon a note that one phone sends stands on the others that have the same bench open: from the press to the page
/// that shows it.</summary>
internal sealed class Live
{
    // What is not shown by then stands in no first stretch of the stream any more.
    private static readonly TimeSpan Looked = TimeSpan.FromSeconds(15);

    private readonly ConcurrentDictionary<string, (string Bench, long Start)> _sent = new();
    private readonly ConcurrentDictionary<(string Words, int Phone), double> _seen = new();

    /// <summary>A note is being sent.</summary>
    public void Sent(string words, string bench) => _sent[words] = (bench, Stopwatch.GetTimestamp());

    /// <summary>A phone shows a page.</summary>
    public void Shown(int phone, string bench, string page)
    {
        foreach (var (words, (where, start)) in _sent)
        {
            var took = Stopwatch.GetElapsedTime(start);
            if (took > Looked)
            {
                _sent.TryRemove(words, out _);
            }
            else if (where == bench && page.Contains(words, StringComparison.Ordinal))
            {
                _seen.TryAdd((words, phone), took.TotalMilliseconds);
            }
        }
    }

    public override string ToString()
    {
        var sorted = _seen.Values.Order().ToList();
        return sorted.Count == 0 ? "nothing was shown" : string.Create(
            CultureInfo.InvariantCulture,
            $"{sorted.Count} times a note came up on a phone: median {At(sorted, 0.5):0} ms, p95 {At(sorted, 0.95):0} ms, within a second {100.0 * sorted.Count(took => took <= 1000) / sorted.Count:0.0} %");
    }

    private static double At(List<double> sorted, double share) => sorted[(int)Math.Min(sorted.Count - 1, share * sorted.Count)];
}

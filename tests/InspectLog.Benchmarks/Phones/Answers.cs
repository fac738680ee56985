using System.Collections.Concurrent;
using System.Globalization;

namespace InspectLog.Benchmarks.Phones;

/// <summary>How long answers took, and what went wrong.</summary>
internal sealed class Answers
{
    private readonly ConcurrentQueue<double> _pages = new();
    private readonly ConcurrentQueue<double> _captures = new();

    public ConcurrentQueue<string> Faults { get; } = new();

    public void Page(TimeSpan took) => _pages.Enqueue(took.TotalMilliseconds);

    public void Capture(TimeSpan took) => _captures.Enqueue(took.TotalMilliseconds);

    /// <summary>The time, in milliseconds, that a share of the pages took at most.</summary>
    public double PageAt(double share) => At(_pages, share);

    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{_pages.Count} pages, median {PageAt(0.5):0} ms, p95 {PageAt(0.95):0} ms, p99 {PageAt(0.99):0} ms; {_captures.Count} captures, median {At(_captures, 0.5):0} ms, p95 {At(_captures, 0.95):0} ms");

    private static double At(ConcurrentQueue<double> times, double share)
    {
        var sorted = times.Order().ToList();
        return sorted.Count == 0 ? double.NaN : sorted[(int)Math.Min(sorted.Count - 1, share * sorted.Count)];
    }
}

namespace InspectLog.Benchmarks.Dictation.Fuzz;

/// <summary>The texts that took the longest, the slowest first.</summary>
internal sealed class SlowestTexts(int most)
{
    private readonly List<(double Time, FuzzText Text)> _slowest = [];

    public IReadOnlyList<(double Time, FuzzText Text)> All => _slowest;

    /// <summary>Whether a text that takes so long is among the slowest.</summary>
    public bool Takes(double time) => _slowest.Count < most || time > _slowest[^1].Time;

    public void Add(double time, FuzzText text)
    {
        if (!Takes(time))
        {
            return;
        }

        _slowest.Add((time, text));
        _slowest.Sort((one, other) => other.Time.CompareTo(one.Time));
        _slowest.RemoveRange(Math.Min(most, _slowest.Count), Math.Max(0, _slowest.Count - most));
    }
}

using InspectLog.Dictation.Understanding;

namespace InspectLog.Benchmarks.Dictation;

/// <summary>Compares what was read with what was meant, utterance by utterance.</summary>
internal sealed class Score
{
    private readonly Dictionary<string, (int Right, int Read, int Meant)> _fields = [];
    private readonly List<string> _misses = [];

    public int Utterances { get; private set; }

    public int Exact { get; private set; }

    /// <summary>Findings read that are not meant and carry no doubt.</summary>
    public int WrongUnmarked { get; private set; }

    public int Read { get; private set; }

    /// <summary>Utterances without a finding, how many of them gave a proposal, and how many an unmarked reading.</summary>
    public (int All, int Proposed, int UnmarkedReading) Talk { get; private set; }

    public IReadOnlyList<string> Misses => _misses;

    /// <summary>Findings read as meant, read, and meant.</summary>
    public (int Right, int Read, int Meant) Findings => _fields.GetValueOrDefault("finding");

    public double ExactShare => Utterances == 0 ? 0 : (double)Exact / Utterances;

    public void Add(Utterance utterance, string heard, IReadOnlyList<Finding> findings)
    {
        var read = findings.Select(ExpectedFinding.From).ToList();
        var exact = read.Count == utterance.Findings.Count
            && read.Zip(utterance.Findings).All(pair => pair.First.Same(pair.Second));
        Utterances++;
        Exact += exact ? 1 : 0;
        Read += read.Count;
        CountUnmarked(utterance, findings, read);
        CountFields(read, utterance.Findings);
        if (utterance.Findings.Count == 0)
        {
            Talk = (Talk.All + 1, Talk.Proposed + (read.Count > 0 ? 1 : 0),
                Talk.UnmarkedReading + (findings.Any(finding => finding.Kind == FindingKind.Reading && finding.IsPlain) ? 1 : 0));
        }

        if (!exact)
        {
            _misses.Add($"{utterance.Id} {heard}\n    meant: {List(utterance.Findings)}\n    read:  {List(read)}"
                + string.Concat(findings.Where(finding => !finding.IsPlain).Take(1).Select(finding => $"\n    doubts: {string.Join("; ", finding.Doubts)}")));
        }
    }

    public void Print(TextWriter to, string title, bool misses)
    {
        to.WriteLine($"{title}: exact {Exact} of {Utterances} ({ExactShare:P1}); wrong and unmarked {WrongUnmarked} of {Read} findings");
        if (Talk.All > 0)
        {
            to.WriteLine($"  no finding meant: {Talk.All}, gave a proposal {Talk.Proposed}, gave an unmarked reading {Talk.UnmarkedReading}");
        }

        foreach (var (field, (right, read, meant)) in _fields.OrderBy(field => field.Key, StringComparer.Ordinal))
        {
            to.WriteLine($"  {field,-10} precision {Share(right, read)} ({right}/{read})  recall {Share(right, meant)} ({right}/{meant})");
        }

        foreach (var miss in misses ? _misses : [])
        {
            to.WriteLine($"  MISS {miss}");
        }
    }

    private void CountUnmarked(Utterance utterance, IReadOnlyList<Finding> findings, List<ExpectedFinding> read)
    {
        var left = utterance.Findings.ToList();
        for (var i = 0; i < read.Count; i++)
        {
            var match = left.FindIndex(read[i].Same);
            if (match >= 0)
            {
                left.RemoveAt(match);
            }
            else if (findings[i].IsPlain)
            {
                WrongUnmarked++;
            }
        }
    }

    private void CountFields(List<ExpectedFinding> read, IReadOnlyList<ExpectedFinding> meant)
    {
        Count("finding", read.Select(one => one.ToString()), meant.Select(one => one.ToString()));
        Count("check", read.Select(one => one.Check), meant.Select(one => one.Check));
        Count("place", Said(read, one => one.Cylinder), Said(meant, one => one.Cylinder));
        Count("value", Said(read, one => one.Value), Said(meant, one => one.Value));
        Count("bracket", Said(read, one => one.Bracket), Said(meant, one => one.Bracket));
        Count("condition", Said(read, one => one.Condition), Said(meant, one => one.Condition));
        Count("negated", Said(read, one => one.Negated ? "no" : null), Said(meant, one => one.Negated ? "no" : null));
        Count("action", Said(read, one => one.Action), Said(meant, one => one.Action));
    }

    private static IEnumerable<string> Said(IEnumerable<ExpectedFinding> findings, Func<ExpectedFinding, object?> field) =>
        findings.Where(one => field(one) is not null).Select(one => $"{one.Check}:{field(one)}");

    private void Count(string field, IEnumerable<string> read, IEnumerable<string> meant)
    {
        var left = meant.ToList();
        var all = left.Count;
        var (right, count) = (0, 0);
        foreach (var one in read)
        {
            count++;
            right += left.Remove(one) ? 1 : 0;
        }

        var known = _fields.GetValueOrDefault(field);
        _fields[field] = (known.Right + right, known.Read + count, known.Meant + all);
    }

    private static string Share(int part, int whole) => whole == 0 ? "  -  " : $"{(double)part / whole,6:P1}";

    private static string List(IReadOnlyList<ExpectedFinding> findings) =>
        findings.Count == 0 ? "(nothing)" : string.Join("; ", findings);
}

using InspectLog.Dictation.Understanding;

namespace InspectLog.Benchmarks.Dictation.Reading;

/// <summary>Counts how notes are read: exact, wrong and unmarked, talk, and right but marked.</summary>
internal sealed class ReadingTally
{
    private readonly List<string> _misses = [];

    public (int Exact, int InOrder, int All) Notes { get; private set; }

    public (int WrongUnmarked, int Given) Readings { get; private set; }

    public (int WrongUnmarked, int Given) Others { get; private set; }

    public (int Proposed, int UnmarkedReading, int All) Talk { get; private set; }

    public (int Marked, int All) Right { get; private set; }

    public IReadOnlyList<string> Misses => _misses;

    public void Add(Utterance note, IReadOnlyList<Finding> findings)
    {
        var read = findings.Select(ExpectedFinding.From).ToList();
        var left = note.Findings.ToList();
        for (var at = 0; at < read.Count; at++)
        {
            var meant = left.FindIndex(read[at].Same);
            if (meant >= 0)
            {
                left.RemoveAt(meant);
            }

            Count(findings[at], meant >= 0);
        }

        var exact = left.Count == 0 && read.Count == note.Findings.Count;
        var inOrder = exact && read.Zip(note.Findings).All(pair => pair.First.Same(pair.Second));
        Notes = (Notes.Exact + (exact ? 1 : 0), Notes.InOrder + (inOrder ? 1 : 0), Notes.All + 1);
        if (note.Findings.Count == 0)
        {
            var unmarked = findings.Any(finding => finding.Kind == FindingKind.Reading && finding.IsPlain);
            Talk = (Talk.Proposed + (read.Count > 0 ? 1 : 0), Talk.UnmarkedReading + (unmarked ? 1 : 0), Talk.All + 1);
        }

        if (!exact)
        {
            _misses.Add($"{note.Id} {note.Text}\n    meant: {string.Join("; ", note.Findings)}\n    read:  {string.Join("; ", read.Select((one, at) => findings[at].IsPlain ? $"{one}" : $"{one} ?"))}");
        }
    }

    public void Print(TextWriter to, string title)
    {
        to.WriteLine($"{title}: exact {Notes.Exact} of {Notes.All} ({Share(Notes.Exact, Notes.All):P1}); in the order of the corpus {Notes.InOrder}");
        to.WriteLine($"  readings wrong and unmarked {Readings.WrongUnmarked} of {Readings.Given} ({Share(Readings.WrongUnmarked, Readings.Given):P1})");
        to.WriteLine($"  other findings wrong and unmarked {Others.WrongUnmarked} of {Others.Given} ({Share(Others.WrongUnmarked, Others.Given):P1})");
        to.WriteLine($"  talk: {Talk.All}, gave a proposal {Talk.Proposed} ({Share(Talk.Proposed, Talk.All):P1}), an unmarked reading {Talk.UnmarkedReading}");
        to.WriteLine($"  right findings marked doubtful {Right.Marked} of {Right.All} ({Share(Right.Marked, Right.All):P1})");
    }

    private void Count(Finding finding, bool right)
    {
        var wrong = !right && finding.IsPlain ? 1 : 0;
        if (finding.Kind == FindingKind.Reading)
        {
            Readings = (Readings.WrongUnmarked + wrong, Readings.Given + 1);
        }
        else
        {
            Others = (Others.WrongUnmarked + wrong, Others.Given + 1);
        }

        if (right)
        {
            Right = (Right.Marked + (finding.IsPlain ? 0 : 1), Right.All + 1);
        }
    }

    private static double Share(int part, int whole) => whole == 0 ? 0 : (double)part / whole;
}

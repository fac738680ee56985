using InspectLog.Dictation.Understanding.Language;
using InspectLog.Dictation.Understanding.Lattice;
using InspectLog.Dictation.Understanding.Scoring;

namespace InspectLog.Dictation.Understanding.Events;

/// <summary>A note whose numbers are read in one way: its events and places, and what features need of them.</summary>
internal sealed class NoteScene
{
    private readonly Dictionary<(int First, bool Sentence), double[]> _loose = [];

    public NoteScene(Note note, NumberSegment[] segments)
    {
        (Note, Segments) = (note, segments);
        Groups = new PlaceGroups(note).Of(segments);
        Events = EventFinder.Find(note, segments);
    }

    public Note Note { get; }

    public NumberSegment[] Segments { get; }

    public List<PlaceGroup> Groups { get; }

    public List<NoteEvent> Events { get; }

    /// <summary>How much the single words of the clause or sentence of a token speak for each check.</summary>
    public double[] Loose(int at, bool sentence)
    {
        var first = sentence ? Note.SentenceFirst(at) : Note.ClauseFirst(at);
        if (!_loose.TryGetValue((first, sentence), out var sums))
        {
            var next = first;
            while (next < Note.Length && (sentence ? InSentence(next, at) : InClause(next, at)))
            {
                next++;
            }

            _loose[(first, sentence)] = sums = Note.Lexicon.Loose.Of(Note.Tokens, first, next);
        }

        return sums;
    }

    public IReadOnlyList<CheckEntry> Checks => Note.Lexicon.Checks;

    /// <summary>How far apart, in steps that grow.</summary>
    public static int Bucket(int distance) => distance switch
    {
        <= 0 => 0,
        1 => 1,
        2 => 2,
        <= 4 => 3,
        <= 7 => 4,
        _ => 5,
    };

    /// <summary>How far words sound from a phrase, in steps.</summary>
    public static int CostStep(double cost) => (int)(cost * 20);

    /// <summary>Where words of a role stand to a stretch of the note.</summary>
    public void AddRole(FeatureList to, Feature feature, SpeechRole role, int first, int next, int reach, int extra = 0)
    {
        foreach (var (start, end) in Note.Of(role))
        {
            if (end <= first && first - end <= reach)
            {
                to.Add(feature, (int)role, -1 - Bucket(first - end), (int)Note.Between(end, first), extra);
            }
            else if (start >= next && start - next <= reach)
            {
                to.Add(feature, (int)role, 1 + Bucket(start - next), (int)Note.Between(next, start), extra);
            }
            else
            {
                to.Add(feature, (int)role, end <= first ? -9 : 9, 0, extra);
            }
        }
    }

    /// <summary>Whether a word of a role stands between two places.</summary>
    public bool HasBetween(SpeechRole role, int first, int next) => Note.Of(role).Any(word => first <= word.First && word.Next <= next);

    public bool InClause(int a, int b) => Note.ClauseOf(a) == Note.ClauseOf(b);

    public bool InSentence(int a, int b) => Note.SentenceOf(a) == Note.SentenceOf(b);
}

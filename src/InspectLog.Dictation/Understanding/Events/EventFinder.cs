using InspectLog.Dictation.Understanding.Language;
using InspectLog.Dictation.Understanding.Lattice;

namespace InspectLog.Dictation.Understanding.Events;

/// <summary>Finds every place of a note that may say a finding, where its numbers are read in one way.</summary>
internal static class EventFinder
{
    private const int MostAgain = 2;

    private static readonly SpeechRole[] Answers = [SpeechRole.Same, SpeechRole.Yes, SpeechRole.No, SpeechRole.Exception];

    public static List<NoteEvent> Find(Note note, IReadOnlyList<NumberSegment> segments)
    {
        var covered = new bool[note.Length];
        var events = new List<NoteEvent>();
        foreach (var segment in segments)
        {
            if (segment.Role == NumberRole.Value)
            {
                events.Add(new(EventKind.Value, segment.First, segment.Next) { Number = segment });
            }

            if (segment.Role != NumberRole.Other)
            {
                Array.Fill(covered, true, segment.First, segment.Next - segment.First);
            }
        }

        events.AddRange(note.Actions.Where(action => !Enumerable.Range(action.First, action.Length).Any(at => covered[at]))
            .Select(action => new NoteEvent(EventKind.Action, action.First, action.Next) { Action = action }).ToList());
        events.AddRange(note.Conditions.Select(condition => new NoteEvent(EventKind.Condition, condition.First, condition.Next) { Condition = condition }));
        foreach (var found in events)
        {
            Array.Fill(covered, true, found.First, found.Next - found.First);
        }

        AddAnswers(note, covered, events);
        events.Sort((a, b) => (a.First, a.Next, a.Kind).CompareTo((b.First, b.Next, b.Kind)));
        return [.. events.SelectMany(found => Enumerable.Repeat(found, 1).Concat(Again(note, found)))];
    }

    private static void AddAnswers(Note note, bool[] covered, List<NoteEvent> events)
    {
        var answered = new HashSet<int>();
        foreach (var role in Answers)
        {
            foreach (var (first, next) in note.Of(role))
            {
                var counted = role != SpeechRole.No && note.Quantifiers.Exists(span => span.First <= first && first < span.Next && span.Meanings.Contains(Quantifier.None));
                if (!covered[first] && !counted && answered.Add(first))
                {
                    events.Add(new(EventKind.Answer, first, next) { Role = role });
                }
            }
        }
    }

    // "Cap and rotor are clean": what is said holds of the other part too.
    private static IEnumerable<NoteEvent> Again(Note note, NoteEvent found)
    {
        if (found.Kind is not (EventKind.Condition or EventKind.Action))
        {
            return [];
        }

        var names = note.Names.Where(name => note.SentenceOf(name.First) == note.SentenceOf(found.First)).ToList();
        var joined = names.Zip(names.Skip(1)).Count(pair => !pair.First.Meanings.Any(a => pair.Second.Meanings.Any(b => a.Check == b.Check))
            && Enumerable.Range(pair.First.Next, pair.Second.First - pair.First.Next).All(at => note.Lexicon.Language.Places.Join.Contains(note.Tokens[at].Text)));
        return Enumerable.Repeat(new NoteEvent(EventKind.Again, found.First, found.Next) { Of = found }, Math.Min(MostAgain, joined));
    }
}

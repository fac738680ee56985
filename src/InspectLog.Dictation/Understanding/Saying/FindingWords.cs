using InspectLog.Dictation.Understanding.Events;
using InspectLog.Dictation.Understanding.Language;

namespace InspectLog.Dictation.Understanding.Saying;

/// <summary>Tells which words of a text a finding came from: those of the event, of the nearest name of its check and of its
/// places, as far as they stand in the same sentence.</summary>
internal static class FindingWords
{
    public static (int Start, int End) Of(NoteScene scene, Found found, int place)
    {
        var note = scene.Note;
        var (first, next) = (found.Event.First, found.Event.Next);
        if (found.Claim.Bracket is not null && scene.Events.Find(other => other.Kind == EventKind.Value && other.First >= found.Event.Next) is { } other)
        {
            next = Math.Max(next, other.Next);
        }

        var name = note.Names.Where(name => Evidence.KindOf(name, found.Claim.Check) is not null && scene.InSentence(name.First, found.Event.First))
            .MinBy(name => (name.Next <= found.Event.First ? found.Event.First - name.Next : name.First - found.Event.Next) * 2 + (name.Next <= found.Event.First ? 0 : 1));
        if (name is not null)
        {
            (first, next) = (Math.Min(first, name.First), Math.Max(next, name.Next));
        }

        var group = place == 0 ? null : scene.Groups.Where(group => (group.Places & PlaceSets.One(place)) != 0 && !group.Excepted && scene.InSentence(group.First, found.Event.First))
            .MinBy(group => (group.Kind == Quantifier.Numbers ? 0 : 4) + Math.Min(Math.Abs(group.First - found.Event.Next), Math.Abs(found.Event.First - group.Next)));
        if (group is not null)
        {
            var atom = group.Atoms.FirstOrDefault(atom => (atom.Places & PlaceSets.One(place)) != 0);
            (first, next) = (Math.Min(first, atom?.First ?? group.First), Math.Max(next, atom?.Next ?? group.Next));
        }

        return (note.Tokens[first].Start, note.Tokens[next - 1].End);
    }
}

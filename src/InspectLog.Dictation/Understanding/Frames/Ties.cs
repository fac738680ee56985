using InspectLog.Dictation.Understanding.Items;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Frames;

/// <summary>Takes what parts and ties the other words: commas, "and", "but", prepositions, verbs.</summary>
internal sealed class Ties(Draft draft, Subjects subjects, Gauges gauges, Surroundings around, IReadOnlyList<Token> tokens)
{
    public void Take(Item item)
    {
        switch (item.Role)
        {
            case Role.Comma:
                EndNegation();
                (draft.Separated, draft.Comma, draft.Preposition, draft.PlaceMarked) = (true, true, false, false);
                draft.Negated &= ListGoesOn();
                DropTalk();
                draft.Excepting |= OnlySome();
                break;
            case Role.And or Role.Or:
                (draft.Separated, draft.PlaceMarked) = (true, false);
                DropTalk();
                break;
            case Role.But when subjects.ButExcepts():
                draft.Excepting = true;
                break;
            case Role.But:
                (draft.Separated, draft.Comma, draft.Negated, draft.Excepting) = (true, true, false, false);
                draft.AfterBut = true;
                DropTalk();
                break;
            case Role.Preposition when around.GoesIn(item):
                gauges.Mark(goes: true);
                break;
            case Role.Preposition:
                (draft.Preposition, draft.PlaceMarked, draft.Frame.Tied) = (true, false, true);
                break;
            case Role.Between:
                (draft.Between, draft.Preposition) = (true, true);
                break;
            case Role.Verb or Role.Was:
                (draft.VerbSinceSubject, draft.PlaceMarked) = (true, false);
                draft.ValueWas = item.Role == Role.Was && draft.Frame.Says;
                draft.Frame.Was |= item.Role == Role.Was && !item.Blocked;
                break;
            case Role.PlaceMark:
                draft.PlaceMarked = true;
                break;
        }
    }

    // "All at point eight, only four is at point nine".
    private bool OnlySome() => draft.At + 1 < draft.Items.Count && tokens[draft.Items[draft.At + 1].First].Stem is "only" or "just"
        && draft.Frame.Says && subjects.ButExcepts();

    /// <summary>"Spark on one but not on three": the negation stands for the predicate before.</summary>
    public void EndNegation()
    {
        if (draft is { Negated: true, Frame: { Says: false, Placed: true, Mentioned: false } })
        {
            draft.Frame.Echo = Echo.DoesNot;
        }
    }

    // "No cracks, burns or corrosion": the negation holds for the whole list.
    private bool ListGoesOn()
    {
        var items = draft.Items;
        var next = draft.At + 1;
        return next < items.Count && items[next].Condition
            && items.Skip(next + 1).TakeWhile(item => item.Condition || item.Role is Role.Comma or Role.Or or Role.Filler)
                .Any(item => item.Role == Role.Or);
    }

    // Words before a comma that are about nothing we know say nothing about what follows it.
    private void DropTalk()
    {
        if (draft.Frame is { HasSubject: false, Says: false, Unknown: > 0, Foreign: false })
        {
            draft.Open();
        }
    }
}

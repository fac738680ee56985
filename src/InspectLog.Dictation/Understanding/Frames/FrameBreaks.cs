using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Items;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Frames;

/// <summary>Decides where one frame ends and the next begins.</summary>
internal sealed class FrameBreaks(Draft draft, IReadOnlyList<Token> tokens)
{
    /// <summary>A subject comes: to the current frame, or to a new one.</summary>
    /// <param name="place">Whether it is a cylinder rather than a part.</param>
    public void Subject(bool place)
    {
        // "The customer was right, lead three is burnt."
        var turned = draft.Frame is { Foreign: true, HasSubject: false } && draft.Comma;
        var fresh = turned || (draft.Frame.Says ? !draft.Repairing && !Attaches(place) : draft.Separated && (draft.Frame.Foreign || EchoEnds()));
        if (fresh)
        {
            draft.Open();
            draft.Negated &= draft.Items.Take(draft.At).LastOrDefault(item => item.Role is not (Role.Filler or Role.Preposition or Role.PlaceMark))
                is { Role: Role.Not or Role.DoesNot or Role.Neither };
        }

        if (!draft.Frame.Says)
        {
            draft.Frame.SubjectBefore = true;
        }
        else if (!draft.Frame.SubjectBefore)
        {
            draft.Frame.SubjectAfter = true;
        }

        draft.Frame.PlaceAfter |= place && draft.Frame.Says;
    }

    // "Likewise five, the rest are fine", "same on four, six is weak".
    private bool EchoEnds() => draft.Frame is { Echo: not Echo.None, Placed: true }
        && draft.Ahead() is { Role: Role.Verb or Role.Was or Role.DoesNot or Role.Not } or { Condition: true } or { Number: true };

    // Whether a subject belongs to what was just said: "no wear on the rotor tip", "cracked insulator", "spark is good
    // on two".
    private bool Attaches(bool place)
    {
        var frame = draft.Frame;
        if (place && frame is { Counted: > 0, Placed: false } && !(draft.Ahead() is { Role: Role.Verb or Role.Was } or { Condition: true }) || place && ListsPlaces(frame))
        {
            return true;
        }

        if (!frame.SubjectBefore)
        {
            // "It's running but the timing is late."
            return !(draft.AfterBut && !place) && (!frame.SubjectAfter || ListGoesOn() || NumbersIt(place) || !draft.Comma && (draft.Preposition || draft.SubjectJustSaid || draft.PlaceMarked));
        }

        var counted = !place && frame.Set != PlaceSet.None && draft is { SubjectJustSaid: true, Separated: false };
        return counted || !draft.Comma && (draft.Preposition || place && draft.PlaceMarked || !place && Described()) && !(place && frame.Placed);
    }

    // "Cap tracked, four to six.": cylinders alone, up to the end.
    private bool ListsPlaces(Frame frame) => draft.Comma && frame is { Mentioned: true, Places.Count: 0, Set: PlaceSet.None or PlaceSet.Both }
        && draft.Ahead() is null or { Role: Role.Comma or Role.But };

    // "Replaced cap, rotor and leads": names alone, up to the end.
    private bool ListGoesOn()
    {
        var rest = draft.Items.Skip(draft.At).TakeWhile(item => item.Subject && !item.Condition || item.Number
            || item.Role is Role.Comma or Role.And or Role.Filler or Role.PlaceMark).ToList();
        return draft is { SubjectJustSaid: true, Comma: true } && draft.At + rest.Count == draft.Items.Count
            && draft.Item is { Subject: true } && rest.Exists(item => item.Role == Role.And);
    }

    // "A dead cylinder, number two".
    private bool NumbersIt(bool place) =>
        place && draft is { PlaceMarked: true, Frame: { Mentioned: true, Placed: false } } && draft.Ahead() is null or { Role: Role.Comma or Role.But };

    // "Has a cracked boot": what was said describes the noun that follows.
    private bool Described() =>
        draft.Before is { Condition: true } condition && condition.First > 0
        && tokens[condition.First - 1].Stem is "a" or "an" or "some" or "has" or "have" or "with" or "no";

    /// <summary>Something is said: of the current frame's subject, or of one to come.</summary>
    public void Predicate()
    {
        var frame = draft.Frame;
        if (frame.Says ? draft.Repairing : !SaysNothingOfItsPlace(frame))
        {
            return;
        }

        if (frame.Except.Count > 0 && draft.Excepting)
        {
            OpenException(frame);
        }
        else if (Ends(frame))
        {
            draft.Open();
        }
    }

    // "Dry on one, wet on two": wet is not said of one.
    private bool SaysNothingOfItsPlace(Frame frame) => frame is { Says: false, Places.Count: > 0 } && draft is { Comma: true, Separated: true, Repairing: false }
        && draft.Item.Condition && PlaceAhead();

    // "On two", right after what is said.
    private bool PlaceAhead() => draft.At + 2 < draft.Items.Count && draft.Items[draft.At + 1] is { Role: Role.Preposition } on && tokens[on.First].IsWord("on")
        && draft.Items[draft.At + 2] is { Number: true } or { Group: not null } or { Role: Role.PlaceMark };

    private bool Ends(Frame frame) =>
        !frame.Says || frame.Echo != Echo.None
        || draft.AfterBut && SubjectAhead()
        || draft.Separated && (draft.Item is { Subject: true, Actions.Count: 0 } || frame.HasSubject && SubjectAhead())
        || !frame.SubjectBefore && frame.SubjectAfter && !draft.VerbSinceSubject
        || frame is { SubjectBefore: true, PlaceAfter: true };

    // "All plugs good except number three, sooty": sooty is said of number three.
    public void OpenException(Frame frame)
    {
        frame.ExceptTaken = true;
        var token = draft.Item.First;
        draft.Open();
        draft.Frame.Places.Add(new(token, token, [.. frame.Except], null));
        draft.Frame.SubjectBefore = true;
        draft.Frame.Cover(token, draft.Item.Next);
    }

    // Whether a subject of its own follows what is said, before the clause ends: "..., cracked insulator on plug four".
    private bool SubjectAhead()
    {
        var tied = draft.Item.Actions.Any(action => action.Action != PartActions.Adjusted);
        for (var i = draft.At + 1; i < draft.Items.Count; i++)
        {
            var item = draft.Items[i];
            if (EndsPhrase(item))
            {
                return false;
            }

            if (item.Subject || item.Ordinal is not null || item.Group is not null || item.Number && tied || item.Role is Role.PlaceMark or Role.All or Role.Rest)
            {
                return true;
            }

            tied = item.Role == Role.Preposition || tied && item.Role == Role.Filler;
        }

        return false;
    }

    private static bool EndsPhrase(Item item) =>
        item.Role is Role.Comma or Role.And or Role.But or Role.Was
        || item.Role == Role.Verb && !item.Subject
        || item.Condition && !item.Subject
        || item.Actions.Count > 0;
}

using InspectLog.Dictation.Understanding.Items;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Frames;

/// <summary>Takes words for what no check is about: people, other parts, things nobody told the program about.</summary>
internal sealed class Strangers(Draft draft, Subjects subjects, Surroundings around)
{
    public void Take(Item item)
    {
        switch (item.Role)
        {
            case Role.Person:
                Person(item);
                break;
            case Role.OtherPart:
                draft.Frame.Foreign |= around.NamesWhole(item) || around.CountsOthers(item);
                subjects.Other();
                break;
            case Role.Unknown:
                Unknown(item);
                break;
        }
    }

    private void Person(Item item)
    {
        if (draft is { Separated: true, Frame.Says: true, Repairing: false } && !item.Blocked)
        {
            draft.Open();
            draft.Negated = false;
        }

        draft.Frame.Person = true;
    }

    private void Unknown(Item item)
    {
        if (draft is { AfterBut: true, Frame.Says: true })
        {
            // "It fired up but died": of what came before, nothing more.
            draft.Open();
        }

        draft.Frame.Foreign |= around.NamesWhole(item);
        // "Fourteen millimetre thread": the size of something else.
        draft.Frame.Foreign |= draft is { Before.Number: true, Frame: { Mentioned: false, Says: true } };
        draft.Frame.Unknown++;
        draft.PlaceMarked = false;
    }
}

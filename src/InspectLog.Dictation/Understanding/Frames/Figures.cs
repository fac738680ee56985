using InspectLog.Dictation.Understanding.Items;
using InspectLog.Dictation.Understanding.Numbers;

namespace InspectLog.Dictation.Understanding.Frames;

/// <summary>Takes runs of numbers: counts, cylinders, values.</summary>
internal sealed class Figures(Draft draft, Subjects subjects, Values values, RunReader runs, Surroundings around)
{
    public void Take(Item item)
    {
        if (runs.CountsAll())
        {
            draft.Frame.Cover(item.First, item.Next);
            draft.SubjectJustSaid = true;
            return;
        }

        if (around.CountsNamed(item) is { } count)
        {
            draft.Frame.Counted = count;
            draft.SubjectJustSaid = true;
            return;
        }

        var run = runs.Read();
        foreach (var role in run.Roles)
        {
            if (role is PlaceNumbers place)
            {
                subjects.Place(place);
            }
            else if (role is ValueNumber value && !item.Blocked && !around.CountsParts(value))
            {
                values.Take(run.Check!, value, run.Nameless);
            }
        }

        draft.Frame.Unknown += run.Roles.Count == 0 ? 1 : 0;
        draft.Between = false;
    }
}

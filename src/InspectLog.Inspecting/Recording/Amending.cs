using InspectLog.Checks;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.Inspecting.Recording;

/// <summary>The entries that put something right. Pure.</summary>
public static class Amending
{
    /// <summary>The entries that let a record say something else from now on, with what follows for the loose ends while
    /// the inspection is open; none
    /// when that is what it says already, or when it is not there.</summary>
    /// <param name="scene">The inspection.</param>
    /// <param name="entry">Sequence of the record's first entry.</param>
    /// <param name="says">What it is to say; of the same kind. What it confirms stays what it was.</param>
    public static IReadOnlyList<EntryBody> Bodies(BenchScene scene, long entry, AmendableBody says)
    {
        if (scene.Inspection.Find(entry) is not { } kept || (kept.History.Withdrawn is null && SaysTheSame(kept.Says, says)))
        {
            return [];
        }

        var amended = says with { Amends = entry };
        return scene.Inspection.IsClosed || LeavesTheSameUndone(kept, says)
            ? [amended]
            :
            [
                amended,
                .. Withdrawing.TakeBackLooseEnds(scene, entry, "The record it followed from was put right."),
                .. LooseEndRules.Following(scene, Withdrawing.LooseEndsWithout(scene, entry), amended, entry),
            ];
    }

    /// <summary>Whether what is off stays off: a value or a condition put right changes nothing of what was taken apart
    /// for it. What was withdrawn took its loose ends along, so they follow anew.</summary>
    private static bool LeavesTheSameUndone(IKept kept, AmendableBody after) => kept.History.Withdrawn is null && (kept.Says, after) switch
    {
        (ReadingDecided one, ReadingDecided other) => (one.Check, one.Cylinder) == (other.Check, other.Cylinder),
        (ObservationMade one, ObservationMade other) => (one.Check, one.Cylinder) == (other.Check, other.Cylinder),
        _ => false,
    };

    /// <summary>Whether two bodies of a kind differ in nothing a person sees. Lists in them are compared by what is in
    /// them.</summary>
    private static bool SaysTheSame(EntryBody before, AmendableBody after) => (before, after) switch
    {
        (ReadingDecided one, ReadingDecided other) =>
            (one.Check, one.Cylinder, one.AsGiven, one.Instrument) == (other.Check, other.Cylinder, other.AsGiven, other.Instrument)
            && SameReading(one.Reading, other.Reading),
        (ObservationMade one, ObservationMade other) => Plain(one) == Plain(other),
        (ActionDone one, ActionDone other) => Plain(one) == Plain(other),
        (NoteWritten one, NoteWritten other) => Plain(one) == Plain(other),
        (PhotoKept one, PhotoKept other) => Plain(one) == Plain(other),
        _ => false,
    };

    /// <summary>Whether two readings are the same in all that was read and corrected.</summary>
    internal static bool SameReading(Reading before, Reading after) => (before, after) switch
    {
        (DisplayedReading one, DisplayedReading other) =>
            one.Values.SequenceEqual(other.Values)
            && (one.Leads?.Values ?? []).SequenceEqual(other.Leads?.Values ?? [])
            && (one.Accuracy, one.Resolution, one.Winding, one.Correction, one.Ambient)
                == (other.Accuracy, other.Resolution, other.Winding, other.Correction, other.Ambient)
            && (one.Allowances ?? []).SequenceEqual(other.Allowances ?? []),
        _ => before.Equals(after),
    };

    private static T Plain<T>(T body)
        where T : AmendableBody => body with { Amends = null, Stamp = null };
}

using System.Collections.Immutable;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;

namespace InspectLog.Journal.State;

/// <content>Which inspection an entry is of, and the inspections after it.</content>
public sealed partial record VehicleState
{
    /// <summary>The inspections after one more entry. It changes one of them, or none, so the list is not made anew for
    /// each: a vehicle may have a thousand. What names its inspection is of that one alone.</summary>
    private ImmutableList<InspectionState> Applied(JournalEntry entry)
    {
        if (Named(entry.Body) is { } number)
        {
            return Place(number) is >= 0 and var named ? Changed(Inspections, named, entry) : Inspections;
        }

        // What is referred to is mostly of the newest.
        for (var at = Inspections.Count - 1; at >= 0; at--)
        {
            if (Target(entry.Body) is { } target && !Inspections[at].MayHave(target))
            {
                continue;
            }

            if (Changed(Inspections, at, entry) is var now && !ReferenceEquals(now, Inspections))
            {
                return now;
            }
        }

        return Inspections;
    }

    private ImmutableList<InspectionState> Changed(ImmutableList<InspectionState> inspections, int at, JournalEntry entry)
    {
        var before = inspections[at];
        var next = before.After(entry, CameIn);
        return ReferenceEquals(next, before) ? inspections : inspections.SetItem(at, next);
    }

    /// <summary>The inspection that an entry names; null where it names another entry, whichever inspection has that.</summary>
    private static long? Named(EntryBody? body) => body is AmendableBody { Amends: not null } ? null : AboutInspection.Of(body);

    /// <summary>The entry that an entry refers to; null where it refers to none.</summary>
    private static long? Target(EntryBody? body) => body switch
    {
        AmendableBody { Amends: { } amended } => amended,
        PhotoMarked marked => marked.Photo,
        TranscriptMade made => made.Recording,
        WordsCorrected corrected => corrected.Recording,
        TranscriptFailed failed => failed.Recording,
        TranscriptCancelled cancelled => cancelled.Recording,
        TranscriptAsked asked => asked.Recording,
        FindingsProposed proposed => proposed.Recording,
        FindingDropped dropped => dropped.Finding.Recording,
        FindingReopened reopened => reopened.Finding.Recording,
        CommandHeard heard => heard.Recording,
        CommandDone done => done.Recording,
        LooseEndTied tied => tied.LooseEnd,
        LooseEndWaived waived => waived.LooseEnd,
        EntryWithdrawn withdrawn => withdrawn.Entry,
        EntryRestored restored => restored.Entry,
        ReportChoice choice => choice.Entry,
        _ => null,
    };

    /// <summary>Where an inspection stands in the list, which goes by rising numbers; negative where there is none.</summary>
    private int Place(long number) => LastUpTo(number) is >= 0 and var at && Inspections[at].Number == number ? at : -1;

    /// <summary>Where the last inspection stands whose number is no higher; -1 where there is none.</summary>
    private int LastUpTo(long number)
    {
        var (from, to) = (0, Inspections.Count);
        while (from < to)
        {
            var middle = from + ((to - from) / 2);
            (from, to) = Inspections[middle].Number <= number ? (middle + 1, to) : (from, middle);
        }

        return from - 1;
    }
}

using InspectLog.Journal.Record;

namespace InspectLog.Journal.State;

/// <summary>An entry whose body was withheld or erased: that it was there, and of what kind, stays known.</summary>
/// <param name="Sequence">The entry.</param>
/// <param name="Time">When it was made, in the workshop's time.</param>
/// <param name="Actor">Who made it.</param>
/// <param name="Kind">Of what kind it was.</param>
public sealed record WithheldEntry(long Sequence, DateTimeOffset Time, string Actor, string Kind)
{
    /// <summary>The tombstone by which it was erased; null where it was withheld otherwise.</summary>
    public long? ErasedBy { get; init; }

    /// <summary>Whether what it said was said again without a person, so that nothing else is lacking.</summary>
    public bool IsRestated { get; init; }

    // What these say is of the vehicle, of another inspection, or of the journal itself.
    private static readonly HashSet<string> NeverOfAnInspection = new(StringComparer.Ordinal)
    {
        "vehicle-added", "vehicle-described", "vehicle-pictured", "private-facts", "limits-set", "limits-cleared",
        "wear-part-added", "wear-part-fitted", "wear-part-interval-set", "wear-part-not-renewed", "wear-part-retired",
        "inspection-started", "workshop-noted", "tail-set-aside", "person-erased",
    };

    /// <summary>Whether it may have said something of an inspection. Which one is not known, as its body is gone: it may
    /// also have put right something of one that was closed before.</summary>
    public bool MayBeOf(InspectionState inspection) => !IsRestated && Sequence > inspection.Number && !NeverOfAnInspection.Contains(Kind);

    internal static WithheldEntry Of(JournalEntry entry) => new(entry.Sequence, entry.LocalTime, entry.Actor, entry.Kind)
    {
        ErasedBy = entry.ErasedBy,
        IsRestated = entry.IsRestated,
    };
}

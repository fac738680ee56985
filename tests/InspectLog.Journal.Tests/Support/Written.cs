using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.State;

namespace InspectLog.Journal.Tests.Support;

/// <summary>States of a journal that was written entry by entry.</summary>
internal static class Written
{
    /// <summary>How an inspection begins in these tests.</summary>
    public static InspectionStarted Start => new("ignition-breakerless-6", 2, new string('c', 64), Some.Technician, null, null);

    /// <summary>The inspection of a vehicle, which is entry 2, after some more entries, the first of which is entry 3.
    /// </summary>
    public static InspectionState State(params IReadOnlyList<EntryBody> bodies) => Apply(Inspecting(), bodies).Inspection(2)!;

    /// <summary>A vehicle whose inspection, entry 2, has just begun.</summary>
    public static VehicleState Inspecting() => After(new VehicleAdded("Teasel", "", null), Start);

    /// <summary>A vehicle after its first entries.</summary>
    public static VehicleState After(params IReadOnlyList<EntryBody> bodies) => Apply(VehicleState.Before("teasel"), bodies);

    /// <summary>A vehicle after some more entries.</summary>
    public static VehicleState Apply(VehicleState state, params IReadOnlyList<EntryBody> bodies) =>
        bodies.Aggregate(state, (now, body) => now.Apply(Entry(now.NextSequence, body)));

    /// <summary>An entry as it stands in a journal.</summary>
    public static JournalEntry Entry(long sequence, EntryBody? body) => new(
        sequence, Some.Clock().GetUtcNow(), TimeSpan.FromHours(1), Some.Technician, body, "", 1, "", $"hash {sequence}");
}

using InspectLog.Journal.Entries;

namespace InspectLog.Journal.Record;

/// <summary>One line of a journal.</summary>
/// <param name="Sequence">Position in the journal, from 1.</param>
/// <param name="Time">When it was appended, UTC.</param>
/// <param name="Offset">Offset of the workshop's clock from UTC at that time.</param>
/// <param name="Actor">Who made it: a person's name, or the program for machine-made entries.</param>
/// <param name="Body">What it says; null when the body was withheld or erased, or its kind is not known to this
/// version of the program.</param>
/// <param name="Kind">Kind of the body.</param>
/// <param name="Version">Version of the body.</param>
/// <param name="Previous">Hash of the entry before, lower-case hex; 64 zeros for the first.</param>
/// <param name="Hash">Hash of this entry, lower-case hex.</param>
public sealed record JournalEntry(
    long Sequence,
    DateTimeOffset Time,
    TimeSpan Offset,
    string Actor,
    EntryBody? Body,
    string Kind,
    int Version,
    string Previous,
    string Hash)
{
    /// <summary>The actor of machine-made entries.</summary>
    public const string Program = "InspectLog";

    /// <summary>Name of the paired device it was made with; null for the workshop's own computer and for the program.</summary>
    public string? Device { get; init; }

    /// <summary>When it was appended, in the workshop's time.</summary>
    public DateTimeOffset LocalTime => Time.ToOffset(Offset);

    /// <summary>When it was captured, in the workshop's time: before it was appended, where it waited on a device that had no
    /// network.</summary>
    public DateTimeOffset CapturedTime => Body?.Stamp?.Waited is { } seconds and > 0 and <= CaptureStamp.LongestWait
        ? LocalTime.AddSeconds(-seconds)
        : LocalTime;

    /// <summary>Whether its body was withheld or erased. Its hash still stands for what it said.</summary>
    public bool IsWithheld { get; init; }

    /// <summary>The sequence of the tombstone by which it was erased; null where it was not.</summary>
    public long? ErasedBy { get; init; }

    /// <summary>Whether its body was taken out and said again, without a person: <see cref="Body"/> is what was said again.</summary>
    public bool IsRestated { get; init; }

    /// <summary>What stands for the rest of a line that does not say who made it; null where it does.</summary>
    internal string? Rest { get; init; }

    /// <summary>The JSON of a body this version of the program cannot read; null otherwise. Kept to be shown.</summary>
    public string? UnreadBody { get; init; }
}

namespace InspectLog.Journal.Entries;

/// <summary>What an entry says. Each kind of entry is one record; its kind and version are pinned by
/// <see cref="EntryKindAttribute"/> and never change meaning once written.</summary>
/// <remarks>Entries refer to each other by sequence number within the journal. Values are in base units.</remarks>
public abstract record EntryBody
{
    /// <summary>What the device it was captured with called it, and when that was; null for what no person captured, and
    /// in entries from before there were stamps. The entries of one capture share its stamp.</summary>
    public CaptureStamp? Stamp { get; init; }
}

/// <summary>What a person recorded and may put right: an entry of the same kind then takes its place, and it stays.
/// </summary>
public abstract record AmendableBody : EntryBody
{
    /// <summary>Sequence of the entry that first said it, whose place this one takes; null where it is the first.</summary>
    public long? Amends { get; init; }
}

/// <summary>Tells a capture that was sent twice from two captures.</summary>
/// <param name="Id">Made by the device or the page, and made only once.</param>
/// <param name="At">When it was captured, by the device's clock, which may be wrong.</param>
public sealed record CaptureStamp(string Id, DateTimeOffset At)
{
    /// <summary>The longest time that is believed, in seconds: thirty days.</summary>
    public const long LongestWait = 30 * 24 * 3600;

    /// <summary>How long it waited on the device before it was sent, in whole seconds from 1 to <see cref="LongestWait"/>; null
    /// where it was sent at once. A device whose clock is wrong knows that all the same.</summary>
    public long? Waited { get; init; }
}

/// <summary>The name and version under which a body is written to the journal.</summary>
/// <param name="kind">Lower-case words joined by hyphens.</param>
/// <param name="version">Version of the body's members, from 1.</param>
[AttributeUsage(AttributeTargets.Class, Inherited = false)]
public sealed class EntryKindAttribute(string kind, int version = 1) : Attribute
{
    /// <summary>The kind.</summary>
    public string Kind { get; } = kind;

    /// <summary>The version.</summary>
    public int Version { get; } = version;
}

namespace InspectLog.Journal.Entries;

/// <summary>What an entry says. Each kind of entry is one record; its kind and version are pinned by
/// <see cref="EntryKindAttribute"/> and never change meaning once written.</summary>
/// <remarks>Entries refer to each other by sequence number within the journal. Values are in base units.</remarks>
public abstract record EntryBody;

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

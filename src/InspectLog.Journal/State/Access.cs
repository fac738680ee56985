using InspectLog.Journal.Entries;

namespace InspectLog.Journal.State;

/// <summary>A paired device, or a link that was given away.</summary>
/// <param name="Number">Its number: the sequence of the entry that gave it.</param>
/// <param name="Time">When it was given, in the workshop's time.</param>
/// <param name="Given">For whom and for what.</param>
/// <param name="Withdrawn">When it was withdrawn; null while it holds.</param>
public sealed record Access(long Number, DateTimeOffset Time, AccessGiven Given, DateTimeOffset? Withdrawn)
{
    /// <summary>Whether it opens anything at a time.</summary>
    public bool Holds(DateTimeOffset now) => Withdrawn is null && !(Given.Until <= now);
}

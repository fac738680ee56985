using InspectLog.Journal.Entries;

namespace InspectLog.Journal.State;

/// <summary>A word of the workshop's own, with who added it and when.</summary>
/// <param name="Number">Its number: the sequence of its entry.</param>
/// <param name="Time">When it was added, in the workshop's time.</param>
/// <param name="Actor">Who added it.</param>
/// <param name="Body">What it says.</param>
public sealed record WorkshopWord(long Number, DateTimeOffset Time, string Actor, OwnWordAdded Body);

using InspectLog.Journal.Entries;

namespace InspectLog.Journal.State;

/// <summary>A record with where and when it stands in the journal.</summary>
/// <param name="Sequence">Sequence of its first entry.</param>
/// <param name="Time">When it was first recorded, in the workshop's time.</param>
/// <param name="Body">What it says now.</param>
public sealed record Recorded<T>(long Sequence, DateTimeOffset Time, T Body) : IKept
    where T : EntryBody
{
    /// <inheritdoc/>
    public History History { get; init; } = new("");

    EntryBody IKept.Says => Body;
}

using System.Collections.Immutable;
using InspectLog.Journal.Entries;

namespace InspectLog.Journal.State;

/// <summary>A part that wears, as long as it is watched.</summary>
/// <param name="Number">Its number: the sequence of the entry that added it.</param>
/// <param name="Name">What people call it.</param>
/// <param name="Interval">How long one lasts.</param>
/// <param name="Fittings">When each was fitted, in the order recorded; at least one.</param>
public sealed record WearPart(long Number, string Name, WearInterval Interval, ImmutableList<Fitting> Fittings)
{
    /// <summary>Up to where what was recorded as replaced is no new one of it, as said last; null while nobody said so.
    /// </summary>
    public Recorded<WearPartNotRenewed>? NotRenewed { get; init; }

    /// <summary>The one that is fitted now: the last by date, and of those of one day the last recorded.</summary>
    public Fitting Fitted => Fittings.Aggregate((last, next) => next.On >= last.On ? next : last);
}

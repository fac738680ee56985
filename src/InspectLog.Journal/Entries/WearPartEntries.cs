namespace InspectLog.Journal.Entries;

/// <summary>A part that wears is watched from now on. Its sequence number is the part's number in this journal.</summary>
/// <param name="Name">What people call it: "Spark plugs". Never empty.</param>
/// <param name="Interval">How long one lasts.</param>
/// <param name="Fitting">When the one that is fitted now was fitted.</param>
[EntryKind("wear-part-added")]
public sealed record WearPartAdded(string Name, WearInterval Interval, Fitting Fitting) : EntryBody;

/// <summary>A new one was fitted in place of the old.</summary>
/// <param name="Part">Sequence of the entry that added the part.</param>
/// <param name="Fitting">When.</param>
[EntryKind("wear-part-fitted")]
public sealed record WearPartFitted(long Part, Fitting Fitting) : EntryBody;

/// <summary>How long a part lasts was set anew.</summary>
/// <param name="Part">Sequence of the entry that added the part.</param>
/// <param name="Interval">How long one lasts, from now on and for the one that is fitted.</param>
[EntryKind("wear-part-interval-set")]
public sealed record WearPartIntervalSet(long Part, WearInterval Interval) : EntryBody;

/// <summary>What inspections recorded as replaced, up to an entry, was no new one of the part: the one that is fitted
/// goes on counting.</summary>
/// <param name="Part">Sequence of the entry that added the part.</param>
/// <param name="UpTo">Sequence of the last entry that is meant, one that recorded something as replaced.</param>
/// <param name="Reason">Why; never empty.</param>
[EntryKind("wear-part-not-renewed")]
public sealed record WearPartNotRenewed(long Part, long UpTo, string Reason) : EntryBody;

/// <summary>A part is no longer watched.</summary>
/// <param name="Part">Sequence of the entry that added it.</param>
[EntryKind("wear-part-retired")]
public sealed record WearPartRetired(long Part) : EntryBody;

/// <summary>How long a part lasts: a time, a distance, or whichever of the two comes first.</summary>
/// <param name="Months">Calendar months, 1 or more; null where time does not matter.</param>
/// <param name="Distance">Distance in <paramref name="DistanceUnit"/>, above 0; null where it does not matter.</param>
/// <param name="DistanceUnit">km or mi; null without a distance.</param>
public sealed record WearInterval(int? Months, double? Distance, string? DistanceUnit);

/// <summary>When a part was fitted.</summary>
/// <param name="On">The day.</param>
/// <param name="Odometer">Odometer reading as shown; null when not noted.</param>
/// <param name="OdometerUnit">km or mi; null when not noted.</param>
public sealed record Fitting(DateOnly On, double? Odometer, string? OdometerUnit);

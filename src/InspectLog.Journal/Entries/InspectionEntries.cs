using InspectLog.Measuring;

namespace InspectLog.Journal.Entries;

/// <summary>An inspection began. Its sequence number is the inspection's number in this journal.</summary>
/// <param name="Sheet">Sheet id.</param>
/// <param name="SheetVersion">Sheet version, pinned.</param>
/// <param name="SheetSha256">SHA-256 of the sheet's data file, pinned.</param>
/// <param name="Technician">Who inspects.</param>
/// <param name="Odometer">Odometer reading as shown; null when not noted.</param>
/// <param name="OdometerUnit">km or mi; null when not noted.</param>
[EntryKind("inspection-started")]
public sealed record InspectionStarted(
    string Sheet, int SheetVersion, string SheetSha256, string Technician, double? Odometer, string? OdometerUnit)
    : EntryBody
{
    /// <summary>Id of the decision rule, pinned; null in inspections from before sheets named one, which were decided by
    /// the non-binary rule.</summary>
    public string? Rule { get; init; }

    /// <summary>How much of a reading's distribution lies within its expanded uncertainty, above 0.5 and below 1, pinned; null
    /// for the usual 95.45 %, and in inspections from before there was a choice.</summary>
    public double? Coverage { get; init; }

    /// <summary>How many cylinders the engine has, pinned: the places of checks done per cylinder stay those it was
    /// started with. Null in inspections from before a sheet could be for several numbers, which have the sheet's own.
    /// </summary>
    public int? Cylinders { get; init; }
}

/// <summary>A reading was taken or confirmed, and decided against the limits in force.</summary>
/// <param name="Inspection">Sequence of the inspection's first entry.</param>
/// <param name="Check">Check id.</param>
/// <param name="Cylinder">The place, for checks done per cylinder.</param>
/// <param name="Reading">The values or bracket, base unit.</param>
/// <param name="AsGiven">What was typed or said, word for word.</param>
/// <param name="Instrument">The instrument with its accuracy at the time; null when none was named.</param>
/// <param name="Limits">The limits in force; null when there were none, and then nothing was decided.</param>
/// <param name="Conformity">The decision with its inputs; null without limits.</param>
/// <param name="From">The proposals it confirms, several for repeats; empty when taken by hand.</param>
[EntryKind("reading-decided")]
public sealed record ReadingDecided(
    long Inspection,
    string Check,
    int? Cylinder,
    Reading Reading,
    string AsGiven,
    Instrument? Instrument,
    LimitsInForce? Limits,
    Conformity? Conformity,
    IReadOnlyList<FindingReference> From) : AmendableBody
{
    /// <summary>The reading of another check it was decided with: then limits and decision are of what the two make
    /// together. Null where the reading was decided by itself.</summary>
    public DecidedWith? With { get; init; }
}

/// <summary>The reading of another check, as it was when a reading was decided with it.</summary>
/// <param name="Form">What the two make together.</param>
/// <param name="Check">Id of the other check.</param>
/// <param name="Record">Sequence of the other reading's first entry.</param>
/// <param name="Reading">The other reading, base unit of its kind.</param>
/// <param name="SameInstrument">Whether one instrument is known to have taken both.</param>
public sealed record DecidedWith(ComparisonForm Form, string Check, long Record, Reading Reading, bool SameInstrument);

/// <summary>The limits a reading was decided against.</summary>
/// <param name="Lower">Lower limit, base unit; of what two readings make together, where it was decided with another.</param>
/// <param name="Upper">Upper limit, likewise.</param>
/// <param name="Source">Where they come from.</param>
/// <param name="Rule">Id of the decision rule; readings from before sheets named one describe the non-binary rule
/// in words.</param>
public sealed record LimitsInForce(double? Lower, double? Upper, string Source, string Rule);

/// <summary>A condition was seen, or seen to be absent.</summary>
/// <param name="Inspection">Sequence of the inspection's first entry.</param>
/// <param name="Check">Check id.</param>
/// <param name="Cylinder">The place, for checks done per cylinder.</param>
/// <param name="Condition">The sheet's condition word.</param>
/// <param name="Negated">Whether it was absent.</param>
/// <param name="From">The proposal it confirms; null when entered by hand.</param>
[EntryKind("observation-made")]
public sealed record ObservationMade(
    long Inspection, string Check, int? Cylinder, string Condition, bool Negated, FindingReference? From) : AmendableBody;

/// <summary>Something was done.</summary>
/// <param name="Inspection">Sequence of the inspection's first entry.</param>
/// <param name="Check">Check id.</param>
/// <param name="Cylinder">The place, for checks done per cylinder.</param>
/// <param name="Action">replaced, cleaned, adjusted, disconnected or reconnected.</param>
/// <param name="From">The proposal it confirms; null when entered by hand.</param>
[EntryKind("action-done")]
public sealed record ActionDone(
    long Inspection, string Check, int? Cylinder, string Action, FindingReference? From) : AmendableBody;

/// <summary>Something was left disconnected, removed or switched on.</summary>
/// <param name="Inspection">Sequence of the inspection's first entry.</param>
/// <param name="Text">What: "Coil lead off the cap".</param>
/// <param name="Tie">What puts it right.</param>
/// <param name="Check">Check it came with; null when noted by hand.</param>
/// <param name="Cylinder">The place; null where there is none.</param>
/// <param name="Disturbance">Id of the sheet's disturbance; null when it came from an action or by hand.</param>
[EntryKind("loose-end-opened")]
public sealed record LooseEndOpened(
    long Inspection, string Text, string Tie, string? Check, int? Cylinder, string? Disturbance) : EntryBody
{
    /// <summary>The sheet's name of the part that is off; null where none was named.</summary>
    public string? Part { get; init; }

    /// <summary>Sequence of the record it followed from; null when somebody noted it.</summary>
    public long? Record { get; init; }
}

/// <summary>A loose end was put right.</summary>
/// <param name="LooseEnd">Sequence of the entry that opened it.</param>
[EntryKind("loose-end-tied")]
public sealed record LooseEndTied(long LooseEnd) : EntryBody
{
    /// <summary>Sequence of the record that said so; null when somebody ticked it off.</summary>
    public long? Record { get; init; }
}

/// <summary>A loose end stays as it is, for a reason.</summary>
/// <param name="LooseEnd">Sequence of the entry that opened it.</param>
/// <param name="Reason">Why; never empty.</param>
[EntryKind("loose-end-waived")]
public sealed record LooseEndWaived(long LooseEnd, string Reason) : EntryBody;

/// <summary>A check is left out, for a reason.</summary>
/// <param name="Inspection">Sequence of the inspection's first entry.</param>
/// <param name="Check">Check id.</param>
/// <param name="Reason">Why; never empty.</param>
[EntryKind("check-left-out")]
public sealed record CheckLeftOut(long Inspection, string Check, string Reason) : EntryBody;

/// <summary>An earlier reading, observation, action, note or photo no longer counts, or the loose end it opened, or the
/// tie it made. The entry itself stays.</summary>
/// <param name="Entry">Its sequence; of what was amended, that of its first entry.</param>
/// <param name="Reason">Why; never empty.</param>
[EntryKind("entry-withdrawn")]
public sealed record EntryWithdrawn(long Entry, string Reason) : EntryBody;

/// <summary>What was withdrawn counts again.</summary>
/// <param name="Entry">Sequence of the entry that had been withdrawn.</param>
[EntryKind("entry-restored")]
public sealed record EntryRestored(long Entry) : EntryBody;

/// <summary>Whether a note, voice note or photo stands in the report. Until somebody says otherwise it does.</summary>
/// <param name="Entry">Sequence of its first entry.</param>
/// <param name="Shown">Whether it does.</param>
[EntryKind("report-choice")]
public sealed record ReportChoice(long Entry, bool Shown) : EntryBody;

/// <summary>The inspection is closed.</summary>
/// <param name="Inspection">Sequence of the inspection's first entry.</param>
[EntryKind("inspection-closed")]
public sealed record InspectionClosed(long Inspection) : EntryBody;

using InspectLog.Checks;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;

namespace InspectLog.App.Bench;

/// <summary>A reading as it was given, before it is decided.</summary>
/// <param name="Check">The check; it is a measured one.</param>
/// <param name="Cylinder">The place.</param>
/// <param name="Values">Values in the base unit; empty with a bracket.</param>
/// <param name="Bracket">The bracket, base unit; null with values.</param>
/// <param name="AsGiven">What was typed or said.</param>
/// <param name="Instrument">The instrument; null with a bracket.</param>
/// <param name="From">The proposals it confirms.</param>
public sealed record GivenReading(
    Check Check,
    int? Cylinder,
    IReadOnlyList<double> Values,
    Bracket? Bracket,
    string AsGiven,
    Instrument? Instrument,
    IReadOnlyList<FindingReference> From);

/// <summary>Turns a given reading into the entry that records and decides it. Pure.</summary>
public static class ReadingRecords
{
    public static ReadingDecided Decide(long inspection, GivenReading given)
    {
        var limits = LimitsFor.Check(given.Check);
        Reading reading = given.Bracket is { } bracket
            ? bracket
            : Displayed(given.Values, given.Instrument ?? throw new ArgumentException("A displayed value needs an instrument.", nameof(given)));
        var conformity = limits is null
            ? null
            : ConformityRule.Decide(reading, Limits.Of(limits.Lower, limits.Upper));
        return new ReadingDecided(
            inspection, given.Check.Id, given.Cylinder, reading, given.AsGiven, given.Instrument, limits, conformity,
            given.From);
    }

    private static DisplayedReading Displayed(IReadOnlyList<double> values, Instrument instrument) =>
        new(values, instrument.Accuracy, instrument.Resolution);
}

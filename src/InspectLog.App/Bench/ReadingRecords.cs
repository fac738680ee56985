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
    IReadOnlyList<FindingReference> From)
{
    /// <summary>What the same instrument read with the tips of its leads together, base unit, to be subtracted; null
    /// where that was not done.</summary>
    public double? Leads { get; init; }

    /// <summary>Temperature of a copper winding, and the one its resistance is referred to; null where it is taken as
    /// read.</summary>
    public WindingTemperature? Winding { get; init; }
}

/// <summary>Turns a given reading into the entry that records and decides it. Pure.</summary>
public static class ReadingRecords
{
    /// <summary>The entry for a reading.</summary>
    /// <param name="inspection">Number of the inspection.</param>
    /// <param name="rule">The rule the inspection has pinned.</param>
    /// <param name="given">The reading.</param>
    /// <exception cref="ArgumentException">The reading cannot be used; the message says why, for the person who entered
    /// it.</exception>
    public static ReadingDecided Decide(long inspection, DecisionRule rule, GivenReading given)
    {
        var limits = LimitsFor.Check(given.Check, rule);
        Reading reading = given.Bracket is { } bracket
            ? bracket
            : Displayed(given, given.Instrument ?? throw new ArgumentException("A displayed value needs an instrument.", nameof(given)));
        var estimate = Estimate.Of(reading);
        var conformity = limits is null
            ? null
            : ConformityRule.Decide(estimate, Limits.Of(limits.Lower, limits.Upper), rule);
        return new ReadingDecided(
            inspection, given.Check.Id, given.Cylinder, reading, given.AsGiven, given.Instrument, limits, conformity,
            given.From);
    }

    private static DisplayedReading Displayed(GivenReading given, Instrument instrument) =>
        new(given.Values, instrument.Accuracy, instrument.Resolution)
        {
            Leads = given.Leads is { } leads
                ? new TestLeads([leads], instrument.Accuracy, instrument.Resolution, SameInstrument: true)
                : null,
            Winding = given.Winding,
        };
}

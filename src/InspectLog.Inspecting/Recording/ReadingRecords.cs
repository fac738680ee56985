using InspectLog.Checks;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;

namespace InspectLog.Inspecting.Recording;

/// <summary>A reading as it was given, before it is decided.</summary>
/// <param name="Check">The check; it is a measured one.</param>
/// <param name="Cylinder">The place.</param>
/// <param name="Values">Values in the base unit; empty with a bracket.</param>
/// <param name="Bracket">The bracket, base unit; null with values.</param>
/// <param name="AsGiven">What was typed or said.</param>
/// <param name="Instrument">The instrument; with a bracket the set of gauges, null where none is named.</param>
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

    /// <summary>Temperature of the air about the instrument, °C; null where it is not known.</summary>
    public double? Ambient { get; init; }

    /// <summary>How far the way of reading may move the values to either side, base unit, over what the instrument's accuracy
    /// covers; null where nothing is allowed for it.</summary>
    public double? Allowed { get; init; }

    /// <summary>Temperature of a copper winding, and the one its resistance is referred to; null where it is taken as
    /// read.</summary>
    public WindingTemperature? Winding { get; init; }
}

/// <summary>Turns a given reading into the entry that records and decides it. Pure.</summary>
public static class ReadingRecords
{
    /// <summary>The entry for a reading of an inspection, by its rule, with what earlier readings of the vehicle say of how
    /// far readings scatter. An instrument that chooses its range is recorded on the range it showed the values on.</summary>
    /// <param name="scene">The inspection.</param>
    /// <param name="given">The reading.</param>
    /// <param name="amends">Sequence of the first entry of the reading it puts right; null for a new one.</param>
    /// <exception cref="ArgumentException">The reading cannot be used; the message says why, for the person who entered
    /// it.</exception>
    public static ReadingDecided Decide(BenchScene scene, GivenReading given, long? amends = null) =>
        Decide(
            scene.Inspection.Number, scene.Sheet.Rule, given, EarlierScatter.Of(scene.Vehicle, given, amends), scene.Sheet.Evaluation);

    /// <summary>The entry for a reading.</summary>
    /// <param name="inspection">Number of the inspection.</param>
    /// <param name="rule">The rule the inspection has pinned.</param>
    /// <param name="given">The reading.</param>
    /// <param name="scatter">How far readings like it are known to scatter; null where nothing says.</param>
    /// <param name="evaluation">How its expanded uncertainty is found; null for the usual way.</param>
    /// <exception cref="ArgumentException">The reading cannot be used; the message says why, for the person who entered
    /// it.</exception>
    public static ReadingDecided Decide(
        long inspection, DecisionRule rule, GivenReading given, KnownScatter? scatter = null, Evaluation? evaluation = null)
    {
        given = given.Bracket is null ? given with { Instrument = given.Instrument?.OnRangeFor(given.Values) } : given;
        var limits = LimitsFor.Check(given.Check, rule);
        Reading reading = given.Bracket is { } bracket
            ? bracket
            : Displayed(
                given, given.Instrument ?? throw new ArgumentException("A displayed value needs an instrument.", nameof(given)), scatter);
        var estimate = NewReading.Estimate(reading, evaluation);
        var conformity = limits is null
            ? null
            : ConformityRule.Decide(estimate, Limits.Of(limits.Lower, limits.Upper), rule);
        return new ReadingDecided(
            inspection, given.Check.Id, given.Cylinder, reading, given.AsGiven, given.Instrument, limits, conformity,
            given.From);
    }

    private static DisplayedReading Displayed(GivenReading given, Instrument instrument, KnownScatter? scatter)
    {
        var read = AsRead.Of(instrument, given.Values, given.Leads, given.Ambient) with { Scatter = scatter, Winding = given.Winding };
        return given.Allowed is { } allowed
            ? read with { Allowances = [.. read.Allowances ?? [], new(AllowanceSource.Method, allowed)] }
            : read;
    }
}

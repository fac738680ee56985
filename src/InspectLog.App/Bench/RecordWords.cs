using InspectLog.Checks;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;

namespace InspectLog.App.Bench;

/// <summary>Records in words for people.</summary>
public static class RecordWords
{
    /// <summary>Where a record belongs: "Lead resistance, lead 4".</summary>
    public static string Heading(CheckSheet sheet, string checkId, int? cylinder)
    {
        if (sheet.Find(checkId) is not { } check)
        {
            return checkId;
        }

        return cylinder is null || !check.PerCylinder
            ? check.ShortTitle
            : $"{check.ShortTitle}, {Standings.NameOf(check, cylinder).ToLowerInvariant()}";
    }

    /// <summary>The value alone: "9.40 kΩ", "0.30 to 0.35 mm".</summary>
    public static string Value(ReadingDecided reading, Check check)
    {
        var unit = UnitOf(reading, check);
        return reading switch
        {
            { Reading: Bracket bracket } => Printed.Span(bracket.Goes, bracket.Stops, unit),
            { Conformity: { } conformity } =>
                Printed.Uncertain(conformity.Value, conformity.ExpandedUncertainty, unit).Split(" ± ")[0],
            _ => Printed.Value(BestEstimate(reading), unit),
        };
    }

    /// <summary>The reading with its decision, in one or two sentences.</summary>
    public static string Sentence(ReadingDecided reading, Check check)
    {
        var unit = UnitOf(reading, check);
        return reading is { Conformity: { } conformity, Limits: { } limits }
            ? Printed.Sentence(reading.Reading, conformity, LimitsOf(limits), unit)
            : $"{Value(reading, check)}. Recorded; there are no limits to decide it against.";
    }

    /// <summary>A value as it stands in a field to be edited: the number alone, in the unit given.</summary>
    public static string Editable(double baseValue, Unit unit) =>
        Printed.UncertainNumbers(baseValue, 0, unit).Value.Replace('\u2212', '-');

    /// <summary>A decision that would be made: "would be a conditional pass, 84 in 100 that it conforms".</summary>
    public static string Preview(Conformity conformity) =>
        $"Would be: {conformity.Decision.Words()}, {Printed.Chance(conformity.ProbabilityOfConformity)} that it is within its limits.";

    /// <summary>What was seen: "chafed", "not chafed".</summary>
    public static string Seen(ObservationMade seen) => seen.Negated ? $"not {seen.Condition}" : seen.Condition;

    /// <summary>The best estimate of a reading, base unit: the mean of its repeats, corrected as it says, or the middle of
    /// the bracket.</summary>
    public static double BestEstimate(ReadingDecided reading) =>
        reading.Conformity?.Value ?? Estimate.Of(reading.Reading).Value;

    /// <summary>What was corrected between reading and result, in a sentence: "As read 8.62 kΩ at 60 °C ± 5 °C; referred
    /// to 20 °C."; null where nothing was.</summary>
    public static string? Correction(ReadingDecided reading, Check check)
    {
        if (reading.Reading is not DisplayedReading { Values: var values } displayed
            || displayed is { Leads: null, Winding: null })
        {
            return null;
        }

        var unit = UnitOf(reading, check);
        var asRead = $"As read {Printed.Value(Sample.Of(values).Mean, unit)}";
        var leads = displayed.Leads is { } own ? $", less {Printed.Value(Sample.Of(own.Values).Mean, Units.Ohm)} for the test leads" : "";
        var winding = displayed.Winding is { } at
            ? $", at {Printed.Value(at.At, Units.Celsius)} ± {Printed.Value(at.HalfWidth, Units.Celsius)}; referred to {Printed.Value(at.To, Units.Celsius)} as copper"
            : "";
        return $"{asRead}{leads}{winding}.";
    }

    /// <summary>What a reading by itself says of its place.</summary>
    public static PlaceOutcome OutcomeOf(ReadingDecided reading) => reading.Conformity?.Decision switch
    {
        Decision.Pass => PlaceOutcome.Good,
        Decision.ConditionalPass or Decision.ConditionalFail => PlaceOutcome.Doubtful,
        Decision.Fail => PlaceOutcome.Bad,
        _ => PlaceOutcome.Recorded,
    };

    /// <summary>"0.6 to 2.0 Ω", "at most 22 kΩ".</summary>
    public static string Span(LimitsInForce limits, Measurand measurand) =>
        Printed.Span(LimitsOf(limits), measurand.DisplayUnit);

    /// <summary>"within 0.6 to 2.0 Ω", "at most 22 kΩ".</summary>
    public static string Within(LimitsInForce limits, Measurand measurand) =>
        (limits is { Lower: not null, Upper: not null } ? "within " : "") + Span(limits, measurand);

    private static Limits LimitsOf(LimitsInForce limits) => Limits.Of(limits.Lower, limits.Upper);

    /// <summary>A check that is no longer measured in this version of the sheet falls back on the instrument's kind.</summary>
    internal static Unit UnitOf(ReadingDecided reading, Check check) =>
        check.Measurand?.DisplayUnit ?? Units.BaseOf(reading.Instrument?.Kind ?? QuantityKind.Length);
}

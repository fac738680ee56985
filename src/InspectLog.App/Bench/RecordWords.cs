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

    /// <summary>What would make a doubtful reading clear, best first, two at most: "Take 6 readings in all: ± 0.15 Ω would
    /// come down to ± 0.08 Ω." Empty where the decision is clear or nothing helps.</summary>
    public static IReadOnlyList<string> Advice(ReadingDecided reading, Check check)
    {
        if (reading is not { Conformity: { Decision: Decision.ConditionalPass or Decision.ConditionalFail } conformity, Limits: { } limits })
        {
            return [];
        }

        var unit = UnitOf(reading, check);
        string Spread(double expanded) => $"±\u00a0{Printed.UncertainNumbers(0, expanded, unit).Spread}\u00a0{unit.Symbol}";
        var now = Spread(conformity.ExpandedUncertainty);
        return [.. Measuring.Advice.For(reading.Reading, LimitsOf(limits), reading.Instrument).Improvements.Take(2)
            .Select(one => $"{char.ToUpperInvariant(one.Action[0])}{one.Action[1..]}: {now} would come down to {Spread(one.ExpandedUncertainty)}.")];
    }

    /// <summary>What was seen: "chafed", "not chafed".</summary>
    public static string Seen(ObservationMade seen) => seen.Negated ? $"not {seen.Condition}" : seen.Condition;

    /// <summary>The mean of the repeats, or the middle of the bracket; base unit.</summary>
    public static double BestEstimate(ReadingDecided reading) => reading switch
    {
        { Conformity: { } conformity } => conformity.Value,
        { Reading: DisplayedReading displayed } => displayed.Values.Average(),
        { Reading: Bracket bracket } => (bracket.Goes + bracket.Stops) / 2,
        _ => throw new ArgumentOutOfRangeException(nameof(reading)),
    };

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
    private static Unit UnitOf(ReadingDecided reading, Check check) =>
        check.Measurand?.DisplayUnit ?? Units.BaseOf(reading.Instrument?.Kind ?? QuantityKind.Length);
}

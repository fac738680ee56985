using InspectLog.Checks;
using InspectLog.Inspecting.Standing;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;

namespace InspectLog.Inspecting.Words;

/// <summary>Records in words for people.</summary>
public static class RecordWords
{
    /// <summary>Where a record belongs: "Lead resistance, lead 4".</summary>
    public static string Heading(CheckSheet sheet, string checkId, int? cylinder) =>
        sheet.Find(checkId) is { } check ? Places.Under(check, cylinder) : checkId;

    /// <summary>The value alone: "9.40 kΩ", "0.30 to 0.35 mm".</summary>
    public static string Value(ReadingDecided reading, Check check)
    {
        var unit = UnitOf(reading, check);
        return reading switch
        {
            { Reading: Bracket bracket } => Printed.Span(bracket.Goes, bracket.Stops, unit),
            { Conformity: not null } => Printed.Uncertain(BestEstimate(reading), Spread(reading), unit).Split(" ± ")[0],
            _ => Printed.Value(BestEstimate(reading), unit),
        };
    }

    /// <summary>Expanded uncertainty of the reading itself, base unit; 0 where its numbers are too large to work with.</summary>
    public static double Spread(ReadingDecided reading) => reading is { With: null, Conformity: { } conformity }
        ? conformity.ExpandedUncertainty
        : EstimateOf(reading.Reading, reading.Conformity?.Evaluation)?.ExpandedUncertainty ?? 0;

    /// <summary>The reading with its decision, in one or two sentences.</summary>
    public static string Sentence(ReadingDecided reading, Check check)
    {
        var unit = UnitOf(reading, check);
        return ComparedWords.Figure(reading, check) is { } figure && reading.Conformity is { } together
            ? $"{Value(reading, check)}: {together.Decision.Words()}. {figure}. {Chance(reading, check)}"
            : reading is { Conformity: { } conformity, Limits: { } limits }
            ? Printed.Sentence(reading.Reading, conformity, LimitsOf(limits), unit)
            : $"{Value(reading, check)}. Recorded; there are no limits to decide it against.";
    }

    /// <summary>How likely a decided reading is within its limits: "84 in 100 that it is within 0.6 to 2.0 Ω."</summary>
    public static string Chance(ReadingDecided reading, Check check)
    {
        var chance = Printed.Chance(reading.Conformity!.ProbabilityOfConformity);
        return $"{char.ToUpperInvariant(chance[0])}{chance[1..]} that it is {ComparedWords.Within(reading, check)}.";
    }

    /// <summary>A value as it stands in a field to be edited: the number alone, in the unit given.</summary>
    public static string Editable(double baseValue, Unit unit) =>
        Printed.UncertainNumbers(baseValue, 0, unit).Value.Replace('\u2212', '-');

    /// <summary>A decision that would be made: "would be a conditional pass, 84 in 100 that it conforms".</summary>
    public static string Preview(ReadingDecided would, Check check) => would.Conformity is { } conformity
        ? $"Would be: {conformity.Decision.Words()}, {Printed.Chance(conformity.ProbabilityOfConformity)} that it is within its limits."
            + (ComparedWords.Figure(would, check) is { } figure ? $" {figure}." : "")
        : "";

    /// <summary>What was seen: "chafed", "not chafed".</summary>
    public static string Seen(ObservationMade seen) => seen.Negated ? $"not {seen.Condition}" : seen.Condition;

    /// <summary>The best estimate of a reading, base unit: the mean of its repeats, corrected as it says, or the middle of
    /// the bracket.</summary>
    public static double BestEstimate(ReadingDecided reading) =>
        (reading.With is null ? reading.Conformity?.Value : null) ?? EstimateOf(reading.Reading)?.Value ?? AsRead(reading.Reading);

    /// <summary>How the uncertainty of a recorded reading was found. Records from before there was a choice are classical.
    /// </summary>
    public static Evaluation EvaluationOf(ReadingDecided reading) => reading.Conformity is { } conformity
        ? conformity.Evaluation ?? Evaluation.Classical
        : Evaluation.Default;

    /// <summary>The estimate of a recorded reading; null where its numbers are too large to work with. A journal holds
    /// what it holds, and its pages are shown all the same.</summary>
    public static Estimate? EstimateOf(Reading reading, Evaluation? evaluation = null)
    {
        try
        {
            return Estimate.Of(reading, evaluation);
        }
        catch (ArgumentException)
        {
            return null;
        }
    }

    private static double AsRead(Reading reading) => reading switch
    {
        DisplayedReading { Values: [var first, ..] } => first,
        Bracket bracket => bracket.Goes,
        _ => 0,
    };

    /// <summary>What was corrected between reading and result, in a sentence: "As read 8.62 kΩ at 60 °C ± 5 °C; referred
    /// to 20 °C."; null where nothing was.</summary>
    public static string? Correction(ReadingDecided reading, Check check)
    {
        if (reading.Reading is not DisplayedReading { Values: var values } displayed
            || displayed is { Leads: null, Winding: null, Correction: null, Ambient: null })
        {
            return null;
        }

        var unit = UnitOf(reading, check);
        var asRead = $"As read {Printed.Value(Sample.Of(values).Mean, unit)}{InstrumentWords.InReading(displayed, unit)}";
        var leads = displayed.Leads is { } own ? $", less {Printed.Value(Sample.Of(own.Values).Mean, Units.Ohm)} for the test leads" : "";
        var winding = displayed.Winding is { } at
            ? $", at {Printed.Value(at.At, Units.Celsius)} ± {Printed.Value(at.HalfWidth, Units.Celsius)}; referred to {Printed.Value(at.To, Units.Celsius)} as copper"
            : "";
        var zero = NewReading.IsAsGoodAsZero(unit.Kind, BestEstimate(reading))
            ? " Below zero by no more than it may be off: as good as 0."
            : "";
        return $"{asRead}{leads}{winding}.{zero}";
    }

    /// <summary>What a reading by itself says of its place.</summary>
    public static PlaceOutcome OutcomeOf(ReadingDecided reading) =>
        reading.Conformity?.Decision.Outcome() ?? PlaceOutcome.Recorded;

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

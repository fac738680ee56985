using InspectLog.App.Bench;
using InspectLog.Checks;
using InspectLog.Inspecting.Words;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;

namespace InspectLog.App.Ui.Drawings;

/// <summary>Gathers what a reading strip shows from what the journal and the sheet hold.</summary>
public static class Strips
{
    /// <summary>The facts of a strip, in the measurand's display unit.</summary>
    /// <param name="measurand">What is measured.</param>
    /// <param name="limits">Limits in force; null where there are none. Those of a reading decided with another are told in
    /// its own terms.</param>
    /// <param name="reading">The reading; null before one is taken.</param>
    /// <param name="previous">An earlier inspection's reading; null where there is none.</param>
    public static StripFacts Of(
        Measurand measurand, LimitsInForce? limits, ReadingDecided? reading, ReadingDecided? previous)
    {
        var unit = measurand.DisplayUnit;
        double? In(double? baseValue) => baseValue is { } value ? unit.FromBase(value) : null;
        var own = reading is null ? null : OwnScale.Of(reading);
        limits = own?.Limits ?? limits;
        var facts = new StripFacts(
            In(limits?.Lower),
            In(limits?.Upper),
            null,
            reading is null ? null
                : own is { } scaled && reading.Reading is DisplayedReading
                ? new StripReading.Known(unit.FromBase(scaled.Value), InUnit(scaled.Shape, unit))
                : ReadingIn(unit, reading.Reading, own is null ? reading.Conformity : null),
            In(previous is null ? null : RecordWords.BestEstimate(previous)),
            unit.Symbol);

        // The sheet's nominal belongs to the sheet's limits; a vehicle's own limits may leave it behind.
        return In(measurand.Nominal) is { } nominal && facts.Allows(nominal) ? facts with { Nominal = nominal } : facts;
    }

    /// <summary>The facts of a strip for a decision that is only previewed.</summary>
    public static StripFacts Preview(Measurand measurand, LimitsInForce? limits, Reading reading, Conformity? conformity) =>
        Of(measurand, limits, null, null) with { Reading = ReadingIn(measurand.DisplayUnit, reading, conformity) };

    /// <summary>Writes the numbers of a strip; two limits to the same place, as they are written in a sentence.</summary>
    public static Func<double, string> Labels(Measurand measurand, LimitsInForce? limits)
    {
        var unit = measurand.DisplayUnit;
        return value =>
        {
            var baseValue = unit.ToBase(value);
            if (limits is { Lower: { } lower, Upper: { } upper })
            {
                var ends = Printed.Span(lower, upper, unit).Split(" to ");
                return value == unit.FromBase(upper) ? ends[1]
                    : value == unit.FromBase(lower) ? $"{ends[0]}{(unit.Symbol == "°" ? "" : "\u00a0")}{unit.Symbol}"
                    : Printed.Value(baseValue, unit);
            }

            return Printed.Value(baseValue, unit);
        };
    }

    private static StripReading ReadingIn(Unit unit, Reading reading, Conformity? conformity) => reading switch
    {
        Bracket bracket => new StripReading.Box(unit.FromBase(bracket.Goes), unit.FromBase(bracket.Stops)),
        _ => new StripReading.Known(
            unit.FromBase(conformity?.Value ?? RecordWords.EstimateOf(reading)?.Value ?? 0),
            conformity is null ? null : InUnit(DensityCurve.Of(conformity.Distribution()), unit)),
    };

    private static DensityCurve? InUnit(DensityCurve? shape, Unit unit) => shape?.Times(unit.DifferenceFromBase(1));
}

using InspectLog.Checks;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;

namespace InspectLog.Inspecting.Recording;

/// <summary>Decides a recorded reading with another or by itself. Pure.</summary>
internal static class Deciding
{
    /// <summary>Whether something can be compared with a reading: nothing is in proportion to nought or less.</summary>
    public static bool Fits(ComparisonForm form, Reading other) => Value(other) is { } value && (form != ComparisonForm.Proportion || value > 0);

    /// <summary>A reading decided with another; null where the two give no figure.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="other">The other.</param>
    /// <param name="record">Sequence of the other's first entry.</param>
    /// <param name="check">The reading's check, which is compared.</param>
    /// <param name="sheet">The sheet, with the rule and the coverage it is decided by.</param>
    /// <param name="kept">Limits to keep to; null for those of the sheet.</param>
    public static ReadingDecided? With(
        ReadingDecided reading, ReadingDecided other, long record, Check check, CheckSheet sheet, LimitsInForce? kept)
    {
        var by = check.Measurand!.DecidedBy!;
        var with = new DecidedWith(by.Form, other.Check, record, other.Reading, IsOneInstrument(reading, other));
        var limits = kept ?? new LimitsInForce(by.Limits.Lower, by.Limits.Upper, by.LimitSource, sheet.Rule.Id);
        try
        {
            var figure = Compared.Of(with.Form, reading.Reading, with.Reading, with.SameInstrument, sheet.Evaluation);
            return reading with
            {
                With = with,
                Limits = limits,
                Conformity = ConformityRule.Decide(figure, Limits.Of(limits.Lower, limits.Upper), sheet.Rule),
            };
        }
        catch (ArgumentException)
        {
            return null; // Each can be used by itself, but the two are too far apart to be put together.
        }
    }

    /// <summary>A reading decided by itself, with the reason why no other decides it.</summary>
    public static ReadingDecided ByItself(ReadingDecided reading, Check check, CheckSheet sheet)
    {
        var limits = LimitsFor.WithoutOther(check, sheet.Rule);
        return reading with
        {
            With = null,
            Limits = limits,
            Conformity = limits is null
                ? null
                : ConformityRule.Decide(
                    Estimate.Of(reading.Reading, sheet.Evaluation), Limits.Of(limits.Lower, limits.Upper), sheet.Rule),
        };
    }

    // Nothing says that two readings with an assumed meter were taken with one and the same, and the blades of a set have no
    // error in common.
    private static bool IsOneInstrument(ReadingDecided reading, ReadingDecided other) =>
        (reading, other) is ({ Reading: DisplayedReading, Instrument: { } one }, { Reading: DisplayedReading, Instrument: { } two })
        && one.Id == two.Id && !one.Id.StartsWith("assumed-", StringComparison.Ordinal);

    private static double? Value(Reading reading) => Words.RecordWords.EstimateOf(reading)?.Value;
}

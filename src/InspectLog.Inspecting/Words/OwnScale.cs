using InspectLog.Checks;
using InspectLog.Inspecting.Recording;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;

namespace InspectLog.Inspecting.Words;

/// <summary>A reading decided with another, told in terms of the reading itself, so that it can be drawn among the others of
/// its check: "at most 0.5 V below 12.8 V" is at least 12.3 V. The chance that it is within is the same.</summary>
/// <param name="Limits">The limits, base unit of the reading.</param>
/// <param name="Value">The reading's best estimate, base unit.</param>
/// <param name="Shape">What is known of where it lies against the limits, base unit of the reading; null for nothing.</param>
public sealed record OwnScale(LimitsInForce Limits, double Value, DensityCurve? Shape)
{
    /// <summary>The reading on its own scale; null for one that was decided by itself.</summary>
    public static OwnScale? Of(ReadingDecided reading)
    {
        if (reading is not { With: { } with, Limits: { } limits, Conformity: { } conformity }
            || RecordWords.EstimateOf(with.Reading) is not { } other
            || RecordWords.EstimateOf(reading.Reading) is not { } own)
        {
            return null;
        }

        var moved = Comparison.For(with.Form, Measuring.Limits.Of(limits.Lower, limits.Upper), other.Value);
        var size = with.Form == ComparisonForm.Proportion ? other.Value : 1;
        return new(
            limits with { Lower = moved.Lower, Upper = moved.Upper }, own.Value, DensityCurve.Of(conformity.Distribution())?.Times(size));
    }

    /// <summary>The limits in force for a reading, or for the one to be taken, in terms of it; null when there are none.</summary>
    /// <param name="scene">The inspection.</param>
    /// <param name="check">The check.</param>
    /// <param name="cylinder">The place.</param>
    /// <param name="reading">What was read there; null before.</param>
    public static LimitsInForce? LimitsFor(BenchScene scene, Check check, int? cylinder, ReadingDecided? reading) =>
        reading is { With: { } with } && Of(reading) is { } own && check.Measurand is { DecidedBy: { } by } measurand
            ? own.Limits with { Source = $"{ComparedWords.Why(by, measurand.DisplayUnit, with.Reading)} {own.Limits.Source}" }
            : Inspecting.LimitsFor.At(scene, check, cylinder);
}

using System.Globalization;
using InspectLog.Checks.Derived;
using InspectLog.Inspecting.Words;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;

namespace InspectLog.Inspecting.Workings;

/// <summary>The uncertainty that figures inherit from the readings they are worked out from (JCGM 100:2008, 5.1 and 5.2):
/// each reading is moved a little, and what that moves is seen. Readings of one instrument have its error in percent in
/// common. The ± is that of the inspection's coverage.</summary>
public static class WorkedUncertainty
{
    /// <summary>The parts of a working, their results with uncertainty where a reading with one went in. A value that was
    /// typed by hand is taken as exact.</summary>
    /// <param name="working">The working.</param>
    /// <param name="fields">Its fields, as filled in or typed.</param>
    /// <param name="scene">The inspection.</param>
    /// <exception cref="ArgumentException">Something typed is wrong; the message says what.</exception>
    public static IReadOnlyList<WorkedPart> Work(WorkingKind working, IReadOnlyList<WorkingField> fields, BenchScene scene)
    {
        var parts = working.Work(new WorkingInputs(fields), scene);
        var uncertain = fields.Where(field => field.IsAsRead).Select(Uncertain.Of).OfType<Uncertain>().ToList();
        if (uncertain.Count == 0)
        {
            return parts;
        }

        double Result(double[] values, int part, int step)
        {
            var moved = fields.Select(field => uncertain.FindIndex(one => one.Field == field) is >= 0 and var at
                ? field with { Value = values[at].ToString("R", CultureInfo.InvariantCulture) }
                : field);
            return working.Work(new WorkingInputs([.. moved]), scene)[part].Steps[step].Result.Value;
        }

        return
        [
            .. parts.Select((part, at) => part with
            {
                Steps = [.. part.Steps.Select((step, number) => step with
                {
                    Result = step.Result with { Expanded = Expanded(values => Result(values, at, number), uncertain, scene.Sheet.Evaluation) },
                })],
            }),
        ];
    }

    // Null where the readings do not move the figure, or where it jumps near them.
    private static double? Expanded(Func<double[], double> figure, List<Uncertain> readings, Evaluation evaluation)
    {
        try
        {
            var estimate = Measuring.Derived.Of(
                figure, [.. readings.Select(reading => reading.Input)], (one, other) => readings[one].CorrelationWith(readings[other]),
                evaluation);
            return estimate.ExpandedUncertainty > 0 ? estimate.ExpandedUncertainty : null;
        }
        catch (Exception problem) when (problem is ArgumentException or ArgumentOutOfRangeException)
        {
            return null;
        }
    }

    // A field with the reading that filled it in, in the field's unit.
    private sealed record Uncertain(WorkingField Field, Input Input, string? Instrument, double Gain)
    {
        internal static Uncertain? Of(WorkingField field)
        {
            var (reading, unit) = field.Read!.Value;
            if (RecordWords.EstimateOf(reading.Reading, RecordWords.EvaluationOf(reading)) is not { StandardUncertainty: > 0 } estimate)
            {
                return null;
            }

            var gain = reading.Reading is DisplayedReading displayed
                ? Budget.Rectangular(displayed.Accuracy.PercentOfReading / 100) * estimate.Value
                : 0;
            return new(
                field,
                new(field.Label, unit.FromBase(estimate.Value), unit.DifferenceFromBase(estimate.StandardUncertainty), estimate.DegreesOfFreedom),
                reading.Instrument?.Id,
                gain / estimate.StandardUncertainty);
        }

        internal double CorrelationWith(Uncertain other) =>
            Instrument is not null && Instrument == other.Instrument ? Gain * other.Gain : 0;
    }
}

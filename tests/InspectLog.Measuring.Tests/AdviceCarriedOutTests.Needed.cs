namespace InspectLog.Measuring.Tests;

/// <content>What is needed for a clear answer.</content>
public partial class AdviceCarriedOutTests
{
    private static string? AccuracyNeeded(SomeBudget budget, Advice advice, double now)
    {
        // Of nothing, no share in percent takes off what the leads have in percent.
        if (budget.Reading is DisplayedReading { Leads.SameInstrument: true } zero && zero.Values.Average() == 0)
        {
            return null;
        }

        if (advice.AccuracyNeeded is not { } halfWidth || budget.Reading is not DisplayedReading reading)
        {
            return advice.AccuracyNeeded is null && budget.Reading is DisplayedReading displayed
                && With(displayed, 0) <= advice.UncertaintyNeeded * (1 - Same)
                    ? $"no accuracy is said to do, but ±0 gives {With(displayed, 0):R} where {advice.UncertaintyNeeded:R} is needed"
                    : null;
        }

        var (enough, tooMuch) = (With(reading, halfWidth), With(reading, 1.01 * halfWidth));
        return enough > advice.UncertaintyNeeded * (1 + Same)
                ? $"with the accuracy ±{halfWidth:R} U is {enough:R}, and {advice.UncertaintyNeeded:R} is needed"
            : tooMuch <= advice.UncertaintyNeeded
                ? $"with 1.01 times the accuracy ±{halfWidth:R} U is {tooMuch:R}, and {advice.UncertaintyNeeded:R} would do"
            : null;

        double With(DisplayedReading of, double accuracy) =>
            Estimate.Of(WithAccuracy(of, accuracy), budget.Evaluation).ExpandedUncertainty;
    }

    // A meter whose error at this value is that, and whose share in percent is the one the leads have taken off.
    private static DisplayedReading WithAccuracy(DisplayedReading reading, double halfWidth)
    {
        var percent = reading.Leads is { SameInstrument: true } leads
            ? leads.Accuracy.PercentOfReading * leads.Values.Average() / reading.Values.Average()
            : 0;
        return reading with { Accuracy = new(percent, halfWidth / reading.Resolution) };
    }

    private static string? ReadingsNeeded(SomeBudget budget, Advice advice, double now)
    {
        if (budget.Reading is not DisplayedReading reading)
        {
            return advice.ReadingsNeeded is null ? null : "readings are needed of a bracket";
        }

        var known = reading.Values.Count > 1 || reading.Scatter is not null;
        if (advice.ReadingsNeeded is not { } count)
        {
            return known && Enumerable.Range(reading.Values.Count, 1 + MostReadings - reading.Values.Count)
                .Any(number => With(number) <= advice.UncertaintyNeeded * (1 - Same))
                    ? "no number of readings is said to do, but one does"
                    : null;
        }

        return count < reading.Values.Count || count > MostReadings ? $"{count} readings are needed"
            : With(count) > advice.UncertaintyNeeded * (1 + Same)
                ? $"{count} readings give {With(count):R}, and {advice.UncertaintyNeeded:R} is needed"
            : count > reading.Values.Count && With(count - 1) <= advice.UncertaintyNeeded * (1 - Same)
                ? $"{count - 1} readings would do"
            : null;

        double With(int number) => number == reading.Values.Count
            ? now
            : Estimate.Of(WithReadings(reading, number), budget.Evaluation).ExpandedUncertainty;
    }
}

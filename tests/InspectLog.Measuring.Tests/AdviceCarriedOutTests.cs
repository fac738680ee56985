using System.Text.RegularExpressions;

namespace InspectLog.Measuring.Tests;

/// <summary>Advice does what it says: each thing advised is done as its words say, and the uncertainty is what was
/// promised. Twenty thousand readings drawn by chance, through what the room offers to others alone.</summary>
public partial class AdviceCarriedOutTests(AdviceGiven given) : IClassFixture<AdviceGiven>
{
    private const double Same = 1e-6;
    private const int MostReadings = 30;

    [Fact]
    [Trait("Takes", "long")]
    public void What_is_promised_comes_true() => given.Holds(Promises);

    [Fact]
    [Trait("Takes", "long")]
    public void Accuracy_needed_is_just_enough() => given.Holds(AccuracyNeeded);

    [Fact]
    [Trait("Takes", "long")]
    public void Readings_needed_are_just_enough() => given.Holds(ReadingsNeeded);

    private static string? Promises(SomeBudget budget, Advice advice, double now)
    {
        var before = 0.0;
        foreach (var improvement in advice.Improvements)
        {
            var found = Estimate.Of(Done(improvement.Action, budget), budget.Evaluation).ExpandedUncertainty;
            var promised = improvement.ExpandedUncertainty;
            if (Math.Abs(found - promised) > Same * promised)
            {
                return $"\"{improvement.Action}\" promises {promised:R} and brings {found:R}";
            }

            if (promised >= now || promised < before * (1 - Same))
            {
                return $"\"{improvement.Action}\" promises {promised:R}, after {before:R}, where there is {now:R}";
            }

            before = promised;
        }

        return null;
    }

    private static Reading Done(string action, SomeBudget budget)
    {
        if (budget.Reading is Bracket bracket)
        {
            Assert.Equal("use gauges half as far apart", action);
            var quarter = (bracket.Stops - bracket.Goes) / 4;
            return FeelerBlades.Bracket(Moved(budget.Goes, quarter), Moved(budget.Stops, -quarter));
        }

        var reading = Assert.IsType<DisplayedReading>(budget.Reading);
        return action switch
        {
            "null the test leads" => Nulled(reading),
            "measure the winding's temperature to ±1 °C" => reading with { Winding = reading.Winding! with { HalfWidth = 1 } },
            _ when TakeReadings().Match(action) is { Success: true } match =>
                WithReadings(reading, int.Parse(match.Groups[1].ValueSpan, System.Globalization.CultureInfo.InvariantCulture)),
            _ => OnRange(reading, Assert.Single(budget.Instrument!.Ranges!, range => action == $"use the {range.Name} range")),
        };
    }

    // One blade more or less than before: the last one of the stack, with the tolerance it had.
    private static Blade[] Moved(Blade[] stack, double by) => [.. stack[..^1], stack[^1] with { Size = stack[^1].Size + by }];

    private static DisplayedReading Nulled(DisplayedReading reading)
    {
        var leads = reading.Leads?.Values.Average() ?? 0;
        return reading with
        {
            Values = [.. reading.Values.Select(value => value - leads)],
            Leads = null,
            Allowances =
            [
                .. (reading.Allowances ?? []).Where(allowance => allowance.Source != AllowanceSource.TestLeads),
                new(AllowanceSource.Zeroing, reading.Resolution / 2),
            ],
        };
    }

    private static DisplayedReading OnRange(DisplayedReading reading, MeterRange range)
    {
        var value = reading.Values.Average();
        Assert.True(
            range.Resolution <= reading.Resolution
                || range.Accuracy.HalfWidth(value, range.Resolution) < reading.Accuracy.HalfWidth(value, reading.Resolution),
            $"the range {range.Name} is coarser and no more accurate");
        Assert.True(reading.Values.Max() <= range.FullScale, $"the range {range.Name} does not show the value");
        return reading with
        {
            Accuracy = range.Accuracy,
            Resolution = range.Resolution,
            Leads = reading.Leads is { SameInstrument: true } leads
                ? leads with { Accuracy = range.Accuracy, Resolution = range.Resolution }
                : reading.Leads,
        };
    }

    // The same mean and the same scatter: one reading to either side, the others in the middle.
    private static DisplayedReading WithReadings(DisplayedReading reading, int count)
    {
        Assert.InRange(count, reading.Values.Count, MostReadings);
        var sample = Sample.Of(reading.Values);
        var scatter = sample.Count > 1 ? sample.StandardDeviation : reading.Scatter!.StandardDeviation;
        var aside = scatter * Math.Sqrt((count - 1) / 2.0);
        return count == sample.Count ? reading : reading with
        {
            Values = [sample.Mean - aside, sample.Mean + aside, .. Enumerable.Repeat(sample.Mean, count - 2)],
        };
    }

    [GeneratedRegex("^take ([0-9]+) readings in all$")]
    private static partial Regex TakeReadings();
}

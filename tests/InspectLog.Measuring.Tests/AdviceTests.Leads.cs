namespace InspectLog.Measuring.Tests;

/// <content>Advice on leads, temperatures and gauges, and where nothing helps.</content>
public partial class AdviceTests
{
    [Fact]
    public void Leads_are_advised_on_once()
    {
        var reading = Some.Reading([1.93], 0.5, 3, 0.01) with
        {
            Leads = new([0.20], new(0.5, 3), 0.01, true),
            Allowances = [new(AllowanceSource.TestLeads, 0.2)],
        };

        Assert.Single(
            Advice.For(reading, Limits.Of(0.6, 1.76)).Improvements, improvement => improvement.Action == "null the test leads");
    }

    [Fact]
    public void Other_allowances_are_no_reason_to_null_the_leads() =>
        Assert.Empty(Advice.For(
            Some.Reading([1.93], 0.5, 3, 0.01) with { Allowances = [new(AllowanceSource.Operator, 0.2)] },
            Limits.Of(0.6, 2)).Improvements);

    [Fact]
    public void Clear_answer_needs_no_more_readings_than_it_has() =>
        Assert.Equal(1, Advice.For(Some.With(1.3, 0.05), Limits.Of(0.6, 2.0)).ReadingsNeeded);

    [Fact]
    public void Value_on_the_limit_is_made_clear_by_nothing()
    {
        var advice = Advice.For(Some.Reading([2.0, 2.01, 1.99], 0.1, 0, 0.01), Limits.Of(0.6, 2.0));

        Assert.Equal(0, advice.UncertaintyNeeded, 1e-12);
        Assert.Null(advice.ReadingsNeeded);
        Assert.Null(advice.AccuracyNeeded);
    }

    [Fact]
    public void Leads_and_winding_temperature_are_advised_on_best_first()
    {
        var reading = Some.Reading([1.88], 0.5, 1, 0.01) with
        {
            Allowances = [new(AllowanceSource.TestLeads, 0.2), new(AllowanceSource.Operator, 0.01)],
            Winding = new(30, 20, 10),
        };
        var advice = Advice.For(reading, Limits.Of(0.6, 2.0));

        Assert.Equal(
            ["null the test leads", "measure the winding's temperature to ±1 °C"],
            advice.Improvements.Select(improvement => improvement.Action));
        Assert.True(advice.Improvements[0].ExpandedUncertainty < advice.Improvements[1].ExpandedUncertainty);
        Close.ToDigits(
            Estimate.Of(reading with
            {
                Allowances = [new(AllowanceSource.Operator, 0.01), new(AllowanceSource.Zeroing, 0.005)],
            }).ExpandedUncertainty,
            advice.Improvements[0].ExpandedUncertainty,
            12);
    }

    [Fact]
    public void Leads_that_were_subtracted_are_better_nulled()
    {
        var reading = Some.Reading([1.93], 0.5, 3, 0.01) with { Leads = new([0.20, 0.22], new(0.5, 3), 0.01, true) };
        var advice = Advice.For(reading, Limits.Of(0.6, 1.76));

        var best = advice.Improvements[0];
        Assert.Equal("null the test leads", best.Action);
        // What zeroing the meter leaves: half a step.
        var nulled = Some.Reading([1.72], 0.5, 3, 0.01) with { Allowances = [new(AllowanceSource.Zeroing, 0.005)] };
        Close.ToDigits(Estimate.Of(nulled).ExpandedUncertainty, best.ExpandedUncertainty, 9);
        Assert.True(best.Settles(advice));
        Assert.True((best with { ExpandedUncertainty = advice.UncertaintyNeeded }).Settles(advice));
    }

    [Fact]
    public void Value_with_its_uncertainty_alone_is_told_what_it_needs()
    {
        var advice = Advice.For(Estimate.Known(0.65, 0.05), Limits.Of(0.6, 2.0));

        Close.ToDigits(0.05, advice.UncertaintyNeeded, 12);
        Assert.Empty(advice.Improvements);
        Assert.Null(advice.ReadingsNeeded);
        Assert.Null(advice.AccuracyNeeded);
    }

    [Fact]
    public void Bracket_is_told_how_close_the_gauges_must_be()
    {
        var advice = Advice.For(new Bracket(0.25, 0.35), Limits.Of(0.2, 0.33));

        Close.ToDigits(0.03, advice.UncertaintyNeeded, 12);
        Assert.Null(advice.AccuracyNeeded);
        Assert.Equal(["use gauges half as far apart"], advice.Improvements.Select(i => i.Action));
        Close.ToDigits(0.025 * Coverage.Probability, advice.Improvements[0].ExpandedUncertainty, 12);
    }
}

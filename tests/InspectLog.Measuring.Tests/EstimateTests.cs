namespace InspectLog.Measuring.Tests;

public class EstimateTests
{
    private static double Part(Estimate estimate, string name) =>
        estimate.Contributions.Single(contribution => contribution.Name == name).StandardUncertainty;

    [Fact]
    public void Leads_read_with_the_same_instrument_take_its_common_error_out()
    {
        var reading = Some.Reading([1.50], 0.9, 2, 0.01) with { Leads = new([0.30], new(0.9, 2), 0.01, true) };
        var estimate = Estimate.Of(reading);

        Close.ToDigits(1.20, estimate.Value, 14);
        // 0.9 % of 1.50 and of 0.30 differ by 0.0108; the counts are in both and go out.
        Close.ToDigits(0.0108 / Math.Sqrt(3), Part(estimate, "instrument accuracy"), 12);
        Close.ToDigits(0.005 / Math.Sqrt(3), Part(estimate, "display step of the test-lead reading"), 12);
        Assert.Equal(3, estimate.Contributions.Count);
    }

    [Fact]
    public void Leads_read_with_another_instrument_add_its_error()
    {
        var reading = Some.Reading([1.50], 0.9, 2, 0.01) with
        {
            Leads = new([0.30, 0.32, 0.31], new(0.5, 1), 0.01, false),
        };
        var estimate = Estimate.Of(reading);

        Close.ToDigits(1.19, estimate.Value, 13);
        Close.ToDigits(0.0335 / Math.Sqrt(3), Part(estimate, "instrument accuracy"), 12);
        Close.ToDigits(0.01155 / Math.Sqrt(3), Part(estimate, "accuracy of the test-lead reading"), 12);
        Close.ToDigits(0.01 / Math.Sqrt(3), Part(estimate, "spread of the test-lead readings"), 12);
        Assert.Equal(5, estimate.Contributions.Count);
    }

    // GUM 4.3.7 and 4.3.9 (M): ±4 °C gives 2.3 °C rectangular and 1.6 °C triangular; 4.3.3: k = 2 halves.
    [Theory]
    [InlineData(AllowanceShape.Even, 2.309401)]
    [InlineData(AllowanceShape.Triangular, 1.632993)]
    [InlineData(AllowanceShape.TwoStandardDeviations, 2)]
    public void Allowances_become_standard_uncertainties(AllowanceShape shape, double u)
    {
        var estimate = Estimate.Of(Some.With(50, 0) with { Allowances = [new(AllowanceSource.Method, 4, shape)] });

        Close.ToDecimals(u, Part(estimate, "method"), 6);
    }

    [Theory]
    [InlineData(AllowanceSource.Method, "method")]
    [InlineData(AllowanceSource.Operator, "operator")]
    [InlineData(AllowanceSource.TestLeads, "test leads not subtracted")]
    [InlineData(AllowanceSource.Temperature, "temperature")]
    [InlineData(AllowanceSource.Reference, "reference it was checked against")]
    public void Allowances_have_their_names(AllowanceSource source, string name) =>
        Assert.Contains(
            Estimate.Of(Some.With(50, 0) with { Allowances = [new(source, 1)] }).Contributions, c => c.Name == name);

    [Fact]
    public void Allowances_that_make_no_sense_are_refused()
    {
        Assert.Throws<ArgumentException>(() => Of(new(AllowanceSource.Method, -1)));
        Assert.Throws<ArgumentException>(() => Of(new(AllowanceSource.Method, double.NaN)));
        Assert.Throws<ArgumentException>(() => Of(new((AllowanceSource)99, 1)));
        Assert.Throws<ArgumentException>(() => Of(new(AllowanceSource.Method, 1, (AllowanceShape)99)));

        static Estimate Of(Allowance allowance) => Estimate.Of(Some.With(1, 0.1) with { Allowances = [allowance] });
    }

    [Fact]
    public void Leads_that_make_no_sense_are_refused()
    {
        Assert.Throws<ArgumentException>(() => Of(new([], new(1, 1), 0.1, true)));
        Assert.Throws<ArgumentException>(() => Of(new([0.1], new(1, 1), 0, true)));
        Assert.Throws<ArgumentException>(() => Of(new([0.1], new(-1, 1), 0.1, true)));

        static Estimate Of(TestLeads leads) => Estimate.Of(Some.With(1, 0.1) with { Leads = leads });
    }

    [Fact]
    public void Budget_table_says_what_each_line_is_worth()
    {
        // 0.3 and 0.4 make 0.5: shares 36 % and 64 %.
        var reading = Some.With(10, 0.3) with
        {
            Allowances = [new(AllowanceSource.Operator, 0.8, AllowanceShape.TwoStandardDeviations)],
        };
        var lines = BudgetTable.Of(Estimate.Of(reading));

        Assert.Equal(["operator", "instrument accuracy", "display step"], lines.Select(line => line.Contribution.Name));
        Assert.Equal([0.64, 0.36, 0], lines.Select(line => Math.Round(line.Share, 9)));
        Assert.Equal([0.6, 0.8, 1.0], lines.Select(line => Math.Round(line.ExpandedWithout, 9)));
    }

    [Fact]
    public void Budget_table_of_nothing_has_no_shares() =>
        Assert.All(
            BudgetTable.Of(Estimate.Of(Some.Reading([1], 0, 0, double.Epsilon))), line => Assert.Equal(0, line.Share));

    [Fact]
    public void Budget_table_of_a_bracket_says_what_its_blades_are_worth()
    {
        var lines = BudgetTable.Of(Estimate.Of(FeelerBlades.Bracket([new(0.30, 0.005)], [new(0.35, 0.005)])));

        Assert.Equal(["gap between the gauges", "size of the gauges"], lines.Select(line => line.Contribution.Name));
        Assert.Equal(1, lines.Sum(line => line.Share), 1e-12);
        Close.ToDigits(0.025 * Coverage.Probability, lines[1].ExpandedWithout, 12);
    }

    // JCGM 106:2012, 7.5 (M): T = 0.6, u = 0.05 gives C_m = 3.0.
    [Fact]
    public void Capability_index_agrees_with_JCGM_106()
    {
        var estimate = Estimate.Of(Some.With(1, 0.05));

        Close.ToDigits(3.0, estimate.CapabilityIndex(Limits.Of(0.6, 1.2)).GetValueOrDefault(), 12);
        Assert.Null(estimate.CapabilityIndex(Limits.Of(0.6, null)));
    }
}

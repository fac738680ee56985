using CsCheck;

namespace InspectLog.Measuring.Tests;

public partial class EstimateTests
{
    private static double Part(Estimate estimate, string name) =>
        estimate.Contributions.Single(contribution => contribution.Name == name).StandardUncertainty;

    // The model, by hand: the error in percent is one and the same in both readings (JCGM 100:2008, 5.2.2), so 0.9 % of
    // the difference is left of it; the two counts are there each time.
    [Fact]
    public void Leads_read_with_the_same_instrument_take_its_common_error_out()
    {
        var reading = Some.Reading([1.50], 0.9, 2, 0.01) with { Leads = new([0.30], new(0.9, 2), 0.01, true) };
        var estimate = Estimate.Of(reading);

        Close.ToDigits(1.20, estimate.Value, 14);
        Close.ToDigits(((0.009 * 1.20) + 0.02) / Math.Sqrt(3), Part(estimate, "instrument accuracy"), 12);
        Close.ToDigits(0.02 / Math.Sqrt(3), Part(estimate, "counts of the test-lead reading"), 12);
        Close.ToDigits(0.005 / Math.Sqrt(3), Part(estimate, "display step of the test-lead reading"), 12);
        Assert.Equal(4, estimate.Contributions.Count);
    }

    // JCGM 100:2008, 5.2.2: what is common to two readings goes out of their difference. In proportion only, the error
    // of a difference is that of a single reading of it; with another instrument both errors stay.
    [Fact]
    public void Error_in_proportion_is_that_of_the_difference()
    {
        var leads = new TestLeads([40], new(1, 0), 1e-9, true);
        var nulled = Estimate.Of(Some.Reading([60], 1, 0, 1e-9));
        var same = Estimate.Of(Some.Reading([100], 1, 0, 1e-9) with { Leads = leads });
        var other = Estimate.Of(Some.Reading([100], 1, 0, 1e-9) with { Leads = leads with { SameInstrument = false } });

        Close.ToDigits(nulled.StandardUncertainty, same.StandardUncertainty, 9);
        Close.ToDigits(double.Hypot(1, 0.4) / Math.Sqrt(3), other.StandardUncertainty, 9);
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
        Refused("An allowance must be 0 or more", new(AllowanceSource.Method, -1));
        Refused("An allowance must be 0 or more", new(AllowanceSource.Method, double.NaN));
        Refused("The source of an allowance", new((AllowanceSource)99, 1));
        Refused("The shape of an allowance", new(AllowanceSource.Method, 1, (AllowanceShape)99));
        Assert.Equal(0, Part(Of(new(AllowanceSource.Method, 0)), "method"));

        static void Refused(string reason, Allowance allowance) => Assert.Contains(
            reason, Assert.Throws<ArgumentException>(() => Of(allowance)).Message, StringComparison.Ordinal);

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
        var reading = Some.Reading([10], 0, 0, 1e-12) with
        {
            Allowances =
            [
                new(AllowanceSource.Method, 0.6, AllowanceShape.TwoStandardDeviations),
                new(AllowanceSource.Operator, 0.8, AllowanceShape.TwoStandardDeviations),
            ],
        };
        var lines = BudgetTable.Of(Estimate.Of(reading)).SkipLast(2).ToList();

        Assert.Equal(["operator", "method"], lines.Select(line => line.Contribution.Name));
        Assert.Equal([0.64, 0.36], lines.Select(line => Math.Round(line.Share, 9)));
        Assert.Equal([0.6, 0.8], lines.Select(line => Math.Round(line.ExpandedWithout, 9)));
    }

    // JCGM 100:2008, 5.1.3: y = (V − L)·(K + 20)/(K + 35), by hand: ∂y/∂V = 255/270, ∂y/∂L its opposite, and
    // ∂y/∂t = −y/270.
    [Fact]
    public void Budget_table_of_a_reading_has_sensitivities()
    {
        var reading = Some.Reading([1.80, 1.82], 0.8, 3, 0.01) with
        {
            Leads = new([0.22, 0.24], new(0.8, 3), 0.01, true),
            Winding = new(35, 20, 5),
        };
        var estimate = Estimate.Of(reading);
        var lines = BudgetTable.Of(reading).ToDictionary(line => line.Contribution.Name);

        Assert.Equal(7, lines.Count);
        Close.ToDigits(255.0 / 270, lines["instrument accuracy"].Sensitivity, 14);
        Close.ToDigits(255.0 / 270, lines["spread of the repeats"].Sensitivity, 14);
        Close.ToDigits(-255.0 / 270, lines["counts of the test-lead reading"].Sensitivity, 14);
        Close.ToDigits(-255.0 / 270, lines["spread of the test-lead readings"].Sensitivity, 14);
        Close.ToDigits(-255.0 / 270, lines["display step of the test-lead reading"].Sensitivity, 14);
        Close.ToDigits(-estimate.Value / 270, lines["winding temperature"].Sensitivity, 14);
        Close.ToDigits(5 / Math.Sqrt(3), lines["winding temperature"].InputUncertainty, 14);
        Close.ToDigits(0.01, lines["spread of the repeats"].InputUncertainty, 10);
        Assert.All(lines.Values, line => Close.ToDigits(
            line.Contribution.StandardUncertainty, Math.Abs(line.Sensitivity) * line.InputUncertainty, 12));
        Assert.Equal(
            ["spread of the repeats", "spread of the test-lead readings"],
            lines.Values.Where(line => line.IsTypeA).Select(line => line.Contribution.Name).Order());
        Close.ToDigits(
            estimate.StandardUncertainty,
            Math.Sqrt(lines.Values.Sum(line => Math.Pow(line.Contribution.StandardUncertainty, 2))),
            12);
    }

    [Fact]
    public void Budget_table_of_a_plain_reading_has_sensitivities_of_one() =>
        Assert.All(BudgetTable.Of(Some.Reading([1.8], 0.8, 3, 0.01)), line =>
        {
            Assert.Equal(1, line.Sensitivity);
            Assert.Equal(line.Contribution.StandardUncertainty, line.InputUncertainty);
            Assert.False(line.IsTypeA);
        });
}

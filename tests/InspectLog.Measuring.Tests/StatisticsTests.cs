namespace InspectLog.Measuring.Tests;

public class StatisticsTests
{
    // Certified values of the StRD univariate sets.
    public static TheoryData<string, double[], double, double, int> Certified => new()
    {
        { "Michelso", NistData.Michelso, 299.852400000000, 0.0790105478190518, 11 },
        { "Mavro", NistData.Mavro, 2.00185600000000, 0.000429123454003053, 11 },
        { "Lew", NistData.Lew, -177.435000000000, 277.332168044316, 14 },
        { "Lottery", NistData.Lottery, 518.958715596330, 291.699727470969, 14 },
        { "NumAcc1", [10000001, 10000003, 10000002], 10000002, 1, 15 },
        { "NumAcc2", Alternating(1.2, 1.1, 1.3), 1.2, 0.1, 13 },
        { "NumAcc3", Alternating(1000000.2, 1000000.1, 1000000.3), 1000000.2, 0.1, 14 },
        // As doubles these are rounded so that no binary arithmetic comes closer to 0.1 than 5.6e-9.
        { "NumAcc4", Alternating(10000000.2, 10000000.1, 10000000.3), 10000000.2, 0.1, 14 },
    };

    private static double[] Alternating(double first, double odd, double even) =>
        [first, .. Enumerable.Range(1, 1000).Select(i => i % 2 == 1 ? odd : even)];

    [Theory]
    [MemberData(nameof(Certified))]
    public void Mean_and_standard_deviation_agree_with_NIST(
        string set, double[] values, double mean, double deviation, int digits)
    {
        var sample = Sample.Of(values);

        Assert.NotEmpty(set);
        Close.ToDigits(mean, sample.Mean, 15);
        Close.ToDigits(deviation, sample.StandardDeviation, digits);
    }

    // Student's t at fractional degrees of freedom, computed with mpmath 1.3.0 at 30 digits.
    [Theory]
    [InlineData(1, 13.967730199244547, 12.706204736174705, 63.656741162871581, 6366.1976713159358)]
    [InlineData(1.0001, 13.964301025871597, 12.703202820451481, 63.631533259395352, 6360.7475353575116)]
    [InlineData(1.5, 6.4181895445984536, 6.0166631044279319, 17.820310514462807, 384.57240252155327)]
    [InlineData(2.7, 3.5338640173237154, 3.3921483831737523, 6.5331284334084551, 36.815247660324588)]
    [InlineData(4.4, 2.765481027636729, 2.6796794856923364, 4.3304495708247717, 13.346771640652512)]
    [InlineData(12.79565, 2.2155199644733613, 2.1638811023912567, 3.0202975264668149, 5.5467055460219718)]
    [InlineData(18.9987, 2.1405039770235116, 2.0930337477578702, 2.8609560520056215, 4.897544730699296)]
    [InlineData(99.5, 2.0254378853658345, 1.9840936109906242, 2.6261466720631482, 4.0541845662888524)]
    [InlineData(999, 2.0025055740065249, 1.96234146113345, 2.5807596372676368, 3.9063595611022115)]
    [InlineData(1000, 2.0025030653612199, 1.9623390808264085, 2.5807546980659511, 3.9063437367013812)]
    [InlineData(12345.6, 2.0002025213908477, 1.9601561582595105, 2.576227604425214, 3.8918635864641406)]
    public void Student_factor_agrees_with_mpmath_at_any_degrees_of_freedom(
        double nu, double at9545, double at95, double at99, double at9999)
    {
        Close.ToDigits(at9545, Coverage.Factor(nu), 12);
        Close.ToDigits(at95, StudentDistribution.Factor(0.95, nu), 12);
        Close.ToDigits(at99, StudentDistribution.Factor(0.99, nu), 12);
        Close.ToDigits(at9999, StudentDistribution.Factor(0.9999, nu), 11);
    }

    // Certified values of the StRD analysis of variance sets.
    [Fact]
    public void Analysis_of_variance_agrees_with_NIST_SiRstv()
    {
        var anova = AnalysisOfVariance.Of(NistData.SiRstv);

        Assert.Equal((4, 20), (anova.BetweenDegrees, anova.WithinDegrees));
        Close.ToDigits(1.27865654000000E-02, anova.BetweenMeanSquare, 11);
        Close.ToDigits(1.08318280000000E-02, anova.WithinMeanSquare, 11);
        Close.ToDigits(1.18046237440255E+00, anova.F, 11);
    }

    [Fact]
    public void Analysis_of_variance_agrees_with_NIST_AtmWtAg()
    {
        var anova = AnalysisOfVariance.Of(NistData.AtmWtAg);

        Assert.Equal((1, 46), (anova.BetweenDegrees, anova.WithinDegrees));
        Close.ToDigits(3.63834187500000E-09, anova.BetweenMeanSquare, 13);
        Close.ToDigits(2.28155932971014E-10, anova.WithinMeanSquare, 13);
        Close.ToDigits(1.59467335677930E+01, anova.F, 13);
    }

    // StRD SmLs01 to SmLs09: nine treatments of 21, 201 and 2001, alternating by 0.1 about their means after a first
    // value, on top of 1, a million and a million million. The last are made so that double arithmetic fails.
    [Theory]
    [InlineData(1, 21, 0.21, 21)]
    [InlineData(1, 201, 2.01, 201)]
    [InlineData(1, 2001, 20.01, 2001)]
    [InlineData(1_000_000, 21, 0.21, 21)]
    [InlineData(1_000_000, 201, 2.01, 201)]
    [InlineData(1_000_000, 2001, 20.01, 2001)]
    [InlineData(1_000_000_000_000, 21, 0.21, 21)]
    [InlineData(1_000_000_000_000, 201, 2.01, 201)]
    [InlineData(1_000_000_000_000, 2001, 20.01, 2001)]
    public void Analysis_of_variance_agrees_with_NIST_SmLs(long leading, int count, double between, double f)
    {
        decimal[] means = [0.4m, 0.3m, 0.5m, 0.3m, 0.5m, 0.3m, 0.5m, 0.3m, 0.5m];
        double[][] groups = [.. means.Select(mean => Enumerable.Range(0, count)
            .Select(i => (double)(leading + mean + (i == 0 ? 0 : i % 2 == 1 ? -0.1m : 0.1m))).ToArray())];
        var anova = AnalysisOfVariance.Of(groups);

        Assert.Equal((8, 9 * (count - 1)), (anova.BetweenDegrees, anova.WithinDegrees));
        Close.ToDigits(between, anova.BetweenMeanSquare, 12);
        Close.ToDigits(0.01, anova.WithinMeanSquare, 12);
        Close.ToDigits(f, anova.F, 12);
    }

    // GUM H.5 from its printed daily means and standard deviations (n = 5): F = 2.25, 57 µV between and 85 µV within.
    [Fact]
    public void Analysis_of_variance_agrees_with_GUM_H_5()
    {
        double[] means = [172, 116, 13, 144, 106, 31, 60, 125, 163, 41];
        double[] deviations = [60, 77, 111, 101, 67, 93, 80, 73, 88, 86];
        // Five values with a given mean and standard deviation: −a, −a, 0, a, a has s² = a².
        double[][] days = [.. means.Zip(deviations, (mean, s) => new[] { mean - s, mean - s, mean, mean + s, mean + s })];
        var anova = AnalysisOfVariance.Of(days);

        Close.ToDecimals(97, Sample.Of(means).Mean, 0);
        // The example works F out of the rounded 57 and 85: 5·57²/85².
        Assert.Equal(2.25, anova.F, 0.02);
        Close.ToDecimals(85, Math.Sqrt(anova.WithinMeanSquare), 0);
        Close.ToDecimals(57, Sample.Of(means).StandardDeviation, 0);
        // F(9, 40) at 0.975 is 2.45 in the same example.
        Assert.InRange(anova.Probability, 0.025, 0.05);
    }

    [Fact]
    public void Groups_that_do_not_scatter_are_told_apart_or_not()
    {
        var apart = AnalysisOfVariance.Of([[1.0, 1], [2.0, 2]]);
        var alike = AnalysisOfVariance.Of([[1.0, 1], [1.0, 1]]);

        Assert.Equal((double.PositiveInfinity, 0), (apart.F, apart.Probability));
        Assert.Equal(1, alike.Probability);
    }

    [Fact]
    public void Too_little_to_compare_is_refused()
    {
        Assert.Throws<ArgumentException>(() => AnalysisOfVariance.Of([]));
        Assert.Throws<ArgumentException>(() => AnalysisOfVariance.Of([[1.0, 2]]));
        Assert.Throws<ArgumentException>(() => AnalysisOfVariance.Of([[1.0], [2.0]]));
    }

    // NIST Dataplot, ISO 13528 En score, on GEAR.DAT: the first four are printed there.
    [Fact]
    public void En_numbers_agree_with_NIST_Dataplot()
    {
        double[] expected = [0.393, -0.262, -0.131, 0.000, -0.524, -0.458, 0.131, -0.065, -0.393, 0.000];
        var batch = 2 * Sample.Of(NistData.Gear[..10]).StandardDeviation;
        var all = 2 * Sample.Of(NistData.Gear).StandardDeviation;

        Close.ToDecimals(0.008692, batch, 6);
        Close.ToDecimals(0.012558, all, 6);
        for (var i = 0; i < expected.Length; i++)
        {
            Close.ToDecimals(expected[i], Agreement.En(NistData.Gear[i], batch, 1, all), 3);
        }
    }

    // ISO/IEC 17043 formula; figures computed.
    [Theory]
    [InlineData(10.02, 0.342997)]
    [InlineData(10.10, 1.714986)]
    public void En_number_agrees_with_its_formula(double value, double en) =>
        Close.ToDecimals(en, Agreement.En(value, 0.05, 10.00, 0.03), 6);

    // Accred. Qual. Assur. 2005 (as in ISO/IEC 17043): up to 2 satisfactory, to 3 questionable, 3 and more unsatisfactory.
    [Theory]
    [InlineData(10.04, ScoreVerdict.Satisfactory)]
    [InlineData(10.05, ScoreVerdict.Questionable)]
    [InlineData(9.95, ScoreVerdict.Questionable)]
    [InlineData(10.0625, ScoreVerdict.Unsatisfactory)]
    [InlineData(9.9375, ScoreVerdict.Unsatisfactory)]
    public void Z_scores_are_judged_in_three_steps(double value, ScoreVerdict verdict) =>
        Assert.Equal(verdict, Agreement.Judge(Agreement.Z(value, 10, 0.0208333)));

    [Theory]
    [InlineData(2, ScoreVerdict.Satisfactory)]
    [InlineData(-2, ScoreVerdict.Satisfactory)]
    [InlineData(2.0001, ScoreVerdict.Questionable)]
    [InlineData(2.9999, ScoreVerdict.Questionable)]
    [InlineData(3, ScoreVerdict.Unsatisfactory)]
    [InlineData(-3, ScoreVerdict.Unsatisfactory)]
    [InlineData(double.NaN, ScoreVerdict.Unsatisfactory)]
    public void Edges_of_scores_belong_where_the_standard_has_them(double score, ScoreVerdict verdict) =>
        Assert.Equal(verdict, Agreement.Judge(score));

    // En is ζ with the uncertainties doubled: NIST Dataplot's page warns of mixing the two.
    [Fact]
    public void Zeta_of_standard_uncertainties_is_twice_En() =>
        Close.ToDigits(
            2 * Agreement.En(10.02, 0.05, 10.00, 0.03), Agreement.Zeta(10.02, 0.025, 10.00, 0.015), 13);

    [Fact]
    public void Correlation_needs_pairs_that_vary()
    {
        Assert.Throws<ArgumentException>(() => Agreement.Correlation([1], [2]));
        Assert.Throws<ArgumentException>(() => Agreement.Correlation([1, 2], [2]));
        Assert.Throws<ArgumentException>(() => Agreement.Correlation([1, 1], [2, 3]));
        Close.ToDigits(-1, Agreement.Correlation([1, 2, 3], [3, 2, 1]), 14);
    }
}

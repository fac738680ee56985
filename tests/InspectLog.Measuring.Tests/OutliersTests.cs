namespace InspectLog.Measuring.Tests;

public class OutliersTests
{
    // Mass spectrometer readings of the NIST/SEMATECH e-Handbook 1.3.5.17.1 and what it says of them.
    private static readonly double[] Uranium = [199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57];

    [Fact]
    public void Grubbs_agrees_with_the_NIST_handbook()
    {
        var result = Outliers.Grubbs(Uranium).GetValueOrDefault();

        Assert.Equal(7, result.Index);
        Assert.True(result.IsOutlier);
        Close.ToDigits(2.46876461121245, result.Statistic, 13);
        Close.ToDecimals(2.1266, result.Critical, 4);
        Close.ToDecimals(2.031652, Outliers.GrubbsCritical(8, 2 * 0.05), 6);
        // Two-sided probability, as recomputed from two independent programs.
        Close.ToDigits(3.00263868207136e-07, result.Probability, 8);
    }

    // Columns: one-sided 5 %, one-sided 2.5 % (two-sided 5 %), one-sided 1 %, two-sided 1 %. The first two agree with
    // tables after ASTM E178; all computed with scipy 1.10.1.
    [Theory]
    [InlineData(3, 1.1531, 1.1543, 1.1546, 1.1547)]
    [InlineData(4, 1.4625, 1.4812, 1.4925, 1.4962)]
    [InlineData(5, 1.6714, 1.7150, 1.7489, 1.7637)]
    [InlineData(6, 1.8221, 1.8871, 1.9442, 1.9728)]
    [InlineData(7, 1.9381, 2.0200, 2.0973, 2.1391)]
    [InlineData(8, 2.0317, 2.1266, 2.2208, 2.2744)]
    [InlineData(9, 2.1096, 2.2150, 2.3231, 2.3868)]
    [InlineData(10, 2.1761, 2.2900, 2.4097, 2.4821)]
    [InlineData(12, 2.2850, 2.4116, 2.5494, 2.6357)]
    [InlineData(15, 2.4090, 2.5483, 2.7049, 2.8061)]
    [InlineData(20, 2.5566, 2.7082, 2.8838, 3.0008)]
    [InlineData(30, 2.7451, 2.9085, 3.1029, 3.2361)]
    [InlineData(50, 2.9570, 3.1282, 3.3366, 3.4825)]
    [InlineData(100, 3.2095, 3.3841, 3.6002, 3.7540)]
    public void Grubbs_critical_values_agree_with_tables(
        int count, double oneSided5, double twoSided5, double oneSided1, double twoSided1)
    {
        Close.ToDecimals(oneSided5, Outliers.GrubbsCritical(count, 0.10), 4);
        Close.ToDecimals(twoSided5, Outliers.GrubbsCritical(count, 0.05), 4);
        Close.ToDecimals(oneSided1, Outliers.GrubbsCritical(count, 0.02), 4);
        Close.ToDecimals(twoSided1, Outliers.GrubbsCritical(count, 0.01), 4);
    }

    // e-Handbook 1.3.5.17.3 on ROSNER.DAT: the first two steps are not significant, the third is, so three are outliers.
    [Fact]
    public void Generalised_test_agrees_with_the_NIST_handbook()
    {
        (double R, double Lambda, double Removed)[] expected =
        [
            (3.118906, 3.158794, 6.01), (2.942973, 3.151430, 5.42), (3.179424, 3.143890, 5.34),
            (2.810181, 3.136165, 4.64), (2.815580, 3.128247, -0.25), (2.848172, 3.120128, 4.30),
            (2.279327, 3.111796, 3.68), (2.310366, 3.103243, 3.59), (2.101581, 3.094456, 0.68),
            (2.067178, 3.085425, 3.30),
        ];

        var (steps, count) = Outliers.GeneralisedEsd(NistData.Rosner, 10);

        Assert.Equal(54, NistData.Rosner.Length);
        Assert.Equal(3, count);
        Assert.Equal(expected.Length, steps.Count);
        for (var i = 0; i < expected.Length; i++)
        {
            Close.ToDecimals(expected[i].R, steps[i].Statistic, 6);
            Close.ToDecimals(expected[i].Lambda, steps[i].Critical, 6);
            Assert.Equal(expected[i].Removed, NistData.Rosner[steps[i].Index]);
        }
    }

    // Iglewicz and Hoaglin's formula; figures computed.
    [Fact]
    public void Modified_z_scores_agree_with_their_formula()
    {
        double[] expected = [-1.3965, -1.2473, -0.7999, -0.3728, 0.3728, 0.3932, 0.5491, 29.9627];
        var scores = Outliers.ModifiedZ(Uranium);

        Assert.NotNull(scores);
        for (var i = 0; i < expected.Length; i++)
        {
            Close.ToDecimals(expected[i], scores[i], 4);
        }

        var rosner = Outliers.ModifiedZ(NistData.Rosner);
        Assert.NotNull(rosner);
        Assert.Equal(
            [5.34, 5.42, 6.01],
            NistData.Rosner.Where((_, i) => Math.Abs(rosner[i]) > 3.5));
    }

    [Fact]
    public void Values_without_spread_have_no_odd_one_out()
    {
        Assert.Null(Outliers.Grubbs([5, 5, 5]));
        Assert.Null(Outliers.ModifiedZ([5, 5, 5, 9]));
        Assert.Equal((0, 0), (Outliers.GeneralisedEsd([5, 5, 5, 5], 2).Steps.Count, Outliers.GeneralisedEsd([5, 5, 5], 1).Count));
    }

    [Fact]
    public void One_value_out_of_three_can_be_as_far_out_as_it_gets()
    {
        // Two equal values and a third: G is its largest possible, (n − 1)/√n, whatever the third is.
        var result = Outliers.Grubbs([1, 1, 2]).GetValueOrDefault();

        Close.ToDigits(2 / Math.Sqrt(3), result.Statistic, 14);
        Assert.InRange(result.Probability, 0, 1e-6);
    }

    [Fact]
    public void Alike_values_have_a_probability_of_at_most_one() =>
        Assert.Equal(1, Outliers.Grubbs([0, 0, 1, 1]).GetValueOrDefault().Probability);

    [Fact]
    public void Too_few_values_are_refused()
    {
        Assert.Throws<ArgumentException>(() => Outliers.Grubbs([1, 2]));
        Assert.Throws<ArgumentException>(() => Outliers.ModifiedZ([1, 2]));
        Assert.Throws<ArgumentException>(() => Outliers.ModifiedZ([1, 2, double.NaN]));
        Assert.Throws<ArgumentException>(() => Outliers.GeneralisedEsd([1, 2, 3], 2));
        Assert.Throws<ArgumentException>(() => Outliers.GeneralisedEsd([1, 2, 3], 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Outliers.GrubbsCritical(2, 0.05));
    }
}

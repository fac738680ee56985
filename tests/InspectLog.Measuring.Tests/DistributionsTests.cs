namespace InspectLog.Measuring.Tests;

public class DistributionsTests
{
    // Ten and more digits computed with scipy 1.10.1; the rounded values agree with published normal tables.
    [Theory]
    [InlineData(0.5, 0.691462461274)]
    [InlineData(1, 0.841344746069)]
    [InlineData(1.5, 0.933192798731)]
    [InlineData(1.645, 0.950015094461)]
    [InlineData(1.96, 0.975002104852)]
    [InlineData(2, 0.977249868052)]
    [InlineData(2.5, 0.993790334674)]
    [InlineData(3, 0.998650101968)]
    [InlineData(4, 0.999968328758)]
    [InlineData(6, 0.999999999013)]
    public void Normal_share_below_agrees_with_tables(double z, double expected) =>
        Close.ToDecimals(expected, NormalDistribution.Below(z), 12);

    [Theory]
    [InlineData(2, 0.02275013, 7)]
    [InlineData(4, 3.167124e-05, 7)]
    [InlineData(6, 9.865876e-10, 7)]
    public void Normal_tail_keeps_its_digits_far_out(double z, double expected, int digits) =>
        Close.ToDigits(expected, NormalDistribution.Above(z), digits);

    [Theory]
    [InlineData(0.80, 0.841621233573)]
    [InlineData(0.90, 1.281551565545)]
    [InlineData(0.95, 1.644853626951)]
    [InlineData(0.975, 1.959963984540)]
    [InlineData(0.99, 2.326347874041)]
    [InlineData(0.995, 2.575829303549)]
    [InlineData(0.999, 3.090232306168)]
    [InlineData(0.9995, 3.290526731492)]
    [InlineData(0.9999, 3.719016485456)]
    public void Normal_quantile_agrees_with_tables(double probability, double expected) =>
        Close.ToDecimals(expected, NormalDistribution.Quantile(probability), 11);

    [Theory]
    [InlineData(-0.1)]
    [InlineData(1.1)]
    [InlineData(double.NaN)]
    public void Normal_quantile_of_no_probability_is_refused(double probability) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => NormalDistribution.Quantile(probability));

    // NIST Technical Note 1297, Table B.1. One printed cell, 35 degrees of freedom at 90 %, is left out: it says 1.70
    // where the value is 1.6896.
    [Theory]
    [InlineData(1, 1.84, 6.31, 12.71, 13.97, 63.66, 235.80)]
    [InlineData(2, 1.32, 2.92, 4.30, 4.53, 9.92, 19.21)]
    [InlineData(3, 1.20, 2.35, 3.18, 3.31, 5.84, 9.22)]
    [InlineData(4, 1.14, 2.13, 2.78, 2.87, 4.60, 6.62)]
    [InlineData(5, 1.11, 2.02, 2.57, 2.65, 4.03, 5.51)]
    [InlineData(6, 1.09, 1.94, 2.45, 2.52, 3.71, 4.90)]
    [InlineData(7, 1.08, 1.89, 2.36, 2.43, 3.50, 4.53)]
    [InlineData(8, 1.07, 1.86, 2.31, 2.37, 3.36, 4.28)]
    [InlineData(9, 1.06, 1.83, 2.26, 2.32, 3.25, 4.09)]
    [InlineData(10, 1.05, 1.81, 2.23, 2.28, 3.17, 3.96)]
    [InlineData(11, 1.05, 1.80, 2.20, 2.25, 3.11, 3.85)]
    [InlineData(12, 1.04, 1.78, 2.18, 2.23, 3.05, 3.76)]
    [InlineData(13, 1.04, 1.77, 2.16, 2.21, 3.01, 3.69)]
    [InlineData(14, 1.04, 1.76, 2.14, 2.20, 2.98, 3.64)]
    [InlineData(15, 1.03, 1.75, 2.13, 2.18, 2.95, 3.59)]
    [InlineData(16, 1.03, 1.75, 2.12, 2.17, 2.92, 3.54)]
    [InlineData(17, 1.03, 1.74, 2.11, 2.16, 2.90, 3.51)]
    [InlineData(18, 1.03, 1.73, 2.10, 2.15, 2.88, 3.48)]
    [InlineData(19, 1.03, 1.73, 2.09, 2.14, 2.86, 3.45)]
    [InlineData(20, 1.03, 1.72, 2.09, 2.13, 2.85, 3.42)]
    [InlineData(25, 1.02, 1.71, 2.06, 2.11, 2.79, 3.33)]
    [InlineData(30, 1.02, 1.70, 2.04, 2.09, 2.75, 3.27)]
    [InlineData(35, 1.01, double.NaN, 2.03, 2.07, 2.72, 3.23)]
    [InlineData(40, 1.01, 1.68, 2.02, 2.06, 2.70, 3.20)]
    [InlineData(45, 1.01, 1.68, 2.01, 2.06, 2.69, 3.18)]
    [InlineData(50, 1.01, 1.68, 2.01, 2.05, 2.68, 3.16)]
    public void Student_factors_agree_with_NIST_TN_1297(double nu, params double[] printed)
    {
        double[] coverages = [0.6827, 0.90, 0.95, 0.9545, 0.99, 0.9973];
        for (var i = 0; i < coverages.Length; i++)
        {
            if (!double.IsNaN(printed[i]))
            {
                // One unit in the last place of slack where the printed coverage is itself rounded (99.73 %, nu 1).
                Close.ToDecimals(printed[i], StudentDistribution.Factor(Exact(coverages[i]), nu), 2);
            }
        }
    }

    [Theory]
    [InlineData(100, 1.005, 1.660, 1.984, 2.025, 2.626, 3.077)]
    [InlineData(double.PositiveInfinity, 1.000, 1.645, 1.960, 2.000, 2.576, 3.000)]
    public void Student_factors_agree_with_NIST_TN_1297_to_three_decimals(double nu, params double[] printed)
    {
        double[] coverages = [0.6827, 0.90, 0.95, 0.9545, 0.99, 0.9973];
        for (var i = 0; i < coverages.Length; i++)
        {
            Close.ToDecimals(printed[i], StudentDistribution.Factor(Exact(coverages[i]), nu), 3);
        }
    }

    // Six decimals computed with scipy 1.10.1; three agree with the NIST e-Handbook's t table.
    [Theory]
    [InlineData(1, 6.313752, 12.706205, 63.656741)]
    [InlineData(2, 2.919986, 4.302653, 9.924843)]
    [InlineData(3, 2.353363, 3.182446, 5.840909)]
    [InlineData(4, 2.131847, 2.776445, 4.604095)]
    [InlineData(5, 2.015048, 2.570582, 4.032143)]
    [InlineData(9, 1.833113, 2.262157, 3.249836)]
    [InlineData(10, 1.812461, 2.228139, 3.169273)]
    [InlineData(19, 1.729133, 2.093024, 2.860935)]
    [InlineData(30, 1.697261, 2.042272, 2.749996)]
    [InlineData(100, 1.660234, 1.983972, 2.625891)]
    public void Student_factors_agree_to_six_decimals(double nu, double at90, double at95, double at99)
    {
        Close.ToDecimals(at90, StudentDistribution.Factor(0.90, nu), 6);
        Close.ToDecimals(at95, StudentDistribution.Factor(0.95, nu), 6);
        Close.ToDecimals(at99, StudentDistribution.Factor(0.99, nu), 6);
    }

    // For one and two degrees of freedom the quantile has a closed form.
    [Theory]
    [InlineData(0.01)]
    [InlineData(0.5)]
    [InlineData(0.9545)]
    [InlineData(0.999999)]
    public void Student_factors_for_one_and_two_degrees_agree_with_their_formulas(double coverage)
    {
        Close.ToDigits(Math.Tan(Math.PI * coverage / 2), StudentDistribution.Factor(coverage, 1), 10);
        Close.ToDigits(coverage * Math.Sqrt(2 / (1 - (coverage * coverage))), StudentDistribution.Factor(coverage, 2), 10);
    }

    [Fact]
    public void Student_factor_falls_without_a_jump_to_the_normal_one()
    {
        var before = StudentDistribution.Factor(Coverage.Probability, 1);
        for (var nu = 1.01; nu < 1e7; nu *= 1.01)
        {
            var factor = StudentDistribution.Factor(Coverage.Probability, nu);
            Assert.InRange(factor, before * 0.94, before);
            if (nu < 1000)
            {
                Close.ToDigits(1 - Coverage.Probability, StudentDistribution.BothTails(factor, nu), 10);
            }

            before = factor;
        }

        Close.ToDigits(2, before, 7);
    }

    [Theory]
    [InlineData(0.01)]
    [InlineData(0.5)]
    [InlineData(0.9)]
    [InlineData(0.999)]
    [InlineData(0.999999999)]
    public void Student_factor_covers_what_it_says_at_any_coverage(double coverage)
    {
        for (var nu = 1.0; nu < 1000; nu *= 1.07)
        {
            Close.ToDigits(
                1 - coverage, StudentDistribution.BothTails(StudentDistribution.Factor(coverage, nu), nu), 10);
        }
    }

    [Fact]
    public void Coverage_factor_for_infinite_degrees_of_freedom_is_two_exactly() =>
        Assert.Equal(2, Coverage.Factor(double.PositiveInfinity));

    [Theory]
    [InlineData(0.5)]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    public void Coverage_factor_for_less_than_one_degree_of_freedom_is_refused(double nu) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Coverage.Factor(nu));

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(double.NaN)]
    public void Coverage_outside_its_range_is_refused(double coverage) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => StudentDistribution.Factor(coverage, 5));

    // The note's 68.27, 95.45 and 99.73 % stand for one, two and three standard deviations of a normal distribution.
    private static double Exact(double coverage) => coverage switch
    {
        0.6827 => NormalDistribution.Between(-1, 1),
        0.9545 => NormalDistribution.Between(-2, 2),
        0.9973 => NormalDistribution.Between(-3, 3),
        _ => coverage,
    };
}

namespace InspectLog.Measuring.Tests;

/// <summary>Published and independently computed decisions. "M" beside a source: figure from memory, its arithmetic
/// recomputed.</summary>
public class ConformityCheckValuesTests
{
    // JCGM 106:2012, 7.4 (motor-oil viscosity, prints 0.66), 7.2 (Zener voltage, M), burst pressure (M).
    [Theory]
    [InlineData(13.6, 1.8, 12.5, 16.3, 0.662630)]
    [InlineData(-5.47, 0.05, null, -5.40, 0.919243)]
    [InlineData(509.7, 8.6, 490.0, null, 0.989010)]
    public void Probability_agrees_with_the_examples_of_JCGM_106(
        double value, double u, double? lower, double? upper, double probability)
    {
        var conformity = ConformityRule.Decide(Some.With(value, u), Limits.Of(lower, upper));

        Close.ToDecimals(probability, conformity.ProbabilityOfConformity, 6);
    }

    // Computed with scipy 1.10.1 from the formulas of JCGM 106:2012 clause 7; zones by ILAC-G8:09/2019, 4.2.3, w = U.
    [Theory]
    [InlineData(2.80, 3.40, 3.00, 0.05, 0.999968, Decision.Pass)]
    [InlineData(2.80, 3.40, 3.30, 0.05, 0.977250, Decision.Pass)]
    [InlineData(2.80, 3.40, 3.35, 0.05, 0.841345, Decision.ConditionalPass)]
    [InlineData(2.80, 3.40, 3.42, 0.05, 0.344578, Decision.ConditionalFail)]
    [InlineData(2.80, 3.40, 2.78, 0.05, 0.344578, Decision.ConditionalFail)]
    [InlineData(2.80, 3.40, 3.55, 0.05, 0.001350, Decision.Fail)]
    [InlineData(null, 25.0, 24.2, 0.4, 0.977250, Decision.Pass)]
    [InlineData(null, 25.0, 24.9, 0.4, 0.598706, Decision.ConditionalPass)]
    [InlineData(null, 25.0, 25.6, 0.4, 0.066807, Decision.ConditionalFail)]
    [InlineData(null, 25.0, 25.9, 0.4, 0.012224, Decision.Fail)]
    [InlineData(10.0, null, 9.5, 0.3, 0.047790, Decision.ConditionalFail)]
    [InlineData(0.25, 0.35, 0.30, 0.02, 0.987581, Decision.Pass)]
    [InlineData(0.25, 0.35, 0.34, 0.02, 0.691459, Decision.ConditionalPass)]
    [InlineData(0.90, 1.10, 1.00, 0.05, 0.954500, Decision.Pass)]
    public void Decision_and_probability_agree_with_the_workshop_cases(
        double? lower, double? upper, double value, double u, double probability, Decision decision)
    {
        var conformity = ConformityRule.Decide(Some.With(value, u), Limits.Of(lower, upper));

        Close.ToDecimals(probability, conformity.ProbabilityOfConformity, 6);
        Assert.Equal(decision, conformity.Decision);
        Close.ToDigits(2 * u, conformity.ExpandedUncertainty, 12);
        Assert.False(conformity.AcceptanceZoneIsEmpty);
    }

    // JCGM 106:2012, 7.4 and 9.3.2: the specific risk of a part accepted is 1 − (Φ((b − x)/u) − Φ((a − x)/u)). Φ by mpmath
    // 1.3.0, to 40 digits.
    [Theory]
    [InlineData(10, 0.000858120666)]
    [InlineData(10.7, 0.158655261212)]
    [InlineData(11.6, 0.977249868052)]
    public void Specific_risk_agrees_with_the_formula_of_JCGM_106(double value, double risk)
    {
        var conformity = ConformityRule.Decide(Some.With(value, 0.3), Limits.Of(9, 11));

        Close.ToDecimals(risk, 1 - conformity.ProbabilityOfConformity, 12);
    }

    // ±(% of reading + counts) of a meter, read as a rectangular half-width. The 32.00 V and 0.09 V half-widths are
    // printed in a university laboratory sheet (kpu.ca/physics DMMUncertainties); the rest is computed.
    [Theory]
    [InlineData(32.00, 2.5, 3, 0.01, 0.83, 0.479201)]
    [InlineData(0.09, 2.5, 3, 0.01, 0.03225, 0.018620)]
    [InlineData(1.50, 0.9, 2, 0.01, 0.033500, 0.019341)]
    [InlineData(9.85, 0.8, 3, 0.01, 0.108800, 0.062816)]
    [InlineData(12.62, 0.5, 2, 0.01, 0.083100, 0.047978)]
    [InlineData(4.70, 0.5, 1, 0.01, 0.033500, 0.019341)]
    [InlineData(0.72, 0.9, 2, 0.1, 0.206480, 0.119211)]
    public void Meter_accuracy_becomes_a_standard_uncertainty(
        double value, double percent, double counts, double digit, double halfWidth, double u)
    {
        var accuracy = new Accuracy(percent, counts);
        var conformity = ConformityRule.Decide(new DisplayedReading([value], accuracy, digit), Limits.Of(0, null));

        Close.ToDecimals(halfWidth, accuracy.HalfWidth(value, digit), 9);
        Close.ToDecimals(u, conformity.Contributions.Single(c => c.Name == "instrument accuracy").StandardUncertainty, 6);
        // GUM F.2.2.1: a display step contributes 0.29 of itself.
        Close.ToDigits(
            digit / Math.Sqrt(12),
            conformity.Contributions.Single(c => c.Name == "display step").StandardUncertainty,
            12);
    }

    // GUM 4.4.3, Table 1 (M): prints mean 100.14, s 1.49, s/√20 0.33; more digits recomputed.
    [Fact]
    public void Repeats_agree_with_GUM_table_1()
    {
        double[] values =
        [
            96.90, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07,
            100.33, 100.42, 100.68, 100.95, 101.11, 101.20, 101.57, 101.84, 102.36, 102.72,
        ];
        var sample = Sample.Of(values);

        Close.ToDecimals(100.145, sample.Mean, 9);
        Close.ToDecimals(1.488844, sample.StandardDeviation, 6);
        Close.ToDecimals(0.332916, sample.StandardDeviationOfMean, 6);
    }

    // NIST TN 1900, example E2 (M): prints mean 25.6, s 4.1, u 0.872, 95 % interval 23.8 to 27.4.
    [Fact]
    public void Repeats_agree_with_NIST_TN_1900_E2()
    {
        double[] values =
        [
            18.75, 28.25, 25.75, 28.00, 28.50, 20.75, 21.00, 22.75, 18.50, 27.25, 20.75,
            26.50, 28.00, 23.25, 28.00, 21.75, 26.00, 26.50, 28.00, 33.25, 32.00, 29.50,
        ];
        var sample = Sample.Of(values);
        var half = StudentDistribution.Factor(0.95, 21) * sample.StandardDeviationOfMean;

        Close.ToDecimals(25.590909, sample.Mean, 6);
        Close.ToDecimals(4.092346, sample.StandardDeviation, 6);
        Close.ToDecimals(0.872491, sample.StandardDeviationOfMean, 6);
        Close.ToDecimals(23.8, sample.Mean - half, 1);
        Close.ToDecimals(27.4, sample.Mean + half, 1);
    }

    // GUM G.4.2 (M): u 1.03 %, 19.0 degrees of freedom, U95 2.2 %.
    [Fact]
    public void Effective_degrees_of_freedom_agree_with_GUM_G_4_2()
    {
        Contribution[] parts = [Some.Part(0.25, 9), Some.Part(0.57, 4), Some.Part(0.82, 14)];
        var u = Budget.Combined(parts);
        var nu = Budget.EffectiveDegreesOfFreedom(parts, u);

        Close.ToDecimals(1.029466, u, 6);
        Close.ToDecimals(18.9987, nu, 4);
        Close.ToDecimals(2.09, StudentDistribution.Factor(0.95, nu), 2);
        Close.ToDecimals(2.2, StudentDistribution.Factor(0.95, nu) * u, 1);
    }

    // GUM G.4.1, formula G.2b: u⁴ over the sum of uᵢ⁴/νᵢ, in which a part known for sure has no share:
    // (0.48² + 0.31²)² / (0.48⁴/6) = 0.10660225 / 0.0088473600.
    [Fact]
    public void Part_known_for_sure_has_no_share_in_the_formula_of_the_GUM()
    {
        Contribution[] parts = [Some.Part(0.48, 6), Some.Part(0.31)];

        Close.ToDecimals(12.04905, Budget.EffectiveDegreesOfFreedom(parts, Budget.Combined(parts)), 5);
    }

    // GUM H.1, the end gauge (nanometres).
    [Fact]
    public void Effective_degrees_of_freedom_agree_with_GUM_H_1()
    {
        Contribution[] difference = [Some.Part(5.8, 24), Some.Part(3.9, 5), Some.Part(6.7, 8)];
        Contribution[] all = [Some.Part(25, 18), Some.Part(9.682, 25.6), Some.Part(2.88679, 50), Some.Part(16.5990, 2)];

        Close.ToDecimals(9.68194, Budget.Combined(difference), 5);
        Close.ToDecimals(25.447, Budget.EffectiveDegreesOfFreedom(difference, Budget.Combined(difference)), 3);
        Close.ToDecimals(31.664, Budget.Combined(all), 3);
        Close.ToDecimals(16.75, Budget.EffectiveDegreesOfFreedom(all, Budget.Combined(all)), 2);
        // Printed from 16 degrees of freedom and 32 nm: U(99 %) = 2.92·32 = 93 nm. For 95 % Table G.2 has 2.12: 68 nm.
        Close.ToDecimals(2.92, StudentDistribution.Factor(0.99, 16), 2);
        Close.ToDecimals(93, StudentDistribution.Factor(0.99, 16) * 32, 0);
        Close.ToDecimals(68, StudentDistribution.Factor(0.95, 16) * 32, 0);
    }

    // GUM 4.4.5 (M): ±4 °C gives 2.3 °C. EA-4/02 S9 (M): a dominant rectangular part has k(95 %) = 0.95·√3 = 1.65.
    [Fact]
    public void Rectangular_parts_agree_with_GUM_and_EA_4_02()
    {
        Close.ToDecimals(2.309401, Budget.Rectangular(4), 6);
        Close.ToDecimals(1.65, Coverage.BoxFactor * 0.95 / Coverage.Probability, 2);
    }
}

namespace InspectLog.Measuring.Tests;

public class DerivedTests
{
    // GUM 4.3.7 and 5.1.5 (M): V = 0.928571 V, s = 12 µV, specification 15 µV: u = 15 µV, relative 16·10⁻⁶.
    [Fact]
    public void Voltmeter_agrees_with_GUM_5_1_5()
    {
        var accuracy = Budget.Rectangular((14e-6 * 0.928571) + (2e-6 * 1));
        var estimate = Derived.Of(v => v[0] + v[1], [new("mean", 0.928571, 12e-6), new("specification", 0, accuracy)]);

        Close.ToDecimals(8.7, accuracy * 1e6, 1);
        Close.ToDecimals(15, estimate.StandardUncertainty * 1e6, 0);
        Close.ToDecimals(16, estimate.StandardUncertainty / estimate.Value * 1e6, 0);
    }

    // GUM 5.2.2, example: ten resistors of 1000 Ω in series, each compared with the same standard (100 mΩ). All that is
    // uncertain is common, so the uncertainties add up to 1 Ω; as if independent they would make 0.32 Ω.
    [Fact]
    public void Common_standard_adds_up_as_in_GUM_5_2_2()
    {
        Input[] resistors = [.. Enumerable.Range(1, 10).Select(i => new Input($"R{i}", 1000, 0.1))];

        Close.ToDigits(1, Derived.Of(r => r.Sum(), resistors, (_, _) => 1).StandardUncertainty, 10);
        Close.ToDecimals(0.32, Derived.Of(r => r.Sum(), resistors).StandardUncertainty, 2);
    }

    // GUM H.2, Tables H.2 to H.4: resistance, reactance and impedance from five sets of voltage, current and phase.
    [Fact]
    public void Impedance_agrees_with_GUM_H_2()
    {
        double[][] sets =
        [
            [5.007, 4.994, 5.005, 4.990, 4.999],
            [19.663e-3, 19.639e-3, 19.640e-3, 19.685e-3, 19.678e-3],
            [1.0456, 1.0438, 1.0468, 1.0428, 1.0433],
        ];
        Input[] inputs = [.. sets.Select(set => (Set: set, Sample: Sample.Of(set)))
            .Select((s, i) => new Input($"{i}", s.Sample.Mean, s.Sample.StandardDeviationOfMean, 4))];
        double Correlation(int i, int j) => Agreement.Correlation(sets[i], sets[j]);

        Close.ToDecimals(-0.36, Correlation(0, 1), 2);
        Close.ToDecimals(0.86, Correlation(0, 2), 2);
        Close.ToDecimals(-0.65, Correlation(1, 2), 2);
        Check(v => v[0] / v[1] * Math.Cos(v[2]), 127.732, 0.071);
        Check(v => v[0] / v[1] * Math.Sin(v[2]), 219.847, 0.295);
        Check(v => v[0] / v[1], 254.260, 0.236);

        void Check(Func<double[], double> model, double value, double u)
        {
            var estimate = Derived.Of(model, inputs, Correlation);
            Close.ToDecimals(value, estimate.Value, 3);
            // For the reactance the GUM prints 0.295 where its data give 0.2956.
            Assert.Equal(u, estimate.StandardUncertainty, 0.0006);
            Assert.Equal(4, estimate.DegreesOfFreedom);
        }
    }

    // A quotient times a third, all three of few degrees of freedom. GUM 5.1.6: the relative uncertainties add in squares;
    // G.2b: u⁴ over the sum of (cᵢuᵢ)⁴/νᵢ; the factor solves the integral of Student's density, all by mpmath 1.3.0 to 40
    // digits.
    [Fact]
    public void Product_agrees_with_the_formulas_of_the_GUM()
    {
        var estimate = Derived.Of(
            v => v[0] / v[1] * v[2],
            [new("X1", 0.2460, 0.0011, 7), new("X2", 0.1975, 0.0007, 14), new("Y", 0.8130, 0.0031, 21)]);

        Close.ToDigits(1.01264810127, estimate.Value, 12);
        Close.ToDigits(0.00694945660, estimate.StandardUncertainty, 6);
        Close.ToDecimals(28.27, estimate.DegreesOfFreedom, 2);
        Close.ToDigits(
            0.0142291259, StudentDistribution.Factor(0.95, estimate.DegreesOfFreedom) * estimate.StandardUncertainty, 4);
    }

    // EA-4/02 S3 (M): a 10 kΩ resistor compared with a standard; printed u = 8.33 mΩ.
    [Fact]
    public void Standard_resistor_agrees_with_EA_4_02()
    {
        var ratio = Sample.Of([1.0000104, 1.0000107, 1.0000106, 1.0000103, 1.0000105]);
        var estimate = Derived.Of(
            v => ((v[0] + v[1] + v[2]) * v[3] * v[4]) - v[5],
            [
                new("standard", 10000.053, 0.0025),
                new("drift", 0.020, Budget.Rectangular(0.010)),
                new("temperature of the standard", 0, Budget.Rectangular(0.00275)),
                new("correction for leakage", 1, 1e-6 / Math.Sqrt(6)),
                new("ratio", ratio.Mean, ratio.StandardDeviationOfMean, 4),
                new("temperature of the resistor", 0, Budget.Rectangular(0.0055)),
            ]);

        Close.ToDecimals(10000.178, estimate.Value, 3);
        Close.ToDecimals(8.33, estimate.StandardUncertainty * 1000, 2);
        Close.ToDecimals(17, estimate.ExpandedUncertainty * 1000, 0);
    }

    // JCGM 101:2008, 9.2.2: the sum of four unit normals.
    [Fact]
    public void Sum_of_four_normals_agrees_with_JCGM_101()
    {
        var estimate = Derived.Of(
            v => v.Sum(), [.. Enumerable.Range(0, 4).Select(i => new Input($"{i}", 0, 1))]);

        Close.ToDigits(2, estimate.StandardUncertainty, 10);
        Close.ToDecimals(3.92, StudentDistribution.Factor(0.95, double.PositiveInfinity) * estimate.StandardUncertainty, 2);
    }

    [Fact]
    public void Common_error_goes_out_of_a_difference()
    {
        Input[] both = [new("reading", 1.5, 0.02), new("leads", 0.3, 0.02)];

        Assert.Equal(0, Derived.Of(v => v[0] - v[1], both, (_, _) => 1).StandardUncertainty, 1e-12);
    }

    [Fact]
    public void Estimate_serves_as_an_input()
    {
        var current = Derived.Of(
            v => v[0] / v[1],
            [new("supply", 12, 0), Derived.Input("circuit", Estimate.Of(Some.With(3, 0.03)))]);

        Close.ToDigits(4, current.Value, 14);
        Close.ToDigits(0.04, current.StandardUncertainty, 9);
        Assert.Equal(["circuit", "supply"], current.Contributions.Select(contribution => contribution.Name));
    }

    [Fact]
    public void Input_near_zero_is_stepped_by_its_uncertainty()
    {
        var estimate = Derived.Of(v => Math.Sin(v[0]), [new("angle", 0, 0.01)]);

        Close.ToDigits(0.01, estimate.StandardUncertainty, 9);
    }

    [Fact]
    public void Inputs_and_models_that_give_no_figure_are_refused()
    {
        Assert.Throws<ArgumentException>(() => Derived.Of(v => 1, []));
        Assert.Throws<ArgumentException>(() => Derived.Of(v => v[0], [new("x", double.NaN, 1)]));
        Assert.Throws<ArgumentException>(() => Derived.Of(v => v[0], [new("x", 1, -1)]));
        Assert.Throws<ArgumentException>(() => Derived.Of(v => v[0], [new("x", 1, double.PositiveInfinity)]));
        Assert.Throws<ArgumentException>(() => Derived.Of(v => v[0], [new("x", 1, 1, 0)]));
        Assert.Throws<ArgumentException>(() => Derived.Of(v => 1 / v[0], [new("x", 0, 1)]));
    }
}

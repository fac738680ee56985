namespace InspectLog.Measuring.Tests;

/// <summary>Published intervals of sums of distributions, and budgets of readings, to the digits they print. Their figures
/// are from memory; the arithmetic closes.</summary>
public class PublishedDistributionsTests
{
    private static readonly Evaluation At95 = Evaluation.Default with { Coverage = 0.95 };
    private static readonly Evaluation ClassicalAt95 = Evaluation.Classical with { Coverage = 0.95 };

    // A display too fine to matter: what is known of the value is its allowances.
    private static Estimate Sum(Evaluation evaluation, params Allowance[] parts) =>
        Estimate.Of(Some.Reading([0], 0, 0, 1e-9) with { Allowances = parts }, evaluation);

    private static Allowance Even(double halfWidth) => new(AllowanceSource.Method, halfWidth);

    private static Allowance Normal(double u) => new(AllowanceSource.Reference, 2 * u, AllowanceShape.TwoStandardDeviations);

    // JCGM 101:2008, 9.2.2: four normals of standard deviation 1: ±3.92 at 95 %, by propagating distributions and by the GUM.
    [Fact]
    public void Four_normals_agree_with_JCGM_101()
    {
        Close.ToDecimals(3.92, Sum(At95, Normal(1), Normal(1), Normal(1), Normal(1)).ExpandedUncertainty, 2);
        Close.ToDecimals(3.92, Sum(ClassicalAt95, Normal(1), Normal(1), Normal(1), Normal(1)).ExpandedUncertainty, 2);
    }

    // JCGM 101:2008, 9.2.3: four boxes of standard deviation 1: ±3.88 (exactly 2√3·(2 − (3/5)^(1/4)) by its formula), where
    // the GUM has ±3.92. Two of the four go in as normals here, so that the second decimal may be off by two.
    [Fact]
    public void Four_boxes_agree_with_JCGM_101()
    {
        var box = Even(Math.Sqrt(3));

        Close.ToDecimals(3.88, 2 * Math.Sqrt(3) * (2 - Math.Pow(3.0 / 5, 0.25)), 2);
        Assert.InRange(Sum(At95, box, box, box, box).ExpandedUncertainty, 3.86, 3.90);
        Close.ToDecimals(3.92, Sum(ClassicalAt95, box, box, box, box).ExpandedUncertainty, 2);
    }

    // JCGM 101:2008, 9.2.4: the same with one box ten times as wide: u = 10.1; ±17.0, where the GUM has ±19.9.
    [Fact]
    public void Four_boxes_of_which_one_is_wide_agree_with_JCGM_101()
    {
        var (box, wide) = (Even(Math.Sqrt(3)), Even(10 * Math.Sqrt(3)));

        Close.ToDecimals(17.0, Sum(At95, box, box, box, wide).ExpandedUncertainty, 1);
        Close.ToDecimals(19.9, Sum(ClassicalAt95, box, box, box, wide).ExpandedUncertainty, 1);
        Close.ToDecimals(10.1, Sum(At95, box, box, box, wide).StandardUncertainty, 1);
    }

    // EA-4/02 S9: a multimeter shows 100.1 V in steps of 0.1 V; the calibrator's 100 V have u = 1 mV and ±11 mV since:
    // u = 30 mV, U = 0.05 V at 95 %.
    [Fact]
    public void Multimeter_agrees_with_EA_4_02_S9()
    {
        var estimate = Estimate.Of(
            Some.Reading([100.1], 0, 0, 0.1) with { Allowances = [Normal(0.001), Even(0.011)] }, At95);

        Close.ToDecimals(0.030, estimate.StandardUncertainty, 3);
        Close.ToDecimals(0.05, estimate.ExpandedUncertainty, 2);
    }

    // EA-4/02 S10.13: two boxes of ±50 µm and ±25 µm make a trapezoid with an edge parameter of 0.33: k = 1.83 at 95 %.
    [Fact]
    public void Trapezoid_agrees_with_EA_4_02_S10() =>
        Close.ToDecimals(1.83, Sum(At95, Even(50), Even(25)).CoverageFactor, 2);

    // EA-4/02 S10: a calliper at 150 mm, step 0.05 mm, mechanical effects ±50 µm, gauge block ±0.8 µm, ±2 K at 1.7 µm/K:
    // u = 33 µm by the sum of its lines (0.46, 2.0, 15 and 29 µm), U = 0.06 mm at 95 %.
    [Fact]
    public void Calliper_agrees_with_EA_4_02_S10()
    {
        var estimate = Estimate.Of(
            Some.Reading([150.10], 0, 0, 0.05) with { Allowances = [Even(0.05), Even(0.0008), Even(0.0034)] }, At95);

        Close.ToDecimals(0.033, Math.Sqrt((0.46 * 0.46) + (2.0 * 2.0) + (15 * 15) + (29 * 29)) / 1000, 3);
        Close.ToDecimals(0.032, estimate.StandardUncertainty, 3);
        Close.ToDecimals(0.06, estimate.ExpandedUncertainty, 2);
        Close.ToDecimals(1.83, estimate.CoverageFactor, 2);
    }

    // NIST Technical Note 1900, example E2: 22 temperatures of a month, 95 % between 23.8 and 27.4 °C.
    [Fact]
    public void Mean_of_repeats_agrees_with_NIST_TN_1900_E2()
    {
        double[] values =
        [
            18.75, 28.25, 25.75, 28.00, 28.50, 20.75, 21.00, 22.75, 18.50, 27.25, 20.75,
            26.50, 28.00, 23.25, 28.00, 21.75, 26.00, 26.50, 28.00, 33.25, 32.00, 29.50,
        ];
        foreach (var evaluation in new[] { At95, ClassicalAt95 })
        {
            var estimate = Estimate.Of(Some.Reading(values, 0, 0, 1e-6), evaluation);

            Close.ToDecimals(23.8, estimate.Value - estimate.ExpandedUncertainty, 1);
            Close.ToDecimals(27.4, estimate.Value + estimate.ExpandedUncertainty, 1);
        }
    }

    // Measurement Good Practice Guide No. 11 of the National Physical Laboratory: a piece of string of 5.017 m, ten readings
    // that scatter by 2.1 mm, step 1 mm, the tape's certificate 5 mm with k = 2, not lying straight ±10 mm: lines of 2.5,
    // 0.3, 5.8 and 0.7 mm, u = 6.4 mm, U = 12.8 mm with k = 2. From lines that are not rounded u is 6.33 mm.
    [Fact]
    public void Piece_of_string_agrees_with_the_guide_of_the_NPL()
    {
        var aside = 2.1 * Math.Sqrt(9 / 2.0);
        var estimate = Estimate.Of(
            Some.Reading([5017 - aside, 5017 + aside, .. Enumerable.Repeat(5017.0, 8)], 0, 0, 1) with
            {
                Allowances = [Normal(2.5), Even(10)],
            },
            Evaluation.Classical);

        Close.ToDecimals(0.7, estimate.Contributions.Single(line => line.Name == "spread of the repeats").StandardUncertainty, 1);
        Close.ToDecimals(6.4, Math.Sqrt((2.5 * 2.5) + (0.3 * 0.3) + (5.8 * 5.8) + (0.7 * 0.7)), 1);
        Close.ToDecimals(6.33, estimate.StandardUncertainty, 2);
        Assert.InRange(estimate.ExpandedUncertainty, 12.65, 12.85);
    }

    // GUM H.1.6: 50.000838 mm, u = 32 nm, 16 degrees of freedom: U = 93 nm at 99 %.
    [Fact]
    public void End_gauge_agrees_with_GUM_H_1() =>
        Close.ToDecimals(
            93, Estimate.Known(50_000_838, 32, 16, Evaluation.Classical with { Coverage = 0.99 }).ExpandedUncertainty, 0);
}

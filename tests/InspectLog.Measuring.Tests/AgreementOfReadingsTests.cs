using CsCheck;

namespace InspectLog.Measuring.Tests;

/// <summary>E_n of two readings (ISO 13528, from memory: the difference over the root of the sum of the squared expanded
/// uncertainties).</summary>
public class AgreementOfReadingsTests
{
    [Fact]
    public void Readings_of_two_instruments_have_both_uncertainties()
    {
        var (one, other) = (Some.With(10.3, 0.05), Some.With(10.0, 0.12));

        Close.ToDigits(0.3 / double.Hypot(0.10, 0.24), Agreement.En(one, other, sameInstrument: false)!.Value, 9);
    }

    // ±2 % and a step of 0.01: the error in percent is that of the difference, 0.02·0.5; what is left of each is the
    // middle 95.45 % of half a step.
    [Fact]
    public void Readings_of_one_instrument_share_its_error_in_percent()
    {
        var (one, other) = (Some.Reading([10.5], 2, 0, 0.01), Some.Reading([10.0], 2, 0, 0.01));
        var step = Coverage.Probability * 0.005;
        var gain = Coverage.Probability * 0.02 * 0.5;

        Close.ToDigits(0.5 / double.Hypot(double.Hypot(step, gain), step), Agreement.En(one, other, true)!.Value, 9);
        Assert.True(Math.Abs(Agreement.En(one, other, false)!.Value) < 2);
    }

    [Fact]
    public void Gauges_are_compared_too() =>
        Close.ToDigits(
            0.1 / (Coverage.Probability * 0.05 * Math.Sqrt(2)),
            Agreement.En(new Bracket(0.4, 0.5), new Bracket(0.3, 0.4), true)!.Value,
            9);

    [Fact]
    public void Readings_without_uncertainty_have_no_number() =>
        Assert.Null(Agreement.En(
            Some.Reading([1], 0, 0, double.Epsilon), Some.Reading([1], 0, 0, double.Epsilon), false));

    [Fact]
    public void Number_changes_sign_with_the_order() =>
        Gen.Select(Gen.Double[1, 10], Gen.Double[1, 10], Gen.Double[0, 3], Gen.Double[1e-3, 0.1]).Sample((a, b, percent, step) =>
        {
            var (one, other) = (Some.Reading([a], percent, 1, step), Some.Reading([b], percent, 1, step));
            return Math.Abs(Agreement.En(one, other, false)!.Value + Agreement.En(other, one, false)!.Value) < 1e-9;
        });
}

namespace InspectLog.Measuring.Tests;

/// <content>EA-4/02 S5 and S7: inputs and printed results from memory; the page itself was not at hand. The
/// furnace agrees to all digits with the worked example of S5 at metrodata.de; the other two with those of that site to the
/// digits EA-4/02 prints.</content>
public partial class PublishedBudgetsTests
{
    // EA-4/02 S5: the furnace, by two type R thermocouples of 0.077 °C/µV (0.189 °C/µV at the cold junction): 1000.5 °C,
    // u 0.641 °C.
    private static Estimate Furnace() => Derived.Of(
        v => v[0] + v[1] + (0.077 * (v[2] + v[3] + v[4])) - (0.077 / 0.189 * v[5]) + v[6] + v[7],
        [
            Standard("reference thermocouples", 1000.5, 0.10), Standard("their certificate", 0, 0.15), Standard("voltmeter, µV", 0, 1.0),
            Even("its resolution, µV", 0, 0.5), Even("switch, µV", 0, 2.0), Even("cold junction", 0, 0.1), Even("drift", 0, 0.3),
            Even("along the furnace", 0, 1.0),
        ]);

    [Fact]
    public void Furnace_temperature_agrees_with_EA_4_02_S5()
    {
        Close.ToDecimals(1000.5, Furnace().Value, 9);
        Close.ToDecimals(0.641, Furnace().StandardUncertainty, 3);
        Close.ToDigits(0.640870516811861, Furnace().StandardUncertainty, 10);
    }

    // The type N thermocouple, 0.026 °C/µV (0.039 °C/µV at the cold junction), read 36 248 µV half a degree above 1000 °C:
    // 36 229 µV, u 25.0 µV; stated as 36 230 µV ± 50 µV, k = 2.
    [Fact]
    public void Thermocouple_agrees_with_EA_4_02_S5()
    {
        var furnace = Furnace();
        var estimate = Derived.Of(
            v => v[0] + v[1] + v[2] + v[3] + v[4] + ((1000 - v[5]) / 0.026) - (v[6] / 0.039),
            [
                Standard("voltmeter reading", 36_248, 1.60), Standard("voltmeter", 0, 1.0), Even("its resolution", 0, 0.5),
                Even("switch", 0, 2.0), Even("compensating cables", 0, 5.0), Derived.Input("furnace", furnace), Even("cold junction", 0, 0.1),
            ]);

        Close.ToDecimals(36_229, estimate.Value, 0);
        Close.ToDecimals(25.0, estimate.StandardUncertainty, 1);
        Assert.Equal("50", Printed.UncertainNumbers(estimate.Value, estimate.ExpandedUncertainty, Units.Volt).Spread);
        Assert.Equal("furnace", estimate.Contributions[0].Name);
    }

    // EA-4/02 S7: a step attenuator at 30 dB and 10 GHz, four readings: 30.043 dB ± 0.045 dB. Mismatch is U-shaped, ±0.028 dB,
    // and is taken by its standard uncertainty of 0.02 dB.
    [Fact]
    public void Step_attenuator_agrees_with_EA_4_02_S7()
    {
        var read = Sample.Of([30.033, 30.058, 30.018, 30.052]);
        var estimate = Derived.Of(
            v => v.Sum(),
            [
                new("readings", read.Mean, read.StandardDeviationOfMean, read.Count - 1), Standard("reference", 0.003, 0.0025), Even("drift", 0, 0.002),
                Standard("mismatch", 0, 0.020), Even("leakage", 0, 0.003), Even("display at 0 dB", 0, 0.0005), Even("display at 30 dB", 0, 0.0005),
                Standard("null at 0 dB", 0, 0.002), Standard("null at 30 dB", 0, 0.002),
            ]);

        Close.ToDecimals(30.040, read.Mean, 3);
        Close.ToDecimals(0.0091, read.StandardDeviationOfMean, 4);
        Close.ToDecimals(30.043, estimate.Value, 3);
        Close.ToDecimals(0.0224, estimate.StandardUncertainty, 4);
        Close.ToDecimals(0.045, 2 * estimate.StandardUncertainty, 3);
    }
}

using InspectLog.Checks.Derived;

namespace InspectLog.Checks.Tests.Derived;

public class CoilCircuitTests
{
    // Calculated by Ohm's law from the shared table of check values, 9.4 "Coil and ballast".
    [Theory]
    [InlineData(1.5, 1.5, 12, 4.0, 6.0, 24.0, 6.0, 24.0)]
    [InlineData(1.5, 1.5, 14, 4.6667, 7.0, 32.667, 7.0, 32.667)]
    [InlineData(1.5, 1.5, 9.6, 3.2, 4.8, 15.36, 4.8, 15.36)]
    [InlineData(1.8, 1.2, 12, 4.0, 7.2, 28.8, 4.8, 19.2)]
    [InlineData(1.8, 1.2, 14, 4.6667, 8.4, 39.2, 5.6, 26.133)]
    [InlineData(0, 3.0, 12, 4.0, 0, 0, 12, 48)]
    public void Series_circuit_shares_the_supply(
        double ballast, double primary, double supply,
        double current, double drop, double ballastHeat, double coil, double coilHeat)
    {
        var point = new CoilCircuit(ballast, primary).At(supply);

        Assert.Equal(current, point.Current, 5e-5);
        Assert.Equal(drop, point.BallastDrop, 5e-4);
        Assert.Equal(ballastHeat, point.BallastHeat, 5e-4);
        Assert.Equal(coil, point.CoilVoltage, 5e-4);
        Assert.Equal(coilHeat, point.CoilHeat, 5e-4);
    }

    [Fact]
    public void Working_shows_each_step_with_its_numbers()
    {
        var first = new CoilCircuit(1.5, 1.5).At(14).Steps[0];

        Assert.Equal("supply ÷ (ballast resistor + coil primary)", first.Formula);
        Assert.Equal(["14 V", "1.5 Ω", "1.5 Ω"], first.Inputs.Select(input => input.Text));
        Assert.Equal(("Current", "4.667 A"), (first.Result.Name, first.Result.Text));
    }

    [Fact]
    public void Primary_follows_from_the_whole_circuit()
    {
        var circuit = CoilCircuit.FromTotal(1.9, 0.8);

        Assert.Equal(0.8, circuit.Ballast);
        Assert.Equal(1.1, circuit.Primary, 12);
    }

    [Theory]
    [InlineData(-0.1, 1.5, "ballast resistance")]
    [InlineData(double.NaN, 1.5, "ballast resistance")]
    [InlineData(1.5, 0, "primary resistance")]
    [InlineData(1.5, double.PositiveInfinity, "primary resistance")]
    public void Resistance_out_of_range_is_refused(double ballast, double primary, string says) =>
        Assert.Contains(
            says,
            Assert.Throws<ArgumentException>(() => new CoilCircuit(ballast, primary)).Message,
            StringComparison.Ordinal);

    [Theory]
    [InlineData(1.5, 1.5, "must be smaller than the whole")]
    [InlineData(1.5, double.NaN, "must be smaller than the whole")]
    [InlineData(1.5, -1, "ballast resistance")]
    [InlineData(0, 1, "whole circuit")]
    public void Part_that_is_not_below_the_whole_is_refused(double total, double ballast, string says) =>
        Assert.Contains(
            says,
            Assert.Throws<ArgumentException>(() => CoilCircuit.FromTotal(total, ballast)).Message,
            StringComparison.Ordinal);

    [Fact]
    public void Supply_of_nothing_is_refused() =>
        Assert.Throws<ArgumentException>(() => new CoilCircuit(1.5, 1.5).At(0));
}

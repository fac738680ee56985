namespace InspectLog.Measuring.Tests;

/// <summary>JCGM 106:2012, annex A (normal parts, normal readings) and its example of precision resistors, 9.5: from memory,
/// as the page was not at hand; what is computed says with what.</summary>
public class NormalPartsTests
{
    private const double Parts = 0.12;

    private static readonly Limits Resistor = Limits.Of(1499.8, 1500.2);

    private static GlobalRisk Risk(double u, double guard) => GlobalRisk.OfNormalParts(
        1500, Parts, Resistor, new AcceptanceZone(1499.8 + guard, 1500.2 - guard), u);

    // Resistors of 1500 Ω ± 0.2 Ω that scatter by 0.12 Ω: about 10 % do not conform, as the guide prints.
    [Fact]
    public void Resistors_made_without_inspection_agree_with_JCGM_106()
    {
        var all = GlobalRisk.OfNormalParts(1500, Parts, Resistor, new AcceptanceZone(null, null), 0.04);

        Close.ToDecimals(0.10, all.Consumers, 2);
        Close.ToDigits(0.0955807045456294, all.Consumers, 9);
    }

    // The integrals of 9.5.2 and 9.5.3 by Simpson's rule in 20 000 steps, written apart from this program.
    [Theory]
    [InlineData(0.02, 0, 0.0111434975, 0.0157410874)]
    [InlineData(0.04, 0, 0.0189422067, 0.0372078002)]
    [InlineData(0.04, 0.04, 0.00433407222, 0.1146565784)]
    [InlineData(0.04, 0.08, 0.000468633599, 0.2476696402)]
    public void Risks_of_the_resistors_agree_with_the_integrals_of_JCGM_106(double u, double guard, double consumers, double producers)
    {
        Close.ToDigits(consumers, Risk(u, guard).Consumers, 8);
        Close.ToDigits(producers, Risk(u, guard).Producers, 8);
    }

    // Annex A: what is known of a part after it was read is normal again, about the mean of reading and parts weighted by
    // their variances, with u = u₀·u_m/√(u₀² + u_m²). Over all readings that are accepted, the chance that such a part is
    // outside adds up to the same consumer's risk as the integral over the parts.
    [Theory]
    [InlineData(0.02, 0)]
    [InlineData(0.04, 0)]
    [InlineData(0.04, 0.08)]
    public void Risk_over_readings_by_annex_A_is_the_risk_over_parts(double u, double guard)
    {
        var readings = Math.Sqrt((Parts * Parts) + (u * u));
        var after = Parts * u / readings;
        var (sum, step, edge) = (0.0, 0.4 / 20_000, 0.2 - guard);
        for (var reading = -edge + (step / 2); reading < edge; reading += step)
        {
            var value = 1500 + (reading * Parts * Parts / (readings * readings));
            sum += step * Math.Exp(-reading * reading / (2 * readings * readings)) / (readings * Math.Sqrt(2 * Math.PI))
                * Estimate.Known(value, after).ShareOutside(Resistor);
        }

        Close.ToDigits(sum, Risk(u, guard).Consumers, 5);
    }
}

using InspectLog.Measuring;

namespace InspectLog.Checks.Tests;

public class LimitOverrideTests
{
    private static CheckSheet Sheet => BuiltInSheets.Find(BuiltInSheets.IgnitionBreakerless6)!;

    [Fact]
    public void Override_replaces_limits_source_and_nominal()
    {
        var manual = new LimitOverride("pickup-air-gap", Limits.Of(0.25, 0.35), " Marigold manual, page 7 ");

        var measurand = manual.ApplyTo(Sheet.Find("pickup-air-gap")!).Measurand!;

        Assert.Equal((0.25, 0.35), (measurand.Limits!.Lower, measurand.Limits.Upper));
        Assert.Equal("Marigold manual, page 7", measurand.LimitSource);
        Assert.Null(measurand.Nominal);
        Assert.Equal(new PlausibleSpan(0.05, 1.25), measurand.Plausible);
    }

    [Fact]
    public void Override_gives_limits_where_the_sheet_has_none()
    {
        var manual = new LimitOverride("ignition-timing", Limits.Of(8, 12), "Manual", nominal: 10);

        var measurand = manual.ApplyTo(Sheet.Find("ignition-timing")!).Measurand!;

        Assert.Equal((8.0, 12.0, 10.0), (measurand.Limits!.Lower, measurand.Limits.Upper, measurand.Nominal));
    }

    [Theory]
    [InlineData(0.05, 20.0, 0.05, 20.0)]
    [InlineData(null, 0.05, 0.05, 10.0)]
    [InlineData(20.0, null, 0.1, 20.0)]
    public void Plausible_span_widens_to_hold_the_limits(double? lower, double? upper, double from, double to)
    {
        var manual = new LimitOverride("coil-circuit-resistance", Limits.Of(lower, upper), "Manual");

        Assert.Equal(
            new PlausibleSpan(from, to), manual.ApplyTo(Sheet.Find("coil-circuit-resistance")!).Measurand!.Plausible);
    }

    [Fact]
    public void Sheet_takes_the_last_word_on_each_check_and_leaves_the_others_alone()
    {
        var sheet = LimitOverride.ApplyAll(Sheet,
        [
            new("coil-circuit-resistance", Limits.Of(1, 2), "Owner's booklet"),
            new("brake-pad-thickness", Limits.Of(3, null), "Another sheet's"),
            new("coil-circuit-resistance", Limits.Of(1.3, 1.9), "Workshop manual"),
        ]);

        Assert.Equal("Workshop manual", sheet.Find("coil-circuit-resistance")!.Measurand!.LimitSource);
        Assert.Same(Sheet.Find("plug-gap"), sheet.Find("plug-gap"));
        Assert.Equal(Sheet.Sha256, sheet.Sha256);
    }

    [Theory]
    [InlineData("")]
    [InlineData("  ")]
    public void Override_without_a_source_is_refused(string source) =>
        Assert.Contains(
            "Say where these limits come from",
            Assert.Throws<ArgumentException>(() => new LimitOverride("plug-gap", Limits.Of(0.7, 0.8), source)).Message,
            StringComparison.Ordinal);

    [Theory]
    [InlineData(0.9)]
    [InlineData(0.6)]
    [InlineData(double.NaN)]
    public void Override_with_a_nominal_outside_of_its_limits_is_refused(double nominal) =>
        Assert.Contains(
            "must lie within the limits",
            Assert.Throws<ArgumentException>(() => new LimitOverride("plug-gap", Limits.Of(0.7, 0.8), "Manual", nominal)).Message,
            StringComparison.Ordinal);

    [Fact]
    public void Override_of_another_check_is_refused() =>
        Assert.Throws<ArgumentException>(
            () => new LimitOverride("plug-gap", Limits.Of(0.7, 0.8), "Manual").ApplyTo(Sheet.Find("spark")!));

    [Fact]
    public void Override_of_an_observed_check_is_refused() =>
        Assert.Contains(
            "Spark at each plug is not measured",
            Assert.Throws<ArgumentException>(
                () => new LimitOverride("spark", Limits.Of(0.7, 0.8), "Manual").ApplyTo(Sheet.Find("spark")!)).Message,
            StringComparison.Ordinal);
}

namespace InspectLog.Checks.Tests.Sheets;

public class InDepthSheetTests
{
    private static CheckSheet Sheet => BuiltInSheets.Find(BuiltInSheets.IgnitionInDepth)!;

    [Fact]
    public void Sheet_goes_from_the_battery_to_the_plugs() =>
        Assert.Equal(
            [
                "spark", "battery-voltage", "supply-voltage", "ballast-resistance", "coil-primary-resistance",
                "coil-secondary-resistance", "module-earth", "pickup-resistance", "pickup-leakage", "pickup-air-gap",
                "contact-points", "coil-lead-resistance", "coil-lead-condition", "cap-contacts", "rotor-blade", "rotor-top",
                "lead-length", "lead-resistance", "lead-condition", "plug-gap", "plug-condition", "lead-routing",
                "engine-restart", "ignition-timing",
            ],
            Sheet.Checks.Select(check => check.Id));

    // Common practice, no published source, but for the 22 kΩ: one vehicle's service manual of 1991.
    [Theory]
    [InlineData("battery-voltage", 12.0, 13.2, "V")]
    [InlineData("supply-voltage", 11.5, 13.5, "V")]
    [InlineData("ballast-resistance", 0.4, 2.0, "Ω")]
    [InlineData("coil-primary-resistance", 0.5, 3.5, "Ω")]
    [InlineData("coil-secondary-resistance", 8000.0, 13000.0, "kΩ")]
    [InlineData("module-earth", null, 0.1, "mV")]
    [InlineData("pickup-resistance", 150.0, 1200.0, "Ω")]
    [InlineData("pickup-leakage", 1e6, null, "MΩ")]
    [InlineData("contact-points", 0.35, 0.45, "mm")]
    [InlineData("coil-lead-resistance", null, 15000.0, "kΩ")]
    [InlineData("lead-length", null, null, "mm")]
    [InlineData("lead-resistance", null, 22000.0, "kΩ")]
    public void Measured_check_has_its_limits(string id, double? lower, double? upper, string unit)
    {
        var measurand = Sheet.Find(id)!.Measurand!;

        Assert.Equal((lower, upper), (measurand.Limits?.Lower, measurand.Limits?.Upper));
        Assert.Equal(unit, measurand.DisplayUnit.Symbol);
    }

    // 45 cm at 10 kΩ per foot, as the limit of the coil lead says; exact 14764 Ω.
    [Fact]
    public void Limit_of_the_coil_lead_is_that_of_the_length_it_names() =>
        Assert.InRange(Sheet.Find("coil-lead-resistance")!.Measurand!.Limits!.Upper!.Value, 450 / 304.8 * 10_000, 460 / 304.8 * 10_000);

    [Theory]
    [InlineData("coil-lead-resistance", null, "open_circuit")]
    [InlineData("coil-lead-condition", null, "good chafed burnt cracked loose corroded")]
    [InlineData("pickup-leakage", null, "over_range leaking")]
    [InlineData("contact-points", null, "good pitted burnt worn")]
    [InlineData("ballast-resistance", null, "open_circuit")]
    [InlineData("lead-length", "lead", "")]
    public void Check_has_its_places_and_condition_words(string id, string? place, string conditions)
    {
        var check = Sheet.Find(id)!;

        Assert.Equal(place, check.PlaceNoun);
        Assert.Equal(conditions, string.Join(' ', check.Conditions.Select(one => one.Id.Replace(' ', '_'))));
    }

    [Theory]
    [InlineData("coil-lead", "coil-secondary-resistance coil-lead-resistance coil-lead-condition")]
    [InlineData("pickup-plug", "pickup-resistance pickup-leakage")]
    [InlineData("plug-lead", "lead-length lead-resistance lead-condition lead-routing")]
    public void Part_is_shared_by_its_checks(string id, string checks)
    {
        var part = Sheet.Checks.SelectMany(check => check.Parts).First(one => one.Id == id);

        Assert.Equal(checks, string.Join(' ', Sheet.ChecksSharing(part).Select(check => check.Id)));
    }

    // What is lost shows only while current flows and when both are read alike.
    [Theory]
    [InlineData("battery-voltage")]
    [InlineData("supply-voltage")]
    public void Voltages_that_are_compared_are_read_in_the_same_state(string id)
    {
        var check = Sheet.Find(id)!;
        var method = string.Join(' ', check.Method);

        Assert.Contains("ignition on", method, StringComparison.Ordinal);
        Assert.Contains("same meter and the same range", method, StringComparison.Ordinal);
        Assert.Contains("within a minute", method, StringComparison.Ordinal);
        Assert.StartsWith("Engine off", check.SafeState[0], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("pickup-resistance")]
    [InlineData("pickup-leakage")]
    [InlineData("module-earth")]
    public void Connectors_of_the_module_come_with_their_own_caution(string id) =>
        Assert.Contains("destroy the module", string.Join(' ', Sheet.Find(id)!.Cautions), StringComparison.Ordinal);
}

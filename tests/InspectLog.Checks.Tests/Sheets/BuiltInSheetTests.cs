namespace InspectLog.Checks.Tests.Sheets;

public class BuiltInSheetTests
{
    private static CheckSheet Sheet => BuiltInSheets.Find(BuiltInSheets.IgnitionBreakerless6)!;

    [Fact]
    public void Ignition_sheet_has_every_check_in_working_order() =>
        Assert.Equal(
            [
                "spark", "lead-condition", "lead-resistance", "supply-voltage", "coil-circuit-resistance",
                "coil-secondary-resistance", "cap-contacts", "rotor-blade", "rotor-top", "pickup-air-gap", "plug-gap",
                "plug-condition", "lead-routing", "engine-restart", "ignition-timing",
            ],
            Sheet.Checks.Select(check => check.Id));

    [Fact]
    public void Unknown_sheet_is_not_found() => Assert.Null(BuiltInSheets.Find("gearbox"));

    // The figures the sheet was asked for; common practice, no published source.
    [Theory]
    [InlineData("coil-circuit-resistance", 0.6, 2.0, null, "Ω")]
    [InlineData("coil-secondary-resistance", 8000.0, 13000.0, null, "kΩ")]
    [InlineData("pickup-air-gap", 0.2, 0.4, 0.3, "mm")]
    [InlineData("lead-resistance", null, 22000.0, null, "kΩ")]
    [InlineData("supply-voltage", 11.5, 13.5, null, "V")]
    [InlineData("plug-gap", 0.6, 1.0, null, "mm")]
    [InlineData("ignition-timing", null, null, null, "°")]
    public void Measured_check_has_its_limits(string id, double? lower, double? upper, double? nominal, string unit)
    {
        var measurand = Sheet.Find(id)!.Measurand!;

        Assert.Equal((lower, upper), (measurand.Limits?.Lower, measurand.Limits?.Upper));
        Assert.Equal(nominal, measurand.Nominal);
        Assert.Equal(unit, measurand.DisplayUnit.Symbol);
    }

    [Theory]
    [InlineData("spark", "cylinder", "present weak")]
    [InlineData("lead-condition", "lead", "good chafed burnt cracked loose")]
    [InlineData("lead-resistance", "lead", "open_circuit")]
    [InlineData("cap-contacts", "tower", "clean corroded burnt cracked worn")]
    [InlineData("rotor-blade", null, "good clean worn corroded burnt pitted cracked")]
    [InlineData("rotor-top", null, "good clean worn corroded burnt pitted cracked")]
    [InlineData("plug-gap", "plug", "")]
    [InlineData("plug-condition", "plug", "good sooty oil_fouled wet worn cracked")]
    [InlineData("lead-routing", "lead", "correct swapped")]
    [InlineData("engine-restart", null, "started")]
    public void Check_has_its_places_and_condition_words(string id, string? place, string conditions)
    {
        var check = Sheet.Find(id)!;

        Assert.Equal(place, check.PlaceNoun);
        Assert.Equal(conditions, string.Join(' ', check.Conditions.Select(one => one.Id.Replace(' ', '_'))));
    }

    [Theory]
    [InlineData("lead", "lead-condition")]
    [InlineData("cap", "cap-contacts")]
    [InlineData("rotor", "rotor-blade")]
    [InlineData("plug", "plug-condition")]
    public void Part_has_one_main_check_for_actions(string part, string id) =>
        Assert.Equal(
            [id],
            Sheet.Checks.Where(check => check.Spoken.MainForActions && check.Spoken.Parts.Contains(part))
                .Select(check => check.Id));
}

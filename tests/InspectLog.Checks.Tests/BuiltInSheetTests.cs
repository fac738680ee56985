using System.Security.Cryptography;
using InspectLog.Measuring;

namespace InspectLog.Checks.Tests;

public class BuiltInSheetTests
{
    private static CheckSheet Sheet => BuiltInSheets.Find(BuiltInSheets.IgnitionBreakerless6)!;

    public static TheoryData<string> CheckIds => [.. Sheet.Checks.Select(check => check.Id)];

    [Fact]
    public void Ignition_sheet_fits_the_schema() => Assert.True(SheetFiles.SchemaAccepts(SheetFiles.IgnitionAsJson()));

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
    public void Ignition_sheet_pins_the_hash_of_its_file() =>
        Assert.Equal(Convert.ToHexStringLower(SHA256.HashData(SheetFiles.Ignition())), Sheet.Sha256);

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

    [Fact]
    public void Every_limit_says_its_source_and_that_the_manual_wins() =>
        Assert.All(Sheet.Checks.Where(check => check.Measurand is not null), check =>
        {
            Assert.Contains("manual", check.Measurand!.LimitSource, StringComparison.Ordinal);
            Assert.StartsWith(
                check.Measurand.Limits is null ? "Only the vehicle's manual can say" : "Common practice, no source",
                check.Measurand.LimitSource, StringComparison.Ordinal);
        });

    // A figure said without its unit must fit only one of the units a person would leave out.
    [Theory]
    [InlineData("pickup-air-gap")]
    [InlineData("plug-gap")]
    public void Plausible_span_of_a_gap_tells_millimetres_thou_and_inches_apart(string id)
    {
        var plausible = Sheet.Find(id)!.Measurand!.Plausible;

        Assert.True(Units.Thou.FromBase(plausible.From) > plausible.To);
        Assert.True(Units.Inch.FromBase(plausible.To) < plausible.From);
    }

    [Theory]
    [MemberData(nameof(CheckIds))]
    public void Every_check_says_how_and_in_which_state_and_what_can_hurt(string id)
    {
        var check = Sheet.Find(id)!;

        Assert.NotEmpty(check.Method);
        Assert.NotEmpty(check.SafeState);
        Assert.NotEmpty(check.Cautions);
        Assert.EndsWith("?", check.Question, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("spark")]
    [InlineData("engine-restart")]
    [InlineData("ignition-timing")]
    public void Check_with_a_running_engine_warns_of_it_and_of_high_voltage(string id)
    {
        var cautions = string.Join(' ', Sheet.Find(id)!.Cautions);

        Assert.Contains("Running engine", cautions, StringComparison.Ordinal);
        Assert.Contains("High voltage", cautions, StringComparison.Ordinal);
        Assert.Contains(Sheet.Find(id)!.Disturbs, disturbance => disturbance.Id == "ignition-on");
    }

    [Fact]
    public void Check_that_takes_nothing_live_starts_with_the_ignition_off() =>
        Assert.All(
            Sheet.Checks.Where(check => check.Disturbs.All(disturbance => disturbance.Id != "ignition-on")),
            check => Assert.Contains("Ignition off", check.SafeState[0], StringComparison.Ordinal));

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

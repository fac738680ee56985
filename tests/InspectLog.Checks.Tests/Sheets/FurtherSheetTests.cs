namespace InspectLog.Checks.Tests.Sheets;

/// <summary>The sheets for contact points, for compression and leak-down, and for charging and starting.</summary>
public class FurtherSheetTests
{
    [Theory]
    [InlineData(BuiltInSheets.IgnitionContactBreaker, "3 4 6 8", "ignition-contact-breaker, version 1")]
    [InlineData(BuiltInSheets.CompressionLeakDown, "1 2 3 4 5 6 8 10 12", "compression-leak-down, version 1")]
    [InlineData(BuiltInSheets.ChargingStarting, "1 2 3 4 5 6 8 10 12", "charging-starting, version 1")]
    public void Sheet_says_for_which_engines_it_is(string id, string cylinders, string named)
    {
        var sheet = BuiltInSheets.Find(id)!;

        Assert.Equal(cylinders, string.Join(' ', sheet.CylinderCounts));
        Assert.Equal(named, $"{sheet.Id}, version {sheet.Version}");
        Assert.Empty(sheet.Continues);
    }

    [Theory]
    [InlineData(
        BuiltInSheets.IgnitionContactBreaker,
        "spark battery-voltage coil-feed-voltage points-voltage-drop coil-primary-resistance coil-secondary-winding condenser contact-points "
        + "dwell-angle dwell-ratio distributor-shaft advance-weights vacuum-advance cap-contacts rotor-blade rotor-top lead-resistance "
        + "lead-condition plug-gap plug-condition lead-routing engine-restart idle-speed ignition-timing")]
    [InlineData(
        BuiltInSheets.CompressionLeakDown,
        "cranking-speed oil-temperature plug-condition compression compression-wet leak-down cylinder-balance inlet-valve-clearance "
        + "exhaust-valve-clearance head-gasket crankcase-pressure plug-torque engine-restart")]
    [InlineData(
        BuiltInSheets.ChargingStarting,
        "battery-rest-voltage battery-terminals cell-density cell-level quiescent-current drive-belt cranking-voltage cranking-current "
        + "cranking-speed starter-feed-drop starter-earth-drop starter-action starting-time charging-voltage loaded-charging-voltage "
        + "charging-current charging-feed-drop charging-earth-drop ripple-voltage charging-lamp brush-length engine-restart")]
    public void Sheet_has_its_checks_in_working_order(string id, string checks) =>
        Assert.Equal(checks, string.Join(' ', BuiltInSheets.Find(id)!.Checks.Select(check => check.Id)));

    // Common practice, no published source; base units.
    [Theory]
    [InlineData("coil-feed-voltage", 11.0, 13.2, "V")]
    [InlineData("points-voltage-drop", null, 0.2, "mV")]
    [InlineData("coil-secondary-winding", 5000.0, 15000.0, "kΩ")]
    [InlineData("condenser", 0.18, 0.30, "µF")]
    [InlineData("dwell-angle", null, null, "°")]
    [InlineData("dwell-ratio", 50.0, 70.0, "%")]
    [InlineData("vacuum-advance", 10.0, null, "s")]
    [InlineData("idle-speed", 550.0, 1000.0, "rpm")]
    [InlineData("cranking-speed", 150.0, 350.0, "rpm")]
    [InlineData("oil-temperature", 60.0, 110.0, "°C")]
    [InlineData("compression", 800.0, 1400.0, "bar")]
    [InlineData("compression-wet", null, null, "bar")]
    [InlineData("leak-down", null, 20.0, "%")]
    [InlineData("inlet-valve-clearance", null, null, "mm")]
    [InlineData("plug-torque", 12.0, 40.0, "N·m")]
    [InlineData("battery-rest-voltage", 12.4, 12.9, "V")]
    [InlineData("cell-density", 1.23, 1.30, "g/cm³")]
    [InlineData("quiescent-current", null, 0.05, "mA")]
    [InlineData("drive-belt", 5.0, 15.0, "mm")]
    [InlineData("cranking-voltage", 9.6, null, "V")]
    [InlineData("cranking-current", 60.0, 300.0, "A")]
    [InlineData("starter-feed-drop", null, 0.5, "V")]
    [InlineData("starter-earth-drop", null, 0.3, "V")]
    [InlineData("starting-time", null, 5.0, "s")]
    [InlineData("charging-voltage", 13.6, 14.8, "V")]
    [InlineData("ripple-voltage", null, 0.5, "mV")]
    [InlineData("brush-length", 5.0, null, "mm")]
    public void Measured_check_has_its_limits(string id, double? lower, double? upper, string unit)
    {
        var measurand = Check(id).Measurand!;

        Assert.Equal((lower, upper), (measurand.Limits?.Lower, measurand.Limits?.Upper));
        Assert.Equal(unit, measurand.DisplayUnit.Symbol);
    }

    [Theory]
    [InlineData("coil-feed-voltage", "battery-voltage", null, 0.5)]
    [InlineData("compression-wet", "compression", -200.0, null)]
    [InlineData("loaded-charging-voltage", "charging-voltage", null, 0.7)]
    public void Check_is_decided_with_another(string id, string other, double? lower, double? upper)
    {
        var by = Check(id).Measurand!.DecidedBy!;

        Assert.Equal((other, ComparisonForm, lower, upper), (by.CheckId, by.Form, by.Limits.Lower, by.Limits.Upper));
    }

    private const Measuring.ComparisonForm ComparisonForm = Measuring.ComparisonForm.Difference;

    [Theory]
    [InlineData("compression", "cylinder", null, "even slow_to_build dead")]
    [InlineData("leak-down", "cylinder", null, "tight inlet_leak exhaust_leak crankcase_leak coolant_leak neighbour_leak")]
    [InlineData("plug-torque", "plug", null, "")]
    [InlineData("cell-density", "cell", 6, "")]
    [InlineData("cell-level", "cell", 6, "full low dry overfull")]
    [InlineData("battery-terminals", "terminal", 2, "clean corroded loose damaged")]
    [InlineData("brush-length", "brush", 2, "free stuck worn damaged")]
    [InlineData("starter-action", null, null, "engages slow clicks spins_free grinds dead sticks")]
    [InlineData("charging-lamp", null, null, "goes_out stays_on glows stays_dark")]
    [InlineData("advance-weights", null, null, "free stiff seized broken_spring")]
    public void Check_has_its_places_and_condition_words(string id, string? noun, int? places, string conditions)
    {
        var check = Check(id);

        Assert.Equal((noun, places), (check.PlaceNoun, check.Places?.Own));
        Assert.Equal(conditions, string.Join(' ', check.Conditions.Select(one => one.Id.Replace(' ', '_'))));
    }

    [Fact]
    public void Terminals_go_by_name() =>
        Assert.Equal(["positive", "negative"], Check("battery-terminals").Places!.Names.Select(name => name.Name));

    public static TheoryData<string, string> Cranked => Those("ignition-disabled");

    public static TheoryData<string, string> Opened => Those("leak-tester");

    public static TheoryData<string, string> AtTheBattery => new(
        from sheet in BuiltInSheets.All
        from check in sheet.Checks
        where check.Id.StartsWith("battery", StringComparison.Ordinal) || check.Id.StartsWith("cell", StringComparison.Ordinal)
        select (sheet.Id, check.Id));

    [Theory]
    [MemberData(nameof(Cranked))]
    public void Cranking_test_disables_ignition_and_fuel_first_and_warns_of_what_turns(string sheet, string id)
    {
        var check = BuiltInSheets.Find(sheet)!.Find(id)!;

        Assert.Contains(check.Disturbs, disturbance => disturbance.Id == "fuel-disabled");
        Assert.Matches("[Ii]gnition and fuel (disabled|are disabled)", string.Join(' ', check.SafeState));
        Assert.Contains("Cranking engine", string.Join(' ', check.Cautions), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Opened))]
    public void Test_with_compressed_air_warns_that_it_turns_the_engine(string sheet, string id)
    {
        var check = BuiltInSheets.Find(sheet)!.Find(id)!;

        Assert.Contains("Compressed air turns the engine", string.Join(' ', check.Cautions), StringComparison.Ordinal);
        Assert.Contains("off the crankshaft", string.Join(' ', check.SafeState), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(AtTheBattery))]
    public void Check_at_the_battery_warns_of_its_gas(string sheet, string id) =>
        Assert.Contains("gas that explodes", string.Join(' ', BuiltInSheets.Find(sheet)!.Find(id)!.Cautions), StringComparison.Ordinal);

    private static TheoryData<string, string> Those(string disturbance) => new(
        from sheet in BuiltInSheets.All
        from check in sheet.Checks
        where check.Disturbs.Any(one => one.Id == disturbance)
        select (sheet.Id, check.Id));

    private static Check Check(string id) => BuiltInSheets.All.Select(sheet => sheet.Find(id)).OfType<Check>().First();
}

namespace InspectLog.Checks.Tests.Sheets;

public class PartTests
{
    private static CheckSheet Sheet => BuiltInSheets.Find(BuiltInSheets.IgnitionBreakerless)!;

    // What is taken off under one of them can be put back under another.
    [Theory]
    [InlineData("plug-lead", true, "lead-condition lead-resistance lead-routing")]
    [InlineData("spark-plug", true, "plug-gap plug-condition")]
    [InlineData("distributor-cap", false, "cap-contacts")]
    [InlineData("rotor", false, "rotor-blade rotor-top")]
    [InlineData("coil-lead", false, "coil-secondary-resistance")]
    [InlineData("coil-wires", false, "coil-circuit-resistance coil-secondary-resistance")]
    public void Part_is_shared_by_its_checks(string id, bool perPlace, string checks)
    {
        var part = Sheet.Checks.SelectMany(check => check.Parts).First(one => one.Id == id);

        Assert.Equal(perPlace, part.PerPlace);
        Assert.Equal(checks, string.Join(' ', Sheet.ChecksSharing(part).Select(check => check.Id)));
    }

    [Theory]
    [InlineData("lead-resistance", "plug-lead", "plug-lead", true)]
    [InlineData("plug-gap", "plug-lead", "plug-lead", true)]
    [InlineData("plug-gap", "spark-plug", "spark-plug", true)]
    [InlineData("rotor-top", "distributor-cap", "distributor-cap", false)]
    [InlineData("coil-circuit-resistance", "coil-negative-wire", "coil-wires", false)]
    [InlineData("spark", "timing-light", "timing-light", false)]
    public void Disturbance_names_the_part_it_takes_off(string check, string disturbance, string part, bool perPlace)
    {
        var disturbed = Sheet.Find(check)!.Disturbs.First(one => one.Id == disturbance).Part!;

        Assert.Equal((part, perPlace), (disturbed.Id, disturbed.PerPlace));
    }

    [Fact]
    public void Sheet_from_before_parts_has_none()
    {
        var old = CheckSheetFile.Parse(SheetFiles.Resource(BuiltInSheets.IgnitionBreakerless6));

        Assert.All(old.Checks, check => Assert.Empty(check.Parts));
        Assert.All(old.Checks.SelectMany(check => check.Disturbs), disturbance => Assert.Null(disturbance.Part));
    }

    [Fact]
    public void Sheet_without_a_list_of_parts_says_what_to_add()
    {
        var refusal = Assert.Throws<CheckSheetFormatException>(
            () => CheckSheetFile.Parse(SheetFiles.Bytes(SheetFiles.Changed("/parts", null))));

        Assert.Contains("The sheet lists none: add 'parts'.", refusal.Message, StringComparison.Ordinal);
    }
}

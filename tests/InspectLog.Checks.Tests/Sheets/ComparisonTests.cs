using System.Text.Json.Nodes;
using InspectLog.Measuring;

namespace InspectLog.Checks.Tests.Sheets;

public class ComparisonTests
{
    private static CheckSheet Sheet => BuiltInSheets.Find(BuiltInSheets.IgnitionInDepth)!;

    /// <summary>What is put in place of one member of a comparison, where the complaint belongs and what it says; the schema
    /// refuses these too.</summary>
    public static TheoryData<string, string?, string, string> BrokenForm => new()
    {
        { "form", "'sum'", ".form", "'sum' is not one of: difference, proportion" },
        { "form", null, "", "'form' is missing" },
        { "check", null, "", "'check' is missing" },
        { "limits", null, "", "'limits' is missing" },
        { "limits", "{}", ".limits", "Give a lower limit" },
        { "limitSource", null, "", "'limitSource' is missing" },
        { "limitSource", "''", ".limitSource", "the text is empty" },
        { "check", "'Battery'", ".check", "'Battery' cannot be an id" },
        { "unit", "'V'", "", "'unit' is not a member" },
    };

    /// <summary>As above; only the loader can refuse these.</summary>
    public static TheoryData<string, string?, string, string> BrokenSense => new()
    {
        { "check", "'alternator'", ".check", "'alternator' is no check of this sheet" },
        { "check", "'supply-voltage'", ".check", "cannot be compared with itself" },
        { "check", "'rotor-blade'", ".check", "is looked at, not measured" },
        { "check", "'ballast-resistance'", "", "a difference needs two readings of one kind" },
        { "check", "'plug-gap'", "", "a difference needs two readings of one kind" },
        { "limits", "{ 'lower': 2, 'upper': 1 }", ".limits", "upper limit must lie above" },
    };

    [Theory]
    [MemberData(nameof(BrokenForm))]
    [MemberData(nameof(BrokenSense))]
    public void Broken_comparison_is_refused_where_it_is_broken(string member, string? value, string path, string says)
    {
        var refusal = Assert.Throws<CheckSheetFormatException>(() => CheckSheetFile.Parse(SheetFiles.Bytes(Changed(member, value))));

        Assert.EndsWith($"].measurand.decidedBy{path}", refusal.Path, StringComparison.Ordinal);
        Assert.Contains(says, refusal.Message, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(BrokenForm))]
    public void Schema_refuses_a_comparison_broken_in_form(string member, string? value, string path, string says) =>
        Assert.False(SheetFiles.SchemaAccepts(Changed(member, value)), $"{path}: {says}");

    [Theory]
    [MemberData(nameof(BrokenSense))]
    public void Schema_cannot_see_a_comparison_broken_in_sense(string member, string? value, string path, string says) =>
        Assert.True(SheetFiles.SchemaAccepts(Changed(member, value)), $"{path}: {says}");

    [Fact]
    public void Check_done_once_is_not_compared_with_one_of_several_places()
    {
        var sheet = Changed("check", "'lead-resistance'");
        Supply(sheet)["form"] = "proportion";

        Assert.Contains(
            "is read at each lead, and nothing says which",
            Assert.Throws<CheckSheetFormatException>(() => CheckSheetFile.Parse(SheetFiles.Bytes(sheet))).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void Supply_is_decided_as_what_is_lost_from_the_battery()
    {
        var lost = Sheet.Find("supply-voltage")!.Measurand!.DecidedBy!;

        Assert.Equal(
            (ComparisonForm.Difference, "battery-voltage", "Battery voltage", false),
            (lost.Form, lost.CheckId, lost.Name, lost.AtSamePlace));
        Assert.Equal((null, 0.5), (lost.Limits.Lower, lost.Limits.Upper));
        Assert.Equal("V", lost.UnitFor(Units.Volt).Symbol);
    }

    // At most 10 kΩ per foot: one vehicle's service manual of 2004; 0.3048 m to the foot exactly.
    [Fact]
    public void Lead_is_decided_by_its_length()
    {
        var perLength = Sheet.Find("lead-resistance")!.Measurand!.DecidedBy!;

        Assert.Equal((ComparisonForm.Proportion, "lead-length", true), (perLength.Form, perLength.CheckId, perLength.AtSamePlace));
        Assert.Equal(10_000 / 304.8, perLength.Limits.Upper!.Value, 12);
        Assert.Equal("Ω/mm", perLength.UnitFor(Units.Kilohm).Symbol);
        Assert.Contains("service manual of 2004", perLength.LimitSource, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(ComparisonForm.Difference, null, 0.5, 12.8, 12.3, null)]
    [InlineData(ComparisonForm.Difference, -0.25, 0.5, 12.75, 12.25, 13.0)]
    [InlineData(ComparisonForm.Proportion, null, 32.0, 600.0, null, 19200.0)]
    [InlineData(ComparisonForm.Proportion, 10.0, 32.0, 500.0, 5000.0, 16000.0)]
    public void Limits_are_told_in_terms_of_the_reading_too(
        ComparisonForm form, double? lower, double? upper, double other, double? least, double? most)
    {
        var own = Comparison.For(form, Limits.Of(lower, upper), other);

        Assert.Equal((least, most), (own.Lower, own.Upper));
    }

    [Fact]
    public void Limits_of_the_vehicles_own_are_of_the_reading_itself()
    {
        var own = new LimitOverride("supply-voltage", Limits.Of(11, 12), "Manual, page 3").ApplyTo(Sheet.Find("supply-voltage")!);

        Assert.True(own.Measurand!.DecidedBy!.IsOverruled);
        Assert.False(Sheet.Find("supply-voltage")!.Measurand!.DecidedBy!.IsOverruled);
    }

    private static JsonObject Supply(JsonNode sheet) => sheet["checks"]!.AsArray()
        .Single(check => check!["id"]!.GetValue<string>() == "supply-voltage")!["measurand"]!["decidedBy"]!.AsObject();

    private static JsonNode Changed(string member, string? value)
    {
        var sheet = JsonNode.Parse(SheetFiles.Resource(BuiltInSheets.IgnitionInDepth))!;
        if (value is null)
        {
            Assert.True(Supply(sheet).Remove(member));
        }
        else
        {
            Supply(sheet)[member] = JsonNode.Parse(value.Replace('\'', '"'));
        }

        return sheet;
    }
}

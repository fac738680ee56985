using System.Text;
using System.Text.Json.Nodes;

namespace InspectLog.Checks.Tests;

public class CheckSheetFileTests
{
    private sealed record Broken(string Path, string Says, Action<JsonNode> Break, bool BeyondTheSchema = false);

    // Positions in the built-in sheet: check 4 is the coil circuit, measured; check 1 is lead condition, observed.
    private static readonly Dictionary<string, Broken> Files = new()
    {
        ["unknown member of the sheet"] = new("", "'colour' is not a member known here", sheet => sheet["colour"] = "red"),
        ["unknown member of a check"] = new("checks[4]", "'limit' is not", sheet => Coil(sheet)["limit"] = 2),
        ["unknown member of limits"] = new("checks[4].measurand.limits", "'max' is not", sheet => Limits(sheet)["max"] = 2),
        ["missing title"] = new("", "'title' is missing", sheet => sheet.AsObject().Remove("title")),
        ["missing spoken names"] = new("checks[4]", "'spoken' is missing", sheet => Coil(sheet).Remove("spoken")),
        ["missing plausible span"] = new("checks[4].measurand", "'plausible' is missing", sheet => Measurand(sheet).Remove("plausible")),
        ["missing limit source"] = new("checks[4].measurand", "'limitSource' is missing", sheet => Measurand(sheet).Remove("limitSource")),
        ["id with a space"] = new("id", "cannot be an id", sheet => sheet["id"] = "my sheet"),
        ["check id with a capital"] = new("checks[4].id", "cannot be an id", sheet => Coil(sheet)["id"] = "Coil"),
        ["version zero"] = new("version", "whole number from 1", sheet => sheet["version"] = 0),
        ["version and a half"] = new("version", "whole number", sheet => sheet["version"] = 1.5),
        ["version as text"] = new("version", "must be a number", sheet => sheet["version"] = "1"),
        ["too many cylinders"] = new("cylinders", "from 1 to 16", sheet => sheet["cylinders"] = 17),
        ["no checks"] = new("checks", "the list is empty", sheet => sheet["checks"] = new JsonArray()),
        ["checks as an object"] = new("checks", "must be a list", sheet => sheet["checks"] = new JsonObject()),
        ["a check that is text"] = new("checks[4]", "must be an object", sheet => sheet["checks"]![4] = "coil"),
        ["empty title"] = new("checks[4].title", "the text is empty", sheet => Coil(sheet)["title"] = ""),
        ["title with a space behind"] = new("checks[4].title", "starts or ends with a space", sheet => Coil(sheet)["title"] = "Coil "),
        ["title that is null"] = new("checks[4].title", "must be text", sheet => Coil(sheet)["title"] = null),
        ["unknown place"] = new("checks[1].placeNoun", "'wheel' is not one of", sheet => sheet["checks"]![1]!["placeNoun"] = "wheel"),
        ["unknown kind"] = new("checks[4].measurand.kind", "'colour' is not one of", sheet => Measurand(sheet)["kind"] = "colour"),
        ["unit of another kind"] = new("checks[4].measurand.displayUnit", "'mm' is no unit of resistance. Use one of: ", sheet => Measurand(sheet)["displayUnit"] = "mm"),
        ["unknown unit"] = new("checks[4].measurand.displayUnit", "'ohms' is no unit", sheet => Measurand(sheet)["displayUnit"] = "ohms"),
        ["limits without a limit"] = new("checks[4].measurand.limits", "Give a lower limit", sheet => Measurand(sheet)["limits"] = new JsonObject()),
        ["gauge as text"] = new("checks[4].measurand.gauge", "true or false", sheet => Measurand(sheet)["gauge"] = "no"),
        ["unknown action"] = new("checks[1].actions[0]", "'painted' is not one of", sheet => sheet["checks"]![1]!["actions"]![0] = "painted"),
        ["action twice"] = new("checks[1].actions", "'cleaned' stands in the list twice", sheet => sheet["checks"]![1]!["actions"]![0] = "cleaned"),
        ["unknown condition meaning"] = new("checks[1].conditions[0].meaning", "'perfect' is not one of: good, attention, bad", sheet => Condition(sheet)["meaning"] = "perfect"),
        ["condition meaning in capitals"] = new("checks[1].conditions[0].meaning", "'Good' is not one of", sheet => Condition(sheet)["meaning"] = "Good"),
        ["condition with a hyphen"] = new("checks[1].conditions[0].id", "cannot be a condition", sheet => Condition(sheet)["id"] = "as-new"),
        ["no method"] = new("checks[4].method", "the list is empty", sheet => Coil(sheet)["method"] = new JsonArray()),
        ["no safe state"] = new("checks[4].safeState", "the list is empty", sheet => Coil(sheet)["safeState"] = new JsonArray()),
        ["disturbance without a tie"] = new("checks[4].disturbs[0]", "'tie' is missing", sheet => Disturbance(sheet).Remove("tie")),
        ["no spoken subject"] = new("checks[4].spoken.subjects", "the list is empty", sheet => Coil(sheet)["spoken"]!["subjects"] = new JsonArray()),
        ["check with nothing to record"] = new("checks[1]", "neither a measurand nor conditions", sheet => sheet["checks"]![1]!["conditions"] = new JsonArray()),
        ["sheet that is a list"] = new("", "must be an object", _ => { }),
        ["number beyond all bounds"] = new("checks[4].measurand.nominal", "too large", sheet => Measurand(sheet)["nominal"] = JsonNode.Parse("1e999"), true),

        ["two checks with one id"] = new("checks", "the id 'coil-secondary-resistance'", sheet => Coil(sheet)["id"] = "coil-secondary-resistance", true),
        ["condition twice"] = new("checks[1].conditions", "'chafed' stands in the list twice", sheet => Condition(sheet)["id"] = "chafed", true),
        ["disturbance twice"] = new("checks[4].disturbs", "'coil-negative-wire' stands in the list twice", sheet => Coil(sheet)["disturbs"]!.AsArray().Add(Disturbance(sheet).DeepClone()), true),
        ["disturbance worded in two ways"] = new("checks", "'coil-lead' is worded in two ways", sheet => Disturbance(sheet)["id"] = "coil-lead", true),
        ["upper limit below the lower"] = new("checks[4].measurand.limits", "upper limit must lie above", sheet => Limits(sheet)["upper"] = 0.5, true),
        ["limits outside of the plausible span"] = new("checks[4].measurand", "does not hold the limits", sheet => Limits(sheet)["upper"] = 11, true),
        ["lower limit outside of the plausible span"] = new("checks[4].measurand", "does not hold the limits", sheet => Limits(sheet)["lower"] = 0, true),
        ["plausible span turned round"] = new("checks[4].measurand.plausible", "'to' must lie above 'from'", sheet => Measurand(sheet)["plausible"]!["to"] = 0.05, true),
        ["nominal outside of the plausible span"] = new("checks[4].measurand", "outside of the plausible span", sheet => Measurand(sheet)["nominal"] = 50, true),
        ["nominal outside of the limits"] = new("checks[4].measurand", "outside of the limits", sheet => Measurand(sheet)["nominal"] = 2.5, true),
    };

    public static TheoryData<string> BrokenFiles => [.. Files.Keys];

    [Theory]
    [MemberData(nameof(BrokenFiles))]
    public void Broken_file_is_refused_where_it_is_broken(string name)
    {
        var broken = Files[name];

        var refusal = Assert.Throws<CheckSheetFormatException>(() => CheckSheetFile.Parse(SheetFiles.Bytes(Break(name))));

        Assert.Equal(broken.Path, refusal.Path);
        Assert.Contains(broken.Says, refusal.Message, StringComparison.Ordinal);
        Assert.StartsWith(broken.Path, refusal.Message, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(BrokenFiles))]
    public void Schema_refuses_what_the_loader_refuses_unless_it_cannot_say_it(string name) =>
        Assert.Equal(Files[name].BeyondTheSchema, SheetFiles.SchemaAccepts(Break(name)));

    [Fact]
    public void Sound_changes_are_accepted_by_schema_and_loader()
    {
        var sheet = SheetFiles.IgnitionAsJson();
        Limits(sheet).Remove("lower");
        Coil(sheet)["cautions"] = new JsonArray();
        Coil(sheet)["placeNoun"] = "cylinder";
        sheet["version"] = 2;

        Assert.True(SheetFiles.SchemaAccepts(sheet));
        var read = CheckSheetFile.Parse(SheetFiles.Bytes(sheet));
        Assert.Equal((2, null, 2.0), (read.Version, read.Checks[4].Measurand!.Limits!.Lower, read.Checks[4].Measurand!.Limits!.Upper));
    }

    [Theory]
    [InlineData("")]
    [InlineData("checks: none")]
    [InlineData("{ \"id\": \"a\", }")]
    [InlineData("{ \"id\": \"a\", \"id\": \"b\" }")]
    public void File_that_is_not_sound_json_is_refused(string text)
    {
        var refusal = Assert.Throws<CheckSheetFormatException>(() => CheckSheetFile.Parse(Encoding.UTF8.GetBytes(text)));

        Assert.StartsWith("The file is not sound JSON.", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Byte_order_mark_does_no_harm()
    {
        byte[] marked = [0xEF, 0xBB, 0xBF, .. SheetFiles.Ignition()];

        Assert.Equal(15, CheckSheetFile.Parse(marked).Checks.Count);
    }

    private static JsonNode Break(string name)
    {
        var sheet = SheetFiles.IgnitionAsJson();
        Files[name].Break(sheet);
        return name == "sheet that is a list" ? new JsonArray(sheet) : sheet;
    }

    private static JsonObject Coil(JsonNode sheet) => sheet["checks"]![4]!.AsObject();

    private static JsonObject Measurand(JsonNode sheet) => Coil(sheet)["measurand"]!.AsObject();

    private static JsonObject Limits(JsonNode sheet) => Measurand(sheet)["limits"]!.AsObject();

    private static JsonObject Disturbance(JsonNode sheet) => Coil(sheet)["disturbs"]![0]!.AsObject();

    private static JsonObject Condition(JsonNode sheet) => sheet["checks"]![1]!["conditions"]![0]!.AsObject();
}

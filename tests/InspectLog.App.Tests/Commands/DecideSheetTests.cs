using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using InspectLog.Checks;

namespace InspectLog.App.Tests.Commands;

/// <summary>Unit, limits and rule from a check of a sheet, built in or of anybody's own.</summary>
public sealed class DecideSheetTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("inspectlog-test-");

    public void Dispose() => _folder.Delete(recursive: true);

    // One of every kind of quantity.
    [Theory]
    [InlineData("ignition-breakerless", "coil-circuit-resistance", "1.2", "pass")]
    [InlineData("ignition-contact-breaker", "coil-feed-voltage", "9", "fail")]
    [InlineData("ignition-contact-breaker", "condenser", "0.22", "pass")]
    [InlineData("ignition-contact-breaker", "contact-points", "0.9", "fail")]
    [InlineData("ignition-contact-breaker", "dwell-ratio", "60", "pass")]
    [InlineData("ignition-contact-breaker", "vacuum-advance", "45", "pass")]
    [InlineData("compression-leak-down", "cranking-speed", "250", "pass")]
    [InlineData("compression-leak-down", "oil-temperature", "85", "pass")]
    [InlineData("compression-leak-down", "compression", "5", "fail")]
    [InlineData("compression-leak-down", "leak-down", "7", "pass")]
    [InlineData("compression-leak-down", "plug-torque", "25", "pass")]
    [InlineData("charging-starting", "cell-density", "1.26", "pass")]
    [InlineData("charging-starting", "quiescent-current", "20", "pass")]
    public async Task Value_in_the_unit_of_the_check_is_decided_by_the_sheet(string sheet, string check, string value, string decision)
    {
        var run = await CommandRun.OfAsync(
            "decide", "--sheet", sheet, "--check", check, "--value", value, "--accuracy", "1%", "--resolution", "0.001", "--json");

        var json = JsonDocument.Parse(run.Out).RootElement;
        Assert.Equal((0, decision), (run.ExitCode, json.GetProperty("decision").GetString()));
        Assert.Contains("manual", json.GetProperty("limitSource").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Unit_that_is_named_counts_for_every_number()
    {
        var run = await CommandRun.OfAsync(
            "decide", "--sheet", "compression-leak-down", "--check", "compression", "--unit", "psi", "--value", "150", "--accuracy", "2%", "--resolution", "1");

        Assert.Contains("psi: pass.", run.Out, StringComparison.Ordinal);
        Assert.Contains("Limits of the sheet. Common practice, no source", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Limits_that_are_given_win()
    {
        var run = await CommandRun.OfAsync(
            "decide", "--sheet", "compression-leak-down", "--check", "compression", "--lower", "4", "--value", "5", "--accuracy", "2%", "--resolution", "0.1", "--json");

        var json = JsonDocument.Parse(run.Out).RootElement;
        Assert.Equal("pass", json.GetProperty("decision").GetString());
        Assert.False(json.TryGetProperty("limitSource", out _));
    }

    [Fact]
    public async Task Sheet_from_a_file_brings_its_limits_rule_and_coverage()
    {
        var file = FileOf(sheet =>
        {
            sheet["decisionRule"] = "simple";
            sheet["coverage"] = 99;
            sheet["checks"]![4]!["measurand"]!["limits"]!["upper"] = 1.5;
        });

        var run = await CommandRun.OfAsync(
            "decide", "--sheet", file, "--check", "coil-circuit-resistance", "--value", "1.49", "--accuracy", "1%+2", "--resolution", "0.01", "--json");

        var json = JsonDocument.Parse(run.Out).RootElement;
        Assert.Equal(("pass", "simple"), (json.GetProperty("decision").GetString(), json.GetProperty("rule").GetString()));
        Assert.Equal(0.99, json.GetProperty("coverage").GetDouble(), 9);
    }

    [Fact]
    public async Task Text_is_read_with_a_sheet_from_a_file()
    {
        var file = FileOf(sheet => sheet["id"] = "our-own");

        var run = await CommandRun.OfAsync("understand", "--sheet", file, "--cylinders", "4", "Lead three is burnt.");

        Assert.Contains("lead-condition, cylinder 3: burnt", run.Out, StringComparison.Ordinal);
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
    }

    [Theory]
    [InlineData("Name the check with --check: coil-primary-resistance", "--sheet", "ignition-in-depth-2")]
    [InlineData("There is no check sheet \"brakes\". Use one of: ignition-breakerless", "--sheet", "brakes", "--check", "pads")]
    [InlineData("has no check \"pads\". Measured are: lead-resistance", "--sheet", "ignition-breakerless", "--check", "pads")]
    [InlineData("Lead condition is looked at, not measured", "--sheet", "ignition-breakerless", "--check", "lead-condition")]
    [InlineData("Ignition timing has no limits on the sheet: give them with --lower and --upper. Only the vehicle's manual", "--sheet", "ignition-breakerless", "--check", "ignition-timing")]
    [InlineData("V is a unit of voltage, but plug-gap measures length in mm", "--sheet", "ignition-breakerless", "--check", "plug-gap", "--unit", "V")]
    [InlineData("--check is of use with a check sheet only", "--check", "plug-gap", "--unit", "mm")]
    public async Task What_does_not_fit_is_refused_with_a_reason(string reason, params string[] named)
    {
        var run = await CommandRun.OfAsync(["decide", .. named.Select(one => one == "ignition-in-depth-2" ? Measuring() : one), "--value", "1", "--accuracy", "1%", "--resolution", "0.1"]);

        Assert.Contains(reason, run.Error, StringComparison.Ordinal);
        Assert.Equal((2, ""), (run.ExitCode, run.Out));
    }

    [Theory]
    [InlineData("{", "cannot be used as a check sheet. The file is not sound JSON.")]
    [InlineData("{\"id\": \"x\"}", "cannot be used as a check sheet. the member 'cylinders' is missing")]
    public async Task File_that_is_no_sheet_is_refused_where_it_is_wrong(string text, string reason)
    {
        var file = Path.Combine(_folder.FullName, "broken.json");
        await File.WriteAllTextAsync(file, text, TestContext.Current.CancellationToken);

        var run = await CommandRun.OfAsync("understand", "--sheet", file, "Lead three is burnt.");

        Assert.Contains(reason, run.Error, StringComparison.OrdinalIgnoreCase);
        Assert.Equal((2, ""), (run.ExitCode, run.Out));
    }

    /// <summary>A sheet with one measured check.</summary>
    private string Measuring() => FileOf(sheet =>
    {
        var all = sheet["checks"]!.AsArray();
        var one = BuiltIn("ignition-in-depth")["checks"]!.AsArray().First(check => check!["id"]!.GetValue<string>() == "coil-primary-resistance")!.DeepClone();
        all.Clear();
        all.Add(one);
        sheet["parts"] = JsonNode.Parse("[{\"id\":\"coil-wires\",\"name\":\"coil wires\",\"perPlace\":false}]");
    });

    private string FileOf(Action<JsonNode> change)
    {
        var sheet = BuiltIn("ignition-breakerless");
        change(sheet);
        var file = Path.Combine(_folder.FullName, "own sheet.json");
        File.WriteAllText(file, sheet.ToJsonString(), Encoding.UTF8);
        return file;
    }

    private static JsonNode BuiltIn(string id) => JsonNode.Parse(BuiltInSheets.FileOf(BuiltInSheets.Find(id)!.Sha256)!.Value.Span)!;
}

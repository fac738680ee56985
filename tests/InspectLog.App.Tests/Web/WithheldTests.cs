using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using InspectLog.App.Tests.Commands;

namespace InspectLog.App.Tests.Web;

/// <summary>Entries whose bodies were taken out of the journal: never passed over without a word, on the screen or on
/// paper, and the head on paper knows of them.</summary>
public sealed class WithheldTests : IDisposable
{
    private static readonly JsonSerializerOptions AsWritten = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("inspectlog-withheld-");

    private string Journal => Path.Combine(_folder.FullName, "vehicles", "marigold", "journal.jsonl");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public async Task Withheld_entry_is_shown_on_the_vehicle_at_the_bench_and_in_the_report()
    {
        await FillAsync();
        Withhold(3);

        await using var app = await TestApp.StartAsync(folder: _folder.FullName);

        foreach (var address in new[] { "/vehicles/marigold", "/vehicles/marigold/inspections/2", "/vehicles/marigold/inspections/2/report" })
        {
            var text = (await app.PageAsync(address)).QuerySelector("main")!.TextContent;
            Assert.Contains("1 entry withheld", text, StringComparison.Ordinal);
            Assert.Contains("#3, note written, ", text, StringComparison.Ordinal);
            Assert.Contains(", by Tess Okafor", text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Private_facts_that_are_withheld_are_shown_on_the_vehicle_and_not_as_part_of_an_inspection()
    {
        await FillAsync();
        Withhold(1);

        await using var app = await TestApp.StartAsync(folder: _folder.FullName);

        Assert.NotNull((await app.PageAsync("/vehicles/marigold")).GetElementById("withheld"));
        Assert.Null((await app.PageAsync("/vehicles/marigold/inspections/2")).GetElementById("withheld"));
        Assert.Null((await app.PageAsync("/vehicles/marigold/inspections/2/report")).GetElementById("withheld"));
    }

    [Fact]
    public async Task Head_on_paper_finds_its_journal_and_what_was_withheld_since()
    {
        await FillAsync();
        string head;
        await using (var app = await TestApp.StartAsync(folder: _folder.FullName))
        {
            head = (await app.PageAsync("/vehicles/marigold/inspections/2/report")).GetElementById("record-head")!.TextContent;
            Assert.Matches("^[0-9a-f]{64}$", head);
        }

        var whole = await CommandRun.OfAsync("verify", Journal, "--head", $"{head[..32]} {head[32..].ToUpperInvariant()}");
        Assert.Equal(0, whole.ExitCode);
        Assert.Contains("this is the journal of the paper, all 4 entries", whole.Out, StringComparison.Ordinal);
        Assert.Contains($"Head of the record: {head}", whole.Out, StringComparison.Ordinal);

        Withhold(3);
        var withheld = await CommandRun.OfAsync("verify", Journal, "--head", head);
        Assert.Equal(1, withheld.ExitCode);
        Assert.Contains("intact", withheld.Out, StringComparison.Ordinal);
        Assert.Contains("WITHHELD SINCE: its first 4 entries are those of the paper, but 1 of them is withheld now: #3", withheld.Out, StringComparison.Ordinal);
        Assert.DoesNotContain($"Head of the record: {head}", withheld.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Head_of_what_was_cut_off_since_matches_nothing()
    {
        await FillAsync();
        string head;
        await using (var app = await TestApp.StartAsync(folder: _folder.FullName))
        {
            head = app.Garage.FindVehicle("marigold")!.RecordHead;
            app.Garage.Append("marigold", "Tess Okafor", now => [new Journal.Entries.NoteWritten(2, null, "later")]);
        }

        var later = await CommandRun.OfAsync("verify", Journal, "--head", head);
        Assert.Equal(0, later.ExitCode);
        Assert.Contains("its first 4 entries are unchanged, and 1 came later", later.Out, StringComparison.Ordinal);

        File.WriteAllLines(Journal, File.ReadAllLines(Journal)[..3]);
        var cut = await CommandRun.OfAsync("verify", Journal, "--head", head);
        Assert.Equal(1, cut.ExitCode);
        Assert.Contains("NO MATCH", cut.Out, StringComparison.Ordinal);
    }

    /// <summary>A vehicle with an inspection of two notes: four entries.</summary>
    private async Task FillAsync()
    {
        await using var app = await TestApp.StartAsync(folder: _folder.FullName);
        await app.StartInspectionAsync();
        foreach (var text in new[] { "first", "second" })
        {
            app.Garage.Append("marigold", "Tess Okafor", now => [new Journal.Entries.NoteWritten(2, null, $"The {text} note")]);
        }
    }

    private void Withhold(int sequence)
    {
        var lines = File.ReadAllLines(Journal);
        var entry = JsonNode.Parse(lines[sequence - 1])!.AsObject();
        entry.Remove("body");
        entry.Remove("salt");
        lines[sequence - 1] = entry.ToJsonString(AsWritten);
        File.WriteAllLines(Journal, lines);
    }
}

using System.Net;
using InspectLog.App.Tests.Commands;

namespace InspectLog.App.Tests.Web;

/// <summary>A vehicle whose journal is damaged: it is looked at, and the others are worked on.</summary>
public sealed class DamagedVehicleTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("inspectlog-damaged-");

    private string Teasel => Path.Combine(_folder.FullName, "vehicles", "teasel", "journal.jsonl");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public async Task One_bad_journal_closes_itself_only()
    {
        await FillAsync();
        File.Delete(Teasel);
        File.CreateSymbolicLink(Teasel, Teasel); // reading it fails with an I/O error

        await using var app = await TestApp.StartAsync(folder: _folder.FullName);

        var garage = await app.PageAsync("/");
        var card = garage.QuerySelectorAll(".vehicle-card").Single(one => one.TextContent.Contains("teasel", StringComparison.Ordinal));
        Assert.Contains("Its journal is damaged", card.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("Nothing can be saved", garage.QuerySelector(".banner")!.TextContent, StringComparison.Ordinal);
        foreach (var address in new[] { "/vehicles/teasel", "/vehicles/teasel/journal", "/vehicles/teasel/describe", "/find?words=note" })
        {
            Assert.Contains("put it back from a copy", (await app.PageAsync(address)).QuerySelector(".banner")!.TextContent, StringComparison.Ordinal);
        }

        var refused = await app.PostAsync("/vehicles/teasel/describe", ("name", "Teasel"));
        Assert.Equal(HttpStatusCode.ServiceUnavailable, refused.StatusCode);
        await app.PostForRedirectAsync("/vehicles/heron/inspections", ("technician", "Tess Okafor"));
    }

    [Fact]
    public async Task Entries_before_and_after_the_damage_are_shown_and_the_break_is_said()
    {
        await FillAsync();
        Damage("second");

        await using var app = await TestApp.StartAsync(folder: _folder.FullName);

        var journal = await app.PageAsync("/vehicles/teasel/journal");
        Assert.Equal(["entry-5", "entry-3", "entry-2", "entry-1"], journal.QuerySelectorAll(".journal > li").Select(entry => entry.Id));
        Assert.Contains("The chain is broken here: entry 4 is missing or damaged", journal.GetElementById("entry-5")!.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("broken", journal.GetElementById("entry-3")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("Line 4: its body was changed.", journal.QuerySelector("main")!.TextContent, StringComparison.Ordinal);
        var vehicle = await app.PageAsync("/vehicles/teasel");
        Assert.Contains("This vehicle can only be looked at", vehicle.QuerySelector("main")!.TextContent, StringComparison.Ordinal);
        Assert.Null(vehicle.QuerySelector("form.start"));
        var bench = await app.PageAsync("/vehicles/teasel/inspections/2");
        Assert.Contains("The third note", bench.QuerySelector("main")!.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("second note", bench.QuerySelector("main")!.TextContent, StringComparison.Ordinal);
        Assert.Single((await app.PageAsync("/find?words=third")).QuerySelectorAll("a[href*='found=']"));
    }

    [Fact]
    public async Task Verify_names_every_damaged_line_and_says_what_to_do()
    {
        await FillAsync();
        Damage("first", "third");

        var run = await CommandRun.OfAsync("verify", _folder.FullName);

        Assert.Equal(1, run.ExitCode);
        Assert.Contains($"{Teasel}: NOT INTACT", run.Out, StringComparison.Ordinal);
        Assert.Contains("  Line 3: its body was changed", run.Out, StringComparison.Ordinal);
        Assert.Contains("  Line 5: its body was changed", run.Out, StringComparison.Ordinal);
        Assert.Contains("Put the file back from a copy.", run.Out, StringComparison.Ordinal);
        Assert.Contains("Sound entries: 3", run.Out, StringComparison.Ordinal);
        Assert.Contains("heron", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Report_and_verify_give_the_same_head_by_the_same_name_and_the_report_says_the_damage()
    {
        await FillAsync();
        Damage("second");
        await using var app = await TestApp.StartAsync(folder: _folder.FullName);

        var page = await app.PageAsync("/vehicles/teasel/inspections/2/report");
        var head = page.GetElementById("record-head")!;
        var verify = await CommandRun.OfAsync("verify", _folder.FullName);
        var byHead = await CommandRun.OfAsync("verify", _folder.FullName, "--head", head.TextContent);

        Assert.StartsWith("Head of the record as far as it can be read: ", head.ParentElement!.TextContent, StringComparison.Ordinal);
        Assert.Contains("Line 4 of the journal of Teasel is damaged: its body was changed", page.QuerySelector(".last-words")!.TextContent, StringComparison.Ordinal);
        Assert.Contains($"  Head of the record as far as it can be read: {head.TextContent}", verify.Out, StringComparison.Ordinal);
        Assert.Contains("DAMAGED: its last entry that can be read is that of the paper", byHead.Out, StringComparison.Ordinal);
        Assert.Equal(1, byHead.ExitCode);
    }

    /// <summary>Two vehicles, one with an inspection of three notes.</summary>
    private async Task FillAsync()
    {
        await using var app = await TestApp.StartAsync(folder: _folder.FullName);
        await app.AddVehicleAsync("Heron");
        var bench = await app.PostForRedirectAsync($"{await app.AddVehicleAsync("Teasel")}/inspections", ("technician", "Tess Okafor"));
        foreach (var text in new[] { "first", "second", "third" })
        {
            app.Garage.Append("teasel", "Tess Okafor", now => [new Journal.Entries.NoteWritten(now.OpenInspection!.Number, null, $"The {text} note")]);
        }

        Assert.EndsWith("/inspections/2", bench, StringComparison.Ordinal);
    }

    private void Damage(params IEnumerable<string> texts) => File.WriteAllText(
        Teasel, texts.Aggregate(File.ReadAllText(Teasel), (all, text) => all.Replace($"The {text}", "Xhe", StringComparison.Ordinal)));
}

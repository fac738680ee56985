using System.Net;
using InspectLog.App.Tests.Web;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Sealing;

namespace InspectLog.App.Tests.Archiving;

/// <summary>Archives with their seal by the pages, and held against a printed report there.</summary>
public sealed class SealedPagesTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Archive_is_sealed_and_the_page_of_another_garage_says_by_which_key_and_what_that_proves()
    {
        await using var there = await TestApp.StartAsync();
        await using var here = await TestApp.StartAsync();
        var bench = await there.StartInspectionAsync();
        Assert.Contains("no key yet", (await there.PageAsync("/vehicles/marigold/archive")).Body!.TextContent, StringComparison.Ordinal);
        await there.PostForRedirectAsync($"{bench}/report/seal");
        Assert.Contains("sealed with this workshop’s key", (await there.PageAsync("/vehicles/marigold/archive")).Body!.TextContent, StringComparison.Ordinal);
        var seal = Assert.Single(SealFolder.Of(there.Folder, "marigold").Read()).Sound!;
        var bytes = await there.Client.GetByteArrayAsync(await ArchivePagesTests.MakeAsync(there, "/vehicles/marigold", "buyer"), Stop);

        var sent = await ArchivePagesTests.SendAsync(here, bytes, PrintedSeal.Of(seal).Text);
        var text = (await here.PageAsync(sent.Headers.Location!.ToString())).QuerySelector("main")!.TextContent;

        Assert.Contains(KeyFingerprint.Printed(seal.Key), text, StringComparison.Ordinal);
        Assert.Contains("It does not prove who made it", text, StringComparison.Ordinal);
        Assert.Contains("This is the journal of the printed report, with 0 entries later", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Head_of_another_report_is_told_and_a_text_that_is_none_is_refused_with_what_was_typed()
    {
        await using var app = await TestApp.StartAsync();
        await app.AddVehicleAsync();
        var bytes = await app.Client.GetByteArrayAsync(await ArchivePagesTests.MakeAsync(app, "/vehicles/marigold", "everything"), Stop);
        var head = app.Garage.FindVehicle("marigold")!.RecordHead;

        var own = await app.PageAsync((await ArchivePagesTests.SendAsync(app, bytes, head)).Headers.Location!.ToString());
        var other = await app.PageAsync((await ArchivePagesTests.SendAsync(app, bytes, new string('0', 64))).Headers.Location!.ToString());
        var refused = await ArchivePagesTests.SendAsync(app, bytes, "half a head");

        Assert.Contains("This is the journal of the printed report", own.Body!.TextContent, StringComparison.Ordinal);
        Assert.Contains("Not sealed", own.Body!.TextContent, StringComparison.Ordinal);
        Assert.Contains("This is not the journal of the printed report", other.QuerySelector(".wrong")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.StatusCode);
        Assert.Equal("half a head", (await TestApp.ParseAsync(refused)).QuerySelector("input[name=printed]")!.GetAttribute("value"));
    }

    [Fact]
    public async Task Key_under_a_passphrase_seals_with_it_and_a_wrong_one_is_asked_for_again()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync($"{bench}/report/seal", ("passphrase", "seven spanners"));

        var wrong = await app.PostAsync("/vehicles/marigold/archive", ("profile", "everything"), ("passphrase", "six spanners"));
        var left = await app.Client.GetByteArrayAsync(await ArchivePagesTests.MakeAsync(app, "/vehicles/marigold", "everything"), Stop);
        var with = await app.Client.GetByteArrayAsync(await ArchivePagesTests.MakeAsync(app, "/vehicles/marigold", "everything", "seven spanners"), Stop);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, wrong.StatusCode);
        var page = await TestApp.ParseAsync(wrong);
        Assert.Contains("does not open the key", page.Body!.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("six spanners", page.DocumentElement.OuterHtml, StringComparison.Ordinal);
        Assert.DoesNotContain("seal/seal.jws", System.Text.Encoding.Latin1.GetString(left), StringComparison.Ordinal);
        Assert.Contains("seal/seal.jws", System.Text.Encoding.Latin1.GetString(with), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Journal_that_was_cut_since_its_seal_makes_no_archive_and_says_why()
    {
        var folder = Directory.CreateTempSubdirectory("inspectlog-").FullName;
        await using (var app = await TestApp.StartAsync(folder: folder))
        {
            var bench = await app.StartInspectionAsync();
            await app.PostForRedirectAsync($"{bench}/report/seal");
        }

        var journal = Path.Combine(folder, "vehicles", "marigold", "journal.jsonl");
        await File.WriteAllTextAsync(journal, (await File.ReadAllLinesAsync(journal, Stop))[0] + "\n", Stop);
        await using (var app = await TestApp.StartAsync(folder: folder))
        {
            var made = await app.PostForRedirectAsync("/vehicles/marigold/archive", ("profile", "everything"));
            var wrong = await Eventually.GetAsync(() => app.PageAsync(made).GetAwaiter().GetResult().QuerySelector(".wrong"));

            Assert.Contains("The journal was cut", wrong.TextContent, StringComparison.Ordinal);
        }

        Directory.Delete(folder, recursive: true);
    }
}

using System.Net;
using AngleSharp.Dom;
using InspectLog.App.Tests.Access;
using InspectLog.Checks;
using InspectLog.Journal.Sealing;

namespace InspectLog.App.Tests.Web;

/// <summary>Sealing from the pages, and what the report says of it.</summary>
public sealed class SealTests
{
    private static readonly CheckSheet Sheet = BuiltInSheets.Find(BuiltInSheets.IgnitionBreakerless6)!;

    [Fact]
    public async Task Inspection_that_is_closed_is_sealed_where_that_was_ticked()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        Assert.NotNull((await app.PageAsync($"{bench}/close")).QuerySelector("input[name=seal][type=checkbox]"));

        Assert.Equal($"{bench}/report", await CloseAsync(app, bench, ("seal", "on")));

        var seal = Assert.Single(Seals(app)).Sound!;
        Assert.Equal(app.Garage.Entries("marigold")[^1].Hash, seal.Seal.Head);
        Assert.Contains("Sealed on", Section(await app.PageAsync($"{bench}/report")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Inspection_is_closed_without_a_seal_where_that_was_not_ticked()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        await CloseAsync(app, bench);

        Assert.Empty(Seals(app));
        Assert.False(new SealKeyFile(app.Folder).Exists);
        Assert.Contains("Not sealed", Section(await app.PageAsync($"{bench}/report")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Picture_on_the_report_holds_entries_head_and_key_and_checks_the_folder()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var before = PrintedSeal.Read(QrPictureTests.Read((await app.PageAsync($"{bench}/report")).QuerySelector("svg.qr")!))!;
        Assert.Null(before.Key);

        Assert.Equal($"{bench}/report#seal", await app.PostForRedirectAsync($"{bench}/report/seal"));
        await app.PostForRedirectAsync($"{bench}/loose-ends", ("text", "Air filter off"));
        var page = await app.PageAsync($"{bench}/report");
        var printed = PrintedSeal.Read(QrPictureTests.Read(page.QuerySelector("svg.qr")!))!;

        var seal = Assert.Single(Seals(app)).Sound!;
        Assert.Equal((seal.Seal.Count, seal.Seal.Record, seal.Key.Fingerprint[..32]), (printed.Count, printed.Record, printed.Key));
        Assert.Equal((before.Count, before.Record), (printed.Count, printed.Record));
        Assert.Contains(KeyFingerprint.Printed(seal.Key), Section(page), StringComparison.Ordinal);
        Assert.Contains("1 entry came later and is not sealed", Section(page), StringComparison.Ordinal);
        Assert.Equal(SealStanding.Continued, printed.Compare(JournalChain.Read(app.Folder, "marigold")).Standing);
    }

    [Fact]
    public async Task Key_under_a_passphrase_is_asked_for_and_what_was_typed_is_not_sent_back()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync($"{bench}/report/seal", ("passphrase", "seven spanners"));
        Assert.True(new SealKeyFile(app.Folder).IsProtected);

        Assert.Equal($"{bench}/report/seal", await CloseAsync(app, bench, ("seal", "on")));
        var wrong = await app.PostAsync($"{bench}/report/seal", ("passphrase", "six spanners"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, wrong.StatusCode);
        var page = await TestApp.ParseAsync(wrong);
        Assert.Contains("does not open the key", page.QuerySelector("#seal-problems")!.ParentElement!.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("six spanners", page.DocumentElement.OuterHtml, StringComparison.Ordinal);
        await app.PostForRedirectAsync($"{bench}/report/seal", ("passphrase", "seven spanners"));
        Assert.Equal(2, Seals(app).Count);
    }

    [Fact]
    public async Task Seal_that_cannot_be_written_is_told_and_the_record_stays()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await File.WriteAllTextAsync(Path.Combine(app.Folder, "vehicles", "marigold", "seals"), "in the way", TestContext.Current.CancellationToken);

        var refused = await app.PostAsync($"{bench}/report/seal");

        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.StatusCode);
        Assert.Contains("could not be written", (await TestApp.ParseAsync(refused)).Body!.TextContent, StringComparison.Ordinal);
        await app.PostForRedirectAsync($"{bench}/loose-ends", ("text", "Air filter off"));
    }

    [Fact]
    public async Task Seal_that_was_changed_is_told_on_the_report()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync($"{bench}/report/seal");
        var file = Assert.Single(Directory.GetFiles(Path.Combine(app.Folder, "vehicles", "marigold", "seals")));
        await File.AppendAllTextAsync(file, "\n", TestContext.Current.CancellationToken);

        var section = Section(await app.PageAsync($"{bench}/report"));

        Assert.Contains("is no seal", section, StringComparison.Ordinal);
        Assert.Contains("Not sealed", section, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Recovery_sheet_on_the_page_restores_the_key_and_is_kept_nowhere()
    {
        await using var app = await TestApp.StartAsync();
        Assert.Contains("There is no key yet", (await app.PageAsync("/seal-key")).Body!.TextContent, StringComparison.Ordinal);
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync($"{bench}/report/seal");
        Assert.Null((await app.PageAsync("/seal-key")).QuerySelector(".recovery-sheet"));

        var answer = await app.PostAsync("/seal-key/sheet");
        var lines = (await TestApp.ParseAsync(answer)).QuerySelectorAll(".recovery-sheet code").Select(line => line.TextContent);

        Assert.True(answer.Headers.CacheControl!.NoStore);
        using var key = RecoverySheet.Read(string.Join('\n', lines));
        Assert.Equal(Assert.Single(Seals(app)).Sound!.Key.Fingerprint, key.Public.Fingerprint);
    }

    [Fact]
    public async Task Recovery_sheet_does_not_leave_the_workshops_computer()
    {
        await using var app = await LanApp.StartAsync();
        var bench = await app.AddInspectionAsync("Bramble");
        await LanApp.SendAsync(app.Workshop, $"{bench}/report/seal");
        var owner = await app.PairAsync(role: "owner");

        var answer = await LanApp.SendAsync(owner, "/seal-key/sheet");

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        var page = await TestApp.ParseAsync(answer);
        Assert.Null(page.QuerySelector(".recovery-sheet"));
        Assert.Contains("own computer alone", page.Body!.TextContent, StringComparison.Ordinal);
    }

    private static IReadOnlyList<KeptSeal> Seals(TestApp app) => SealFolder.Of(app.Folder, "marigold").Read();

    private static string Section(IDocument page) => page.QuerySelector("section.sealed")!.TextContent;

    private static Task<string> CloseAsync(TestApp app, string bench, params (string Name, string Value)[] further) => app.PostForRedirectAsync(
        $"{bench}/close", [.. Sheet.Checks.Select(check => ($"reason-{check.Id}", "Not today")), .. further]);
}

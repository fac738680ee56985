using System.Net;
using InspectLog.App.Backups;
using InspectLog.App.Tests.Access;
using InspectLog.App.Tests.Web;
using InspectLog.Journal.Backups;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Verification;
using Microsoft.Extensions.Time.Testing;

namespace InspectLog.App.Tests.Backups;

/// <summary>Backups by the pages and by night, and what the garage says of them.</summary>
public sealed class BackupPagesTests : IDisposable
{
    private readonly DirectoryInfo _to = Directory.CreateTempSubdirectory("inspectlog-backup-");

    private string To => Path.Combine(_to.FullName, "backup");

    public void Dispose() => _to.Delete(recursive: true);

    [Fact]
    public async Task Backup_is_made_into_the_folder_that_was_chosen_and_told()
    {
        await using var app = await TestApp.StartAsync();
        await app.AddVehicleAsync();
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await app.PostAsync("/backup/now")).StatusCode);

        await app.PostForRedirectAsync("/backup", ("folder", To), ("days", "7"));
        await app.PostForRedirectAsync("/backup/now");

        await Eventually.GetAsync(() => new BackupRecord(app.Folder).Last.Done is null ? null : app);
        Assert.True(JournalVerifier.Verify(To).IsIntact);
        Assert.Equal(new BackupSettings(To, false, 7), new BackupRecord(app.Folder).Settings);
        var page = await Eventually.GetAsync(() => app.PageAsync("/backup").GetAwaiter().GetResult() is var now && now.QuerySelector("#backing-up a") is null ? now : null);
        Assert.Contains($"in {To}", page.QuerySelector("#backing-up")!.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("garage", "14", "folder", "in full")]
    [InlineData("", "14", "folder", "Name the folder")]
    [InlineData("/somewhere", "0", "days", "from 1 to 365")]
    [InlineData("/somewhere", "soon", "days", "from 1 to 365")]
    public async Task What_cannot_be_wanted_is_refused_with_what_was_typed(string folder, string days, string field, string said)
    {
        await using var app = await TestApp.StartAsync();

        var refused = await app.PostAsync("/backup", ("folder", folder), ("nightly", "on"), ("days", days));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.StatusCode);
        var page = await TestApp.ParseAsync(refused);
        Assert.Contains(said, page.GetElementById($"backup-{field}-wrong")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(days, page.GetElementById("backup-days")!.GetAttribute("value"));
        Assert.True(page.QuerySelector("input[name=nightly]")!.HasAttribute("checked"));
    }

    [Fact]
    public async Task Folder_is_chosen_at_the_workshops_own_computer_alone()
    {
        await using var app = await LanApp.StartAsync();
        var owner = await app.PairAsync(role: "owner");

        var answer = await LanApp.SendAsync(owner, "/backup", ("folder", To), ("days", "14"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains("own computer alone", (await TestApp.ParseAsync(answer)).Body!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Garage_says_that_there_is_none_yet_once_it_is_worth_one_and_that_the_last_is_old()
    {
        var clock = new FakeTimeProvider(new DateTimeOffset(2026, 12, 1, 10, 0, 0, TimeSpan.Zero));
        await using var app = await TestApp.StartAsync(time: clock);
        await app.AddVehicleAsync();
        Assert.DoesNotContain("backup yet", await SaidAsync(app), StringComparison.Ordinal);
        app.Garage.Append("marigold", "Tess Okafor", _ => [.. Enumerable.Range(0, BackupReminder.WorthOne).Select(n => new VehicleDescribed("Marigold", $"Described {n}", null))]);
        Assert.Contains("There is no backup yet", await SaidAsync(app), StringComparison.Ordinal);

        new BackupRecord(app.Folder).Completed(new Backup(app.Folder, To, clock, "InspectLog").Run(stop: TestContext.Current.CancellationToken), To);
        Assert.DoesNotContain("backup", await SaidAsync(app), StringComparison.OrdinalIgnoreCase);
        clock.Advance(TimeSpan.FromDays(15));
        Assert.Contains("The last backup is of 1 December 2026", await SaidAsync(app), StringComparison.Ordinal);
        await app.PostForRedirectAsync("/backup", ("folder", ""), ("days", "30"));
        Assert.DoesNotContain("last backup", await SaidAsync(app), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Backup_is_made_by_night_and_one_that_fails_is_told_in_the_garage_until_one_succeeds()
    {
        var clock = new FakeTimeProvider(new DateTimeOffset(2026, 12, 1, 22, 0, 0, TimeSpan.Zero));
        await using var app = await TestApp.StartAsync(time: clock);
        await app.AddVehicleAsync();
        new BackupRecord(app.Folder).Keep(new(To, true, 14));
        new BackupRecord(app.Folder).Tried(clock.GetUtcNow());
        await File.WriteAllTextAsync(To, "in the way", TestContext.Current.CancellationToken);

        await UntilAsync(app, clock, last => last.Failure is not null);
        Assert.True(clock.GetUtcNow() >= new DateTimeOffset(2026, 12, 2, 2, 0, 0, TimeSpan.Zero));
        Assert.Contains("The last backup failed", await SaidAsync(app), StringComparison.Ordinal);

        File.Delete(To);
        await UntilAsync(app, clock, last => last.Done is not null);
        Assert.True(clock.GetUtcNow() >= new DateTimeOffset(2026, 12, 3, 2, 0, 0, TimeSpan.Zero));
        Assert.DoesNotContain("failed", await SaidAsync(app), StringComparison.Ordinal);
        Assert.True(JournalVerifier.Verify(To).IsIntact);
    }

    [Fact]
    public async Task Backup_whose_disk_is_not_plugged_in_is_told_and_not_made_elsewhere_by_night()
    {
        var clock = new FakeTimeProvider(new DateTimeOffset(2026, 12, 1, 22, 0, 0, TimeSpan.Zero));
        await using var app = await TestApp.StartAsync(time: clock);
        await app.AddVehicleAsync();
        var record = new BackupRecord(app.Folder);
        record.Completed(new Backup(app.Folder, To, clock, "InspectLog").Run(stop: TestContext.Current.CancellationToken), To);
        record.Keep(new(To, true, 14));
        Directory.Move(To, To + "-away");

        await UntilAsync(app, clock, last => last.Failure is not null);

        Assert.False(Directory.Exists(To));
        Assert.Contains("Plug its disk in", await SaidAsync(app), StringComparison.Ordinal);
        await app.PostForRedirectAsync("/backup/now");
        await UntilAsync(app, clock, last => last.Failure is null);
        Assert.True(Backup.IsIn(To));
    }

    [Theory]
    [InlineData(null, "2026-12-02T10:00:00+01:00", true)]
    [InlineData("2026-12-02T01:59:00+01:00", "2026-12-02T02:00:00+01:00", true)]
    [InlineData("2026-12-02T02:00:00+01:00", "2026-12-02T23:00:00+01:00", false)]
    [InlineData("2026-12-01T03:00:00+01:00", "2026-12-02T01:00:00+01:00", false)]
    [InlineData("2026-11-20T03:00:00+01:00", "2026-12-02T01:00:00+01:00", true)]
    public void One_is_due_when_the_hour_has_come_since_the_last(string? last, string now, bool isDue) => Assert.Equal(
        isDue, NightlyBackup.IsDue(last is null ? null : DateTimeOffset.Parse(last, null), DateTimeOffset.Parse(now, null)));

    /// <summary>Lets the clock run until something is noted.</summary>
    private static Task UntilAsync(TestApp app, FakeTimeProvider clock, Predicate<LastBackup> isNoted) => Eventually.GetAsync(() =>
    {
        clock.Advance(TimeSpan.FromMinutes(5));
        return isNoted(new BackupRecord(app.Folder).Last) ? app : null;
    });

    private static async Task<string> SaidAsync(TestApp app) =>
        string.Join('\n', (await app.PageAsync("/")).QuerySelectorAll("[role=note]").Select(one => one.TextContent));
}

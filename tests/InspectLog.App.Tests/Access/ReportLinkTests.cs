using System.Net;
using InspectLog.App.Tests.Web;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Tests.Access;

/// <summary>Links to one report.</summary>
public sealed class ReportLinkTests
{
    [Fact]
    public async Task Link_opens_its_report_until_it_ends()
    {
        await using var app = await LanApp.StartAsync();
        var report = $"{await app.AddInspectionAsync("Bramble")}/report";
        var viewer = await OpenLinkAsync(app, report);

        Assert.Contains("Bramble", (await LanApp.PageAsync(viewer, report)).Title, StringComparison.Ordinal);
        app.Time.Advance(TimeSpan.FromDays(6.9));
        Assert.Equal(HttpStatusCode.OK, await LanApp.StatusAsync(viewer, report));
        app.Time.Advance(TimeSpan.FromDays(0.2));
        Assert.Equal(HttpStatusCode.Unauthorized, await LanApp.StatusAsync(viewer, report));
    }

    [Fact]
    public async Task Link_that_is_over_pairs_nobody()
    {
        await using var app = await LanApp.StartAsync();
        var secret = await GiveLinkAsync(app, $"{await app.AddInspectionAsync("Bramble")}/report");
        app.Time.Advance(TimeSpan.FromDays(8));

        var answer = await LanApp.SendAsync(app.NewPhone(), "/pair", ("secret", secret));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
    }

    [Fact]
    public async Task Revoked_link_opens_nothing()
    {
        await using var app = await LanApp.StartAsync();
        var report = $"{await app.AddInspectionAsync("Bramble")}/report";
        var viewer = await OpenLinkAsync(app, report);

        await LanApp.SendAsync(app.Workshop, $"/devices/{app.Garage.Workshop.Accesses[^1].Number}/revoke");

        Assert.Equal(HttpStatusCode.Unauthorized, await LanApp.StatusAsync(viewer, report));
    }

    [Fact]
    public async Task Viewer_sees_photos_of_the_report_but_not_as_the_camera_made_them()
    {
        await using var app = await LanApp.StartAsync();
        var inspection = await app.AddInspectionAsync("Bramble");
        using var photo = new MultipartFormDataContent { { new ByteArrayContent(PhotoSending.Picture()), "photo", "photo.jpg" } };
        Assert.True((int)(await app.Workshop.PostAsync($"{inspection}/photos", photo, TestContext.Current.CancellationToken)).StatusCode < 400);
        var sha256 = app.Garage.Entries("bramble").Select(entry => entry.Body).OfType<PhotoKept>().Single().Media.Sha256;

        var viewer = await OpenLinkAsync(app, $"{inspection}/report");

        Assert.Equal(HttpStatusCode.OK, await LanApp.StatusAsync(viewer, $"/photos/{sha256}/thumbnail"));
        Assert.Equal(HttpStatusCode.Forbidden, await LanApp.StatusAsync(viewer, $"/media/{sha256}"));
    }

    [Fact]
    public async Task Phone_that_may_see_more_keeps_its_pairing_when_it_opens_a_link()
    {
        await using var app = await LanApp.StartAsync();
        var report = $"{await app.AddInspectionAsync("Bramble")}/report";
        var secret = await GiveLinkAsync(app, report);
        var phone = await app.PairAsync();

        var answer = await LanApp.SendAsync(phone, "/pair", ("secret", secret));

        Assert.Equal(report, answer.Headers.Location!.ToString());
        Assert.Equal(HttpStatusCode.OK, await LanApp.StatusAsync(phone, "/instruments"));
    }

    [Theory]
    [InlineData("", "7")]
    [InlineData("A buyer", "8")]
    [InlineData("A buyer", "")]
    public async Task Link_for_nobody_or_for_another_time_is_refused(string person, string days)
    {
        await using var app = await LanApp.StartAsync();
        var report = $"{await app.AddInspectionAsync("Bramble")}/report";

        var answer = await LanApp.SendAsync(app.Workshop, $"{report}/links", ("person", person), ("days", days));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Empty(app.Garage.Workshop.Accesses);
    }

    [Fact]
    public async Task Program_that_is_not_open_to_the_network_gives_no_link()
    {
        await using var app = await TestApp.StartAsync();
        var inspection = await app.StartInspectionAsync();

        var page = await app.PageAsync($"{inspection}/report/links");
        var answer = await app.PostAsync($"{inspection}/report/links", ("person", "A buyer"), ("days", "7"));

        Assert.Contains("serve --lan", page.Body!.TextContent, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
    }

    public static async Task<HttpClient> OpenLinkAsync(LanApp app, string report)
    {
        var viewer = app.NewPhone();
        var answer = await LanApp.SendAsync(viewer, "/pair", ("secret", await GiveLinkAsync(app, report)));
        Assert.Equal(report, answer.Headers.Location!.ToString());
        return viewer;
    }

    private static async Task<string> GiveLinkAsync(LanApp app, string report)
    {
        var answer = await LanApp.SendAsync(app.Workshop, $"{report}/links", ("person", "A buyer"), ("days", "7"));
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return new Uri((await TestApp.ParseAsync(answer)).QuerySelector(".fingerprint")!.TextContent).Fragment[1..];
    }
}

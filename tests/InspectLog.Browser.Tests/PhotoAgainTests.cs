using InspectLog.Browser.Tests.Support;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace InspectLog.Browser.Tests;

/// <summary>A photo taken from the stand of an earlier one: by a camera that the browser is given, without one, and where the line
/// breaks.</summary>
public sealed class PhotoAgainTests(BrowserFixture fixture, DemoFixture demo) : IClassFixture<DemoFixture>
{
    /// <summary>A camera that sees a drawing.</summary>
    private const string Camera =
        """
        navigator.mediaDevices.getUserMedia = async () => {
          const canvas = document.createElement("canvas");
          Object.assign(canvas, { width: 640, height: 480 });
          const draw = canvas.getContext("2d");
          setInterval(() => { draw.fillStyle = `rgb(${performance.now() % 255}, 90, 60)`; draw.fillRect(0, 0, 640, 480); }, 50);
          return canvas.captureStream(20);
        };
        delete window.ImageCapture;
        """;

    [Fact]
    public async Task Earlier_photo_lies_over_the_camera_and_what_is_taken_stands_at_its_place()
    {
        await using var visit = await Visit.OpenAsync(fixture.Browser, demo.Program);
        await visit.Page.AddInitScriptAsync(Camera);
        var page = visit.Page;
        await OpenAsync(page);
        await Expect(page.Locator(".again-frame video")).ToBeVisibleAsync();
        await Expect(page.Locator(".again-frame img")).ToHaveCSSAsync("opacity", "0.5");
        await page.GetByLabel("Earlier photo").FillAsync("80");
        await Expect(page.Locator(".again-frame img")).ToHaveCSSAsync("opacity", "0.8");

        await visit.Page.Context.SetOfflineAsync(true);
        await page.Button("Take the photo").ClickAsync();
        await Expect(page.GetByText("It is still here")).ToBeVisibleAsync();
        await Expect(page.Button("Keep it on this device")).ToBeVisibleAsync();
        await visit.Page.Context.SetOfflineAsync(false);
        await page.Button("Send it again").ClickAsync();

        await Expect(page.Locator("#check-title")).ToHaveTextAsync("Distributor cap contacts");
        await Expect(page.Locator("#check .shots img")).ToHaveCountAsync(2);
    }

    [Fact]
    public async Task What_is_refused_is_said_and_the_photo_stays_until_another_is_taken()
    {
        await using var visit = await Visit.OpenAsync(fixture.Browser, demo.Program);
        await visit.Page.AddInitScriptAsync(Camera);
        var page = visit.Page;
        await OpenAsync(page);
        await page.RouteAsync("**/photos", route => route.FulfillAsync(new() { Status = 422, ContentType = "text/html", Body = "<div class=\"problems\"><ul><li>The inspection was closed meanwhile.</li></ul></div>" }));

        await page.Button("Take the photo").ClickAsync();

        await Expect(page.GetByText("The inspection was closed meanwhile. It is still here")).ToBeVisibleAsync();
        var kept = await page.RunAndWaitForDownloadAsync(() => page.Button("Keep it on this device").ClickAsync());
        Assert.Equal("photo.jpg", kept.SuggestedFilename);
        await page.Button("Take another").ClickAsync();
        await Expect(page.Button("Take the photo")).ToBeVisibleAsync();
        await Expect(page.Button("Keep it on this device")).ToBeHiddenAsync();
    }

    [Fact]
    public async Task Without_a_camera_the_file_field_stays_and_it_is_said()
    {
        await using var visit = await Visit.OpenAsync(fixture.Browser, demo.Program);
        await visit.Page.AddInitScriptAsync("navigator.mediaDevices.getUserMedia = async () => { throw new DOMException('none', 'NotFoundError'); };");
        await OpenAsync(visit.Page);

        await Expect(visit.Page.GetByText("The camera cannot be used from this page")).ToBeVisibleAsync();
        await Expect(visit.Page.GetByLabel("Take or choose the photo")).ToBeVisibleAsync();
        foreach (var look in Look.All)
        {
            await look.TakeOnAsync(visit.Page);
            Assert.Equal((look, ""), (look, string.Join("; ", await PressTargets.FaultsAsync(visit.Page))));
            Assert.Equal((look, 0), (look, await visit.Page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth")));
        }
    }

    /// <summary>From the wall to the photo of spring, and to the camera.</summary>
    private static async Task OpenAsync(IPage page)
    {
        await page.GotoAsync("/vehicles/marigold/photos?part=cap-contacts-3");
        await page.Locator(".wall a").Last.ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Take it again from the same stand" }).ClickAsync();
        await Expect(page.Locator("h1")).ToContainTextAsync("Again from the same stand");
    }
}

using System.Net;

namespace InspectLog.App.Tests.Web;

/// <summary>Colours for bright sunlight: one press on any page, remembered by the browser, told by the server.</summary>
public sealed class SunlightTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Press_on_any_page_comes_back_to_it_and_every_page_says_so_from_then_on()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var page = await app.PageAsync($"{bench}?check=spark&place=2");
        Assert.Null(page.DocumentElement.GetAttribute("data-sunlight"));
        Assert.Equal("false", page.QuerySelector(".sunlight button")!.GetAttribute("aria-pressed"));

        Assert.Equal($"{bench}?check=spark&place=2", await PressAsync(app, page.QuerySelector(".sunlight input[name=page]")!.GetAttribute("value")!, "true"));

        foreach (var address in new[] { "/", "/instruments", bench })
        {
            var shown = await app.PageAsync(address);
            Assert.Equal("on", shown.DocumentElement.GetAttribute("data-sunlight"));
            Assert.Equal("true", shown.QuerySelector(".sunlight button")!.GetAttribute("aria-pressed"));
        }

        Assert.Equal("/", await PressAsync(app, "/", "false"));
        Assert.Null((await app.PageAsync(bench)).DocumentElement.GetAttribute("data-sunlight"));
    }

    [Theory]
    [InlineData("https://elsewhere.example/")]
    [InlineData("//elsewhere.example/")]
    [InlineData("")]
    public async Task Way_back_to_anywhere_else_leads_to_the_garage(string page)
    {
        await using var app = await TestApp.StartAsync();

        Assert.Equal("/", await PressAsync(app, page, "true"));
    }

    private static async Task<string> PressAsync(TestApp app, string page, string on)
    {
        var answer = await app.Client.PostAsync(
            "/sunlight", new FormUrlEncodedContent([KeyValuePair.Create("page", page), KeyValuePair.Create("on", on)]), Stop);
        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        return answer.Headers.Location!.ToString();
    }
}

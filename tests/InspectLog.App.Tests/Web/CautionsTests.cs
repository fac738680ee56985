using AngleSharp.Html.Dom;

namespace InspectLog.App.Tests.Web;

/// <summary>What can hurt is shown in full until this person had it before them in this inspection, and then in a line
/// that opens.</summary>
public sealed class CautionsTests
{
    private const string Full = ".caution > p.strong";
    private const string Line = ".caution > details:not([open]) > summary";

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Cautions_are_in_full_while_a_check_stays_open_and_a_line_when_it_is_opened_again()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        AssertFull(await app.PageAsync($"{bench}?check=spark"));
        await app.PostForRedirectAsync($"{bench}/observations", ("here", $"{bench}?check=spark"), ("check", "spark"), ("cylinder", "1"), ("condition", "weak"));
        AssertFull(await app.PageAsync($"{bench}?check=spark&place=2"));
        AssertFull(await app.PageAsync($"{bench}?check=coil-secondary-resistance"));

        AssertLine(await app.PageAsync($"{bench}?check=spark"));
        AssertLine(await app.PageAsync($"{bench}?check=spark"));
    }

    [Fact]
    public async Task Another_person_has_them_in_full()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await SeeAsync(app, bench);

        await app.PostForRedirectAsync("/person", ("person", "Imre Vadas"));

        AssertFull(await app.PageAsync($"{bench}?check=spark"));
    }

    [Fact]
    public async Task Next_inspection_has_them_in_full_though_the_same_person_did_the_check_before()
    {
        await using var app = await TestApp.StartAsync();
        var first = await app.StartInspectionAsync();
        await SeeAsync(app, first);
        await app.PostForRedirectAsync($"{first}/observations", ("check", "spark"), ("cylinder", "1"), ("condition", "weak"));
        var page = await app.PageAsync($"{first}/close");
        await app.PostForRedirectAsync($"{first}/close", [.. page.QuerySelectorAll("main form input[name]").Cast<IHtmlInputElement>()
            .Select(input => (input.Name!, input.Name!.StartsWith("tie-", StringComparison.Ordinal) ? "on" : "not today"))]);

        var next = await app.PostForRedirectAsync("/vehicles/marigold/inspections", ("technician", "Tess Okafor"));

        AssertFull(await app.PageAsync($"{next}?check=spark"));
    }

    [Fact]
    public async Task Who_recorded_the_check_in_this_inspection_has_a_line_in_a_browser_opened_later()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync($"{bench}/observations", ("check", "spark"), ("cylinder", "1"), ("condition", "weak"));
        using var later = TestApp.NewClient(app.Address);
        await later.PostAsync("/person", new FormUrlEncodedContent([KeyValuePair.Create("person", "Tess Okafor")]), Stop);

        AssertLine(await TestApp.ParseAsync(await later.GetAsync($"{bench}?check=spark", Stop)));
        AssertFull(await TestApp.ParseAsync(await later.GetAsync($"{bench}?check=coil-secondary-resistance", Stop)));
    }

    [Fact]
    public async Task Garbled_memory_shows_them_in_full()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        using var client = new HttpClient(new SocketsHttpHandler { UseCookies = false }) { BaseAddress = app.Address };
        client.DefaultRequestHeaders.Add("Cookie", "seen=..spark_spark_%00.x");

        AssertFull(await TestApp.ParseAsync(await client.GetAsync($"{bench}?check=spark", Stop)));
    }

    private static async Task SeeAsync(TestApp app, string bench)
    {
        await app.PageAsync($"{bench}?check=spark");
        await app.PageAsync($"{bench}?check=coil-secondary-resistance");
        AssertLine(await app.PageAsync($"{bench}?check=spark"));
    }

    private static void AssertFull(IHtmlDocument page)
    {
        Assert.Equal("What can hurt", page.QuerySelector(Full)!.TextContent);
        Assert.Null(page.QuerySelector(Line));
    }

    private static void AssertLine(IHtmlDocument page)
    {
        Assert.Equal("What can hurt", page.QuerySelector(Line)!.TextContent);
        Assert.Null(page.QuerySelector(Full));
    }
}

using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Tests.Web;

/// <summary>Who did it: the person chosen in the browser that sent it.</summary>
public sealed class PersonTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Entries_of_two_browsers_on_one_inspection_have_an_actor_each()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        using var other = TestApp.NewClient(app.Address);
        await ChooseAsync(other, ("person", "Imre Vadas"));

        await app.PostForRedirectAsync($"{bench}/notes", ("text", "By the first"));
        await PostAsync(other, $"{bench}/notes", ("text", "By the second"));
        await PostAsync(other, "/instruments", ("name", "Bench meter"), ("accuracy", "0.5% + 2"), ("resolution", "0.01"), ("unit", "kΩ"));
        await PostAsync(other, "/words", ("phrase", "sparkler"), ("check", "ignition-breakerless/plug-condition"), ("condition", ""));

        var notes = app.Garage.Entries("marigold").Where(entry => entry.Body is NoteWritten).Select(entry => entry.Actor);
        Assert.Equal(["Tess Okafor", "Imre Vadas"], notes);
        Assert.Equal("Imre Vadas", Assert.Single(app.Garage.Workshop.Words).Actor);
    }

    [Fact]
    public async Task Nobody_is_asked_for_by_every_page_and_records_as_the_workshop()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        using var other = TestApp.NewClient(app.Address);

        foreach (var address in new[] { "/", "/instruments", "/vehicles/marigold", bench, $"{bench}?check=spark" })
        {
            var link = (await PageAsync(other, address)).QuerySelector("a[href='/person']")!;
            Assert.Equal("Who is working?", link.TextContent.Trim());
        }

        await PostAsync(other, $"{bench}/notes", ("text", "By nobody"));
        Assert.Equal("Workshop", app.Garage.Entries("marigold")[^1].Actor);
    }

    [Fact]
    public async Task Known_name_is_chosen_in_one_press_shown_everywhere_and_offered_at_the_next_start()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        using var other = TestApp.NewClient(app.Address);
        using var opened = new HttpRequestMessage(HttpMethod.Get, "/person");
        opened.Headers.Referrer = new Uri(app.Address, $"{bench}?check=spark&place=2");
        var page = await TestApp.ParseAsync(await other.SendAsync(opened, Stop));
        Assert.Equal(["Tess Okafor"], page.QuerySelectorAll("button[name=known]").Select(button => button.TextContent));

        var answer = await ChooseAsync(
            other, ("back", page.QuerySelector<IHtmlInputElement>("input[name=back]")!.Value), ("known", "Tess Okafor"), ("person", ""));

        Assert.Equal($"{bench}?check=spark&place=2", answer.Headers.Location!.ToString());
        Assert.Equal("Working: Tess Okafor", (await PageAsync(other, bench)).QuerySelector(".who")!.TextContent.Trim());
        var vehicle = await app.AddVehicleAsync("Teasel");
        Assert.Equal("Tess Okafor", (await PageAsync(other, vehicle)).QuerySelector<IHtmlInputElement>("#start-technician")!.Value);
    }

    [Fact]
    public async Task Start_offers_who_worked_last_where_nobody_was_chosen()
    {
        await using var app = await TestApp.StartAsync();
        await app.StartInspectionAsync();
        var vehicle = await app.AddVehicleAsync("Teasel");
        using var other = TestApp.NewClient(app.Address);

        Assert.Equal("Tess Okafor", (await PageAsync(other, vehicle)).QuerySelector<IHtmlInputElement>("#start-technician")!.Value);
    }

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    [InlineData("Tess\r\nOkafor")]
    [InlineData("-- \u200b --")]
    public async Task Name_that_is_none_is_refused_and_nobody_is_chosen(string name)
    {
        await using var app = await TestApp.StartAsync();
        using var client = TestApp.NewClient(app.Address);

        var answer = await PostAsync(client, "/person", ("person", name));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.NotNull((await TestApp.ParseAsync(answer)).QuerySelector("#person-person-wrong"));
        Assert.Equal("Who is working?", (await PageAsync(client, "/instruments")).QuerySelector(".who")!.TextContent.Trim());
    }

    [Fact]
    public async Task Name_without_end_is_refused_and_stays_in_the_field()
    {
        await using var app = await TestApp.StartAsync();
        using var client = TestApp.NewClient(app.Address);
        var name = new string('n', 81);

        var page = await TestApp.ParseAsync(await PostAsync(client, "/person", ("person", name)));
        Assert.Equal("Keep the name to 80 characters.", page.QuerySelector("#person-person-wrong")!.TextContent);
        Assert.Equal(name, page.QuerySelector<IHtmlInputElement>("#person-person")!.Value);

        var vehicle = await app.AddVehicleAsync();
        var started = await app.PostAsync($"{vehicle}/inspections", ("technician", name));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, started.StatusCode);
        Assert.Equal("Keep the name to 80 characters.", (await TestApp.ParseAsync(started)).QuerySelector("#start-technician-wrong")!.TextContent);
    }

    [Theory]
    [InlineData("technician=%00")]
    [InlineData("technician=Tess%0AOkafor")]
    [InlineData("technician=%E2%80%AEtess")]
    [InlineData("technician=%")]
    public async Task Cookie_that_holds_no_name_is_nobody(string cookie)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        using var client = new HttpClient(new SocketsHttpHandler { UseCookies = false, AllowAutoRedirect = false }) { BaseAddress = app.Address };
        client.DefaultRequestHeaders.Add("Origin", app.Address.GetLeftPart(UriPartial.Authority));
        client.DefaultRequestHeaders.Add("Cookie", cookie);

        await PostAsync(client, $"{bench}/notes", ("text", "By whom?"));

        Assert.Equal("Workshop", app.Garage.Entries("marigold")[^1].Actor);
    }

    [Theory]
    [InlineData("//elsewhere.example/")]
    [InlineData("https://elsewhere.example/")]
    [InlineData("/\\elsewhere.example")]
    [InlineData("/person")]
    public async Task Choosing_leads_back_to_pages_of_the_program_only(string back)
    {
        await using var app = await TestApp.StartAsync();

        Assert.Equal("/", (await ChooseAsync(app.Client, ("back", back), ("person", "Imre Vadas"))).Headers.Location!.ToString());
    }

    private static async Task<HttpResponseMessage> ChooseAsync(HttpClient client, params (string Name, string Value)[] fields)
    {
        var answer = await PostAsync(client, "/person", fields);
        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        return answer;
    }

    private static Task<HttpResponseMessage> PostAsync(HttpClient client, string address, params (string Name, string Value)[] fields) =>
        client.PostAsync(
            address, new FormUrlEncodedContent(fields.Select(field => KeyValuePair.Create(field.Name, field.Value))), Stop);

    private static async Task<IHtmlDocument> PageAsync(HttpClient client, string address) =>
        await TestApp.ParseAsync(await client.GetAsync(address, Stop));
}

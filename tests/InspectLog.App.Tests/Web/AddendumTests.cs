using System.Net;
using System.Net.Http.Headers;
using AngleSharp.Dom;
using InspectLog.Checks;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;

namespace InspectLog.App.Tests.Web;

/// <summary>Adding to an inspection that is closed.</summary>
public sealed class AddendumTests
{
    private static readonly CheckSheet Sheet = BuiltInSheets.Find(BuiltInSheets.IgnitionBreakerless6)!;

    [Fact]
    public async Task Note_and_reading_are_added_after_closing_and_stand_in_the_report_with_who_and_when()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await ClosedAsync(app);
        var checks = Inspection(app).LeftOut;

        var to = await app.PostForRedirectAsync($"{bench}/addendum/notes", ("text", "The owner found the receipt"), ("check", "spark"));
        await app.PostForRedirectAsync($"{bench}/addendum/readings", ("at", "lead-resistance/3"), ("value", "9.4k"));

        Assert.Equal($"{bench}/report#later", to);
        var later = (await app.PageAsync($"{bench}/report")).QuerySelector("#later")!.TextContent;
        Assert.Contains("The owner found the receipt", later, StringComparison.Ordinal);
        Assert.Contains("by Tess Okafor", later, StringComparison.Ordinal);
        Assert.Contains("Lead resistance, lead 3", later, StringComparison.Ordinal);
        Assert.Equal(2, Inspection(app).Addenda.Count());
        Assert.Empty(Inspection(app).Readings);
        Assert.Empty(Inspection(app).LooseEnds);
        Assert.Equal(checks, Inspection(app).LeftOut);
    }

    [Fact]
    public async Task Later_reading_is_decided_by_the_limits_and_shown_with_its_strip()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await ClosedAsync(app);

        await app.PostForRedirectAsync($"{bench}/addendum/readings", ("at", "coil-secondary-resistance"), ("value", "9.4k"));

        var reading = Assert.IsType<Recorded<ReadingDecided>>(Assert.Single(Inspection(app).Addenda)).Body;
        Assert.Equal(Measuring.Decision.Pass, reading.Conformity!.Decision);
        Assert.NotNull((await app.PageAsync($"{bench}/report")).QuerySelector("#later svg.strip, #later .strip"));
    }

    [Fact]
    public async Task Unlikely_value_is_asked_about_before_it_is_added()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await ClosedAsync(app);

        var answer = await app.PostAsync($"{bench}/addendum/readings", ("at", "coil-secondary-resistance"), ("value", "9.4 Ω"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Empty(Inspection(app).Addenda);
        var asked = (await TestApp.ParseAsync(answer)).QuerySelectorAll("form").First(form => form.QuerySelector("[name=meant]") is not null);
        await app.PostForRedirectAsync(
            asked.GetAttribute("action")!,
            [.. asked.QuerySelectorAll("input").Select(input => (input.GetAttribute("name")!, input.GetAttribute("value") ?? ""))]);
        Assert.Single(Inspection(app).Addenda);
    }

    [Theory]
    [InlineData("notes", "text", " ", "at", "")]
    [InlineData("notes", "text", "A note", "check", "tyres")]
    [InlineData("readings", "value", "9.4k", "at", "spark/1")]
    [InlineData("readings", "value", "a lot", "at", "lead-resistance/1")]
    [InlineData("readings", "value", "9.4k", "at", "")]
    [InlineData("photos", "caption", "No photo", "at", "")]
    public async Task Faulty_addendum_is_refused_and_keeps_what_was_typed(string what, string field, string typed, string other, string text)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await ClosedAsync(app);

        var answer = await app.PostAsync($"{bench}/addendum/{what}", (field, typed), (other, text));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        var page = await TestApp.ParseAsync(answer);
        Assert.NotNull(page.QuerySelector(".problems"));
        Assert.Contains(page.QuerySelectorAll("input, textarea"), one => (one.GetAttribute("value") ?? one.TextContent).Contains(typed.Trim(), StringComparison.Ordinal));
        Assert.Empty(Inspection(app).Addenda);
    }

    [Fact]
    public async Task Photo_is_added_with_its_place_and_caption()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await ClosedAsync(app);
        using var picture = new Image<Rgb24>(64, 48);
        using var bytes = new MemoryStream();
        await picture.SaveAsJpegAsync(bytes, TestContext.Current.CancellationToken);
        var photo = new ByteArrayContent(bytes.ToArray());
        photo.Headers.ContentType = new MediaTypeHeaderValue("image/jpeg");

        var answer = await app.Client.PostAsync(
            $"{bench}/addendum/photos",
            new MultipartFormDataContent
            {
                { new StringContent("cap-contacts/2"), "at" }, { new StringContent("After cleaning"), "caption" }, { photo, "photo", "cap.jpg" },
            },
            TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        Assert.Empty(Inspection(app).Photos);
        var caption = (await app.PageAsync($"{bench}/report")).QuerySelector("#later figcaption")!.TextContent;
        Assert.Contains("Cap contacts, tower 2", caption, StringComparison.Ordinal);
        Assert.Contains("After cleaning", caption, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nothing_is_added_later_to_an_open_inspection()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        var answer = await app.PostAsync($"{bench}/addendum/notes", ("text", "Too early"));
        var page = await app.Client.GetAsync($"{bench}/addendum", TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Equal(bench, page.Headers.Location!.ToString());
        Assert.Empty(Inspection(app).Captures);
    }

    [Fact]
    public async Task Addendum_sent_twice_is_added_once()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await ClosedAsync(app);

        for (var i = 0; i < 2; i++)
        {
            await app.PostForRedirectAsync($"{bench}/addendum/notes", ("capture", "once"), ("text", "The owner found the receipt"));
        }

        Assert.Single(Inspection(app).Addenda);
    }

    [Fact]
    public async Task Closed_inspection_leads_to_the_addendum_from_its_page_and_its_report()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await ClosedAsync(app);

        foreach (var address in new[] { bench, $"{bench}/report" })
        {
            var link = (await app.PageAsync(address)).QuerySelectorAll("a").Single(one => one.TextContent.Trim() == "Add to it");
            Assert.Equal($"{bench}/addendum", link.GetAttribute("href"));
        }

        await app.PageAsync($"{bench}/addendum");
    }

    [Fact]
    public async Task Everything_else_on_a_closed_inspection_is_refused()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await ClosedAsync(app);

        foreach (var (address, field, text) in new[]
        {
            ("notes", "text", "Forgotten"), ("loose-ends", "text", "Air filter off"), ("checks/spark/leave-out", "reason", "No fuel"), ("close", "reason-spark", "No fuel"),
        })
        {
            Assert.Equal(HttpStatusCode.Conflict, (await app.PostAsync($"{bench}/{address}", (field, text))).StatusCode);
        }
    }

    private static async Task<string> ClosedAsync(TestApp app)
    {
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync($"{bench}/close", [.. Sheet.Checks.Select(check => ($"reason-{check.Id}", "Not today"))]);
        app.Client.DefaultRequestHeaders.Add("Cookie", "technician=Tess%20Okafor");
        return bench;
    }

    private static InspectionState Inspection(TestApp app) => app.Garage.FindVehicle("marigold")!.Inspections[0];
}

using System.Net;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Tests.Web;

/// <summary>What an inspection recorded as replaced is offered as a new part, which a person takes or refuses.</summary>
public sealed class WearOfferTests
{
    [Fact]
    public async Task Part_recorded_as_replaced_is_offered_as_fitted_and_counts_once_a_person_records_it()
    {
        await using var app = await TestApp.StartAsync();
        var (vehicle, part) = await OfferedAsync(app);

        Assert.Contains("due since 3 May 2003", await TextAsync(app, vehicle, ".attention-list"), StringComparison.Ordinal);
        Assert.Contains("Recorded as replaced on", await TextAsync(app, vehicle, ".wear-parts"), StringComparison.Ordinal);
        var form = await app.PageAsync(part);
        var day = form.QuerySelector("#fitting-fittedOn")!.GetAttribute("value")!;
        Assert.Equal("85200", form.QuerySelector("#fitting-odometer")!.GetAttribute("value"));

        await app.PostForRedirectAsync($"{part}/fitted", ("fittedOn", day), ("odometer", "85200"), ("odometerUnit", "km"));

        var page = await app.PageAsync(vehicle);
        Assert.Null(page.QuerySelector(".attention-list"));
        Assert.DoesNotContain("Recorded as replaced", page.QuerySelector(".wear-parts")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Offer_goes_once_a_person_says_why_no_new_one_counts()
    {
        await using var app = await TestApp.StartAsync();
        var (vehicle, part) = await OfferedAsync(app);
        var upTo = (await app.PageAsync(part)).QuerySelector("input[name=upTo]")!.GetAttribute("value")!;

        await app.PostForRedirectAsync($"{part}/not-renewed", ("upTo", upTo), ("reason", "A used one was put in."));
        await app.PostForRedirectAsync($"{part}/not-renewed", ("upTo", upTo), ("reason", "A used one was put in."));

        var page = await app.PageAsync(vehicle);
        Assert.DoesNotContain("Recorded as replaced", page.QuerySelector(".wear-parts")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("due since 3 May 2003", page.QuerySelector(".attention-list")!.TextContent, StringComparison.Ordinal);
        var after = await app.PageAsync(part);
        Assert.Contains("A used one was put in.", after.QuerySelector("main")!.TextContent, StringComparison.Ordinal);
        Assert.Null(after.QuerySelector("input[name=upTo]"));
        Assert.Contains("no new one of part", await TextAsync(app, $"{vehicle}/journal", ".journal"), StringComparison.Ordinal);
        Assert.Single(app.Garage.Entries("marigold"), entry => entry.Body is WearPartNotRenewed);
        Assert.Single(app.Garage.FindVehicle("marigold")!.Inspections[0].Actions);
    }

    [Fact]
    public async Task Offer_refused_without_a_reason_stays_and_asks_for_one()
    {
        await using var app = await TestApp.StartAsync();
        var (_, part) = await OfferedAsync(app);
        var upTo = (await app.PageAsync(part)).QuerySelector("input[name=upTo]")!.GetAttribute("value")!;

        var answer = await app.PostAsync($"{part}/not-renewed", ("upTo", upTo), ("reason", " "));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        var page = await TestApp.ParseAsync(answer);
        Assert.NotNull(page.QuerySelector("#not-renewed-reason-wrong"));
        Assert.Null(page.QuerySelector("#fitting-fittedOn-wrong"));
        Assert.NotNull(page.QuerySelector("input[name=upTo]"));
        Assert.DoesNotContain(app.Garage.Entries("marigold"), entry => entry.Body is WearPartNotRenewed);
    }

    [Theory]
    [InlineData("")]
    [InlineData("1")]
    [InlineData("soon")]
    public async Task Refusing_an_offer_that_is_no_longer_the_one_made_changes_nothing(string upTo)
    {
        await using var app = await TestApp.StartAsync();
        var (vehicle, part) = await OfferedAsync(app);

        await app.PostForRedirectAsync($"{part}/not-renewed", ("upTo", upTo), ("reason", "A used one was put in."));

        Assert.Contains("Recorded as replaced", await TextAsync(app, vehicle, ".wear-parts"), StringComparison.Ordinal);
        Assert.DoesNotContain(app.Garage.Entries("marigold"), entry => entry.Body is WearPartNotRenewed);
        Assert.Equal(HttpStatusCode.NotFound, (await app.PostAsync("/vehicles/marigold/parts/99/not-renewed", ("reason", "none"))).StatusCode);
    }

    /// <summary>A rotor that is due, and one that an inspection recorded as replaced.</summary>
    private static async Task<(string Vehicle, string Part)> OfferedAsync(TestApp app)
    {
        var vehicle = await app.AddVehicleAsync();
        await app.PostForRedirectAsync($"{vehicle}/parts/new", [("name", "Rotor"), ("fittedOn", "2001-05-03"), ("months", "24")]);
        await app.PostForRedirectAsync($"{vehicle}/inspections", ("odometer", "85200"));
        app.Garage.Append("marigold", "Tess Okafor", now => [new ActionDone(now.OpenInspection!.Number, "rotor-blade", null, "replaced", null)]);
        return (vehicle, (await app.PageAsync(vehicle)).QuerySelector(".wear-parts a")!.GetAttribute("href")!);
    }

    private static async Task<string> TextAsync(TestApp app, string address, string selector) =>
        (await app.PageAsync(address)).QuerySelector(selector)!.TextContent;
}

using System.Net;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Tests.Web;

/// <summary>Trends on the vehicle's page and on pages of their own.</summary>
public sealed class TrendTests
{
    [Fact]
    public async Task Check_read_in_two_inspections_gets_a_drawing_its_words_and_a_page()
    {
        await using var app = await TestApp.StartAsync();
        var vehicle = await app.AddVehicleAsync();
        await InspectAsync(app, vehicle, "80000", ("lead-resistance", "4", "8.8", "kΩ"));
        await InspectAsync(app, vehicle, "90000", ("lead-resistance", "4", "9.4", "kΩ"));

        var card = (await app.PageAsync(vehicle)).QuerySelector(".trend-card")!;
        Assert.Contains("Lead resistance, lead 4", card.TextContent, StringComparison.Ordinal);
        Assert.Contains("Not enough data", card.TextContent, StringComparison.Ordinal);
        Assert.NotNull(card.QuerySelector("svg.trend"));

        var page = await app.PageAsync(card.QuerySelector("a")!.GetAttribute("href")!);
        Assert.Equal(2, page.QuerySelectorAll("tbody tr").Length);
        Assert.Contains("at most 22\u00a0kΩ", page.Body!.TextContent, StringComparison.Ordinal);
        Assert.Contains("by=odometer", page.QuerySelector(".axis-choice")!.InnerHtml, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Odometer_is_no_choice_where_an_inspection_lacks_it()
    {
        await using var app = await TestApp.StartAsync();
        var vehicle = await app.AddVehicleAsync();
        await InspectAsync(app, vehicle, "80000", ("supply-voltage", "", "12.4", "V"));
        await InspectAsync(app, vehicle, "", ("supply-voltage", "", "12.3", "V"));

        var page = await app.PageAsync($"{vehicle}/trends/supply-voltage?by=odometer");

        Assert.Null(page.QuerySelector(".axis-choice"));
    }

    [Theory]
    [InlineData("/vehicles/nobody/trends/supply-voltage")]
    [InlineData("/vehicles/marigold/trends/supply-voltage")]
    [InlineData("/vehicles/marigold/trends/nothing?by=date&place=many")]
    [InlineData("/vehicles/marigold/trends/spark")]
    public async Task Trend_that_is_not_there_gets_a_page_that_says_so(string address)
    {
        await using var app = await TestApp.StartAsync();
        await InspectAsync(app, await app.AddVehicleAsync(), "", ("supply-voltage", "", "12.4", "V"));

        var answer = await app.Client.GetAsync(address, TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }

    private static async Task InspectAsync(
        TestApp app, string vehicle, string odometer, params (string Check, string Place, string Value, string Unit)[] readings)
    {
        var bench = await app.PostForRedirectAsync($"{vehicle}/inspections", ("odometer", odometer));
        foreach (var (check, place, value, unit) in readings)
        {
            await app.PostForRedirectAsync(
                $"{bench}/readings", ("check", check), ("cylinder", place), ("value", value), ("unit", unit));
        }

        app.Garage.Append("marigold", "Tess Okafor", now => [new InspectionClosed(now.OpenInspection!.Number)]);
    }
}

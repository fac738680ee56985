using System.Net;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;

namespace InspectLog.App.Tests.Web;

/// <summary>Values that are put right, that a journal holds already, or that are less than the test leads.</summary>
public sealed partial class NotShownTests
{
    [Fact]
    public async Task Value_put_right_is_held_to_the_meter_it_was_read_with()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await StartAsync(app);
        await app.PostForRedirectAsync($"{bench}/readings", ("check", Circuit), ("value", "1.2"), ("unit", "Ω"), ("instrument", "low"));
        var entry = Inspection(app).Readings[0].Sequence;

        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await app.AmendAsync(bench, entry, ("value", "1.25"))).StatusCode);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await app.AmendAsync(bench, entry, ("value", "9.4k"))).StatusCode);
        Assert.Equal([1.2], ((DisplayedReading)Assert.Single(Readings(app)).Reading).Values);

        await app.AmendAsync(bench, entry, ("value", "1.25"), ("meant", "1.3"));
        Assert.Equal([1.3], ((DisplayedReading)Assert.Single(Readings(app)).Reading).Values);
    }

    [Fact]
    public async Task Reading_in_the_journal_that_its_meter_cannot_show_stays_and_can_be_moved()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await StartAsync(app);
        app.Garage.Append("marigold", "Tess Okafor", now =>
        [
            new ReadingDecided(
                now.OpenInspection!.Number, "lead-resistance", 1, new DisplayedReading([25_005], Stated, 10), "25.005k", Meters[1], null, null, []),
        ]);
        var entry = Inspection(app).Readings[0].Sequence;

        Assert.Contains("25.005", (await app.PageAsync($"{bench}?check=lead-resistance&place=1")).Body!.TextContent, StringComparison.Ordinal);
        await app.AmendAsync(bench, entry, ("cylinder", "2"));

        Assert.Equal(2, Assert.Single(Readings(app)).Cylinder);
    }

    [Fact]
    public async Task Reading_below_the_leads_is_taken_within_its_uncertainty_and_said_to_be_as_good_as_zero()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await StartAsync(app);

        await app.PostForRedirectAsync(
            $"{bench}/readings", ("check", Circuit), ("value", "0.2"), ("unit", "Ω"), ("instrument", "low"), ("leads", "0.3"), ("meant", "0.2"));

        Assert.Contains("as good as 0", (await app.PageAsync($"{bench}?check={Circuit}")).QuerySelector("#result")!.TextContent, StringComparison.Ordinal);
        var refused = await app.PostAsync(
            $"{bench}/readings", ("check", Circuit), ("value", "0.2"), ("unit", "Ω"), ("instrument", "low"), ("leads", "4"), ("meant", "0.2"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.StatusCode);
        Assert.Single(Readings(app));
    }
}

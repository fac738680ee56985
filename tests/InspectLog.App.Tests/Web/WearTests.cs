using System.Net;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Tests.Web;

/// <summary>Parts that wear: watching them, fitting new ones, and what is refused.</summary>
public sealed class WearTests
{
    private static readonly (string, string)[] Due =
        [("name", "Spark plugs"), ("fittedOn", "2001-05-03"), ("months", "24"), ("odometer", "80 000"), ("distance", "20000")];

    [Fact]
    public async Task Due_part_is_shown_on_the_vehicle_and_in_the_garage_until_a_new_one_is_fitted()
    {
        await using var app = await TestApp.StartAsync();
        var vehicle = await app.AddVehicleAsync();

        await app.PostForRedirectAsync($"{vehicle}/parts/new", Due);

        Assert.Contains("Spark plugs: due since 3 May 2003", await TextAsync(app, vehicle, ".attention-list"), StringComparison.Ordinal);
        Assert.Contains("Spark plugs: due since 3 May 2003", await TextAsync(app, "/", ".vehicle-card"), StringComparison.Ordinal);

        var part = (await app.PageAsync(vehicle)).QuerySelector(".wear-parts a")!.GetAttribute("href")!;
        var today = TimeProvider.System.GetLocalNow().ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
        await app.PostForRedirectAsync($"{part}/fitted", ("fittedOn", today), ("odometer", "101000"));

        Assert.Null((await app.PageAsync(vehicle)).QuerySelector(".attention-list"));
        Assert.Contains("at 121 000 km", (await TextAsync(app, vehicle, ".wear-parts")).Replace('\u00a0', ' '), StringComparison.Ordinal);
        Assert.Contains("3 May 2001", await TextAsync(app, part, "main"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Odometer_of_an_inspection_makes_a_part_due()
    {
        await using var app = await TestApp.StartAsync();
        var vehicle = await app.AddVehicleAsync();
        await app.PostForRedirectAsync($"{vehicle}/parts/new", [("name", "Rotor"), ("fittedOn", "2026-01-02"), ("odometer", "80000"), ("distance", "5000")]);

        await app.PostForRedirectAsync($"{vehicle}/inspections", ("odometer", "85200"));

        Assert.Contains("Rotor: due for 200 km", (await TextAsync(app, vehicle, ".attention-list")).Replace('\u00a0', ' '), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Retired_part_is_gone_from_the_page_and_stays_in_the_journal()
    {
        await using var app = await TestApp.StartAsync();
        var vehicle = await app.AddVehicleAsync();
        await app.PostForRedirectAsync($"{vehicle}/parts/new", Due);
        var part = (await app.PageAsync(vehicle)).QuerySelector(".wear-parts a")!.GetAttribute("href")!;

        await app.PostForRedirectAsync($"{part}/retire");
        var again = await app.PostAsync($"{part}/retire");

        Assert.Null((await app.PageAsync(vehicle)).QuerySelector(".wear-parts"));
        Assert.Contains("is no longer watched", await TextAsync(app, $"{vehicle}/journal", ".journal"), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, again.StatusCode);
    }

    [Theory]
    [InlineData("name", "")]
    [InlineData("name", "A name that goes on and on and on and on and on and on and on and on and on and on and on.")]
    [InlineData("fittedOn", "")]
    [InlineData("fittedOn", "3 May")]
    [InlineData("fittedOn", "2026-02-30")]
    [InlineData("fittedOn", "2999-01-01")]
    [InlineData("fittedOn", "0026-05-03")]
    [InlineData("months", "two")]
    [InlineData("months", "0")]
    [InlineData("months", "1201")]
    [InlineData("odometer", "80,5")]
    [InlineData("distance", "far")]
    [InlineData("distance", "0")]
    public async Task Part_that_makes_no_sense_is_refused_with_what_was_typed(string field, string typed)
    {
        await using var app = await TestApp.StartAsync();
        var vehicle = await app.AddVehicleAsync();

        var answer = await app.PostAsync($"{vehicle}/parts/new", [.. Due.Where(one => one.Item1 != field), (field, typed)]);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        var page = await TestApp.ParseAsync(answer);
        Assert.NotNull(page.QuerySelector($"#part-{field}-wrong"));
        Assert.Equal(typed, page.QuerySelector($"#part-{field}")!.GetAttribute("value"));
        Assert.Empty(app.Garage.FindVehicle("marigold")!.WearParts);
    }

    [Fact]
    public async Task Part_without_any_interval_is_refused()
    {
        await using var app = await TestApp.StartAsync();
        var vehicle = await app.AddVehicleAsync();

        var answer = await app.PostAsync($"{vehicle}/parts/new", ("name", "Cap"), ("fittedOn", "2026-05-03"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.NotNull((await TestApp.ParseAsync(answer)).QuerySelector("#part-months-wrong"));
    }

    [Fact]
    public async Task Fitting_that_makes_no_sense_is_refused()
    {
        await using var app = await TestApp.StartAsync();
        var vehicle = await app.AddVehicleAsync();
        await app.PostForRedirectAsync($"{vehicle}/parts/new", Due);
        var part = (await app.PageAsync(vehicle)).QuerySelector(".wear-parts a")!.GetAttribute("href")!;

        var answer = await app.PostAsync($"{part}/fitted", ("fittedOn", "soon"), ("odometer", "9999999999"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        var page = await TestApp.ParseAsync(answer);
        Assert.NotNull(page.QuerySelector("#fitting-fittedOn-wrong"));
        Assert.NotNull(page.QuerySelector("#fitting-odometer-wrong"));
        Assert.Single(app.Garage.FindVehicle("marigold")!.WearParts[0].Fittings);
    }

    [Fact]
    public async Task Interval_can_be_set_anew_and_what_was_said_before_stays_in_the_journal()
    {
        await using var app = await TestApp.StartAsync();
        var vehicle = await app.AddVehicleAsync();
        await app.PostForRedirectAsync($"{vehicle}/parts/new", Due);
        var part = (await app.PageAsync(vehicle)).QuerySelector(".wear-parts a")!.GetAttribute("href")!;
        Assert.Equal("24", (await app.PageAsync(part)).QuerySelector("#interval-months")!.GetAttribute("value"));

        await app.PostForRedirectAsync($"{part}/interval", ("months", "1200"), ("distance", ""));
        await app.PostForRedirectAsync($"{part}/interval", ("months", "1200"), ("distance", ""));

        Assert.Null((await app.PageAsync(vehicle)).QuerySelector(".attention-list"));
        Assert.Contains("1200 months", await TextAsync(app, part, ".facts"), StringComparison.Ordinal);
        var journal = await TextAsync(app, $"{vehicle}/journal", ".journal");
        Assert.Contains("lasts 24 months or 20", journal, StringComparison.Ordinal);
        Assert.Single(app.Garage.Entries("marigold"), entry => entry.Body is WearPartIntervalSet);
    }

    [Theory]
    [InlineData("", "", "months")]
    [InlineData("two", "", "months")]
    [InlineData("", "0", "distance")]
    public async Task Interval_that_makes_no_sense_is_refused(string months, string distance, string field)
    {
        await using var app = await TestApp.StartAsync();
        var vehicle = await app.AddVehicleAsync();
        await app.PostForRedirectAsync($"{vehicle}/parts/new", Due);
        var part = (await app.PageAsync(vehicle)).QuerySelector(".wear-parts a")!.GetAttribute("href")!;

        var answer = await app.PostAsync($"{part}/interval", ("months", months), ("distance", distance));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.NotNull((await TestApp.ParseAsync(answer)).QuerySelector($"#interval-{field}-wrong"));
        Assert.Equal(24, app.Garage.FindVehicle("marigold")!.WearParts[0].Interval.Months);
    }

    [Theory]
    [InlineData("/vehicles/nobody/parts/new")]
    [InlineData("/vehicles/marigold/parts/1")]
    [InlineData("/vehicles/marigold/parts/99")]
    public async Task Part_that_is_not_there_gets_a_page_that_says_so(string address)
    {
        await using var app = await TestApp.StartAsync();
        await app.AddVehicleAsync();

        var answer = await app.Client.GetAsync(address, TestContext.Current.CancellationToken);
        var posted = await app.PostAsync(address.EndsWith("new", StringComparison.Ordinal) ? address : $"{address}/fitted", Due);

        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, posted.StatusCode);
    }

    private static async Task<string> TextAsync(TestApp app, string address, string selector) =>
        (await app.PageAsync(address)).QuerySelector(selector)!.TextContent;
}

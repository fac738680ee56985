using System.Net;
using InspectLog.Checks;
using InspectLog.Inspecting.Workings;

namespace InspectLog.App.Tests.Web;

/// <summary>The sheets for contact points, for compression and leak-down, and for charging and starting, on the pages: places
/// of any noun and values of every kind.</summary>
public sealed class FurtherSheetTests
{
    private const string Charging = BuiltInSheets.ChargingStarting;
    private const string Compression = BuiltInSheets.CompressionLeakDown;
    private const string Points = BuiltInSheets.IgnitionContactBreaker;

    public static TheoryData<string> Sheets => [Points, Compression, Charging];

    [Theory]
    [MemberData(nameof(Sheets))]
    public async Task Page_of_the_sheet_tells_of_each_check(string id)
    {
        await using var app = await TestApp.StartAsync();
        var page = await app.PageAsync($"/sheets/{id}");

        foreach (var check in BuiltInSheets.Find(id)!.Checks)
        {
            var article = MendedBench.TextOf(page.QuerySelector($"#{check.Id}")!);
            Assert.Contains(check.Question, article, StringComparison.Ordinal);
            Assert.Contains(check.Cautions[0], article, StringComparison.Ordinal);
            Assert.Equal(check.PerCylinder, article.Contains($"Once for each {check.PlaceNoun}.", StringComparison.Ordinal));
        }
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public async Task Bench_opens_at_every_check_with_its_places_and_every_figure_of_the_sheet(string id)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await StartAsync(app, id, "4");
        var sheet = BuiltInSheets.Find(id)!.For(4);

        foreach (var check in sheet.Checks)
        {
            var page = await app.PageAsync($"{bench}?check={check.Id}");
            Assert.Contains(check.Cautions[0], page.Body!.TextContent, StringComparison.Ordinal);
            if (check is { PerCylinder: true, Conditions.Count: > 0 })
            {
                Assert.Equal(sheet.PlacesOf(check).Count(), page.QuerySelectorAll("#observe-cylinder input").Length);
            }
        }

        foreach (var kind in WorkingKinds.On(sheet))
        {
            var answer = await app.Client.GetAsync($"{bench}/workings/{kind.Id}", TestContext.Current.CancellationToken);
            Assert.True(answer.StatusCode is HttpStatusCode.OK or HttpStatusCode.UnprocessableEntity, kind.Id); // which asks for what is not read yet
        }
    }

    // One or two of every kind of quantity; common practice, no source.
    [Theory]
    [InlineData(Points, "coil-feed-voltage", "12.3", "V", "", "Pass.")]
    [InlineData(Points, "coil-secondary-winding", "9.4", "kΩ", "", "Pass.")]
    [InlineData(Points, "condenser", "0.22", "µF", "", "Pass.")]
    [InlineData(Points, "condenser", "900", "nF", "", "Fail.")]
    [InlineData(Points, "contact-points", "0.40", "mm", "", "Pass.")]
    [InlineData(Points, "dwell-ratio", "58", "%", "", "Pass.")]
    [InlineData(Points, "vacuum-advance", "0.5", "min", "", "Pass.")]
    [InlineData(Points, "vacuum-advance", "4", "s", "", "Fail.")]
    [InlineData(Points, "idle-speed", "1400", "rpm", "", "Fail.")]
    [InlineData(Compression, "cranking-speed", "250", "rpm", "", "Pass.")]
    [InlineData(Compression, "oil-temperature", "180", "°F", "", "Pass.")]
    [InlineData(Compression, "compression", "11.2", "bar", "2", "Pass.")]
    [InlineData(Compression, "compression", "60", "psi", "3", "Fail.")]
    [InlineData(Compression, "leak-down", "8", "%", "1", "Pass.")]
    [InlineData(Compression, "leak-down", "45", "%", "4", "Fail.")]
    [InlineData(Compression, "plug-torque", "18", "lbf·ft", "1", "Pass.")]
    [InlineData(Charging, "battery-rest-voltage", "11.2", "V", "", "Fail.")]
    [InlineData(Charging, "cell-density", "1.27", "g/cm³", "6", "Pass.")]
    [InlineData(Charging, "cell-density", "1100", "kg/m³", "3", "Fail.")]
    [InlineData(Charging, "quiescent-current", "12", "mA", "", "Pass.")]
    [InlineData(Charging, "cranking-current", "150", "A", "", "Pass.")]
    [InlineData(Charging, "starting-time", "2.5", "s", "", "Pass.")]
    [InlineData(Charging, "starting-time", "14", "s", "", "Fail.")]
    [InlineData(Charging, "brush-length", "9", "mm", "2", "Pass.")]
    public async Task Reading_of_each_kind_is_decided_on_the_page(string sheet, string check, string value, string unit, string place, string says)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await StartAsync(app, sheet, "4");

        await app.MeasureAsync(bench, check, value, unit, place);

        var page = await app.PageAsync($"{bench}?check={check}{(place.Length > 0 ? $"&place={place}" : "")}");
        Assert.Contains(says, MendedBench.TextOf(page.QuerySelector("#result")!), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Angle_without_limits_is_recorded()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await StartAsync(app, Points, "4");

        await app.MeasureAsync(bench, "dwell-angle", "52", "°");

        Assert.Null(app.Inspection().Readings[0].Body.Conformity);
    }

    [Fact]
    public async Task Places_with_names_are_shown_and_recorded_by_them()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await StartAsync(app, Charging, "6");

        var before = await app.PageAsync($"{bench}?check=battery-terminals");
        await app.SeeAsync(bench, "battery-terminals", "corroded", "2");
        await app.DoAsync(bench, "battery-terminals", "disconnected", "2");
        var after = await app.PageAsync($"{bench}?check=battery-terminals");

        Assert.Equal(["Positive terminal", "Negative terminal"], before.QuerySelectorAll("#observe-cylinder label > span").Select(MendedBench.TextOf));
        Assert.Equal(2, app.Inspection().Observations[0].Body.Cylinder);
        Assert.Contains("negative terminal", MendedBench.TextOf(after.QuerySelector("#captures")!), StringComparison.OrdinalIgnoreCase);
        Assert.Contains("Negative terminal", (await app.PageAsync($"{bench}/report")).Body!.TextContent, StringComparison.OrdinalIgnoreCase);
    }

    [Theory]
    [InlineData("battery-terminals", "3", "corroded", "Choose a terminal: positive or negative.")]
    [InlineData("cell-level", "7", "dry", "Choose a cell from 1 to 6.")]
    [InlineData("brush-length", "3", "worn", "Choose a brush from 1 to 2.")]
    public async Task Place_the_check_does_not_have_is_refused_with_those_it_has(string check, string place, string condition, string says)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await StartAsync(app, Charging, "8");

        var answer = await app.PostAsync($"{bench}/observations", ("check", check), ("cylinder", place), ("condition", condition));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains(says, (await TestApp.ParseAsync(answer)).Body!.TextContent, StringComparison.Ordinal);
        Assert.Empty(app.Inspection().Observations);
    }

    [Fact]
    public async Task Cranking_test_leaves_ignition_and_fuel_to_be_put_right_and_the_plug_of_its_cylinder()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await StartAsync(app, Compression, "4");

        await app.MeasureAsync(bench, "compression", "11.2", "bar", "2");
        await app.MeasureAsync(bench, "compression", "11.4", "bar", "3");

        var ends = app.Inspection().OpenLooseEnds.Select(end => end.What.Text).ToList();
        Assert.Single(ends, "Ignition disabled");
        Assert.Single(ends, "Fuel supply disabled");
        Assert.Contains("Spark plug out, cylinder 2", ends);
        Assert.Contains("Spark plug out, cylinder 3", ends);
    }

    [Fact]
    public async Task Wet_compression_is_decided_by_its_rise_over_the_dry_one()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await StartAsync(app, Compression, "4");
        await app.MeasureAsync(bench, "compression", "6", "bar", "2");

        await app.MeasureAsync(bench, "compression-wet", "10", "bar", "2");

        var page = await app.PageAsync($"{bench}?check=compression-wet&place=2");
        Assert.Contains("Fail.", MendedBench.TextOf(page.QuerySelector("#result")!), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Cells_are_compared_under_their_own_name()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await StartAsync(app, Charging, "4");
        foreach (var (value, cell) in new[] { ("1.27", "1"), ("1.26", "2"), ("1.27", "3"), ("1.15", "6") })
        {
            await app.MeasureAsync(bench, "cell-density", value, "g/cm³", cell);
        }

        var text = MendedBench.TextOf((await app.PageAsync($"{bench}/workings/spread?check=Acid%20density")).Body!);

        Assert.Contains("Lowest, cell 6", text, StringComparison.Ordinal);
        Assert.DoesNotContain("ylinder 6", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Own_word_is_taken_for_a_check_of_any_sheet()
    {
        await using var app = await TestApp.StartAsync();

        await app.PostForRedirectAsync("/words", ("check", $"{Charging}/battery-terminals"), ("condition", "corroded"), ("phrase", "mouldy"));

        Assert.Contains("mouldy", (await app.PageAsync("/words")).Body!.TextContent, StringComparison.Ordinal);
    }

    private static async Task<string> StartAsync(TestApp app, string sheet, string cylinders) =>
        await app.PostForRedirectAsync($"{await app.AddVehicleAsync(cylinders: cylinders)}/inspections", ("sheet", sheet));
}

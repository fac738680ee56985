using System.Net;
using InspectLog.Checks;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Tests.Web;

/// <summary>A vehicle is offered what fits its engine, and an inspection keeps the places it was started with.</summary>
public sealed class SheetChoiceTests
{
    [Theory]
    [InlineData("4", 4)]
    [InlineData("12", 12)]
    public async Task Places_follow_the_vehicle(string cylinders, int places)
    {
        await using var app = await TestApp.StartAsync();
        var vehicle = await app.AddVehicleAsync(cylinders: cylinders);

        var bench = await app.PostForRedirectAsync($"{vehicle}/inspections");
        var page = await app.PageAsync($"{bench}?check=lead-condition");
        var refused = await app.PostAsync(
            $"{bench}/observations", ("check", "lead-condition"), ("cylinder", $"{places + 1}"), ("condition", "burnt"));

        Assert.Equal(places, Started(app).Cylinders);
        Assert.Equal(places, page.QuerySelectorAll("#observe-cylinder input").Length);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.StatusCode);
    }

    [Fact]
    public async Task Engine_no_sheet_is_for_gets_a_sentence_and_no_start()
    {
        await using var app = await TestApp.StartAsync();
        var vehicle = await app.AddVehicleAsync(cylinders: "7");

        var page = await app.PageAsync(vehicle);
        var answer = await app.PostAsync($"{vehicle}/inspections", ("cylinders", "6"));

        Assert.Contains(
            "No check sheet is for an engine with 7 cylinders: they are for 1, 2, 3, 4, 5, 6, 8, 10 and 12.",
            page.Body!.TextContent, StringComparison.Ordinal);
        Assert.Null(page.QuerySelector("form.start"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Empty(app.Garage.FindVehicle("marigold")!.Inspections);
    }

    [Fact]
    public async Task Unknown_engine_is_asked_for_in_the_press_that_starts_and_remembered()
    {
        await using var app = await TestApp.StartAsync();
        var vehicle = await app.AddVehicleAsync(cylinders: "");
        var first = await app.PageAsync(vehicle);
        Assert.Equal(
            ["1", "2", "3", "4", "5", "6", "8", "10", "12"],
            first.QuerySelectorAll("#start-cylinders button[name=cylinders]").Select(button => button.GetAttribute("value")));
        Assert.Equal("Start with 1 cylinder", first.QuerySelector("#start-cylinders button")!.TextContent);
        Assert.NotEmpty(first.QuerySelectorAll(".start-fields ~ #start-cylinders"));

        await app.PostForRedirectAsync($"{vehicle}/inspections", ("cylinders", "8"));
        Assert.Equal(8, Started(app).Cylinders);
        app.Garage.Append("marigold", "Tess Okafor", now => [new InspectionClosed(now.OpenInspection!.Number)]);

        var again = await app.PageAsync(vehicle);
        Assert.Equal("8", again.QuerySelector("form.start button.main.big")!.GetAttribute("value"));
    }

    [Theory]
    [InlineData("", "Choose how many cylinders the engine has.")]
    [InlineData("many", "Choose how many cylinders the engine has.")]
    [InlineData("7", "is for 3, 4, 5, 6, 8 and 12 cylinders, not for 7.")]
    public async Task Start_without_a_number_that_fits_is_refused(string cylinders, string says)
    {
        await using var app = await TestApp.StartAsync();
        var vehicle = await app.AddVehicleAsync(cylinders: "");

        var answer = await app.PostAsync($"{vehicle}/inspections", ("cylinders", cylinders));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains(says, (await TestApp.ParseAsync(answer)).Body!.TextContent, StringComparison.Ordinal);
        Assert.Empty(app.Garage.FindVehicle("marigold")!.Inspections);
    }

    [Fact]
    public async Task Inspection_keeps_its_places_when_the_engine_is_described_otherwise()
    {
        await using var app = await TestApp.StartAsync();
        var vehicle = await app.AddVehicleAsync(cylinders: "4");
        var bench = await app.PostForRedirectAsync($"{vehicle}/inspections");

        await app.PostForRedirectAsync($"{vehicle}/describe", ("name", "Marigold"), ("cylinders", "12"));

        var page = await app.PageAsync($"{bench}?check=lead-condition");
        Assert.Equal(4, page.QuerySelectorAll("#observe-cylinder input").Length);
    }

    [Fact]
    public async Task Earlier_id_starts_with_the_sheet_that_goes_on_from_it()
    {
        await using var app = await TestApp.StartAsync();
        var vehicle = await app.AddVehicleAsync();

        await app.PostForRedirectAsync($"{vehicle}/inspections", ("sheet", "ignition-breakerless-6"));

        var sheet = BuiltInSheets.All[0];
        Assert.Equal((sheet.Id, sheet.Version, sheet.Sha256), (Started(app).Sheet, Started(app).SheetVersion, Started(app).SheetSha256));
    }

    [Theory]
    [InlineData("2", BuiltInSheets.CompressionLeakDown, BuiltInSheets.ChargingStarting)]
    [InlineData("5", BuiltInSheets.IgnitionBreakerless, BuiltInSheets.IgnitionInDepth, BuiltInSheets.CompressionLeakDown, BuiltInSheets.ChargingStarting)]
    [InlineData(
        "4", BuiltInSheets.IgnitionBreakerless, BuiltInSheets.IgnitionInDepth, BuiltInSheets.IgnitionContactBreaker,
        BuiltInSheets.CompressionLeakDown, BuiltInSheets.ChargingStarting)]
    public async Task Vehicle_is_offered_the_sheets_that_fit_its_engine_and_no_other(string cylinders, params string[] sheets)
    {
        await using var app = await TestApp.StartAsync();
        var vehicle = await app.AddVehicleAsync(cylinders: cylinders);

        var offered = (await app.PageAsync(vehicle)).QuerySelectorAll("form.start select[name=sheet] option");
        var others = BuiltInSheets.All.Select(sheet => sheet.Id).Except(sheets);

        Assert.Equal(sheets, offered.Select(option => option.GetAttribute("value")));
        foreach (var other in others)
        {
            Assert.Equal(HttpStatusCode.UnprocessableEntity, (await app.PostAsync($"{vehicle}/inspections", ("sheet", other))).StatusCode);
        }
    }

    private static InspectionStarted Started(TestApp app) => app.Garage.FindVehicle("marigold")!.OpenInspection!.How;
}

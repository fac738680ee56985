using System.Net;
using InspectLog.App.Vehicles;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Tests.Web;

/// <summary>Vehicles: adding, describing, and what is not there.</summary>
public sealed class VehicleTests
{
    [Fact]
    public async Task Vehicle_needs_a_name_only()
    {
        await using var app = await TestApp.StartAsync();

        var address = await app.AddVehicleAsync("Teasel");

        Assert.Equal("/vehicles/teasel", address);
        Assert.Equal("Teasel", app.Garage.FindVehicle("teasel")!.Name);
    }

    [Fact]
    public async Task Many_inspections_are_shown_in_stretches_that_lead_to_each_other()
    {
        await using var app = await TestApp.StartAsync();
        var vehicle = await app.AddVehicleAsync("Teasel");
        var sheet = Checks.BuiltInSheets.All[0];
        for (var visit = 0; visit < InspectionStretch.Length + 2; visit++)
        {
            var number = app.Garage.Append("teasel", "Tess Okafor", _ =>
                [new InspectionStarted(sheet.Id, sheet.Version, sheet.Sha256, "Tess Okafor", null, null)]).OpenInspection!.Number;
            app.Garage.Append("teasel", "Tess Okafor", _ => [new InspectionClosed(number)]);
        }

        var newest = await app.PageAsync(vehicle);
        Assert.Equal(InspectionStretch.Length, newest.QuerySelectorAll(".timeline > li").Length);
        var older = newest.QuerySelectorAll("a.button").Single(link => link.TextContent == "2 earlier inspections");
        var oldest = await app.PageAsync(older.GetAttribute("href")!);
        Assert.Equal(2, oldest.QuerySelectorAll(".timeline > li").Length);
        Assert.DoesNotContain("earlier inspection", oldest.QuerySelector("main")!.TextContent, StringComparison.Ordinal);
        Assert.Single(oldest.QuerySelectorAll("a.button"), link => link.TextContent == "The newest inspections");
    }

    [Theory]
    [InlineData("")]
    [InlineData("none")]
    [InlineData("0")]
    [InlineData("-3")]
    [InlineData("99999999999999999999")]
    public async Task Stretch_of_inspections_that_is_none_shows_the_newest(string before)
    {
        await using var app = await TestApp.StartAsync();
        await app.StartInspectionAsync();

        Assert.Single((await app.PageAsync($"/vehicles/marigold?before={before}")).QuerySelectorAll(".timeline > li"));
    }

    [Fact]
    public async Task Vehicle_without_a_name_is_refused()
    {
        await using var app = await TestApp.StartAsync();

        var answer = await app.PostAsync("/vehicles/new", ("name", "  "), ("description", "1968 van"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Empty(app.Garage.Vehicles());
    }

    [Fact]
    public async Task Private_facts_are_an_entry_of_their_own()
    {
        await using var app = await TestApp.StartAsync();

        await app.PostForRedirectAsync(
            "/vehicles/new", ("name", "Teasel"), ("owner", "Ines Halloran"), ("vin", "VAN-0042"));

        Assert.Equal("Ines Halloran", app.Garage.FindVehicle("teasel")!.Private!.Owner);
        Assert.Equal(["vehicle-added", "private-facts"], app.Garage.Entries("teasel").Select(entry => entry.Kind));
    }

    [Theory]
    [InlineData("6", "1-5-3-6-2")]
    [InlineData("6", "1-5-3-6-2-2")]
    [InlineData("", "1-5-3-6-2-4")]
    [InlineData("six", "")]
    [InlineData("40", "")]
    public async Task Engine_layout_that_makes_no_sense_is_refused(string cylinders, string firingOrder)
    {
        await using var app = await TestApp.StartAsync();

        var answer = await app.PostAsync(
            "/vehicles/new", ("name", "Teasel"), ("cylinders", cylinders), ("firingOrder", firingOrder));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Empty(app.Garage.Vehicles());
    }

    [Theory]
    [InlineData("/vehicles/nobody")]
    [InlineData("/vehicles/nobody/inspections/1")]
    [InlineData("/vehicles/nobody/journal")]
    [InlineData("/vehicles/nobody/limits/spark")]
    [InlineData("/sheets/nothing")]
    public async Task What_is_not_there_gets_a_page_that_says_so(string address)
    {
        await using var app = await TestApp.StartAsync();

        var answer = await app.Client.GetAsync(address, TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        Assert.Equal("text/html", answer.Content.Headers.ContentType?.MediaType);
    }

    [Fact]
    public async Task Private_facts_that_are_emptied_are_gone_from_the_page_and_stand_in_the_journal()
    {
        await using var app = await TestApp.StartAsync();
        var vehicle = await app.AddVehicleAsync();
        await app.PostForRedirectAsync(
            $"{vehicle}/describe", ("name", "Marigold"), ("owner", "Tess Okafor"), ("contact", "by post"), ("vin", "X1"));
        Assert.Contains("Tess Okafor", (await app.PageAsync(vehicle)).QuerySelector("#private")!.TextContent, StringComparison.Ordinal);

        await app.PostForRedirectAsync($"{vehicle}/describe", ("name", "Marigold"), ("owner", ""), ("contact", ""), ("vin", ""));

        Assert.Null((await app.PageAsync(vehicle)).QuerySelector("#private"));
        Assert.Null(app.Garage.FindVehicle("marigold")!.Private);
        Assert.Equal(
            [new PrivateFactsNoted("Tess Okafor", "by post", "X1"), new PrivateFactsNoted("", "", "")],
            app.Garage.Entries("marigold").Select(entry => entry.Body).OfType<PrivateFactsNoted>());

        // Emptied once is enough.
        await app.PostForRedirectAsync($"{vehicle}/describe", ("name", "Marigold"), ("owner", ""), ("contact", ""), ("vin", ""));
        Assert.Equal(2, app.Garage.Entries("marigold").Count(entry => entry.Body is PrivateFactsNoted));
    }

    [Fact]
    public async Task Form_without_the_private_fields_leaves_them_alone()
    {
        await using var app = await TestApp.StartAsync();
        var vehicle = await app.AddVehicleAsync();
        await app.PostForRedirectAsync($"{vehicle}/describe", ("name", "Marigold"), ("owner", "Tess Okafor"));

        await app.PostForRedirectAsync($"{vehicle}/describe", ("name", "Marigold the second"));

        Assert.Equal("Tess Okafor", app.Garage.FindVehicle("marigold")!.Private!.Owner);
    }

    [Fact]
    public async Task Starting_an_inspection_twice_opens_one()
    {
        await using var app = await TestApp.StartAsync();
        var vehicle = await app.AddVehicleAsync();

        var first = await app.PostForRedirectAsync($"{vehicle}/inspections", ("technician", "Tess Okafor"));
        var second = await app.PostForRedirectAsync($"{vehicle}/inspections", ("technician", "Tess Okafor"));

        Assert.Equal(first, second);
    }

    [Theory]
    [InlineData("12,5")]
    [InlineData("many")]
    [InlineData("-3")]
    public async Task Odometer_that_is_no_whole_number_is_refused(string odometer)
    {
        await using var app = await TestApp.StartAsync();
        var vehicle = await app.AddVehicleAsync();

        var answer = await app.PostAsync($"{vehicle}/inspections", ("odometer", odometer));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Empty(app.Garage.FindVehicle("marigold")!.Inspections);
    }

    [Theory]
    [InlineData("", "Ω", "0.8%+3", "0.1")]
    [InlineData("Meter", "furlong", "0.8%+3", "0.1")]
    [InlineData("Meter", "Ω", "quite good", "0.1")]
    [InlineData("Meter", "Ω", "0.8%+3", "0,1")]
    [InlineData("Meter", "Ω", "0.8%+3", "0")]
    public async Task Instrument_that_makes_no_sense_is_refused(
        string name, string unit, string accuracy, string resolution)
    {
        await using var app = await TestApp.StartAsync();

        var answer = await app.PostAsync(
            "/instruments", ("name", name), ("unit", unit), ("accuracy", accuracy), ("resolution", resolution));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Empty(app.Garage.Workshop.Instruments);
    }

    [Fact]
    public async Task Instrument_of_the_workshop_is_used_for_its_readings()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync(
            "/instruments", ("name", "Bench meter"), ("unit", "Ω"), ("accuracy", "0.5%+2"), ("resolution", "0.01"));

        await app.PostForRedirectAsync(
            $"{bench}/readings", ("check", "coil-circuit-resistance"), ("value", "1.94"), ("unit", "Ω"));

        var instrument = app.Garage.FindVehicle("marigold")!.Inspections[0].Readings[0].Body.Instrument!;
        Assert.Equal(("bench-meter", 0.5, 0.01), (instrument.Id, instrument.Accuracy.PercentOfReading, instrument.Resolution));
    }
}

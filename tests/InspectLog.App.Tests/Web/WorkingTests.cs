using System.Net;

namespace InspectLog.App.Tests.Web;

/// <summary>Pages that work out derived figures.</summary>
public sealed class WorkingTests
{
    /// <summary>12 V over 1.5 Ω is 8 A by Ohm's law; of the 12 V the ballast's half of the resistance drops half.</summary>
    [Fact]
    public async Task Coil_circuit_shows_its_working_with_the_inspections_own_reading()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync(
            $"{bench}/readings", ("check", "coil-circuit-resistance"), ("value", "1.5"), ("unit", "Ω"));

        var page = await app.PageAsync($"{bench}/workings/coil-circuit");
        Assert.Equal("1.5", page.QuerySelector("input[name=total]")!.GetAttribute("value"));

        var worked = await app.PageAsync($"{bench}/workings/coil-circuit?total=1.5&ballast=0.75&rest=12&running=14");
        var results = worked.QuerySelectorAll(".result").Select(result => result.TextContent).ToList();
        Assert.Contains("Current 8 A", results);
        Assert.Contains("Voltage across the ballast resistor 6 V", results);
    }

    [Fact]
    public async Task Routing_names_the_wrong_towers_and_draws_the_cap()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        var page = await app.PageAsync(
            $"{bench}/workings/routing?order=1-5-3-6-2-4&turn=clockwise&first=1&found=1,5,3,6,4,2");

        Assert.Contains("2 leads are wrong", page.Body!.TextContent, StringComparison.Ordinal);
        Assert.Contains("fires cylinder 4 on cylinder 2's turn", page.Body.TextContent, StringComparison.Ordinal);
        Assert.NotNull(page.QuerySelector("svg.cap-drawing"));
    }

    [Theory]
    [InlineData("coil-circuit?total=1,5&ballast=0.7&rest=12&running=14")]
    [InlineData("coil-circuit?total=1.5&ballast=2&rest=12&running=14")]
    [InlineData("routing?order=1/6-2/5-3/4&turn=clockwise&first=1&found=1,2,3")]
    [InlineData("routing?order=1-5-3-6-2-4&turn=clockwise&first=9&found=1,5,3,6,2,4")]
    [InlineData("spread?check=Lead%20resistance")]
    public async Task Working_that_cannot_be_done_says_why(string address)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        var answer = await app.Client.GetAsync($"{bench}/workings/{address}", TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.NotEqual("", (await TestApp.ParseAsync(answer)).QuerySelector(".problems")!.TextContent.Trim());
    }

    [Fact]
    public async Task Every_working_opens_on_an_empty_inspection()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        foreach (var kind in App.Workings.WorkingKinds.All)
        {
            var answer = await app.Client.GetAsync($"{bench}/workings/{kind.Id}", TestContext.Current.CancellationToken);
            Assert.Contains(answer.StatusCode, new[] { HttpStatusCode.OK, HttpStatusCode.UnprocessableEntity });
            Assert.Contains(kind.Title, (await TestApp.ParseAsync(answer)).QuerySelector("h1")!.TextContent, StringComparison.Ordinal);
        }
    }
}

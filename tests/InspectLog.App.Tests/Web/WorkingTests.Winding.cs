using System.Net;
using InspectLog.Measuring;

namespace InspectLog.App.Tests.Web;

/// <content>How warm a winding is by its resistance.</content>
public sealed partial class WorkingTests
{
    // 9 kΩ at 20 °C have 9·(235 + 80)/255 = 11.1176 kΩ at 80 °C (IEC 60034-1, from memory).
    [Fact]
    public async Task Winding_read_cold_and_hot_shows_its_temperature_with_the_uncertainty_of_both()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        foreach (var value in new[] { "9", "11.12" })
        {
            await app.PostForRedirectAsync($"{bench}/readings", ("check", "coil-secondary-resistance"), ("value", value), ("unit", "kΩ"));
        }

        var page = await app.PageAsync($"{bench}/workings/winding-temperature");
        Assert.Equal("9", page.QuerySelector("input[name=cold]")!.GetAttribute("value"));
        Assert.Equal("11.12", page.QuerySelector("input[name=hot]")!.GetAttribute("value"));

        var worked = await app.PageAsync($"{bench}/workings/winding-temperature?cold=9&coldTemperature=20&hot=11.12&air=25");
        var results = worked.QuerySelectorAll(".result").Select(result => result.TextContent).ToList();
        Assert.Contains(results, result => result.StartsWith("Winding temperature 80", StringComparison.Ordinal) && result.Contains('±', StringComparison.Ordinal));
        Assert.Contains(results, result => result.StartsWith("Rise above the air 55", StringComparison.Ordinal) && result.EndsWith(" K", StringComparison.Ordinal));
    }

    // A reading referred to 20 °C is the winding's resistance at 20 °C, whatever it had when it was read.
    [Fact]
    public async Task Winding_that_was_referred_is_filled_in_at_the_temperature_it_was_referred_to()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync(
            $"{bench}/readings", ("check", "coil-secondary-resistance"), ("value", "9"), ("unit", "kΩ"), ("temperature", "65"), ("within", "2"));
        Assert.NotNull(((DisplayedReading)app.Inspection().Readings[0].Body.Reading).Winding);

        var page = await app.PageAsync($"{bench}/workings/winding-temperature");

        Assert.Equal("7.65", page.QuerySelector("input[name=cold]")!.GetAttribute("value"));
        Assert.Equal("20", page.QuerySelector("input[name=coldTemperature]")!.GetAttribute("value"));
        Assert.Equal("", page.QuerySelector("input[name=hot]")!.GetAttribute("value") ?? "");
    }

    [Fact]
    public async Task Winding_of_impossible_temperature_is_said()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        var answer = await app.Client.GetAsync(
            $"{bench}/workings/winding-temperature?cold=9&coldTemperature=900&hot=11&air=25", TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains("between −60 and 300 °C", (await TestApp.ParseAsync(answer)).QuerySelector(".problems")!.TextContent, StringComparison.Ordinal);
    }
}

using System.Net;

namespace InspectLog.App.Tests.Web;

/// <summary>What would be refused is not offered, and test leads are held against the meter as the value is.</summary>
public sealed partial class NotShownTests
{
    // 25 V or 25,000 V: no multimeter reaches the latter.
    [Fact]
    public async Task Meaning_that_no_meter_shows_is_not_offered_and_the_other_is_still_asked_about()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        var asked = await TestApp.ParseAsync(await app.PostAsync(
            $"{bench}/readings", ("check", "supply-voltage"), ("value", "25,000"), ("unit", "V")));

        var question = asked.QuerySelector("[data-question]")!;
        var buttons = question.QuerySelectorAll("button[name=meant]").Select(button => button.TextContent.Trim()).ToList();
        Assert.Equal(["25\u00a0V"], buttons);
        Assert.Contains("25000\u00a0V is more than the", question.TextContent, StringComparison.Ordinal);
        Assert.Contains("Is it 25\u00a0V?", question.TextContent, StringComparison.Ordinal);
        Assert.Empty(Readings(app));

        await app.PostForRedirectAsync($"{bench}/readings", [.. Answer(asked, 0)]);
        Assert.Equal(25, Assert.Single(Readings(app)).Conformity!.Value);
    }

    [Theory]
    [InlineData("low", "0.25", "steps of 0.1\u00a0Ω, not 0.25\u00a0Ω")]
    [InlineData("low", "0.2", null)]
    public async Task Test_leads_between_steps_are_refused_beside_their_field(string meter, string leads, string? says)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await StartAsync(app);

        var answer = await app.PostAsync(
            $"{bench}/readings", ("check", Circuit), ("value", "1.5"), ("unit", "Ω"), ("instrument", meter), ("leads", leads));

        if (says is null)
        {
            Assert.NotEqual(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
            Assert.Single(Readings(app));
            return;
        }

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains(says, (await TestApp.ParseAsync(answer)).QuerySelector("#measure-leads-wrong")!.TextContent, StringComparison.Ordinal);
        Assert.Empty(Readings(app));
    }
}

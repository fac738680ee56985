using System.Net;
using AngleSharp.Dom;

namespace InspectLog.App.Tests.Web;

/// <summary>Saying in the report how soon something is to be seen to.</summary>
public sealed class UrgencyTests
{
    [Fact]
    public async Task Press_in_the_report_moves_it_and_says_whose_word_it_is_also_after_closing()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await BurntAsync(app);
        await app.CloseAsync(bench);
        var before = await app.PageAsync($"{bench}/report");
        Assert.Equal("Now", HeadingOver(before, "tower 2"));
        var form = before.QuerySelector("#attention details form")!;
        Assert.Equal(["soon", "later"], form.QuerySelectorAll("button").Select(button => button.GetAttribute("value")));

        var back = await app.PostForRedirectAsync(form.GetAttribute("action")!, ("check", form.QuerySelector("input[name=check]")!.GetAttribute("value")!), ("urgency", "later"));

        Assert.Equal($"{bench}/report#attention", back);
        var after = await app.PageAsync($"{bench}/report");
        Assert.Equal("Later", HeadingOver(after, "tower 2"));
        Assert.Contains("(later, says ", after.QuerySelector("#attention")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Same_word_twice_is_one_entry()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await BurntAsync(app);
        await app.PostForRedirectAsync($"{bench}/urgency", ("check", "cap-contacts"), ("urgency", "soon"));
        var next = app.Garage.FindVehicle("marigold")!.NextSequence;

        await app.PostForRedirectAsync($"{bench}/urgency", ("check", "cap-contacts"), ("urgency", "soon"));

        Assert.Equal(next, app.Garage.FindVehicle("marigold")!.NextSequence);
    }

    [Theory]
    [InlineData("cap-contacts", "at once")]
    [InlineData("cap-contacts", "")]
    [InlineData("boot-lid", "now")]
    public async Task What_is_no_check_or_no_such_word_is_refused_and_changes_nothing(string check, string urgency)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await BurntAsync(app);
        var next = app.Garage.FindVehicle("marigold")!.NextSequence;

        var answer = await app.PostAsync($"{bench}/urgency", ("check", check), ("urgency", urgency));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Equal(next, app.Garage.FindVehicle("marigold")!.NextSequence);
    }

    private static async Task<string> BurntAsync(TestApp app)
    {
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync($"{bench}/observations", ("check", "cap-contacts"), ("cylinder", "2"), ("condition", "burnt"));
        return bench;
    }

    private static string HeadingOver(IDocument page, string text)
    {
        IElement? at = page.QuerySelectorAll("#attention li").Single(line => line.TextContent.Contains(text, StringComparison.Ordinal)).ParentElement;
        while (at is not null && at.LocalName != "h3")
        {
            at = at.PreviousElementSibling;
        }

        return at!.TextContent;
    }
}

using System.Net;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Tests.Web;

/// <summary>Name and address of the workshop at the head of reports.</summary>
public sealed class LetterheadTests
{
    [Fact]
    public async Task Name_and_address_stand_at_the_head_of_reports_until_they_are_emptied()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        Assert.Equal("/letterhead", await app.PostForRedirectAsync("/letterhead", ("name", " Okafor & Daughter "), ("address", "3 Mill Lane\r\n\r\n Hazelbrook ")));

        var head = (await app.PageAsync($"{bench}/report")).QuerySelector("main header")!;
        Assert.StartsWith("Okafor & Daughter", head.TextContent.Trim(), StringComparison.Ordinal);
        Assert.Contains("3 Mill Lane", head.TextContent, StringComparison.Ordinal);
        Assert.Equal(2, head.QuerySelectorAll("p")[0].QuerySelectorAll("br").Length);
        var page = await app.PageAsync("/letterhead");
        Assert.Equal("Okafor & Daughter", page.QuerySelector("input[name=name]")!.GetAttribute("value"));
        Assert.Equal("3 Mill Lane\nHazelbrook", page.QuerySelector("textarea")!.TextContent);

        await app.PostForRedirectAsync("/letterhead", ("name", ""), ("address", ""));

        Assert.Null(app.Garage.Workshop.Named);
        Assert.StartsWith("Condition report", (await app.PageAsync($"{bench}/report")).QuerySelector("main header")!.TextContent.Trim(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Saved_twice_is_one_entry()
    {
        await using var app = await TestApp.StartAsync();
        await app.PostForRedirectAsync("/letterhead", ("name", "Okafor"), ("address", "Hazelbrook"));
        var named = app.Garage.Workshop.Named;

        await app.PostForRedirectAsync("/letterhead", ("name", "Okafor"), ("address", "Hazelbrook"));

        Assert.Same(named, app.Garage.Workshop.Named);
    }

    [Theory]
    [InlineData("name")]
    [InlineData("address")]
    public async Task What_is_too_long_is_refused_with_what_was_typed(string field)
    {
        await using var app = await TestApp.StartAsync();
        var typed = new string('x', 101);

        var answer = await app.PostAsync("/letterhead", (field, typed), (field == "name" ? "address" : "name", "Hazelbrook"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains(typed, await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
        Assert.Null(app.Garage.Workshop.Named);
    }

    [Fact]
    public async Task Seven_lines_are_too_many_for_an_address()
    {
        await using var app = await TestApp.StartAsync();

        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await app.PostAsync("/letterhead", ("name", "a"), ("address", "1\n2\n3\n4\n5\n6\n7"))).StatusCode);
        await app.PostForRedirectAsync("/letterhead", ("name", "a"), ("address", "1\n2\n3\n4\n5\n6"));
        Assert.Equal(new WorkshopNamed("a", "1\n2\n3\n4\n5\n6"), app.Garage.Workshop.Named);
    }
}

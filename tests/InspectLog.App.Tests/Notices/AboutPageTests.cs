using InspectLog.App.Garages;
using InspectLog.App.Tests.Web;

namespace InspectLog.App.Tests.Notices;

public sealed class AboutPageTests
{
    [Fact]
    public async Task About_lists_each_work_of_the_notices_with_version_and_licence()
    {
        await using var app = await TestApp.StartAsync();
        var page = await app.PageAsync(Links.About);

        var rows = page.QuerySelectorAll("[aria-labelledby=licences] tbody tr")
            .Select(row => row.Children.Select(cell => cell.TextContent.Trim()).ToArray());

        Assert.Equal(ThirdPartyNotices.Works().Select(work => new[] { work.Name, work.Version, work.Use, work.Licence }), rows);
        Assert.Contains(rows, row => row[0] == "CMU Pronouncing Dictionary");
    }

    [Fact]
    public async Task About_leads_to_the_licences_in_full()
    {
        await using var app = await TestApp.StartAsync();
        var link = (await app.PageAsync(Links.About)).QuerySelector("[aria-labelledby=licences] a")!.GetAttribute("href");

        var page = await app.PageAsync(link!);

        Assert.Equal(
            ThirdPartyNotices.Works().Select(work => ($"{work.Name} {work.Version}", work.Text)),
            page.QuerySelectorAll("main section").Select(section =>
                (section.QuerySelector("h2")!.TextContent, section.QuerySelector("pre")!.TextContent)));
    }

    [Theory]
    [InlineData("High voltage")]
    [InlineData("Running engine")]
    [InlineData("Fuel")]
    [InlineData("Hot parts")]
    public async Task About_warns_of_each_danger_of_the_work(string danger)
    {
        await using var app = await TestApp.StartAsync();
        var page = await app.PageAsync(Links.About);

        Assert.Contains(
            page.QuerySelectorAll("[aria-labelledby=first] li"),
            item => item.TextContent.StartsWith($"{danger}:", StringComparison.Ordinal));
    }
}

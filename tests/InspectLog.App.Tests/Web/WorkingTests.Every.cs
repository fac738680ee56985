using System.Net;
using InspectLog.Checks;
using InspectLog.Inspecting.Workings;

namespace InspectLog.App.Tests.Web;

/// <content>What holds of every working.</content>
public sealed partial class WorkingTests
{
    [Theory]
    [InlineData(BuiltInSheets.IgnitionBreakerless)]
    [InlineData(BuiltInSheets.IgnitionInDepth)]
    public async Task Every_working_is_reached_from_a_check_it_belongs_to_and_leads_back(string id)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.PostForRedirectAsync($"{await app.AddVehicleAsync()}/inspections", ("sheet", id));
        var sheet = BuiltInSheets.Find(id)!;

        foreach (var kind in WorkingKinds.All)
        {
            var checks = kind.Checks.Where(check => sheet.Find(check) is not null).ToList();
            Assert.NotEmpty(checks);
            foreach (var check in checks)
            {
                var links = (await app.PageAsync($"{bench}?check={check}")).QuerySelectorAll("nav[aria-labelledby=workings-title] a");
                Assert.Contains(links, link => link.GetAttribute("href")!.Contains($"/workings/{kind.Id}", StringComparison.Ordinal));
            }

            var answer = await app.Client.GetAsync($"{bench}/workings/{kind.Id}", TestContext.Current.CancellationToken);
            var back = (await TestApp.ParseAsync(answer)).QuerySelectorAll("main a").Select(link => link.GetAttribute("href"));
            Assert.Contains($"{bench}?check={checks[0]}", back);
        }
    }

    [Fact]
    public async Task Every_working_opens_on_an_empty_inspection()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        foreach (var kind in WorkingKinds.All)
        {
            var answer = await app.Client.GetAsync($"{bench}/workings/{kind.Id}", TestContext.Current.CancellationToken);
            Assert.Contains(answer.StatusCode, new[] { HttpStatusCode.OK, HttpStatusCode.UnprocessableEntity });
            Assert.Contains(kind.Title, (await TestApp.ParseAsync(answer)).QuerySelector("h1")!.TextContent, StringComparison.Ordinal);
        }
    }
}

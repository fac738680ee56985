using System.Net;
using InspectLog.App.Tests.Web;

namespace InspectLog.App.Tests.Access;

/// <summary>What somebody sees who comes for the first time, or to read one report: the next step, and no more.</summary>
public sealed class FirstVisitTests
{
    [Fact]
    public async Task Phone_that_is_not_paired_is_led_to_the_code_and_may_type_at_once()
    {
        await using var app = await LanApp.StartAsync();
        var phone = app.NewPhone();

        var answer = await phone.GetAsync("/", TestContext.Current.CancellationToken);
        var page = await TestApp.ParseAsync(answer);

        Assert.Equal(HttpStatusCode.Unauthorized, answer.StatusCode);
        Assert.Equal("/pair", page.QuerySelector("main a.button.main")!.GetAttribute("href"));
        Assert.Null(page.QuerySelector(".who"));
        Assert.True((await LanApp.PageAsync(phone, "/pair")).QuerySelector("#pair-code")!.HasAttribute("autofocus"));
    }

    [Fact]
    public async Task Whoever_reads_one_report_is_not_asked_who_works()
    {
        await using var app = await LanApp.StartAsync();
        var report = $"{await app.AddInspectionAsync("Bramble")}/report";
        var buyer = await ReportLinkTests.OpenLinkAsync(app, report);

        Assert.Null((await LanApp.PageAsync(buyer, report)).QuerySelector(".who"));
    }

    [Fact]
    public async Task Devices_come_in_the_order_of_the_steps_for_a_person_who_is_not_here()
    {
        await using var app = await LanApp.StartAsync();

        var page = await LanApp.PageAsync(app.Workshop, "/devices");

        Assert.NotEmpty(page.QuerySelectorAll("[aria-labelledby=trust] ~ [aria-labelledby=add]"));
        Assert.Equal("", page.QuerySelector("#device-person")!.GetAttribute("value") ?? "");
        Assert.Equal(["About InspectLog", "Devices"], page.QuerySelectorAll(".foot li").Select(item => item.TextContent.Trim()));
    }
}

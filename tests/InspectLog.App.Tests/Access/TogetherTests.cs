namespace InspectLog.App.Tests.Access;

/// <summary>Two people on one inspection: each sees who captured what the other did.</summary>
public sealed class TogetherTests
{
    [Fact]
    public async Task Bench_says_who_captured_what_somebody_else_did()
    {
        await using var app = await LanApp.StartAsync();
        var bench = await app.AddInspectionAsync("Marigold");
        var phone = await app.PairAsync("Ines Vale");
        await LanApp.SendAsync(phone, $"{bench}/observations", ("check", "cap-contacts"), ("cylinder", "2"), ("condition", "clean"));
        await LanApp.SendAsync(phone, $"{bench}/notes", ("check", ""), ("text", "The clip is stiff"));
        await LanApp.SendAsync(app.Workshop, $"{bench}/notes", ("check", ""), ("text", "Ordered a clip"));

        Assert.Equal(["", "by Ines Vale", "by Ines Vale"], await WhoAsync(app.Workshop, bench));
        Assert.Equal(["by Tess Okafor", "", ""], await WhoAsync(phone, bench));
    }

    private static async Task<IReadOnlyList<string>> WhoAsync(HttpClient client, string bench) =>
        [.. (await LanApp.PageAsync(client, bench)).QuerySelectorAll("#captures > li").Select(item => item.QuerySelector(".by")?.TextContent ?? "")];
}

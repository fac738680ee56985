namespace InspectLog.App.Tests.Web;

/// <summary>A photo is left out of the report and taken in again, wherever it stands.</summary>
public sealed class PhotoInReportTests
{
    [Fact]
    public async Task Photo_left_out_of_the_report_stays_out_until_it_is_put_in_again()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var filed = await app.KeepPhotoAsync(bench, "lead-condition", "2");
        var whole = await app.KeepPhotoAsync(bench, width: 30);

        foreach (var photo in new[] { filed, whole })
        {
            await app.PostForRedirectAsync($"{bench}/entries/{photo.Sequence}/report", ("shown", "false"));
            await app.PostForRedirectAsync($"{bench}/entries/{photo.Sequence}/report", ("shown", "false"));
        }

        Assert.Empty((await app.PageAsync($"{bench}/report")).QuerySelectorAll(".report-shots img"));
        Assert.Contains("left out of the report", (await app.PageAsync(bench)).QuerySelector($"#item-{filed.Sequence}")!.TextContent, StringComparison.Ordinal);

        await app.PostForRedirectAsync($"{bench}/entries/{filed.Sequence}/report", ("shown", "true"));
        Assert.Single((await app.PageAsync($"{bench}/report")).QuerySelectorAll(".report-shots img"));
    }

    [Theory]
    [InlineData("", "#item-")] // on the bench
    [InlineData("/photos/ID?to=report", "")]
    [InlineData("/report", "#photo-")]
    public async Task Photo_is_left_out_of_the_report_and_taken_in_wherever_it_stands_and_the_page_comes_back(string at, string part)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var photo = (await app.KeepPhotoAsync(bench, "lead-condition", "2")).Sequence;
        var here = $"{bench}{at.Replace("ID", $"{photo}", StringComparison.Ordinal)}";

        var after = await ChooseAsync(app, here, photo);
        Assert.True(app.Photo(photo).History.IsLeftOutOfReport);
        after = await ChooseAsync(app, after, photo);

        Assert.False(app.Photo(photo).History.IsLeftOutOfReport);
        Assert.StartsWith(here, after, StringComparison.Ordinal);
        Assert.True(part.Length == 0 || (await app.PageAsync(after)).QuerySelector($"{part}{photo}") is not null);
    }

    /// <summary>Presses the one button of a page that chooses for the report, and gives the page it leads to.</summary>
    private static async Task<string> ChooseAsync(TestApp app, string address, long photo)
    {
        var form = Assert.Single((await app.PageAsync(address)).QuerySelectorAll($"form[action$='/entries/{photo}/report']"));
        return await app.PostForRedirectAsync(
            form.GetAttribute("action")!,
            [.. form.QuerySelectorAll("input").Select(input => (input.GetAttribute("name")!, input.GetAttribute("value") ?? ""))]);
    }
}

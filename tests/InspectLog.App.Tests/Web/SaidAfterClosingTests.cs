using AngleSharp.Html.Dom;

namespace InspectLog.App.Tests.Web;

/// <summary>A closed inspection has no bar to record with; what a press did is said there all the same.</summary>
public sealed class SaidAfterClosingTests
{
    [Fact]
    public async Task Reading_put_right_after_closing_is_said_once_where_it_stands()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var entry = await app.MeasureAsync(bench, "coil-secondary-resistance", "8.4", "kΩ");
        await app.CloseAsync(bench);

        var answer = await app.AmendAsync(bench, entry, ("value", "9.4"));

        var to = answer.Headers.Location!.ToString();
        Assert.Equal($"{bench}?check=coil-secondary-resistance#item-{entry}", to);
        Assert.Equal("Put right: Coil secondary. It is marked as done after closing.", Did(await app.PageAsync(to)));
        Assert.Equal("", Did(await app.PageAsync(to)));
    }

    [Fact]
    public async Task Withdrawal_and_its_undoing_are_said_and_a_choice_for_the_report_carries_no_mark()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync($"{bench}/notes", ("text", "Bonnet stay rattles."));
        var note = app.Inspection().Captures[0].Sequence;
        await app.CloseAsync(bench);

        Assert.Equal("Withdrawn. It is marked as done after closing.", await PressAsync(app, $"{bench}/entries/{note}/withdraw", ("usual", "misread")));
        Assert.Equal("It counts again. It is marked as done after closing.", await PressAsync(app, $"{bench}/entries/{note}/restore"));
        Assert.Equal("Left out of the report.", await PressAsync(app, $"{bench}/entries/{note}/report", ("shown", "false")));
    }

    [Fact]
    public async Task Page_of_a_photo_says_once_what_was_put_right_on_it()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var photo = (await app.KeepPhotoAsync(bench)).Sequence;
        await app.CloseAsync(bench);

        var to = await app.PostForRedirectAsync($"{bench}/photos/{photo}/caption", ("caption", "Worn rotor"), ("viewer", "?to=report"));

        Assert.Equal("Photo put right. It is marked as done after closing.", (await app.PageAsync(to)).QuerySelector(".did[role=status]")!.TextContent);
        Assert.Null((await app.PageAsync(to)).QuerySelector(".did"));
    }

    private static async Task<string> PressAsync(TestApp app, string address, params (string Name, string Value)[] fields) =>
        Did(await app.PageAsync(await app.PostForRedirectAsync(address, fields)));

    private static string Did(IHtmlDocument page) => page.QuerySelector("#did[role=status]")!.TextContent;
}

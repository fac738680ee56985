using System.Net;
using AngleSharp.Dom;
using InspectLog.Inspecting.Recording;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Measuring;
using static InspectLog.App.Tests.Web.PhotoSending;

namespace InspectLog.App.Tests.Web;

/// <summary>Marks over a photo: kept, shown, changed, taken back; and lengths measured in it.</summary>
public sealed class PhotoMarksTests
{
    private const string Crack = """{"shape":"arrow","points":[[0.6,0.7],[0.2,0.1]],"text":"Hairline crack"}""";

    // 25 mm over 500 of the 2000 pixels; measured are 16 pixels, 0.8 mm.
    private const string Gap = """{"shape":"measure","points":[[0.5,0.5],[0.508,0.5]],"reference":[[0.1,0.1],[0.35,0.1]],"known":"25","second":"","tolerance":"0.05","unit":"mm","pick":"1"}""";

    [Fact]
    public async Task Marks_are_kept_over_an_untouched_photo_and_shown_with_words_on_its_page_and_in_the_report()
    {
        await using var app = await TestApp.StartAsync();
        var (bench, photo) = await PhotoAsync(app);
        var media = app.MediaFiles();

        Assert.EndsWith("#marks", await app.PostForRedirectAsync($"{photo}/marks", ("mark", Crack), ("seen", "")), StringComparison.Ordinal);

        Assert.Equal(media, app.MediaFiles());
        var page = await app.PageAsync(photo);
        Assert.Equal("Photo marked.", page.QuerySelector(".did")!.TextContent);
        Assert.Contains("Marked: arrow to the upper left: Hairline crack", page.QuerySelector(".photo-large svg.marked > title")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(3, page.QuerySelectorAll(".photo-large svg.marked path").Length);
        var report = await app.PageAsync($"{bench}/report");
        Assert.Contains("Hairline crack", report.QuerySelector(".report-shots svg.marked > title")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("Marked: arrow to the upper left: Hairline crack.", report.QuerySelector(".report-shots figcaption")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("Hairline crack", (await app.PageAsync("/find?words=hairline")).QuerySelector("main")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Changed_marks_stay_in_the_history_and_marks_taken_back_can_be_undone()
    {
        await using var app = await TestApp.StartAsync();
        var (_, photo) = await PhotoAsync(app);
        await app.PostForRedirectAsync($"{photo}/marks", ("mark", Crack), ("seen", ""));
        var seen = await SeenAsync(app, photo);

        await app.PostForRedirectAsync($"{photo}/marks", ("mark", Crack), ("mark", """{"shape":"ring","points":[[0.4,0.4],[0.6,0.6]]}"""), ("seen", seen));
        Assert.Contains("Arrow to the upper left: Hairline crack", (await app.PageAsync(photo)).QuerySelector("#marks details ol")!.TextContent, StringComparison.Ordinal);
        var count = app.Garage.Entries("marigold").Count;
        await app.PostForRedirectAsync($"{photo}/marks", ("mark", Crack), ("mark", """{"shape":"ring","points":[[0.4,0.4],[0.6,0.6]]}"""));
        Assert.Equal(count, app.Garage.Entries("marigold").Count); // the same again says nothing new

        await app.PostForRedirectAsync($"{photo}/marks/withdraw", ("reason", "drawn by mistake"));
        var without = await app.PageAsync(photo);
        Assert.Null(without.QuerySelector("svg.marked"));
        Assert.Contains("The marks were taken back: drawn by mistake", without.QuerySelector("#marks")!.TextContent, StringComparison.Ordinal);

        await app.PostForRedirectAsync($"{photo}/marks/restore");
        Assert.NotNull((await app.PageAsync(photo)).QuerySelector("svg.marked"));
    }

    [Fact]
    public async Task Marks_made_on_what_somebody_else_has_changed_are_refused_and_told()
    {
        await using var app = await TestApp.StartAsync();
        var (_, photo) = await PhotoAsync(app);
        await app.PostForRedirectAsync($"{photo}/marks", ("mark", Crack), ("seen", ""));

        var answer = await app.PostAsync($"{photo}/marks", ("mark", """{"shape":"ring","points":[[0,0],[1,1]]}"""), ("seen", ""));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains("marked this photo meanwhile", (await TestApp.ParseAsync(answer)).QuerySelector(".problems")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(MarkShape.Arrow, Assert.Single(Marks(app)).Shape);
    }

    [Fact]
    public async Task Mark_is_typed_in_percent_where_there_are_no_scripts_and_those_before_stay()
    {
        await using var app = await TestApp.StartAsync();
        var (_, photo) = await PhotoAsync(app);
        await app.PostForRedirectAsync($"{photo}/marks", ("mark", Crack), ("seen", ""));
        var form = (await app.PageAsync($"{photo}/marks")).QuerySelector("main form")!;
        var carried = form.QuerySelector("input[name=mark]")!.GetAttribute("value")!;

        var refused = await app.PostAsync($"{photo}/marks", ("mark", carried), ("typed", "text"), ("x1", "101"), ("y1", "half"), ("words", ""));
        Assert.Equal(3, (await TestApp.ParseAsync(refused)).QuerySelectorAll(".problems li").Length);
        await app.PostForRedirectAsync($"{photo}/marks", ("mark", carried), ("typed", "text"), ("x1", "50"), ("y1", "12.5"), ("words", "Oil"));

        Assert.Equal(["Hairline crack", "Oil"], Marks(app).Select(mark => mark.Text));
        Assert.Equal(new MarkPoint(0.5, 0.125), Marks(app)[1].Points[0]);
    }

    [Theory]
    [InlineData("arrow")]
    [InlineData("""{"shape":"arrow"}""")]
    [InlineData("""{"shape":"7","points":[[0,0],[1,1]]}""")]
    [InlineData("""{"shape":"arrow","points":[[0],[1]]}""")]
    [InlineData("""{"shape":"measure","points":[[0,0],[1,1]]}""")]
    [InlineData("""{"shape":"measure","points":[[0.5,0.5],[0.6,0.5]],"reference":[[0.1,0.1],[0.1,0.1]],"known":"25","unit":"mm","pick":"1"}""")]
    [InlineData("""{"shape":"measure","points":[[0.5,0.5],[0.6,0.5]],"reference":[[0.1,0.1],[0.4,0.1]],"known":"much","unit":"mm","pick":"1"}""")]
    [InlineData("""{"shape":"ring","points":[[0,0],[1.5,1]]}""")]
    public async Task Mark_that_is_none_is_refused_and_nothing_is_kept(string mark)
    {
        await using var app = await TestApp.StartAsync();
        var (_, photo) = await PhotoAsync(app);

        var answer = await app.PostAsync($"{photo}/marks", ("mark", mark));

        Assert.InRange((int)answer.StatusCode, 400, 499);
        Assert.Empty(app.Inspection().PhotoMarks);
    }

    [Fact]
    public async Task Length_is_worked_out_while_it_is_picked_and_kept_with_all_it_came_from()
    {
        await using var app = await TestApp.StartAsync();
        var (_, photo) = await PhotoAsync(app);

        var told = await app.PostAsync($"{photo}/marks/length", ("mark", Gap));
        var wrong = await app.PostAsync($"{photo}/marks/length", ("mark", Gap.Replace("\"25\"", "\"\"", StringComparison.Ordinal)));
        await app.PostForRedirectAsync($"{photo}/marks", ("mark", Gap));

        Assert.Contains("0.80", await told.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, wrong.StatusCode);
        var measured = Assert.Single(Marks(app)).Measured!;
        Assert.Equal((2000, 1500, 0.8), (measured.Width, measured.Height, Math.Round(measured.Value, 9)));
        // 2·√(2·13/12)·0.05 mm, and next to nothing of the reference: 0.147 mm.
        Assert.Equal(0.1472, measured.ExpandedUncertainty, 0.0005);
        Assert.Contains("as if both lay flat in one plane", (await app.PageAsync(photo)).QuerySelector("#marks")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Measured_length_becomes_a_reading_decided_with_its_own_uncertainty_and_the_photo_its_evidence()
    {
        await using var app = await TestApp.StartAsync();
        var (bench, photo) = await PhotoAsync(app, "plug-gap", "2");
        await app.PostForRedirectAsync($"{photo}/marks", ("mark", Gap));
        var measured = Assert.Single(Marks(app)).Measured!;
        Assert.Contains("Would be: ", (await app.PageAsync(photo)).QuerySelector("#marks")!.TextContent, StringComparison.Ordinal);

        await app.PostForRedirectAsync($"{photo}/marks/reading", ("mark", "0"), ("where", "plug-gap/2"));

        var reading = Assert.Single(app.Inspection().Readings);
        Assert.Equal(("plug-gap", 2), (reading.Body.Check, reading.Body.Cylinder));
        Assert.Equal(measured.ExpandedUncertainty, reading.Body.Conformity!.ExpandedUncertainty, 1e-4);
        var rule = ConformityRule.Decide(Estimate.Known(measured.Value, measured.ExpandedUncertainty / 2), Limits.Of(0.6, 1.0), DecisionRule.NonBinary);
        Assert.Equal(rule.Decision, reading.Body.Conformity.Decision);
        Assert.Equal(reading.Sequence, Assert.Single(app.Inspection().Photos).Photo.Shows);
        Assert.Contains("measured in a photo", reading.Body.AsGiven, StringComparison.Ordinal);
        Assert.Contains("0.80", (await app.PageAsync($"{bench}?check=plug-gap&place=2")).QuerySelector("#result")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Length_is_no_reading_of_a_check_that_measures_something_else()
    {
        await using var app = await TestApp.StartAsync();
        var (_, photo) = await PhotoAsync(app);
        await app.PostForRedirectAsync($"{photo}/marks", ("mark", Gap));

        var answer = await app.PostAsync($"{photo}/marks/reading", ("mark", "0"), ("where", "lead-resistance/2"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Empty(app.Inspection().Readings);
    }

    [Fact]
    public async Task Photo_takes_so_many_marks_and_no_more()
    {
        await using var app = await TestApp.StartAsync();
        var (_, photo) = await PhotoAsync(app);

        var answer = await app.PostAsync($"{photo}/marks", [.. Enumerable.Repeat(("mark", Crack), PhotoMarking.MostMarks + 1)]);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Empty(app.Inspection().PhotoMarks);
    }

    private static IReadOnlyList<PhotoMark> Marks(TestApp app) => Assert.Single(app.Inspection().PhotoMarks).Body.Marks;

    private static async Task<string> SeenAsync(TestApp app, string photo) =>
        (await app.PageAsync($"{photo}/marks")).QuerySelector("input[name=seen]")!.GetAttribute("value")!;

    private static async Task<(string Bench, string Photo)> PhotoAsync(TestApp app, string check = "lead-condition", string place = "2")
    {
        var bench = await app.StartInspectionAsync();
        await app.SendPhotoAsync(bench, Picture(2000, 1500), ("check", check), ("cylinder", place));
        return (bench, $"{bench}/photos/{Assert.IsType<PhotoCapture>(app.Inspection().Everything[^1]).Sequence}");
    }
}

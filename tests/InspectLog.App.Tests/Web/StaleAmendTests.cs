using System.Net;
using InspectLog.Measuring;

namespace InspectLog.App.Tests.Web;

/// <summary>A form that puts an entry right and was opened before somebody else put it right or withdrew it.</summary>
public sealed class StaleAmendTests
{
    [Fact]
    public async Task What_somebody_else_withdrew_meanwhile_does_not_count_again_without_a_word()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var entry = await app.MeasureAsync(bench, "supply-voltage", "12.4", "V");
        var opened = await app.FilledAsync(bench, entry);
        await app.PostForRedirectAsync($"{bench}/entries/{entry}/withdraw", ("usual", "misread"));

        var answer = await SaveAsync(app, bench, entry, opened, "12.6");

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains("withdrew this meanwhile", (await TestApp.ParseAsync(answer)).Body!.TextContent, StringComparison.Ordinal);
        Assert.Empty(app.Inspection().Readings);
    }

    [Fact]
    public async Task What_somebody_else_put_right_meanwhile_is_told_and_saved_once_that_was_seen()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var entry = await app.MeasureAsync(bench, "supply-voltage", "12.4", "V");
        var opened = await app.FilledAsync(bench, entry);
        await app.AmendAsync(bench, entry, ("value", "12.5"));

        var answer = await SaveAsync(app, bench, entry, opened, "12.6");
        Assert.Contains("put this right meanwhile", (await TestApp.ParseAsync(answer)).Body!.TextContent, StringComparison.Ordinal);
        Assert.Equal([12.5], Values(app));

        await app.AmendAsync(bench, entry, ("value", "12.6"));
        Assert.Equal([12.6], Values(app));
    }

    private static Task<HttpResponseMessage> SaveAsync(
        TestApp app, string bench, long entry, Dictionary<string, string> fields, string value) => app.PostAsync(
        $"{bench}/entries/{entry}/amend", [.. fields.Select(field => (field.Key, field.Key == "value" ? value : field.Value))]);

    private static IReadOnlyList<double> Values(TestApp app) =>
        Assert.IsType<DisplayedReading>(Assert.Single(app.Inspection().Readings).Body.Reading).Values;
}

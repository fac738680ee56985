using System.Net;
using InspectLog.App.Tests.Web;

namespace InspectLog.App.Tests.Ui;

/// <summary>What the bench shows as the work goes on, from the page's own markup.</summary>
public sealed class BenchPageTests
{
    [Fact]
    public async Task Cautions_are_open_before_a_check_was_ever_done()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var page = await app.PageAsync($"{bench}?check=spark");

        var card = page.QuerySelector(".card.caution")!;
        Assert.Null(card.QuerySelector("details"));
        foreach (var caution in InspectLog.Checks.BuiltInSheets.All[0].Find("spark")!.Cautions)
        {
            Assert.Contains(caution, card.TextContent, StringComparison.Ordinal);
        }

        Assert.True(page.QuerySelector("details.method")!.HasAttribute("open"));
    }

    [Theory]
    [InlineData("present", "in order", "good")]
    [InlineData("weak", "needs a look", "doubtful")]
    public async Task Each_condition_says_what_it_means_where_it_is_chosen(string condition, string meaning, string style)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        var button = (await app.PageAsync($"{bench}?check=spark")).QuerySelector($"button[name=condition][value='{condition}']")!;

        Assert.Equal(meaning, button.QuerySelector("small")!.TextContent);
        Assert.Contains($"is-{style}", button.ClassList);
        Assert.Contains($"{condition} ({meaning})", (await app.PageAsync("/sheets/ignition-breakerless")).Body!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Condition_that_fails_says_so()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        var button = (await app.PageAsync($"{bench}?check=rotor-blade")).QuerySelector("button[name=condition][value=burnt]")!;

        Assert.Equal("fails", button.QuerySelector("small")!.TextContent);
    }

    [Fact]
    public async Task Reading_is_shown_at_its_place_and_the_next_place_is_proposed()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        var location = await app.PostForRedirectAsync(
            $"{bench}/readings", ("check", "lead-resistance"), ("cylinder", "2"), ("value", "9.4"), ("unit", "kΩ"));
        var page = await app.PageAsync(location);

        Assert.Contains("Lead 2", page.QuerySelector("#result")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("9.40", page.QuerySelector("#result .value")!.TextContent, StringComparison.Ordinal);
        Assert.Equal("3", page.QuerySelector("#measure input[name=cylinder][checked]")!.GetAttribute("value"));
        Assert.NotNull(page.QuerySelector("#result svg.strip .drop"));
    }

    [Fact]
    public async Task Refused_reading_opens_its_form_with_what_was_typed()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        using var request = new HttpRequestMessage(HttpMethod.Post, $"{bench}/readings")
        {
            Content = new FormUrlEncodedContent(
            [
                KeyValuePair.Create("check", "coil-circuit-resistance"), KeyValuePair.Create("value", "rather high"),
            ]),
        };
        request.Headers.Add("HX-Request", "true");
        request.Headers.Add("HX-Current-URL", new Uri(app.Address, $"{bench}?check=coil-circuit-resistance").ToString());

        var answer = await app.Client.SendAsync(request, TestContext.Current.CancellationToken);
        var page = await TestApp.ParseAsync(answer);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        var tool = page.QuerySelector("#measure")!;
        Assert.True(tool.HasAttribute("open"));
        Assert.Equal("rather high", tool.QuerySelector("[name=value]")!.GetAttribute("value"));
        Assert.Equal("true", tool.QuerySelector("[name=value]")!.GetAttribute("aria-invalid"));
        Assert.Contains("rather high", tool.QuerySelector("#measure-value-wrong")!.TextContent, StringComparison.Ordinal);
        Assert.True(tool.QuerySelector("[name=value]")!.HasAttribute("autofocus"));
        Assert.DoesNotContain("rather high", page.QuerySelector("#did")?.TextContent ?? "", StringComparison.Ordinal);
        Assert.Null(tool.QuerySelector(".problems"));
    }

    [Fact]
    public async Task Number_that_could_mean_two_things_is_asked_about()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        var answer = await app.Client.SendAsync(Ambiguous(app, bench), TestContext.Current.CancellationToken);
        var page = await TestApp.ParseAsync(answer);

        var choices = page.QuerySelectorAll("[data-question] button[name=meant]");
        Assert.True(choices.Length >= 2);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Empty(app.Garage.FindVehicle("marigold")!.OpenInspection!.Readings);
    }

    [Fact]
    public async Task Written_markup_is_shown_as_text()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostAsync($"{bench}/notes", ("check", "spark"), ("text", "<img src=x onerror=alert(1)>"));

        var page = await app.PageAsync(bench);

        Assert.Null(page.QuerySelector("#captures img"));
        Assert.Contains("<img src=x", page.QuerySelector("#captures")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Bench_works_with_plain_forms_where_there_are_no_scripts()
    {
        await using var app = await TestApp.StartAsync();
        var page = await app.PageAsync($"{await app.StartInspectionAsync()}?check=plug-gap");

        foreach (var form in page.QuerySelectorAll("#bench form"))
        {
            Assert.Equal("post", form.GetAttribute("method"));
            Assert.Equal(form.GetAttribute("action"), form.GetAttribute("hx-post"));
        }

        Assert.NotNull(page.QuerySelector("form.photo-form noscript"));
        Assert.True(page.QuerySelector("#say")!.HasAttribute("hidden"), "Say needs scripts, so without them it is not there.");
    }

    private static HttpRequestMessage Ambiguous(TestApp app, string bench)
    {
        var request = new HttpRequestMessage(HttpMethod.Post, $"{bench}/readings")
        {
            // A hundred ohms to three decimals, or a hundred thousand: the check's plausible span holds both.
            Content = new FormUrlEncodedContent(
            [
                KeyValuePair.Create("check", "lead-resistance"), KeyValuePair.Create("cylinder", "1"),
                KeyValuePair.Create("value", "100,000"), KeyValuePair.Create("unit", "Ω"),
            ]),
        };
        request.Headers.Add("HX-Request", "true");
        request.Headers.Add("HX-Current-URL", new Uri(app.Address, $"{bench}?check=lead-resistance").ToString());
        return request;
    }
}

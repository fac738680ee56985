using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Tests.Web;

/// <summary>A word is added in two steps, so that neither offers a long list: the phrase and its check, then what it
/// means there.</summary>
public sealed class WordChoiceTests
{
    private const string LeadCondition = "ignition-breakerless/lead-condition";

    [Fact]
    public async Task First_step_asks_for_the_phrase_and_its_check_and_for_no_meaning()
    {
        await using var app = await TestApp.StartAsync();

        var page = await app.PageAsync("/words");

        Assert.Equal("get", Form(page).Method);
        Assert.Equal("", page.QuerySelector<IHtmlSelectElement>("#word-check")!.Value);
        Assert.Null(page.QuerySelector("#word-condition"));
    }

    [Theory]
    [InlineData("lead-condition", "good", "chafed", "burnt", "cracked", "loose")]
    [InlineData("lead-resistance", "open circuit")]
    [InlineData("supply-voltage")]
    public async Task Second_step_offers_the_conditions_of_the_check_alone(string check, params string[] conditions)
    {
        await using var app = await TestApp.StartAsync();

        var page = await app.PageAsync($"/words?phrase=cooked&check=ignition-breakerless/{check}");

        Assert.Equal(["Another name of the check", .. conditions], Meanings(page));
        Assert.Equal("cooked", page.QuerySelector<IHtmlInputElement>("#word-phrase")!.Value);
    }

    [Fact]
    public async Task Two_steps_add_a_word()
    {
        await using var app = await TestApp.StartAsync();
        var second = await app.PageAsync($"/words?phrase=cooked&check={LeadCondition}");
        var check = second.QuerySelector<IHtmlInputElement>("input[name=check]")!.Value;

        await app.PostForRedirectAsync(Form(second).GetAttribute("action")!, ("phrase", "cooked"), ("check", check), ("condition", "burnt"));

        Assert.Equal(
            new OwnWordAdded("ignition-breakerless", "cooked", "lead-condition", "burnt"), Assert.Single(app.Garage.Workshop.Words).Body);
    }

    [Fact]
    public async Task Another_check_can_be_chosen_without_typing_the_phrase_again()
    {
        await using var app = await TestApp.StartAsync();
        var second = await app.PageAsync($"/words?phrase=hot+%26+dry&check={LeadCondition}");

        var back = await app.PageAsync(second.QuerySelector("form.card a")!.GetAttribute("href")!);

        Assert.Equal("hot & dry", back.QuerySelector<IHtmlInputElement>("#word-phrase")!.Value);
        Assert.NotNull(back.QuerySelector("#word-check"));
    }

    [Theory]
    [InlineData("")]
    [InlineData("ignition-breakerless/nothing")]
    public async Task Step_without_a_check_says_so_and_keeps_the_phrase(string check)
    {
        await using var app = await TestApp.StartAsync();

        var answer = await app.Client.GetAsync($"/words?phrase=cooked&check={check}", TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        var page = await TestApp.ParseAsync(answer);
        Assert.Contains("Choose the check", page.GetElementById("word-check-wrong")!.TextContent, StringComparison.Ordinal);
        Assert.Equal("cooked", page.QuerySelector<IHtmlInputElement>("#word-phrase")!.Value);
    }

    [Fact]
    public async Task Refused_word_stays_at_the_second_step_with_what_was_chosen()
    {
        await using var app = await TestApp.StartAsync();

        var answer = await app.PostAsync("/words", ("phrase", "the"), ("check", LeadCondition), ("condition", "burnt"));

        var page = await TestApp.ParseAsync(answer);
        Assert.NotNull(page.GetElementById("word-phrase-wrong"));
        Assert.Equal("burnt", page.QuerySelector<IHtmlSelectElement>("#word-condition")!.Value);
        Assert.Equal(LeadCondition, page.QuerySelector<IHtmlInputElement>("input[name=check]")!.Value);
    }

    private static IHtmlFormElement Form(IParentNode page) => page.QuerySelector<IHtmlFormElement>("section form.card")!;

    private static IEnumerable<string> Meanings(IParentNode page) =>
        page.QuerySelector<IHtmlSelectElement>("#word-condition")!.Options.Select(option => option.Text);
}

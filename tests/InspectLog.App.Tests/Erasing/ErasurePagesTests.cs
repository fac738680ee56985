using System.Net;
using AngleSharp.Html.Dom;
using InspectLog.App.Tests.Access;
using InspectLog.App.Tests.Web;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Tests.Erasing;

/// <summary>The page on which a person is erased: a list, the name typed once more, and what became of it.</summary>
public sealed class ErasurePagesTests
{
    private const string Person = "Ana Lindqvist";

    [Fact]
    public async Task Person_is_listed_first_and_erased_once_the_name_is_typed()
    {
        await using var app = await StartAsync();

        Assert.DoesNotContain("Lindqvist", (await app.PageAsync("/erase")).Body!.TextContent, StringComparison.Ordinal);
        var list = await TestApp.ParseAsync(await app.PostAsync("/erase/list", ("person", Person), ("worker", "")));
        Assert.Contains("owner, contact and vehicle number", list.QuerySelector("main")!.TextContent, StringComparison.Ordinal);
        Assert.NotNull(app.Garage.FindVehicle("marigold")!.Private);

        var refused = await app.PostAsync("/erase", Fields(list, typed: "Ana"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.StatusCode);
        Assert.Contains("Type the name as it stands above", (await TestApp.ParseAsync(refused)).GetElementById("erase-typed-wrong")!.TextContent, StringComparison.Ordinal);
        Assert.NotNull(app.Garage.FindVehicle("marigold")!.Private);

        var done = await app.PostAsync("/erase", Fields(list, typed: "ana lindqvist"));
        Assert.Equal(HttpStatusCode.OK, done.StatusCode);
        Assert.True(done.Headers.CacheControl!.NoStore);
        var said = (await TestApp.ParseAsync(done)).QuerySelector("main")!.TextContent;
        Assert.Contains("2 entries and 0 recordings and photos go", said, StringComparison.Ordinal);
        Assert.Contains("No backup of this garage is known", said, StringComparison.Ordinal);
        Assert.Null(app.Garage.FindVehicle("marigold")!.Private);
        Assert.Empty(app.Garage.Search("lindqvist"));
    }

    [Fact]
    public async Task Vehicle_page_journal_and_report_say_what_was_erased()
    {
        await using var app = await StartAsync();
        app.Garage.Erase("Office", new(Person, AsWorker: true, "the former owner", "a privacy request"));

        foreach (var address in new[] { "/vehicles/marigold", "/vehicles/marigold/inspections/2/report" })
        {
            var page = (await app.PageAsync(address)).QuerySelector("main")!;
            Assert.Contains("asked by the former owner", page.QuerySelector("[aria-labelledby=erased]")!.TextContent, StringComparison.Ordinal);
            Assert.DoesNotContain("Lindqvist", page.TextContent, StringComparison.Ordinal);
        }

        var journal = (await app.PageAsync("/vehicles/marigold/journal")).QuerySelector("main")!.TextContent;
        Assert.Contains("What was known of one person was erased", journal, StringComparison.Ordinal);
        Assert.Contains("Erased, as entry", journal, StringComparison.Ordinal);
        Assert.Contains("said again without the person", journal, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Anna Lindqvist", "nobody called")]
    [InlineData("", "Type the person")]
    public async Task Wrong_name_is_told_at_its_field(string name, string problem)
    {
        await using var app = await StartAsync();

        var refused = await app.PostAsync("/erase/list", ("person", name));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.StatusCode);
        Assert.Contains(problem, (await TestApp.ParseAsync(refused)).GetElementById("erase-person-wrong")!.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("asked-by", "Ana Lindqvist", "without naming the person")]
    [InlineData("mark", "of another list", "Look at the list again")]
    [InlineData("reason", "", "Say why")]
    public async Task What_cannot_be_confirmed_is_refused_with_the_list(string field, string value, string problem)
    {
        await using var app = await StartAsync();
        var list = await TestApp.ParseAsync(await app.PostAsync("/erase/list", ("person", Person)));

        var refused = await app.PostAsync("/erase", [.. Fields(list, Person).Where(one => one.Name != field), (field, value)]);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.StatusCode);
        var page = await TestApp.ParseAsync(refused);
        Assert.Contains(problem, page.QuerySelector("main")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("What goes of", page.QuerySelector("main")!.TextContent, StringComparison.Ordinal);
        Assert.NotNull(app.Garage.FindVehicle("marigold")!.Private);
    }

    [Fact]
    public async Task Who_only_worked_here_has_nothing_that_goes_unless_it_is_asked_for()
    {
        await using var app = await StartAsync();

        var list = await TestApp.ParseAsync(await app.PostAsync("/erase/list", ("person", "Tess Okafor")));

        Assert.Contains("Nothing goes", list.QuerySelector("main")!.TextContent, StringComparison.Ordinal);
        Assert.Null(list.QuerySelector("input[name=typed]"));
    }

    [Fact]
    public async Task Person_is_erased_at_the_workshops_own_computer_alone()
    {
        await using var app = await LanApp.StartAsync();
        var owner = await app.PairAsync(role: "owner");

        var answer = await LanApp.SendAsync(owner, "/erase/list", ("person", "Ines Vale"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains("own computer alone", (await TestApp.ParseAsync(answer)).Body!.TextContent, StringComparison.Ordinal);
    }

    private static async Task<TestApp> StartAsync()
    {
        var app = await TestApp.StartAsync();
        await app.StartInspectionAsync();
        app.Garage.Append("marigold", "Tess Okafor", _ => [new PrivateFactsNoted(Person, "0151 496 0000", ""), new NoteWritten(2, null, $"{Person} rang")]);
        return app;
    }

    private static (string Name, string Value)[] Fields(IHtmlDocument list, string typed) =>
    [
        .. list.QuerySelectorAll("form[action='/erase'] input").OfType<IHtmlInputElement>().Where(input => input.Name != "typed").Select(input => (input.Name!, input.Value)),
        ("typed", typed),
    ];
}

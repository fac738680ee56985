using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using InspectLog.App.Demo;

namespace InspectLog.App.Tests.Web;

/// <summary>Every hit of the demo garage lands on its entry, and the page says that it is what was searched for.</summary>
[Trait("Takes", "long")]
public sealed class FindDemoTests : IAsyncLifetime
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("inspectlog-find-");
    private TestApp? _app;

    private TestApp App => _app ?? throw new InvalidOperationException("The app is not started yet.");

    public async ValueTask InitializeAsync()
    {
        DemoGarage.Make(_folder.FullName, TimeProvider.System, DemoFiles.Shipped());
        _app = await TestApp.StartAsync(folder: _folder.FullName);
    }

    public async ValueTask DisposeAsync()
    {
        await App.DisposeAsync();
        _folder.Delete(recursive: true);
    }

    [Theory]
    [InlineData("tower 3", 2)]
    [InlineData("burnt lead", 0)]
    [InlineData("coil", 12)]
    [InlineData("coil lead", 2)]
    [InlineData("plug gap 0,8", 7)]
    [InlineData("plug gap 0.8", 7)]
    [InlineData("lead resistance lead 6", 3)]
    [InlineData("7.93 kΩ", 1)]
    [InlineData("Callum Reid", 20)]
    [InlineData("inspection Ruben", 1)]
    [InlineData("photo", 3)]
    [InlineData("loose end", 5)]
    [InlineData("pulley", 1)]
    [InlineData("customer", 1)]
    [InlineData("remind me", 1)]
    [InlineData("fail", 1)]
    [InlineData("marigold", 1)]
    public async Task Every_hit_leads_to_its_entry_marked(string words, int atLeast)
    {
        var hits = (await App.PageAsync(Links.Found(words, 100_000))).QuerySelectorAll<IHtmlAnchorElement>(".hit a").ToList();

        Assert.True(hits.Count >= atLeast, $"{words}: {hits.Count} hits");
        foreach (var hit in hits)
        {
            var link = hit.GetAttribute("href")!;
            var (page, anchor) = (link.Split('#')[0], link.Split('#')[1]);
            var shown = await App.PageAsync(page);
            var marks = shown.QuerySelectorAll(".found-mark");
            Assert.True(marks.Length == 1, $"{words}: {link} has {marks.Length} marks");
            var mark = marks[0];
            Assert.Equal("What you searched for", mark.TextContent.Trim());
            var part = shown.GetElementById(anchor);
            Assert.True(part is not null && part.Contains(mark), $"{words}: {link} has no marked part");
            Assert.All(mark.Ancestors<IHtmlDetailsElement>(), fold => Assert.True(fold.HasAttribute("open")));
        }
    }

    [Fact]
    public async Task Finding_at_a_tower_is_found_in_the_sheets_words_and_lands_on_what_was_said_of_it()
    {
        var page = await App.PageAsync("/find?words=tower+2+contacts");

        var hit = page.QuerySelectorAll(".hit").First(one => one.TextContent.Contains("burnt", StringComparison.Ordinal));
        Assert.Equal("Cap contacts, tower 2: burnt", hit.QuerySelector("a")!.TextContent.Trim());
        Assert.Equal(["contacts", "tower", "2"], hit.QuerySelectorAll("mark").Select(word => word.TextContent));
        Assert.Equal("Teasel", hit.Closest(".found-group")!.QuerySelector("h2")!.TextContent);
    }
}

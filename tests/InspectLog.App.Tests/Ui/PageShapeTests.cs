using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using InspectLog.App.Tests.Web;

namespace InspectLog.App.Tests.Ui;

/// <summary>What every page owes its readers, whatever it shows: one main heading, headings in order, landmarks, a name
/// for every field, ids used once, and nothing that the content security policy forbids.</summary>
public sealed class PageShapeTests
{
    [Fact]
    public async Task Pages_of_an_empty_garage_are_well_formed()
    {
        await using var app = await TestApp.StartAsync();

        foreach (var address in new[] { "/", "/vehicles/new", "/find", "/find?words=coil", "/instruments", "/sheets", "/sheets/ignition-breakerless", "/about", "/import", "/backup", "/erase", "/losses", "/seal-key" })
        {
            Check(await app.PageAsync(address), address);
        }
    }

    [Fact]
    public async Task Pages_of_an_inspection_are_well_formed_at_every_check()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var vehicle = bench[..bench.IndexOf("/inspections", StringComparison.Ordinal)];
        await app.PostAsync($"{bench}/readings", ("check", "lead-resistance"), ("cylinder", "2"), ("value", "9.4"), ("unit", "kΩ"));
        await app.PostAsync($"{bench}/brackets", ("check", "pickup-air-gap"), ("goes", "0.3"), ("stops", "0.35"), ("unit", "mm"));
        await app.PostAsync($"{bench}/observations", ("check", "spark"), ("cylinder", "1"), ("condition", "weak"));
        await app.PostAsync($"{bench}/notes", ("check", "spark"), ("text", "Cap <b>cracked</b> at the rim"));

        await app.PostForRedirectAsync($"{vehicle}/parts/new", ("name", "Rotor"), ("fittedOn", "2001-05-03"), ("months", "24"));
        var part = (await app.PageAsync(vehicle)).QuerySelector(".wear-parts a")!.GetAttribute("href")!;

        foreach (var check in InspectLog.Checks.BuiltInSheets.All[0].Checks)
        {
            Check(await app.PageAsync($"{bench}?check={check.Id}"), check.Id);
        }

        foreach (var address in new[] { "/", "/find?words=cap", vehicle, $"{vehicle}/describe", $"{vehicle}/parts/new", part, $"{vehicle}/journal", $"{vehicle}/limits/coil-circuit-resistance", $"{vehicle}/archive", $"{bench}/close", $"{bench}/report" })
        {
            Check(await app.PageAsync(address), address);
        }
    }

    [Fact]
    public async Task Pages_that_refuse_are_well_formed()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();

        Check(await TestApp.ParseAsync(await app.PostAsync("/vehicles/new", ("name", ""))), "new vehicle refused");
        Check(await TestApp.ParseAsync(await app.PostAsync($"{bench}/readings", ("check", "lead-resistance"), ("cylinder", "9"), ("value", "much"))), "reading refused");
        Check(await TestApp.ParseAsync(await app.PostAsync($"{bench}/brackets", ("check", "plug-gap"), ("cylinder", "1"), ("goes", "2"), ("stops", "1"))), "bracket refused");
        Check(await TestApp.ParseAsync(await app.PostAsync($"{bench}/notes", ("text", ""))), "note refused");
        Check(await TestApp.ParseAsync(await app.PostAsync($"{bench}/close")), "close refused");
        Check(await TestApp.ParseAsync(await app.PostAsync("/vehicles/marigold/parts/new", ("name", ""), ("fittedOn", "soon"))), "part refused");
        Check(await TestApp.ParseAsync(await app.PostAsync("/instruments", ("name", ""))), "instrument refused");
        Check(await TestApp.ParseAsync(await app.PostAsync("/import")), "archive refused");
        Check(await TestApp.ParseAsync(await app.PostAsync("/backup", ("folder", "here"), ("days", "no"))), "backup refused");
        Check(await TestApp.ParseAsync(await app.PostAsync("/vehicles/marigold/archive")), "archive not chosen");
        Check(await TestApp.ParseAsync(await app.Client.GetAsync("/nowhere", TestContext.Current.CancellationToken)), "not found");
    }

    private static void Check(IHtmlDocument page, string name)
    {
        Assert.True(page.DocumentElement.GetAttribute("lang") == "en", $"{name}: no language");
        Assert.False(string.IsNullOrWhiteSpace(page.Title), $"{name}: no title");
        Assert.True(page.QuerySelectorAll("h1").Length == 1, $"{name}: {page.QuerySelectorAll("h1").Length} main headings");
        Assert.True(page.QuerySelectorAll("main").Length == 1, $"{name}: one main landmark");
        Assert.True(page.QuerySelector("a.skip") is IHtmlAnchorElement skip && page.QuerySelector(skip.GetAttribute("href")!) is not null, $"{name}: skip link leads nowhere");
        HeadingsDoNotSkip(page, name);
        IdsAreUsedOnce(page, name);
        FieldsHaveNames(page, name);
        ReferencesLeadSomewhere(page, name);
        NothingIsInline(page, name);
    }

    private static void HeadingsDoNotSkip(IHtmlDocument page, string name)
    {
        var level = 0;
        foreach (var heading in page.QuerySelectorAll("h1, h2, h3, h4"))
        {
            var now = heading.LocalName[1] - '0';
            Assert.True(now <= level + 1, $"{name}: \"{heading.TextContent}\" is h{now} after h{level}");
            level = now;
        }
    }

    private static void IdsAreUsedOnce(IHtmlDocument page, string name)
    {
        var twice = page.QuerySelectorAll("[id]").GroupBy(element => element.Id).Where(group => group.Count() > 1);
        Assert.True(!twice.Any(), $"{name}: used twice: {string.Join(", ", twice.Select(group => group.Key))}");
    }

    private static void FieldsHaveNames(IHtmlDocument page, string name)
    {
        foreach (var field in page.QuerySelectorAll("input:not([type=hidden]), select, textarea, audio, progress"))
        {
            var labelled = field.Closest("label") is not null
                || field.HasAttribute("aria-label")
                || (field.Id is { Length: > 0 } id && page.QuerySelector($"label[for='{id}']") is not null);
            Assert.True(labelled, $"{name}: no name for {field.OuterHtml}");
        }

        foreach (var button in page.QuerySelectorAll("button, a[href], summary"))
        {
            Assert.False(string.IsNullOrWhiteSpace(button.TextContent) && button.QuerySelector("img[alt]") is null, $"{name}: no words on {button.OuterHtml}");
        }

        foreach (var picture in page.QuerySelectorAll("img"))
        {
            Assert.True(picture.HasAttribute("alt"), $"{name}: no text for {picture.OuterHtml}");
        }
    }

    private static void ReferencesLeadSomewhere(IHtmlDocument page, string name)
    {
        foreach (var attribute in new[] { "aria-labelledby", "aria-describedby" })
        {
            foreach (var element in page.QuerySelectorAll($"[{attribute}]"))
            {
                foreach (var id in element.GetAttribute(attribute)!.Split(' '))
                {
                    Assert.True(page.GetElementById(id) is not null, $"{name}: {attribute} names {id}, which is not there");
                }
            }
        }

        foreach (var link in page.QuerySelectorAll(".problems a[href^='#']"))
        {
            Assert.True(page.GetElementById(link.GetAttribute("href")![1..]) is not null, $"{name}: {link.OuterHtml} leads nowhere");
        }
    }

    private static void NothingIsInline(IHtmlDocument page, string name)
    {
        Assert.True(page.QuerySelector("[style], style, script:not([src])") is null, $"{name}: inline style or script");
        var handlers = page.All.SelectMany(element => element.Attributes)
            .Where(attribute => attribute.Name.StartsWith("on", StringComparison.Ordinal) || attribute.Name.StartsWith("hx-on", StringComparison.Ordinal));
        Assert.True(!handlers.Any(), $"{name}: inline handler");
    }
}

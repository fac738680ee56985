using System.Net;
using AngleSharp.Html.Dom;
using InspectLog.Measuring;

namespace InspectLog.App.Tests.Web;

/// <summary>Values that were heard.</summary>
public sealed partial class NotShownTests
{
    [Fact]
    public async Task Heard_value_takes_the_first_meter_that_shows_it()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await StartAsync(app);
        var note = HeardNote.Propose(app, HeardNote.Reading("coil-secondary-resistance", 9400), HeardNote.Reading(Circuit, 1.2));

        await app.PostForRedirectAsync($"{bench}/findings/{note}/confirm-all");

        Assert.Equal(["high", "low"], Readings(app).Select(reading => reading.Instrument!.Id));
    }

    [Fact]
    public async Task Heard_value_between_steps_is_left_by_confirm_all_and_asked_about_on_its_card()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await StartAsync(app);
        var note = HeardNote.Propose(app, HeardNote.Reading(Circuit, 0.75));

        await app.PostForRedirectAsync($"{bench}/findings/{note}/confirm-all");
        var plain = await app.PostAsync($"{bench}/findings/{note}/0/confirm");

        Assert.Equal(HttpStatusCode.UnprocessableEntity, plain.StatusCode);
        Assert.Empty(Readings(app));
        var buttons = (await app.PageAsync(bench)).QuerySelectorAll($"#finding-{note}-0 button[name=meant]").Cast<IHtmlButtonElement>().ToList();
        Assert.Equal(3, buttons.Count);

        await app.PostForRedirectAsync($"{bench}/findings/{note}/0/confirm", ("meant", buttons[0].Value));
        var reading = Assert.Single(Readings(app));
        Assert.Equal([0.7], Assert.IsType<DisplayedReading>(reading.Reading).Values);
        Assert.Equal(note, Assert.Single(reading.From).Recording);
    }

    [Fact]
    public async Task Heard_value_that_no_meter_reaches_is_recorded_of_another_instrument_when_said_so()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await StartAsync(app);
        var note = HeardNote.Propose(app, HeardNote.Reading("coil-secondary-resistance", 25_000));

        var card = (await app.PageAsync(bench)).QuerySelector($"#finding-{note}-0")!;
        Assert.Contains("25\u00a0kΩ is more than the", card.TextContent, StringComparison.Ordinal);
        var button = (IHtmlButtonElement)Assert.Single(card.QuerySelectorAll("button[name=meant]"));

        await app.PostForRedirectAsync($"{bench}/findings/{note}/0/confirm", ("meant", button.Value));
        Assert.Equal("Another instrument (accuracy assumed), 2 MΩ range", Assert.Single(Readings(app)).Instrument!.Name);
    }

    [Fact]
    public async Task Heard_value_without_its_place_is_put_right_by_change()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await StartAsync(app);
        var note = HeardNote.Propose(app, HeardNote.Reading("lead-resistance", 9405));

        var card = (await app.PageAsync(bench)).QuerySelector($"#finding-{note}-0")!;
        Assert.Empty(card.QuerySelectorAll("button[name=meant], button[name=cylinder]"));

        var change = $"{bench}/findings/{note}/0/change";
        (string, string)[] form = [("check", "lead-resistance"), ("cylinder", "2"), ("value", "9.405"), ("unit", "kΩ")];
        var asked = await TestApp.ParseAsync(await app.PostAsync(change, form));
        var meant = asked.QuerySelectorAll("button[name=meant]").Cast<IHtmlButtonElement>().First().Value;
        await app.PostForRedirectAsync(change, [.. form, ("meant", meant)]);

        Assert.Equal([9400], ((DisplayedReading)Assert.Single(Readings(app)).Reading).Values);
        Assert.Equal(2, Readings(app)[0].Cylinder);
    }
}

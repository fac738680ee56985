using System.Net;
using InspectLog.Journal.State;

namespace InspectLog.App.Tests.Web;

/// <summary>Conditions, actions and notes that are put right, and heard findings that say something else than was heard.
/// </summary>
public sealed class AmendEntryTests
{
    [Fact]
    public async Task Condition_and_place_of_what_was_seen_are_put_right()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var entry = await app.SeeAsync(bench, "plug-condition", "wet", "2");

        await app.AmendAsync(bench, entry, ("cylinder", "3"), ("condition", "sooty"));

        var seen = Assert.Single(app.Inspection().Observations).Body;
        Assert.Equal((3, "sooty", false), (seen.Cylinder, seen.Condition, seen.Negated));
        await app.AmendAsync(bench, entry, ("absent", "on"));
        Assert.True(app.Inspection().Observations[0].Body.Negated);
        Assert.Equal("on", (await app.FilledAsync(bench, entry))["absent"]);
        Assert.Contains("2 earlier versions", await app.CapturedAsync(bench, entry), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("plug-condition", "7", "wet")]
    [InlineData("plug-condition", "", "wet")]
    [InlineData("plug-condition", "all", "wet")]
    [InlineData("plug-condition", "2", "haunted")]
    [InlineData("no-such-check", "2", "wet")]
    public async Task What_the_sheet_does_not_have_is_refused_and_what_was_typed_stays(string check, string cylinder, string condition)
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var entry = await app.SeeAsync(bench, "plug-condition", "sooty", "1");

        var answer = await app.AmendAsync(bench, entry, ("check", check), ("cylinder", cylinder), ("condition", condition));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.NotNull((await TestApp.ParseAsync(answer)).QuerySelector(".problems"));
        Assert.Empty(Assert.Single(app.Inspection().Observations).History.Past);
    }

    [Fact]
    public async Task Action_is_put_right_and_its_loose_end_goes_with_it()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var entry = await app.DoAsync(bench, "lead-condition", "disconnected", "4");

        await app.AmendAsync(bench, entry, ("cylinder", "3"));
        Assert.Equal("Lead 3 disconnected", Assert.Single(app.Inspection().OpenLooseEnds).What.Text);

        await app.AmendAsync(bench, entry, ("action", "cleaned"));
        Assert.Empty(app.Inspection().OpenLooseEnds);
        Assert.Equal("cleaned", Assert.Single(app.Inspection().Actions).Body.Action);
    }

    [Fact]
    public async Task Part_that_is_off_for_a_reading_stays_off_when_its_value_is_put_right_and_moves_with_its_place()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var entry = await app.MeasureAsync(bench, "lead-resistance", "9.4", "kΩ", "2");
        Assert.Equal(2, Assert.Single(app.Inspection().OpenLooseEnds).What.Cylinder);

        await app.AmendAsync(bench, entry, ("value", "9.6"));
        Assert.Equal(2, Assert.Single(app.Inspection().OpenLooseEnds).What.Cylinder);

        await app.AmendAsync(bench, entry, ("cylinder", "5"));
        Assert.Equal(5, Assert.Single(app.Inspection().OpenLooseEnds).What.Cylinder);
    }

    [Fact]
    public async Task Changed_finding_is_shown_as_changed_and_can_be_changed_again()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var note = HeardNote.Propose(app, HeardNote.Seen("cap-contacts", "corroded", 2));

        await app.PostForRedirectAsync(
            $"{bench}/findings/{note}/0/change", ("check", "cap-contacts"), ("cylinder", "3"), ("condition", "corroded"));

        var entry = Assert.Single(app.Inspection().Observations).Sequence;
        var text = await app.CapturedAsync(bench, note);
        Assert.Contains("Cap contacts, tower 3: corroded, confirmed", text, StringComparison.Ordinal);
        Assert.Contains("Understood at first: Cap contacts, tower 2: corroded", text, StringComparison.Ordinal);

        await app.AmendAsync(bench, entry, ("cylinder", "4"));

        var seen = Assert.Single(app.Inspection().Observations).Body;
        Assert.Equal((4, new(note, 0)), (seen.Cylinder, seen.From));
        Assert.Contains("tower 4: corroded, confirmed", await app.CapturedAsync(bench, note), StringComparison.Ordinal);
        Assert.Equal(ProposalState.Confirmed, app.Inspection().FindNote(note)!.Proposals![0].State);
    }

    [Fact]
    public async Task Note_needs_words_and_a_check_of_the_sheet()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync($"{bench}/notes", ("text", "Bonnet stay rattles"));
        var entry = app.Inspection().Captures[0].Sequence;

        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await app.AmendAsync(bench, entry, ("text", " "))).StatusCode);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await app.AmendAsync(bench, entry, ("check", "no-such-check"))).StatusCode);
        Assert.Equal(HttpStatusCode.Redirect, (await app.AmendAsync(bench, entry, ("text", "Bonnet stay is loose"))).StatusCode);

        Assert.Equal("Bonnet stay is loose", Assert.IsType<TypedNote>(Assert.Single(app.Inspection().Captures)).Note.Text);
        Assert.Contains("was “Bonnet stay rattles”", await app.CapturedAsync(bench, entry), StringComparison.Ordinal);
    }
}

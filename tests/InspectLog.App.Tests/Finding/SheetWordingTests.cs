using InspectLog.App.Tests.Bench;
using InspectLog.Inspecting;
using InspectLog.Inspecting.Words;
using InspectLog.Journal;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.App.Tests.Finding;

/// <summary>What search knows of an entry: the words pages show, and what else a person would type.</summary>
public sealed class SheetWordingTests
{
    private static readonly SheetWording Wording = new(SheetLibrary.BuiltIn);

    [Fact]
    public void Finding_is_worded_by_the_title_of_its_check_and_the_sheets_noun_for_its_place()
    {
        var text = Of(Written.Seen("cap-contacts", "corroded", 3));

        Assert.Equal("Cap contacts, tower 3: corroded", text.Shown);
        Assert.Contains("cylinder 3", text.FoundBy);
    }

    [Fact]
    public void Absence_is_worded_as_pages_word_it() =>
        Assert.EndsWith(": not corroded", Of(Written.Seen("cap-contacts", "corroded", 3, absent: true)).Shown, StringComparison.Ordinal);

    [Fact]
    public void Reading_is_worded_with_its_value_as_shown_and_its_decision_and_found_as_typed()
    {
        var text = Of(Written.Reading("lead-resistance", 9400, 1) with { AsGiven = "9.4k" });

        Assert.Equal("Lead resistance, lead 1: 9.400\u00a0kΩ, pass", text.Shown);
        Assert.Contains("9.4k", text.FoundBy);
    }

    [Fact]
    public void Bracket_is_worded_as_a_span()
    {
        var bracket = new ReadingDecided(
            Written.Inspection, "pickup-air-gap", null, new Bracket(0.25, 0.35), "0,25 / 0,35", null, null, null, []);

        Assert.Equal("Air gap: 0.25 to 0.35\u00a0mm", Of(bracket).Shown);
    }

    [Fact]
    public void Photo_is_worded_by_its_place_and_caption() => Assert.Equal(
        "Photo, Cap contacts, tower 2: Green crust",
        Of(new PhotoKept(Written.Inspection, new("", 0, ""), 1, 1, "cap-contacts", 2) { Caption = "Green crust" }).Shown);

    [Fact]
    public void Reasons_and_loose_ends_are_worded()
    {
        Assert.EndsWith(": left out, no timing light", Of(new CheckLeftOut(Written.Inspection, "ignition-timing", "no timing light")).Shown, StringComparison.Ordinal);
        var end = Of(new LooseEndOpened(Written.Inspection, "Coil lead off the cap", "Put it back", null, null, null));
        Assert.Equal("Loose end: Coil lead off the cap", end.Shown);
        Assert.Contains("Put it back", end.FoundBy);
        Assert.Equal("Entry 3 withdrawn: misread", Of(new EntryWithdrawn(3, "misread")).Shown);
    }

    [Fact]
    public void Waived_loose_end_is_worded_with_what_it_is() => Assert.Equal(
        "Coil lead off stays as it is: the car stays on the stand",
        Of(new LooseEndWaived(3, "the car stays on the stand"), new LooseEndOpened(Written.Inspection, "Coil lead off", "Put it back", null, null, null)).Shown);

    [Fact]
    public void What_was_said_is_found_by_who_said_it()
    {
        var text = Of(
            new TranscriptMade(3, "Tower three is corroded.", [], true, "m", ""),
            new RecordingKept(Written.Inspection, new("", 0, ""), 1, "cap-contacts"));

        Assert.Equal("Tower three is corroded.", text.Shown);
        Assert.Contains("Tess Okafor", text.FoundBy);
    }

    [Fact]
    public void Corrected_words_are_found_by_who_said_them() => Assert.Contains(
        "Tess Okafor",
        Of(new WordsCorrected(3, "Tower three is corroded."), new RecordingKept(Written.Inspection, new("", 0, ""), 1, "cap-contacts")).FoundBy);

    [Fact]
    public void Inspection_is_found_by_its_technician_and_sheet()
    {
        var text = Wording.Of(Written.Scene().Vehicle, Written.Entry(2, default, Written.Started()))!;

        Assert.Equal("Inspection started by Tess Okafor", text.Shown);
        Assert.Contains(text.FoundBy, title => title.Contains("ignition", StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void Where_the_sheet_is_missing_an_entry_is_worded_as_it_stands()
    {
        EntryBody[] bodies = [new VehicleAdded("Marigold", "", null), Written.Started() with { SheetSha256 = new('c', 64) }];
        var vehicle = bodies.Index().Aggregate(
            VehicleState.Before("marigold"), (state, body) => state.Apply(Written.Entry(body.Index + 1, default, body.Item)));

        var text = Wording.Of(vehicle, Written.Entry(3, default, Written.Seen("cap-contacts", "corroded", 3)))!;

        Assert.Equal("cap-contacts, cylinder 3: corroded", text.Shown);
    }

    [Fact]
    public void Private_facts_and_what_only_machines_say_are_not_worded()
    {
        var vehicle = Written.Scene().Vehicle;

        Assert.Null(Wording.Of(vehicle, Written.Entry(3, default, new PrivateFactsNoted("Ana Lindqvist", "", ""))));
        Assert.Null(Wording.Of(vehicle, Written.Entry(3, default, new FindingsProposed(3, []))));
    }

    /// <summary>The words of an entry that comes after some others of the inspection.</summary>
    private static EntryText Of(EntryBody body, params EntryBody[] before)
    {
        var vehicle = Written.Scene([.. before, body]).Vehicle;
        return Wording.Of(vehicle, Written.Entry(3 + before.Length, default, body))!;
    }
}

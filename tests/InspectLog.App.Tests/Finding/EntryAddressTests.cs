using InspectLog.App.Tests.Bench;
using InspectLog.App.Vehicles;
using InspectLog.Inspecting;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Tests.Finding;

/// <summary>The one rule of where an entry is shown.</summary>
public sealed class EntryAddressTests
{
    private const string Bench = "/vehicles/marigold/inspections/2";

    [Fact]
    public void Record_by_hand_is_on_the_bench_with_its_check_and_place_open() =>
        Assert.Equal($"{Bench}?check=cap-contacts&place=3#item-3", Of(3, Written.Seen("cap-contacts", "corroded", 3)).Link);

    [Fact]
    public void Search_has_it_marked() => Assert.Equal(
        $"{Bench}?check=cap-contacts&place=3&found=item-3#item-3", Of(3, Written.Seen("cap-contacts", "corroded", 3)).AsFound);

    [Fact]
    public void Confirmed_finding_is_where_it_was_proposed() => Assert.Equal(
        $"{Bench}?check=cap-contacts&place=3#finding-3-0",
        Of(5, Kept, Proposed, Written.Seen("cap-contacts", "corroded", 3) with { From = new(3, 0) }).Link);

    [Fact]
    public void Finding_of_a_typed_note_is_at_the_note() => Assert.Equal(
        $"{Bench}?check=cap-contacts&place=3#item-3",
        Of(5, new NoteWritten(2, null, "Tower 3 corroded."), Proposed, Written.Seen("cap-contacts", "corroded", 3) with { From = new(3, 0) }).Link);

    [Fact]
    public void Corrected_words_are_at_their_voice_note() => Assert.Equal(
        $"{Bench}?check=cap-contacts#item-3",
        Of(5, Kept, new TranscriptMade(3, "Tower free.", [], true, "m", ""), new WordsCorrected(3, "Tower three.")).Link);

    [Fact]
    public void Transcript_is_at_its_voice_note() => Assert.Equal(
        $"{Bench}?check=cap-contacts#item-3", Of(4, Kept, new TranscriptMade(3, "Tower three.", [], true, "m", "")).Link);

    [Fact]
    public void Amendment_is_where_the_first_entry_was_and_the_first_in_the_journal()
    {
        EntryBody[] bodies = [Written.Seen("cap-contacts", "corroded", 3), Written.Seen("cap-contacts", "corroded", 4) with { Amends = 3 }];

        Assert.Equal($"{Bench}?check=cap-contacts&place=4#item-3", Of(4, bodies).Link);
        Assert.True(Of(3, bodies).IsJournal);
        Assert.EndsWith("#entry-3", Of(3, bodies).Link, StringComparison.Ordinal);
    }

    [Fact]
    public void Withdrawn_record_is_in_the_journal() =>
        Assert.True(Of(3, Written.Seen("cap-contacts", "corroded", 3), new EntryWithdrawn(3, "mistake")).IsJournal);

    [Fact]
    public void What_was_added_after_closing_is_in_the_journal() =>
        Assert.True(Of(4, new InspectionClosed(2), new NoteWritten(2, null, "Came back wet.")).IsJournal);

    [Fact]
    public void Loose_end_is_at_the_top_of_the_bench_while_it_is_open()
    {
        var end = new LooseEndOpened(2, "Coil lead off the cap", "Put it back", null, null, null);

        Assert.Equal($"{Bench}#end-3", Of(3, end).Link);
        Assert.True(Of(3, end, new LooseEndTied(3)).IsJournal);
        Assert.True(Of(3, end, new LooseEndWaived(3, "stays")).IsJournal);
    }

    [Fact]
    public void Reason_for_leaving_out_is_at_its_check_while_it_is_left_out()
    {
        var left = new CheckLeftOut(2, "cap-contacts", "too dark");

        Assert.Equal($"{Bench}?check=cap-contacts#{FoundPart.LeftOut}", Of(3, left).Link);
        Assert.True(Of(3, left, Written.Seen("cap-contacts", "clean", 1)).IsJournal);
    }

    [Fact]
    public void Inspection_is_its_bench() => Assert.Equal($"{Bench}#{FoundPart.Inspection}", Of(2).Link);

    [Fact]
    public void Vehicle_itself_is_in_the_journal() => Assert.True(Of(1).IsJournal);

    [Fact]
    public void Bench_whose_sheet_is_missing_shows_nothing_so_the_journal_does()
    {
        var vehicle = Written.Scene(Written.Seen("cap-contacts", "corroded", 3)).Vehicle;
        var elsewhere = vehicle.Inspections[0].How with { SheetSha256 = new('c', 64) };
        var without = Journal.State.VehicleState.Before("marigold")
            .Apply(Written.Entry(1, default, new VehicleAdded("Marigold", "", null)))
            .Apply(Written.Entry(2, default, elsewhere))
            .Apply(Written.Entry(3, default, Written.Seen("cap-contacts", "corroded", 3)));

        var entry = Written.Entry(3, default, Written.Seen("cap-contacts", "corroded", 3));

        Assert.False(EntryAddress.Of(vehicle, SheetLibrary.BuiltIn, entry).IsJournal);
        Assert.True(EntryAddress.Of(without, SheetLibrary.BuiltIn, entry).IsJournal);
    }

    private static RecordingKept Kept => new(2, new("", 0, ""), 1, "cap-contacts");

    private static FindingsProposed Proposed => new(
        3, [new("observation", "cap-contacts", 3, null, null, null, "corroded", false, null, "Tower three is corroded", 0, 5, [])]);

    /// <summary>Where an entry is shown after the entries of an inspection, the first of which is entry 3.</summary>
    private static EntryAddress Of(int sequence, params EntryBody[] bodies)
    {
        EntryBody[] all = [new VehicleAdded("Marigold", "1974 saloon", null), Written.Started(), .. bodies];
        return EntryAddress.Of(
            Written.Scene(bodies).Vehicle, SheetLibrary.BuiltIn, Written.Entry(sequence, default, all[sequence - 1]));
    }
}

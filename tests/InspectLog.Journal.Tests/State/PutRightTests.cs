using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Journal.Tests.Support;
using InspectLog.Measuring;

namespace InspectLog.Journal.Tests.State;

/// <summary>What becomes of what was recorded when it is put right, withdrawn, restored, or added after closing.</summary>
public sealed class PutRightTests
{
    [Fact]
    public void Amended_record_says_the_new_and_keeps_its_number_its_place_and_what_it_said()
    {
        var state = Written.State(
            Gap(1, 0.6), // entry 3
            Gap(2, 0.7),
            Gap(1, 0.8) with { Amends = 3 });

        Assert.Equal([(3L, 0.8), (4L, 0.7)], state.Readings.Select(one => (one.Sequence, ((Bracket)one.Body.Reading).Goes)));
        var past = Assert.Single(state.Readings[0].History.Past);
        Assert.Equal((5L, 0.6), (past.ChangedBy, ((Bracket)((ReadingDecided)past.Says).Reading).Goes));
        Assert.Equal(Some.Technician, past.By);
        Assert.False(past.IsLater);
    }

    [Fact]
    public void Amendment_of_another_kind_or_of_nothing_changes_nothing()
    {
        var before = Written.State(Gap(1, 0.6));

        var after = Written.State(Gap(1, 0.6), new NoteWritten(2, null, "no") { Amends = 3 }, Gap(1, 0.9) with { Amends = 99 });

        Assert.Equal(before.Readings.Select(one => one.Body.Reading), after.Readings.Select(one => one.Body.Reading));
        Assert.Empty(after.Captures);
    }

    [Fact]
    public void Withdrawn_record_counts_again_once_it_is_restored_in_the_place_it_had()
    {
        var withdrawn = Written.State(Gap(1, 0.6), Gap(2, 0.7), new EntryWithdrawn(3, "wrong place"));
        var restored = Written.State(Gap(1, 0.6), Gap(2, 0.7), new EntryWithdrawn(3, "wrong place"), new EntryRestored(3));

        Assert.Equal([4L], withdrawn.Readings.Select(one => one.Sequence));
        Assert.Equal("wrong place", withdrawn.Find(3)!.History.Withdrawn!.Reason);
        Assert.Equal([3L, 4L], withdrawn.Everything.Select(one => one.Sequence));
        Assert.Equal([3L, 4L], restored.Readings.Select(one => one.Sequence));
    }

    [Fact]
    public void Amending_what_was_withdrawn_lets_it_count_again()
    {
        var state = Written.State(Gap(1, 0.6), new EntryWithdrawn(3, "misread"), Gap(1, 0.7) with { Amends = 3 });

        Assert.Equal(0.7, ((Bracket)Assert.Single(state.Readings).Body.Reading).Goes);
    }

    [Fact]
    public void Photo_and_note_are_put_right_too()
    {
        var photo = new PhotoKept(2, Some.Photo, 1, 1, "plug-gap", 1);
        var state = Written.State(
            photo,
            new NoteWritten(2, null, "oil"),
            photo with { Cylinder = 2, Caption = "Worn", Amends = 3 },
            new NoteWritten(2, null, "oil leak") { Amends = 4 });

        Assert.Equal((2, "Worn"), (state.Photos.Single().Photo.Cylinder, state.Photos.Single().Photo.Caption));
        Assert.Equal("oil leak", state.Captures.OfType<TypedNote>().Single().Note.Text);
    }

    [Fact]
    public void What_comes_after_closing_is_an_addendum_and_changes_nothing_that_counted()
    {
        var state = Written.State(
            Gap(1, 0.6), new CheckLeftOut(2, "spark", "no tester"), new InspectionClosed(2), Gap(1, 0.9), new NoteWritten(2, null, "later"),
            new ObservationMade(2, "spark", 1, "present", false, null));

        Assert.Equal([3L], state.Readings.Select(one => one.Sequence));
        Assert.Empty(state.Captures);
        Assert.Equal([6L, 7L, 8L], state.Addenda.Select(one => one.Sequence));
        Assert.Single(state.LeftOut);
    }

    [Fact]
    public void Amendment_after_closing_counts_and_says_that_it_came_later()
    {
        var state = Written.State(Gap(1, 0.6), new InspectionClosed(2), Gap(1, 0.7) with { Amends = 3 });

        var reading = Assert.Single(state.Readings);
        Assert.Equal(0.7, ((Bracket)reading.Body.Reading).Goes);
        Assert.True(reading.History.LastChange!.IsLater);
    }

    [Fact]
    public void Note_left_out_of_the_report_can_be_taken_in_again()
    {
        var note = new NoteWritten(2, null, "ask about the key");

        Assert.True(Written.State(note, new ReportChoice(3, false)).Captures[0].History.IsLeftOutOfReport);
        Assert.False(Written.State(note, new ReportChoice(3, false), new ReportChoice(3, true)).Captures[0].History.IsLeftOutOfReport);
    }

    [Fact]
    public void Stamp_of_a_capture_is_known_by_its_first_entry()
    {
        var stamp = new CaptureStamp("one", DateTimeOffset.UnixEpoch);

        var state = Written.State(Gap(1, 0.6) with { Stamp = stamp }, Gap(2, 0.6) with { Stamp = stamp });

        Assert.Equal(3, state.Stamps["one"]);
    }

    [Theory]
    [InlineData(90L, 90)]
    [InlineData(null, 0)]
    [InlineData(-5L, 0)]
    [InlineData(CaptureStamp.LongestWait + 1, 0)]
    public void What_waited_without_a_network_was_captured_so_long_before_it_came(long? waited, int earlier)
    {
        var stamp = new CaptureStamp("one", DateTimeOffset.UnixEpoch) { Waited = waited };

        var came = Written.State(Gap(1, 0.6));
        var state = Written.State(
            Gap(1, 0.6) with { Stamp = stamp },
            new LooseEndOpened(2, "Ignition on", "Switch it off", null, null, null) { Stamp = stamp },
            new NoteWritten(2, null, "rattles") { Stamp = stamp });

        var before = TimeSpan.FromSeconds(earlier);
        Assert.Equal(before, came.Readings[0].Time - state.Readings[0].Time);
        Assert.Equal(earlier > 0 ? came.Readings[0].Time : null, state.Readings[0].History.Came);
        Assert.Equal(earlier > 0, state.LooseEnds[0].Opened < state.LooseEnds[0].History.Came);
        Assert.Equal(earlier > 0, state.Captures[0].History.Came is not null);
    }

    [Fact]
    public void Findings_of_a_note_read_again_are_numbered_on()
    {
        var found = new ProposedFinding("observation", "spark", 1, null, null, null, "present", false, null, "spark", 0, 5, []);
        var state = Written.State(
            new NoteWritten(2, null, "spark one and two"),
            new FindingsProposed(3, [found, found with { Cylinder = 2 }]),
            new ObservationMade(2, "spark", 1, "present", false, new(3, 0)),
            new FindingsProposed(3, [found with { Cylinder = 3 }]));

        var note = Assert.IsType<TypedNote>(state.Captures[0]);
        Assert.Equal(
            [ProposalState.Confirmed, ProposalState.Dropped, ProposalState.Open], note.Proposals!.Select(one => one.State));
        Assert.Equal([0, 1, 2], note.Proposals!.Select(one => one.Reference.Index));
        Assert.Equal([5L], state.RecordsOf(new(3, 0)).Select(one => one.Sequence));
    }

    [Fact]
    public void Withdrawing_a_loose_end_removes_it_and_withdrawing_its_tie_opens_it_again()
    {
        var end = new LooseEndOpened(2, "Lead 2 off", "Push it home", null, null, null) { Record = 3 };

        Assert.Empty(Written.State(end, new EntryWithdrawn(3, "never off")).LooseEnds);
        Assert.Empty(Written.State(end, new LooseEndTied(3)).OpenLooseEnds);
        Assert.Single(Written.State(end, new LooseEndTied(3), new EntryWithdrawn(4, "still off")).OpenLooseEnds);
    }

    private static ReadingDecided Gap(int cylinder, double goes) =>
        new(2, "plug-gap", cylinder, new Bracket(goes, goes + 0.05), "", null, null, null, []);
}

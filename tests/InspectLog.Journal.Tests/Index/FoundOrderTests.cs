using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests.Index;

/// <summary>Which hits come first, and what is said of those that no longer count.</summary>
public sealed class FoundOrderTests : IDisposable
{
    private readonly TempFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void What_was_withdrawn_or_put_right_comes_last_and_says_so()
    {
        using var garage = Garage.Open(_folder.Path, Some.Clock());
        var id = garage.AddVehicle(Some.Technician, Some.Vehicle());
        garage.Append(id, Some.Technician, _ => [new InspectionStarted("sheet", 1, "", Some.Technician, null, null)]); // 2
        garage.Append(id, Some.Technician, _ => [new NoteWritten(2, null, "walrus one"), new NoteWritten(2, null, "walrus two")]);
        garage.Append(id, "Tove Marr", _ => [new NoteWritten(2, null, "walrus three") { Amends = 3 }, new EntryWithdrawn(4, "a seal")]);

        var hits = garage.Search("walrus");

        Assert.Equal(["walrus three", "walrus two", "walrus one"], hits.Select(hit => hit.Text));
        Assert.Null(hits[0].Mark);
        Assert.Equal("a seal", Assert.IsType<WithdrawnSince>(hits[1].Mark).Reason);
        Assert.Equal((5L, "Tove Marr"), (Assert.IsType<PutRightSince>(hits[2].Mark).Entry, hits[2].Mark!.By));
    }

    [Fact]
    public void What_was_restored_counts_again()
    {
        using var garage = Garage.Open(_folder.Path, Some.Clock());
        var id = garage.AddVehicle(Some.Technician, Some.Vehicle());
        garage.Append(id, Some.Technician, _ => [new InspectionStarted("sheet", 1, "", Some.Technician, null, null)]);
        garage.Append(id, Some.Technician, _ => [new NoteWritten(2, null, "walrus"), new EntryWithdrawn(3, "a seal"), new EntryRestored(3)]);

        Assert.Null(Assert.Single(garage.Search("walrus")).Mark);
    }

    [Fact]
    public void Words_that_stand_together_come_before_scattered_ones()
    {
        var clock = Some.Clock();
        using var garage = Garage.Open(_folder.Path, clock);
        var id = garage.AddVehicle(Some.Technician, Some.Vehicle());
        garage.Note(id, "tower 3 corroded");
        clock.Advance(TimeSpan.FromMinutes(1));
        garage.Note(id, "3 marks beside tower 2");

        Assert.Equal(["tower 3 corroded", "3 marks beside tower 2"], garage.Search("tower 3").Select(hit => hit.Text));
    }

    [Fact]
    public void Mark_is_found_by_the_first_entry_and_by_each_that_put_it_right()
    {
        var state = Written.Apply(
            Written.Inspecting(),
            new NoteWritten(2, null, "one"), // entry 3
            new NoteWritten(2, null, "two") { Amends = 3 },
            new NoteWritten(2, null, "three") { Amends = 3 },
            new EntryWithdrawn(3, "neither"));

        var marks = EntryMarks.Of(state);

        Assert.Equal(4, Assert.IsType<PutRightSince>(marks.At(3)).Entry);
        Assert.Equal(5, Assert.IsType<PutRightSince>(marks.At(4)).Entry);
        Assert.Equal("neither", Assert.IsType<WithdrawnSince>(marks.At(5)).Reason);
        Assert.Null(marks.At(2));
        Assert.Equal(3, EntryMarks.FirstOf(Written.Entry(5, new NoteWritten(2, null, "three") { Amends = 3 })));
    }

    [Fact]
    public void Withdrawn_loose_end_is_marked_too()
    {
        var state = Written.Apply(
            Written.Inspecting(), new LooseEndOpened(2, "Coil lead off", "Put it back", null, null, null), new EntryWithdrawn(3, "it was on"));

        Assert.Equal("it was on", Assert.IsType<WithdrawnSince>(EntryMarks.Of(state).At(3)).Reason);
    }

    [Fact]
    public void Withdrawn_tie_is_marked_and_the_next_tie_is_not()
    {
        var state = Written.Apply(
            Written.Inspecting(),
            new LooseEndOpened(2, "Coil lead off", "Put it back", null, null, null), // entry 3
            new LooseEndTied(3),
            new EntryWithdrawn(4, "it is still off"),
            new LooseEndTied(3));

        var marks = EntryMarks.Of(state);

        Assert.Equal("it is still off", Assert.IsType<WithdrawnSince>(marks.At(4)).Reason);
        Assert.Null(marks.At(3));
        Assert.Null(marks.At(6));
        Assert.Empty(state.Inspections[0].OpenLooseEnds);
    }

    [Fact]
    public void Withdrawal_that_was_undone_is_marked_and_what_it_withdrew_is_not()
    {
        var state = Written.Apply(
            Written.Inspecting(), new NoteWritten(2, null, "one"), new EntryWithdrawn(3, "misread"), new EntryRestored(3));

        var marks = EntryMarks.Of(state);

        Assert.Equal(5, Assert.IsType<UndoneSince>(marks.At(4)).Entry);
        Assert.Null(marks.At(3));
    }
}

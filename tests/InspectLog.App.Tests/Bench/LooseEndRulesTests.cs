using InspectLog.Checks;
using InspectLog.Inspecting;
using InspectLog.Inspecting.Recording;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Tests.Bench;

/// <summary>Loose ends know their part, their place and the record they came of.</summary>
public sealed class LooseEndRulesTests
{
    [Fact]
    public void Reconnecting_a_plug_ties_the_end_of_that_plug_and_no_other()
    {
        var before = Recorded(
            Written.Done("lead-condition", PartActions.Disconnected, 2), Written.Done("lead-condition", PartActions.Disconnected, 3));

        var after = Then(before, Written.Done("lead-condition", PartActions.Reconnected, 2));

        Assert.Equal([2, 3], before.Inspection.OpenLooseEnds.Select(end => end.What.Cylinder!.Value));
        Assert.Equal([3], after.Inspection.OpenLooseEnds.Select(end => end.What.Cylinder!.Value));
    }

    [Fact]
    public void Lead_taken_off_for_its_resistance_is_put_back_under_its_condition()
    {
        var measured = Recorded(Written.Reading("lead-resistance", 8000, 4), Written.Reading("lead-resistance", 8100, 5));

        var after = Then(measured, Written.Done("lead-condition", PartActions.Reconnected, 4));

        Assert.Equal([("plug-lead", 4), ("plug-lead", 5)], measured.Inspection.OpenLooseEnds.Select(end => (end.What.Part!, end.What.Cylinder!.Value)));
        Assert.Equal([5], after.Inspection.OpenLooseEnds.Select(end => end.What.Cylinder!.Value));
    }

    [Fact]
    public void Part_that_is_off_already_is_not_off_twice()
    {
        var scene = Recorded(
            Written.Reading("lead-resistance", 8000, 4), Written.Done("lead-condition", PartActions.Disconnected, 4));

        Assert.Single(scene.Inspection.OpenLooseEnds);
    }

    [Fact]
    public void Part_put_back_stays_put_back_when_its_place_is_measured_again()
    {
        var scene = Then(
            Recorded(Written.Reading("lead-resistance", 8000, 4)), Written.Done("lead-condition", PartActions.Reconnected, 4));

        Assert.Empty(Then(scene, Written.Reading("lead-resistance", 8050, 4)).Inspection.OpenLooseEnds);
    }

    [Fact]
    public void End_names_the_record_it_came_of_and_goes_with_it()
    {
        var scene = Recorded(Written.Done("lead-condition", PartActions.Disconnected, 2));
        var record = scene.Inspection.Actions[0].Sequence;

        Assert.Equal(record, scene.Inspection.LooseEnds[0].What.Record);
        Assert.Empty(Then(scene, [.. Withdrawing.Withdraw(scene, record, "misread")]).Inspection.LooseEnds);
    }

    [Fact]
    public void What_was_taken_apart_for_a_reading_is_apart_though_the_reading_is_withdrawn()
    {
        var scene = Recorded(Written.Reading("lead-resistance", 8000, 4));

        var after = Then(scene, [.. Withdrawing.Withdraw(scene, scene.Inspection.Readings[0].Sequence, "misread")]);

        Assert.Empty(after.Inspection.Readings);
        Assert.Single(after.Inspection.OpenLooseEnds);
    }

    [Fact]
    public void Withdrawing_a_reconnection_opens_the_end_again_and_restoring_a_record_its_own_end()
    {
        var off = Recorded(Written.Done("lead-condition", PartActions.Disconnected, 2));
        var on = Then(off, Written.Done("lead-condition", PartActions.Reconnected, 2));
        var undone = Then(on, [.. Withdrawing.Withdraw(on, on.Inspection.Actions[1].Sequence, "misread")]);
        var first = undone.Inspection.Actions[0].Sequence;
        var gone = Then(undone, [.. Withdrawing.Withdraw(undone, first, "misread")]);

        Assert.Empty(on.Inspection.OpenLooseEnds);
        Assert.Single(undone.Inspection.OpenLooseEnds);
        Assert.Empty(gone.Inspection.OpenLooseEnds);
        Assert.Single(Then(gone, [.. Withdrawing.Restore(gone, first)]).Inspection.OpenLooseEnds);
    }

    [Fact]
    public void Restoring_a_reconnection_does_not_tie_what_came_off_later()
    {
        var off = Recorded(Written.Done("lead-condition", PartActions.Disconnected, 5));
        var on = Then(off, Written.Done("lead-condition", PartActions.Reconnected, 5));
        var again = Then(on, Written.Done("lead-condition", PartActions.Disconnected, 5));
        var reconnected = again.Inspection.Actions[1].Sequence;
        var gone = Then(again, [.. Withdrawing.Withdraw(again, reconnected, "misread")]);

        var back = Then(gone, [.. Withdrawing.Restore(gone, reconnected)]);

        Assert.Equal([again.Inspection.OpenLooseEnds.Single().Sequence], back.Inspection.OpenLooseEnds.Select(end => end.Sequence));
    }

    [Fact]
    public void Restoring_does_not_bring_back_an_end_that_an_amendment_had_withdrawn()
    {
        var off = Recorded(Written.Done("lead-condition", PartActions.Disconnected, 5));
        var action = off.Inspection.Actions[0];
        var moved = Then(off, [.. Amending.Bodies(off, action.Sequence, action.Body with { Cylinder = 6 })]);
        var gone = Then(moved, [.. Withdrawing.Withdraw(moved, action.Sequence, "misread")]);

        var back = Then(gone, [.. Withdrawing.Restore(gone, action.Sequence)]);

        Assert.Equal([6], back.Inspection.OpenLooseEnds.Select(end => end.What.Cylinder!.Value));
    }

    [Fact]
    public void End_stays_while_another_record_says_that_the_part_is_off()
    {
        var scene = Recorded(
            Written.Done("lead-condition", PartActions.Disconnected, 3), Written.Reading("lead-resistance", 8000, 3));

        var after = Then(scene, [.. Withdrawing.Withdraw(scene, scene.Inspection.Actions[0].Sequence, "misread")]);

        Assert.Equal([3], after.Inspection.OpenLooseEnds.Select(end => end.What.Cylinder!.Value));
    }

    [Fact]
    public void Amending_what_was_off_and_is_put_back_leaves_no_end_behind_that_could_open_again()
    {
        var off = Recorded(Written.Done("lead-condition", PartActions.Disconnected, 2));
        var on = Then(off, Written.Done("lead-condition", PartActions.Reconnected, 2));
        var action = on.Inspection.Actions[0];
        var cleaned = Then(on, [.. Amending.Bodies(on, action.Sequence, action.Body with { Action = PartActions.Cleaned })]);

        var after = Then(cleaned, [.. Withdrawing.Withdraw(cleaned, cleaned.Inspection.Actions[1].Sequence, "misread")]);

        Assert.Empty(after.Inspection.OpenLooseEnds);
    }

    [Fact]
    public void Nothing_is_opened_in_an_inspection_that_is_closed()
    {
        var scene = Then(Recorded(Written.Done("lead-condition", PartActions.Cleaned, 2)), [new InspectionClosed(Written.Inspection)]);
        var action = scene.Inspection.Actions[0];

        var after = Then(scene, [.. Amending.Bodies(scene, action.Sequence, action.Body with { Action = PartActions.Disconnected })]);

        Assert.Equal(PartActions.Disconnected, after.Inspection.Actions[0].Body.Action);
        Assert.Empty(after.Inspection.LooseEnds);
    }

    [Fact]
    public void Amending_the_place_of_what_is_off_moves_its_end()
    {
        var scene = Recorded(Written.Done("lead-condition", PartActions.Disconnected, 2));
        var action = scene.Inspection.Actions[0];

        var after = Then(scene, [.. Amending.Bodies(scene, action.Sequence, action.Body with { Cylinder = 5 })]);

        Assert.Equal([5], after.Inspection.OpenLooseEnds.Select(end => end.What.Cylinder!.Value));
        Assert.Equal(5, Assert.Single(after.Inspection.Actions).Body.Cylinder);
    }

    [Fact]
    public void Amending_to_what_is_said_already_writes_nothing()
    {
        var scene = Recorded(Written.Reading("lead-resistance", 8000, 4));
        var reading = scene.Inspection.Readings[0];

        Assert.Empty(Amending.Bodies(scene, reading.Sequence, Written.Reading("lead-resistance", 8000, 4)));
        Assert.NotEmpty(Amending.Bodies(scene, reading.Sequence, Written.Reading("lead-resistance", 8010, 4)));
    }

    private static BenchScene Recorded(params EntryBody[] records) =>
        records.Aggregate(Written.Scene(), (scene, record) => Then(scene, record));

    private static BenchScene Then(BenchScene scene, EntryBody record) =>
        Then(scene, [.. LooseEndRules.WithWhatFollows(scene, [record])]);

    private static BenchScene Then(BenchScene scene, EntryBody[] entries) => Written.After(scene, entries);
}

using InspectLog.App.Tests.Bench;
using InspectLog.Doubts;
using InspectLog.Inspecting.ByVoice;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.App.Tests.HandsFree;

/// <content>What was said is dropped or taken back; the other commands.</content>
public sealed partial class ObeyingTests
{
    [Fact]
    public void Drop_drops_all_that_is_open_doubtful_or_not()
    {
        var talk = new Talk();
        var note = talk.Say(Reading(9400), Seen("plug-condition", "wet", 2, new EitherCondition("wet", "sooty"), new Hedged()));

        var done = talk.Command(SpokenCommand.Drop);

        Assert.Equal(CommandOutcome.Dropped, done.Outcome);
        Assert.All(talk.Inspection.FindVoiceNote(note)!.Proposals!, one => Assert.Equal(ProposalState.Dropped, one.State));
        Assert.StartsWith("Dropped: Coil secondary: 9.4 kΩ.", Plain(done.Answer), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(SpokenCommand.Drop)]
    [InlineData(SpokenCommand.TakeBack)]
    public void Confirmation_just_spoken_is_withdrawn_and_stays_in_the_journal(SpokenCommand undo)
    {
        var talk = new Talk();
        talk.Say(Reading(9400));
        talk.Command(SpokenCommand.Confirm);

        var done = talk.Command(undo);

        Assert.Equal((CommandOutcome.TakenBack, "Taken back: Coil secondary: 9.40 kΩ."), (done.Outcome, Plain(done.Answer)));
        Assert.Empty(talk.Inspection.Readings);
        Assert.Single(talk.Entries.OfType<ReadingDecided>());
        Assert.Contains("voice", Assert.Single(talk.Entries.OfType<EntryWithdrawn>()).Reason, StringComparison.Ordinal);
        Assert.Single(talk.Inspection.OpenLooseEnds); // what was taken apart to measure is apart, whatever was read
    }

    [Fact]
    public void Drop_said_once_too_often_takes_no_older_confirmation_along()
    {
        var talk = new Talk();
        talk.Say(Reading(9400));
        talk.Command(SpokenCommand.Confirm);
        talk.Say(Seen("plug-condition", "wet", 2));
        talk.Command(SpokenCommand.Drop);

        Assert.Equal("There is nothing to drop.", talk.Command(SpokenCommand.Drop).Answer);
        Assert.Equal(CommandOutcome.Nothing, talk.Command(SpokenCommand.TakeBack).Outcome);
        Assert.Single(talk.Inspection.Readings);
    }

    [Fact]
    public void Take_back_leaves_what_was_understood_since_then_open()
    {
        var talk = new Talk();
        talk.Say(Reading(9400));
        talk.Command(SpokenCommand.Confirm);
        var since = talk.Say(Seen("plug-condition", "wet", 2));

        Assert.Equal(CommandOutcome.TakenBack, talk.Command(SpokenCommand.TakeBack).Outcome);

        Assert.Empty(talk.Inspection.Readings);
        Assert.Equal(ProposalState.Open, talk.Inspection.FindVoiceNote(since)!.Proposals![0].State);
        Assert.Equal(CommandOutcome.Nothing, talk.Command(SpokenCommand.TakeBack).Outcome);
    }

    [Fact]
    public void Confirmation_withdrawn_on_the_screen_is_not_withdrawn_twice()
    {
        var talk = new Talk();
        talk.Say(Reading(9400));
        talk.Command(SpokenCommand.Confirm);
        talk.Add(new EntryWithdrawn(talk.Inspection.Readings[0].Sequence, "wrong lead"));

        Assert.Equal("That was withdrawn on the screen already.", talk.Command(SpokenCommand.TakeBack).Answer);
    }

    [Fact]
    public void Next_check_opens_the_next_that_is_to_do_after_the_one_that_was_open()
    {
        var talk = new Talk();
        var sheet = talk.Scene.Sheet.Checks;

        var done = talk.Command(SpokenCommand.NextCheck, openCheck: sheet[0].Id);

        Assert.Equal((CommandOutcome.Moved, sheet[1].Id), (done.Outcome, done.Check));
        Assert.StartsWith($"Next: {sheet[1].Title}.", done.Answer, StringComparison.Ordinal);
    }

    [Fact]
    public void Next_check_says_so_when_all_is_done()
    {
        var talk = new Talk();
        talk.Add([.. talk.Scene.Sheet.Checks.Select(check => new CheckLeftOut(Written.Inspection, check.Id, "not today"))]);

        Assert.Equal("Every check is done or left out.", talk.Command(SpokenCommand.NextCheck).Answer);
    }

    [Fact]
    public void Repeat_gives_the_last_answer_again()
    {
        var talk = new Talk();
        Assert.Equal("There is nothing to repeat yet.", talk.Command(SpokenCommand.Repeat).Answer);
        talk.Say(Reading(9400));

        var done = talk.Command(SpokenCommand.Repeat);

        Assert.Equal((CommandOutcome.Repeated, "Coil secondary: 9.4 kΩ, would be a pass."), (done.Outcome, Plain(done.Answer)));
        Assert.Equal(done.Answer, talk.Command(SpokenCommand.Repeat).Answer);
    }

    [Fact]
    public void Stop_ends_the_turn_with_it()
    {
        var talk = new Talk();

        talk.Command(SpokenCommand.Stop);

        Assert.True(HandsFreeTurn.Of(talk.Inspection.VoiceNotes.Last(), []).Stops);
    }
}

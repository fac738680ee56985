using InspectLog.App.Tests.Bench;
using InspectLog.Doubts;
using InspectLog.Inspecting.ByVoice;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.App.Tests.HandsFree;

/// <summary>What a spoken command is about and what it leads to, from entries alone. The finding is always said first:
/// the order of the entries is the order of speaking and reading.</summary>
public sealed partial class ObeyingTests
{
    private const string Coil = "coil-secondary-resistance";

    [Fact]
    public void Confirm_records_what_was_understood_last_and_says_the_decision()
    {
        var talk = new Talk();
        talk.Say(Reading(9400));

        var done = talk.Command(SpokenCommand.Confirm);

        Assert.Equal((CommandOutcome.Confirmed, "Confirmed: Coil secondary: 9.4\u00a0kΩ, pass."), (done.Outcome, FirstSentences(done, 1)));
        var reading = Assert.Single(talk.Inspection.Readings);
        Assert.Contains(reading.Sequence, done.Entries);
        Assert.Equal(ProposalState.Confirmed, talk.Inspection.VoiceNotes.First().Proposals![0].State);
    }

    [Fact]
    public void Entries_of_a_command_are_the_sequences_they_got()
    {
        var talk = new Talk();
        talk.Say(Reading(9400));

        var done = talk.Command(SpokenCommand.Confirm);

        Assert.Equal(
            done.Entries.Order(),
            talk.Inspection.Readings.Select(one => one.Sequence).Concat(talk.Inspection.LooseEnds.Select(end => end.Sequence)).Order());
    }

    [Fact]
    public void Doubtful_finding_stays_open_and_is_read_back_with_its_reason()
    {
        var talk = new Talk();
        talk.Say(Reading(9400), Seen("plug-condition", "wet", 2, new EitherCondition("wet", "sooty"), new Hedged()));

        var done = talk.Command(SpokenCommand.Confirm);

        Assert.Contains("Left open: Plug condition, plug 2: wet. Doubtful: this may mean wet or sooty; said with a doubt.", Plain(done.Answer), StringComparison.Ordinal);
        Assert.Single(talk.Inspection.Readings);
        Assert.Empty(talk.Inspection.Observations);
    }

    [Fact]
    public void Doubtful_finding_by_itself_is_never_confirmed_by_voice()
    {
        var talk = new Talk();
        talk.Say(Seen("plug-condition", "wet", 2, new EitherCondition("wet", "sooty"), new Hedged()));

        Assert.Equal(CommandOutcome.Nothing, talk.Command(SpokenCommand.Confirm).Outcome);
        Assert.Equal(CommandOutcome.Nothing, talk.Command(SpokenCommand.Confirm).Outcome);
        Assert.Empty(talk.Inspection.Observations);
    }

    [Fact]
    public void Confirm_goes_back_to_the_next_older_note_that_is_open()
    {
        var talk = new Talk();
        talk.Say(Reading(9400));
        talk.Say(Seen("plug-condition", "wet", 2));

        talk.Command(SpokenCommand.Confirm);
        Assert.Empty(talk.Inspection.Readings);
        talk.Command(SpokenCommand.Confirm);

        Assert.Single(talk.Inspection.Observations);
        Assert.Single(talk.Inspection.Readings);
        Assert.Equal("There is nothing to confirm.", talk.Command(SpokenCommand.Confirm).Answer);
    }

    [Fact]
    public void Confirm_does_not_fall_on_an_older_note_when_the_last_was_settled_on_the_screen_meanwhile()
    {
        var talk = new Talk();
        talk.Say(Reading(9400));
        var second = talk.Say(Seen("plug-condition", "wet", 2));
        var command = talk.Speak(SpokenCommand.Confirm);
        talk.Add(new ObservationMade(Written.Inspection, "plug-condition", 2, "wet", false, new(second, 0)));

        var done = talk.Obey(command);

        Assert.Equal((CommandOutcome.Nothing, "That was settled on the screen already."), (done.Outcome, done.Answer));
        Assert.Empty(talk.Inspection.Readings);
    }

    [Fact]
    public void Confirm_waits_until_what_was_said_before_is_read()
    {
        var talk = new Talk();
        var finding = talk.Keep();
        var command = talk.Speak(SpokenCommand.Confirm);
        Assert.Null(CommandOrder.Next(talk.Inspection));

        talk.Read(finding, Reading(9400));

        Assert.Equal(command, CommandOrder.Next(talk.Inspection)!.Sequence);
        Assert.Equal(CommandOutcome.Confirmed, talk.Obey(command).Outcome);
    }

    [Fact]
    public void Note_that_cannot_be_read_holds_up_no_command()
    {
        var talk = new Talk();
        var broken = talk.Keep();
        var command = talk.Speak(SpokenCommand.Confirm);

        talk.Add(new TranscriptFailed(broken, "damaged"));

        Assert.Equal(command, CommandOrder.Next(talk.Inspection)!.Sequence);
    }

    [Theory]
    [InlineData(SpokenCommand.Confirm)]
    [InlineData(SpokenCommand.Drop)]
    public void Command_after_a_note_that_was_not_read_does_not_fall_on_an_older_one(SpokenCommand command)
    {
        var talk = new Talk();
        talk.Say(Reading(9400));
        talk.Add(new TranscriptFailed(talk.Keep(), "damaged"));

        var done = talk.Command(command);

        Assert.Equal(CommandOutcome.Nothing, done.Outcome);
        Assert.Contains("was not read", done.Answer, StringComparison.Ordinal);
        Assert.Equal(ProposalState.Open, talk.Inspection.VoiceNotes.First().Proposals![0].State);
    }

    [Fact]
    public void Drop_after_a_note_that_was_not_read_takes_no_confirmation_back()
    {
        var talk = new Talk();
        talk.Say(Reading(9400));
        talk.Command(SpokenCommand.Confirm);
        talk.Add(new TranscriptCancelled(talk.Keep()));

        Assert.Equal(CommandOutcome.Nothing, talk.Command(SpokenCommand.Drop).Outcome);
        Assert.Single(talk.Inspection.Readings);
    }

    [Fact]
    public void Confirm_is_not_about_what_was_said_after_it()
    {
        var talk = new Talk();
        var command = talk.Speak(SpokenCommand.Confirm);
        talk.Say(Reading(9400));

        Assert.Equal(CommandOutcome.Nothing, talk.Obey(command).Outcome);
    }

    [Fact]
    public void Command_in_doubt_is_asked_for_again_and_never_due()
    {
        var talk = new Talk();
        talk.Say(Reading(9400));
        talk.Speak(SpokenCommand.Confirm, doubt: new CommandFaint());

        Assert.Null(CommandOrder.Next(talk.Inspection));
        var turn = HandsFreeTurn.Of(talk.Inspection.VoiceNotes.Last(), []);
        Assert.Equal("Did you mean \u201Cconfirm that\u201D? It was heard faintly. Say it again.", turn.Answer);
    }

    private static ProposedFinding Reading(double value) =>
        new("reading", Coil, null, value, null, null, null, false, null, "as said", 0, 7, []);

    private static ProposedFinding Seen(string check, string condition, int cylinder, params Doubt[] doubts) =>
        new("observation", check, cylinder, null, null, null, condition, false, null, "as said", 0, 7, doubts);

    private static string FirstSentences(CommandDone done, int count) =>
        string.Join(". ", done.Answer.Split(". ").Take(count)).TrimEnd('.') + ".";

    private static string Plain(string text) => text.Replace('\u00a0', ' ');
}

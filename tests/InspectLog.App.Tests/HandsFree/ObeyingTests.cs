using InspectLog.App.HandsFree;
using InspectLog.App.Tests.Bench;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.App.Tests.HandsFree;

/// <summary>What a spoken command is about and what it leads to, from entries alone. The finding is always said first:
/// the order of the entries is the order of speaking and reading.</summary>
public sealed class ObeyingTests
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
        talk.Say(Reading(9400), Seen("plug-condition", "wet", 2, "two readings are possible"));

        var done = talk.Command(SpokenCommand.Confirm);

        Assert.Contains("Left open: Plug condition, plug 2: wet. Doubtful: two readings are possible.", Plain(done.Answer), StringComparison.Ordinal);
        Assert.Single(talk.Inspection.Readings);
        Assert.Empty(talk.Inspection.Observations);
    }

    [Fact]
    public void Doubtful_finding_by_itself_is_never_confirmed_by_voice()
    {
        var talk = new Talk();
        talk.Say(Seen("plug-condition", "wet", 2, "two readings are possible"));

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
        talk.Speak(SpokenCommand.Confirm, doubt: "It was heard faintly.");

        Assert.Null(CommandOrder.Next(talk.Inspection));
        var turn = HandsFreeTurn.Of(talk.Inspection.VoiceNotes.Last(), []);
        Assert.Equal("Did you mean \u201Cconfirm that\u201D? It was heard faintly. Say it again.", turn.Answer);
    }

    [Fact]
    public void Drop_drops_all_that_is_open_doubtful_or_not()
    {
        var talk = new Talk();
        var note = talk.Say(Reading(9400), Seen("plug-condition", "wet", 2, "two readings are possible"));

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

    private static ProposedFinding Reading(double value) =>
        new("reading", Coil, null, value, null, null, null, false, null, "as said", 0, 7, null);

    private static ProposedFinding Seen(string check, string condition, int cylinder, string? doubt = null) =>
        new("observation", check, cylinder, null, null, null, condition, false, null, "as said", 0, 7, doubt);

    private static string FirstSentences(CommandDone done, int count) =>
        string.Join(". ", done.Answer.Split(". ").Take(count)).TrimEnd('.') + ".";

    private static string Plain(string text) => text.Replace('\u00a0', ' ');

    /// <summary>An inspection in which somebody speaks.</summary>
    private sealed class Talk
    {
        private static readonly MediaFile Sound = new(new string('a', 64), 32044, "audio/wav");

        private readonly List<EntryBody> _entries = [];

        public IReadOnlyList<EntryBody> Entries => _entries;

        public App.Bench.BenchScene Scene => Written.Scene([.. _entries]);

        public InspectionState Inspection => Scene.Inspection;

        public void Add(params EntryBody[] entries) => _entries.AddRange(entries);

        /// <summary>Keeps an utterance that is not read yet; gives its sequence.</summary>
        public long Keep(string? openCheck = null)
        {
            var sequence = Scene.Vehicle.NextSequence;
            Add(new UtteranceKept(Written.Inspection, Sound, 1, openCheck));
            return sequence;
        }

        public void Read(long recording, params ProposedFinding[] findings) =>
            Add(new TranscriptMade(recording, "as said", [], true, "", ""), new FindingsProposed(recording, findings));

        public long Say(params ProposedFinding[] findings)
        {
            var recording = Keep();
            Read(recording, findings);
            return recording;
        }

        public long Speak(SpokenCommand command, string? doubt = null, string? openCheck = null)
        {
            var recording = Keep(openCheck);
            Read(recording);
            Add(new CommandHeard(recording, command, doubt));
            return recording;
        }

        public CommandDone Obey(long recording)
        {
            var now = Scene;
            var made = Obeying.Bodies(now, WorkshopState.Empty, now.Inspection.FindVoiceNote(recording)!);
            Add([.. made]);
            return (CommandDone)made[^1];
        }

        public CommandDone Command(SpokenCommand command, string? openCheck = null) => Obey(Speak(command, null, openCheck));
    }
}

using InspectLog.App.Tests.Bench;
using InspectLog.App.Tests.Web;
using InspectLog.Inspecting.ByVoice;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.App.Tests.HandsFree;

/// <summary>Readings confirmed by voice that decide each other.</summary>
public sealed class DecidedTogetherTests
{
    private static readonly MediaFile Sound = new(new string('a', 64), 32044, "audio/wav");

    [Fact]
    public void Battery_and_supply_of_one_note_are_decided_together_and_told_so()
    {
        var scene = InDepth.Scene(
        [
            .. Said(3, HeardNote.Reading(InDepth.Battery, 12.8), HeardNote.Reading(InDepth.Supply, 11.6)),
            .. Said(6), new CommandHeard(6, SpokenCommand.Confirm, null),
        ]);

        var made = Obeying.Bodies(scene, WorkshopState.Empty, scene.Inspection.FindVoiceNote(6)!);

        var done = Assert.IsType<CommandDone>(made[^1]);
        Assert.Contains("Supply voltage: 11.6\u00a0V, fail.", done.Answer, StringComparison.Ordinal);
        var after = Written.After(scene, [.. made]);
        Assert.Equal(after.Last(InDepth.Battery).Sequence, after.Last(InDepth.Supply).Body.With!.Record);
        Assert.Subset(done.Entries.ToHashSet(), after.Inspection.Readings.Select(reading => reading.Sequence).ToHashSet());
    }

    [Fact]
    public void Battery_taken_back_leaves_the_supply_to_its_span_before_the_command_is_done()
    {
        var supply = InDepth.Scene().Record(InDepth.Volts(InDepth.Supply, 11.6));
        var at = supply.Vehicle.NextSequence;
        var heard = Written.After(supply, [.. Said(at, HeardNote.Reading(InDepth.Battery, 12.8)), .. Said(at + 3), new CommandHeard(at + 3, SpokenCommand.Confirm, null)]);
        var confirmed = Written.After(heard, [.. Obeying.Bodies(heard, WorkshopState.Empty, heard.Inspection.FindVoiceNote(at + 3)!)]);
        Assert.Equal(Decision.Fail, confirmed.Last(InDepth.Supply).Body.Conformity!.Decision);
        var next = confirmed.Vehicle.NextSequence;
        var asked = Written.After(confirmed, [.. Said(next), new CommandHeard(next, SpokenCommand.TakeBack, null)]);

        var made = Obeying.Bodies(asked, WorkshopState.Empty, asked.Inspection.FindVoiceNote(next)!);

        Assert.IsType<CommandDone>(made[^1]);
        Assert.Null(Written.After(asked, [.. made]).Last(InDepth.Supply).Body.With);
    }

    /// <summary>An utterance that was read, as its first entry gets a sequence.</summary>
    private static EntryBody[] Said(long sequence, params ProposedFinding[] findings) =>
    [
        new UtteranceKept(Written.Inspection, Sound, 1, null),
        new TranscriptMade(sequence, "as said", [], true, "", ""),
        new FindingsProposed(sequence, findings),
    ];
}

using InspectLog.Inspecting.Proposals;
using InspectLog.Inspecting.Recording;
using InspectLog.Inspecting.Standing;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using System.Globalization;

namespace InspectLog.Inspecting.ByVoice;

/// <summary>Turns a spoken command into the entries it makes, with the answer given. Nothing is edited: a confirmation
/// that is taken back stays, withdrawn. Pure.</summary>
public static class Obeying
{
    private const string NotRead = "What was said before that was not read, so nothing is done. Settle it on the screen.";

    /// <summary>The entries of a command, the last of them saying that it was done.</summary>
    /// <param name="scene">The inspection.</param>
    /// <param name="workshop">The workshop, for its instruments.</param>
    /// <param name="command">The note that is the command.</param>
    public static IReadOnlyList<EntryBody> Bodies(BenchScene scene, WorkshopState workshop, VoiceNote command)
    {
        var (made, outcome, answer, check) = command.Command!.Command switch
        {
            SpokenCommand.Confirm => Confirm(scene, workshop, command),
            SpokenCommand.Drop => Drop(scene, workshop, command),
            SpokenCommand.TakeBack => TakeBack(scene, command),
            SpokenCommand.NextCheck => NextCheck(scene, command),
            SpokenCommand.Repeat => Repeat(scene, workshop, command),
            _ => new Result([], CommandOutcome.Stopped, "Stopped listening."),
        };
        var entries = made.Select((_, index) => scene.Vehicle.NextSequence + index).ToList();
        return [.. made, new CommandDone(command.Sequence, outcome, entries, check, answer)];
    }

    private static Result Confirm(BenchScene scene, WorkshopState workshop, VoiceNote command)
    {
        var note = CommandOrder.OpenBefore(scene.Inspection, command);
        if (CommandOrder.IsUnreadBetween(scene.Inspection, note, command))
        {
            return Nothing(NotRead);
        }

        if (note is null)
        {
            return Nothing("There is nothing to confirm.");
        }

        var cards = OpenCards(scene, workshop, note);
        if (cards.Count == 0)
        {
            return Nothing("That was settled on the screen already.");
        }

        var (sure, left) = Split(cards);
        var made = Comparing.Settled(scene, Confirming.Bodies(scene, workshop, sure));
        var answer = ReadBack.Confirmed(sure, made, left);
        return new(made, made.Count > 0 ? CommandOutcome.Confirmed : CommandOutcome.Nothing, answer);
    }

    /// <summary>What was said last goes: a confirmation just spoken is taken back, or else what is open is dropped. After
    /// one drop no older confirmation is touched; that takes "take that back".</summary>
    private static Result Drop(BenchScene scene, WorkshopState workshop, VoiceNote command)
    {
        var open = CommandOrder.OpenBefore(scene.Inspection, command);
        var last = CommandOrder.LastEffect(scene.Inspection, command);
        if (last is { Done.Outcome: CommandOutcome.Confirmed }
            && last.Sequence > (open?.Sequence ?? 0)
            && !CommandOrder.IsUnreadBetween(scene.Inspection, last, command))
        {
            return TakeBack(scene, command);
        }

        if (CommandOrder.IsUnreadBetween(scene.Inspection, open, command))
        {
            return Nothing(NotRead);
        }

        if (open is null)
        {
            return Nothing("There is nothing to drop.");
        }

        var cards = OpenCards(scene, workshop, open);
        return cards.Count == 0
            ? Nothing("That was settled on the screen already.")
            : new(
                [.. cards.SelectMany(card => card.Proposals).Select(one => new FindingDropped(one.Reference))],
                CommandOutcome.Dropped,
                ReadBack.Dropped(cards));
    }

    private static Result TakeBack(BenchScene scene, VoiceNote command)
    {
        if (CommandOrder.LastEffect(scene.Inspection, command) is not { Done: { } done } last)
        {
            return Nothing("There is no spoken confirmation to take back.");
        }

        if (done.Outcome != CommandOutcome.Confirmed)
        {
            return Nothing(done.Outcome == CommandOutcome.Dropped
                ? "What was dropped comes back by Undo on the screen. Or say the finding again."
                : "That is taken back already. Earlier ones are withdrawn on the screen.");
        }

        var records = CommandOrder.StillCounting(scene.Inspection, done);
        var reason = string.Create(CultureInfo.InvariantCulture, $"Taken back by voice, note {command.Sequence}.");
        return records.Count == 0
            ? Nothing("That was withdrawn on the screen already.")
            : new(
                Comparing.Settled(scene, [.. records.SelectMany(record => Withdrawing.Withdraw(scene, record, reason))]),
                CommandOutcome.TakenBack,
                ReadBack.TakenBack(scene, records));
    }

    private static Result NextCheck(BenchScene scene, VoiceNote command)
    {
        var from = scene.Sheet.Find(command.Recording.OpenCheck ?? "");
        return ToDo.Next(scene, from) is { } next
            ? new([], CommandOutcome.Moved, ReadBack.Opened(next), next.Id)
            : Nothing("Every check is done or left out.");
    }

    private static Result Repeat(BenchScene scene, WorkshopState workshop, VoiceNote command)
    {
        var last = scene.Inspection.VoiceNotes
            .Where(note => note.IsHandsFree && note.Sequence < command.Sequence)
            .Select(note => HandsFreeTurn.Of(note, scene, workshop))
            .LastOrDefault(turn => turn.Answer.Length > 0);
        return last is null
            ? Nothing("There is nothing to repeat yet.")
            : new([], CommandOutcome.Repeated, last.Answer);
    }

    private static Result Nothing(string answer) => new([], CommandOutcome.Nothing, answer);

    private static IReadOnlyList<ProposalCard> OpenCards(BenchScene scene, WorkshopState workshop, VoiceNote note) =>
        [.. ProposalCards.Of(note, scene, workshop).Where(card => card.State == ProposalState.Open)];

    private static (IReadOnlyList<ProposalCard> Sure, IReadOnlyList<ProposalCard> Left) Split(
        IReadOnlyList<ProposalCard> cards) =>
        ([.. cards.Where(Confirming.IsSure)], [.. cards.Where(card => !Confirming.IsSure(card))]);

    private sealed record Result(
        IReadOnlyList<EntryBody> Made, CommandOutcome Outcome, string Answer, string? Check = null);
}

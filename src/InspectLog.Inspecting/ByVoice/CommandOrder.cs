using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.Inspecting.ByVoice;

/// <summary>In which order spoken commands are obeyed, and what each of them is about: always as things were said, not
/// as they were read, which may be another order. Pure.</summary>
public static class CommandOrder
{
    /// <summary>The command to obey now: the oldest that is not done, once every note spoken before it is read. Null
    /// when there is none.</summary>
    public static VoiceNote? Next(InspectionState inspection) => inspection.VoiceNotes
        .TakeWhile(note => !note.IsWaiting)
        .FirstOrDefault(note => note is { Command.Doubt: null, Done: null } && note.Command is not null);

    /// <summary>The newest note spoken before a command of which something was open when the command was spoken, or
    /// null. What was settled on the screen since then was open at that time: the command meant it, so it must not
    /// fall on an older note.</summary>
    public static VoiceNote? OpenBefore(InspectionState inspection, VoiceNote command)
    {
        var byVoice = inspection.VoiceNotes.SelectMany(note => note.Done?.Entries ?? []).ToHashSet();
        return inspection.VoiceNotes.LastOrDefault(note => note.Sequence < command.Sequence
            && note.Proposals is { } proposals
            && proposals.Any(one => one.SettledAt is not { } settled
                || (settled > command.Sequence && !byVoice.Contains(settled))));
    }

    /// <summary>Whether something was spoken between a note and a command that was not read. The command may have meant
    /// that, so it must not fall on the older note.</summary>
    public static bool IsUnreadBetween(InspectionState inspection, VoiceNote? note, VoiceNote command) =>
        inspection.VoiceNotes.Any(one =>
            one.IsSetAside && one.Sequence > (note?.Sequence ?? 0) && one.Sequence < command.Sequence);

    /// <summary>The last command spoken before another that confirmed, dropped or took back something, or null.</summary>
    public static VoiceNote? LastEffect(InspectionState inspection, VoiceNote command) =>
        inspection.VoiceNotes.LastOrDefault(note => note.Sequence < command.Sequence && note.Done is
        {
            Outcome: CommandOutcome.Confirmed or CommandOutcome.Dropped or CommandOutcome.TakenBack,
        });

    /// <summary>Of the entries a confirmation made, the records that still count.</summary>
    public static IReadOnlyList<long> StillCounting(InspectionState inspection, CommandDone confirmation) =>
        [.. confirmation.Entries.Where(entry =>
            inspection.Readings.Exists(one => one.Sequence == entry)
            || inspection.Observations.Exists(one => one.Sequence == entry)
            || inspection.Actions.Exists(one => one.Sequence == entry))];
}

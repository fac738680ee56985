using InspectLog.Dictation.Control;
using InspectLog.Journal.Entries;

namespace InspectLog.Inspecting.ByVoice;

/// <summary>Writes what the dictation room heard as a command in the journal room's words, and back.</summary>
public static class SpokenCommands
{
    /// <summary>The commands with the phrase to teach and what it does, in the order to show them.</summary>
    public static IReadOnlyList<(string Phrase, string Does)> Help { get; } =
    [
        (Phrase(SpokenCommand.Confirm), "records what was understood last; what is doubtful stays open"),
        (Phrase(SpokenCommand.Drop), "drops it; just after a confirmation, takes that back"),
        (Phrase(SpokenCommand.TakeBack), "takes the last spoken confirmation back"),
        (Phrase(SpokenCommand.NextCheck), "opens the next check that is to do"),
        (Phrase(SpokenCommand.Repeat), "says the last answer again"),
        (Phrase(SpokenCommand.Stop), "switches the microphone off"),
    ];

    /// <summary>The phrase to say for a command.</summary>
    public static string Phrase(SpokenCommand command) => ControlPhrases.Of(command switch
    {
        SpokenCommand.Confirm => ControlWord.Confirm,
        SpokenCommand.Drop => ControlWord.Drop,
        SpokenCommand.TakeBack => ControlWord.TakeBack,
        SpokenCommand.NextCheck => ControlWord.NextCheck,
        SpokenCommand.Repeat => ControlWord.Repeat,
        _ => ControlWord.Stop,
    });

    /// <summary>The entry for a command that was heard.</summary>
    public static CommandHeard From(long recording, HeardControl heard) => new(
        recording,
        heard.Word switch
        {
            ControlWord.Confirm => SpokenCommand.Confirm,
            ControlWord.Drop => SpokenCommand.Drop,
            ControlWord.TakeBack => SpokenCommand.TakeBack,
            ControlWord.NextCheck => SpokenCommand.NextCheck,
            ControlWord.Repeat => SpokenCommand.Repeat,
            _ => SpokenCommand.Stop,
        },
        heard.Doubt);
}

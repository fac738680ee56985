using InspectLog.Doubts;

namespace InspectLog.Journal.Entries;

/// <summary>What can be commanded by voice.</summary>
public enum SpokenCommand
{
    /// <summary>Confirm what was understood last.</summary>
    Confirm,

    /// <summary>Drop what was understood last, or take back a confirmation that was just spoken.</summary>
    Drop,

    /// <summary>Take back the last spoken confirmation.</summary>
    TakeBack,

    /// <summary>Open the next check that is to do.</summary>
    NextCheck,

    /// <summary>Say the last answer again.</summary>
    Repeat,

    /// <summary>Stop listening.</summary>
    Stop,
}

/// <summary>What a spoken command led to.</summary>
public enum CommandOutcome
{
    /// <summary>Findings were confirmed; the entries are their records and what follows from them.</summary>
    Confirmed,

    /// <summary>Findings were dropped; the entries say so.</summary>
    Dropped,

    /// <summary>Records were withdrawn; the entries say so.</summary>
    TakenBack,

    /// <summary>Another check was opened.</summary>
    Moved,

    /// <summary>The last answer was given again.</summary>
    Repeated,

    /// <summary>Listening stopped.</summary>
    Stopped,

    /// <summary>There was nothing it could apply to.</summary>
    Nothing,
}

/// <summary>An utterance was heard as a command. Machine-made.</summary>
/// <param name="Recording">Sequence of the utterance's entry.</param>
/// <param name="Command">The command.</param>
/// <param name="Doubt">Why it is asked for again and not obeyed; null when it is to be obeyed.</param>
[EntryKind("command-heard", 2)]
public sealed record CommandHeard(long Recording, SpokenCommand Command, Doubt? Doubt) : EntryBody;

/// <summary>A spoken command was obeyed. The utterance is the evidence for the entries made with it.</summary>
/// <param name="Recording">Sequence of the utterance's entry.</param>
/// <param name="Outcome">What it led to.</param>
/// <param name="Entries">Sequences of the entries made by it; empty when it made none.</param>
/// <param name="Check">The check that was opened; null otherwise.</param>
/// <param name="Answer">What the person was told, word for word.</param>
[EntryKind("command-done")]
public sealed record CommandDone(
    long Recording, CommandOutcome Outcome, IReadOnlyList<long> Entries, string? Check, string Answer) : EntryBody;

namespace InspectLog.Dictation.Understanding.Language;

/// <summary>What everyday words do in a sentence, whatever the sheet. The language file lists the words of each.</summary>
internal enum SpeechRole
{
    /// <summary>Says that something is not so.</summary>
    Negation,

    /// <summary>Takes places out of those just named.</summary>
    Exception,

    /// <summary>May put right what was said before it.</summary>
    Correction,

    /// <summary>Certainly puts right what was said before it.</summary>
    Retraction,

    /// <summary>Tells how it was found.</summary>
    Before,

    /// <summary>Tells how it was left.</summary>
    After,

    /// <summary>A gauge goes in.</summary>
    Goes,

    /// <summary>A gauge does not go in.</summary>
    Stops,

    /// <summary>Makes it a supposition or a report of others.</summary>
    Supposed,

    /// <summary>Makes it a plan.</summary>
    Planned,

    /// <summary>Makes it a question.</summary>
    Question,

    /// <summary>Speaks of other cars, times or people.</summary>
    Elsewhere,

    /// <summary>Compares with a limit.</summary>
    Limit,

    /// <summary>Says that an angle lies after zero.</summary>
    Late,

    /// <summary>Says that what was said before holds here too.</summary>
    Same,

    /// <summary>Answers in the affirmative.</summary>
    Yes,

    /// <summary>Answers in the negative.</summary>
    No,

    /// <summary>Points back to what was named.</summary>
    Reference,

    /// <summary>Says that the speaker is not sure.</summary>
    Hedge,
}

/// <summary>How words name several places at once.</summary>
internal enum Quantifier
{
    /// <summary>Numbers that were said.</summary>
    Numbers,

    /// <summary>Numbers with words that stretch them: "the first three", "four onwards".</summary>
    Stretch,

    /// <summary>All of them.</summary>
    All,

    /// <summary>None of them.</summary>
    None,

    /// <summary>The two that were named.</summary>
    Both,

    /// <summary>Those that were not named.</summary>
    Rest,

    /// <summary>So many of them: "those three".</summary>
    Counted,

    /// <summary>The odd numbers.</summary>
    Odd,

    /// <summary>The even numbers.</summary>
    Even,
}

namespace InspectLog.Dictation.Understanding.Words;

/// <summary>What an everyday word does in a finding.</summary>
internal enum Role
{
    /// <summary>A word nobody told the program about.</summary>
    Unknown,

    /// <summary>Says nothing by itself: articles, pronouns, "just", "about", "um".</summary>
    Filler,

    /// <summary>Ties what follows to what was said: on, at, of, across.</summary>
    Preposition,

    /// <summary>Says what comes of its subject: is, reads, looks, has.</summary>
    Verb,

    /// <summary>A verb in the past that another value may follow: was, had been.</summary>
    Was,

    /// <summary>Sets the present against what was before: now.</summary>
    Now,

    /// <summary>Stands for the part spoken of: it, them, that one.</summary>
    Pronoun,

    /// <summary>The speaker and those around: I, we, you.</summary>
    Person,

    And,
    Or,

    /// <summary>A comma or colon.</summary>
    Comma,

    /// <summary>But, whereas: a new clause, and the end of a negation.</summary>
    But,

    /// <summary>No, not, without.</summary>
    Not,

    /// <summary>Missing, gone, lost: the absence of what is named before or after it.</summary>
    Absent,

    /// <summary>Does not, will not: negates the verb that follows, or stands for it.</summary>
    DoesNot,

    /// <summary>Does, will, standing for the verb before: "three does".</summary>
    Does,

    /// <summary>Nothing, none: the absence of what was just spoken of.</summary>
    Nothing,

    /// <summary>Yes, as an answer: what was just spoken of is there.</summary>
    Yes,

    /// <summary>The words before are wrong, the right ones follow: no, sorry, I mean.</summary>
    Correct,

    /// <summary>The words before are wrong: scratch that.</summary>
    Retract,

    All,
    Any,
    Neither,
    Both,

    /// <summary>Every place not yet spoken of: the rest, the others.</summary>
    Rest,

    Except,

    /// <summary>Announces a cylinder: number, cylinder.</summary>
    PlaceMark,

    /// <summary>The gauge goes.</summary>
    Goes,

    /// <summary>The gauge does not go.</summary>
    Stops,

    /// <summary>Joins two ends: to, through.</summary>
    To,

    /// <summary>Opens two ends: between, from.</summary>
    Between,

    /// <summary>As before: the same, ditto, likewise.</summary>
    Same,

    /// <summary>Under, over: the value itself was not said.</summary>
    Bound,

    /// <summary>I think, probably: said with a doubt.</summary>
    Hedge,

    /// <summary>Looked at, tested: no outcome by itself.</summary>
    Looked,

    /// <summary>As it should be, of whatever is spoken of: good, fine.</summary>
    Good,

    /// <summary>Not as it should be, without saying how: wrong, bad.</summary>
    Bad,

    /// <summary>New: the part that follows was replaced.</summary>
    New,

    /// <summary>A part that is not on the sheet: the radiator, the door.</summary>
    OtherPart,
}

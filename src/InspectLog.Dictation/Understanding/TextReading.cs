namespace InspectLog.Dictation.Understanding;

/// <summary>What the words of a text were read as.</summary>
/// <param name="Findings">The findings, in the order spoken.</param>
/// <param name="Words">What each token was taken for.</param>
internal sealed record TextReading(IReadOnlyList<Finding> Findings, IReadOnlyList<WordReading> Words);

/// <summary>What a token was taken for, as far as it matters to what may be misheard.</summary>
internal enum WordReading
{
    /// <summary>It says nothing by itself: the, just, I, on.</summary>
    Small,

    /// <summary>It ties other words: is, and, not, all, cylinder.</summary>
    Tie,

    /// <summary>It names a part or a quantity.</summary>
    Name,

    /// <summary>It is part of a number or its unit.</summary>
    Number,

    /// <summary>It says how something is or what was done.</summary>
    Predicate,

    /// <summary>Nobody told the program about it.</summary>
    Unknown,

    /// <summary>It says that this is no finding of this car: a plan, a question, another part.</summary>
    Aside,
}

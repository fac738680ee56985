namespace InspectLog.Doubts;

/// <summary>A doubt about words beside what was understood.</summary>
/// <param name="Words">The words, as they stand in the text.</param>
public abstract record OfWords(string Words) : Doubt;

/// <summary>Nobody told the program about the words.</summary>
public sealed record UnknownWords(string Words) : OfWords(Words);

/// <summary>The words were read for others that sound the same.</summary>
/// <param name="Words">The words they were read for.</param>
/// <param name="Heard">What was written there.</param>
public sealed record HeardAs(string Words, string Heard) : OfWords(Words);

/// <summary>The words are said of what is to be done.</summary>
public sealed record SaidOfPlans(string Words) : OfWords(Words);

/// <summary>The words stand where a number belongs.</summary>
public sealed record InPlaceOfNumber(string Words) : OfWords(Words);

/// <summary>The words stand without the number they need.</summary>
public sealed record WithoutNumber(string Words) : OfWords(Words);

/// <summary>The words may tell what was done, or how it was found.</summary>
public sealed record DoneOrFound(string Words) : OfWords(Words);

/// <summary>The words may tell where it is.</summary>
public sealed record PerhapsPlace(string Words) : OfWords(Words);

/// <summary>The words say that it may be no finding.</summary>
public sealed record PerhapsNoFinding(string Words) : OfWords(Words);

/// <summary>The speech model was unsure of the words.</summary>
/// <param name="Words">Each of them, at least one.</param>
public sealed record HeardUnclearly(IReadOnlyList<string> Words) : Doubt
{
    /// <inheritdoc/>
    public bool Equals(HeardUnclearly? other) => other is not null && Words.SequenceEqual(other.Words);

    /// <inheritdoc/>
    public override int GetHashCode() => Words.Aggregate(0, HashCode.Combine);
}

/// <summary>Words were taken for others that sound alike.</summary>
/// <param name="Taken">What was taken for what, at least one.</param>
/// <param name="Rivals">What sounds as near; empty where nothing does.</param>
public sealed record TakenFor(IReadOnlyList<WordsTaken> Taken, IReadOnlyList<string> Rivals) : Doubt
{
    /// <inheritdoc/>
    public bool Equals(TakenFor? other) => other is not null && Taken.SequenceEqual(other.Taken) && Rivals.SequenceEqual(other.Rivals);

    /// <inheritdoc/>
    public override int GetHashCode() => Rivals.Aggregate(Taken.Aggregate(0, HashCode.Combine), HashCode.Combine);
}

/// <summary>Words taken for others.</summary>
/// <param name="Heard">What was heard.</param>
/// <param name="For">What it was taken for.</param>
public sealed record WordsTaken(string Heard, string For);

/// <summary>A word was taken for a number: "to" for 2.</summary>
/// <param name="Word">The word.</param>
/// <param name="Number">The number.</param>
public sealed record TakenForNumber(string Word, int Number) : Doubt;

/// <summary>A word was taken for a unit that sounds alike.</summary>
/// <param name="Word">The word.</param>
/// <param name="Unit">Symbol of the unit.</param>
public sealed record TakenForUnit(string Word, string Unit) : Doubt;

/// <summary>"Odd" or "even" was taken for the odd or even numbers.</summary>
/// <param name="Word">"odd" or "even".</param>
public sealed record TakenForParity(string Word) : Doubt;

/// <summary>Nothing was made of the words, which stand beside what was understood.</summary>
public sealed record WasNotUsed(string Words) : OfWords(Words);

namespace InspectLog.Measuring;

/// <summary>What a typed number was read as. Exactly one of the three kinds.</summary>
public abstract record TypedNumber
{
    private TypedNumber()
    {
    }

    /// <summary>The text has one sensible meaning.</summary>
    /// <param name="BaseValue">The value in the base unit of the check's kind.</param>
    /// <param name="Unit">The unit it was typed in, or the one implied.</param>
    public sealed record Certain(double BaseValue, Unit Unit) : TypedNumber;

    /// <summary>The text has more than one sensible meaning; the person has to choose.</summary>
    /// <param name="Question">What to ask, in one sentence.</param>
    /// <param name="Choices">The possible meanings, likeliest first; two or more.</param>
    public sealed record Ambiguous(string Question, IReadOnlyList<Certain> Choices) : TypedNumber;

    /// <summary>The text is no number, or its unit does not fit.</summary>
    /// <param name="Message">What is wrong and what to do, in one or two sentences.</param>
    public sealed record Refused(string Message) : TypedNumber;

    /// <summary>Reads a number typed into a field, such as <c>9.4k</c>, <c>9,400</c>, <c>1,5</c>, <c>12 thou</c> or
    /// <c>0.3 mm</c>. A comma or point that could be either a decimal mark or a thousands mark is settled by the
    /// plausible span only when exactly one meaning lies within it; otherwise it is <see cref="Ambiguous"/>.</summary>
    /// <param name="text">The text as typed.</param>
    /// <param name="kind">What the check measures.</param>
    /// <param name="fieldUnit">The unit shown beside the field; taken when the text names none.</param>
    /// <param name="plausible">The span, in the base unit, in which the check's values can sensibly lie.</param>
    /// <remarks>A number typed without a unit that is out of the question in the field's unit, but lies within the span
    /// in another, is <see cref="Ambiguous"/> too. Otherwise a value outside the span is taken as typed: it may be the
    /// fault being looked for, and the caller can ask <see cref="PlausibleSpan.Holds"/>.</remarks>
    public static TypedNumber Read(string text, QuantityKind kind, Unit fieldUnit, PlausibleSpan plausible) =>
        NumberReader.Read(text, kind, fieldUnit, plausible);
}

/// <summary>A closed span of values in a base unit.</summary>
/// <param name="From">Lowest value.</param>
/// <param name="To">Highest value, above <paramref name="From"/>.</param>
public readonly record struct PlausibleSpan(double From, double To)
{
    /// <summary>Whether a value lies in the span, ends included.</summary>
    public bool Holds(double value) => value >= From && value <= To;
}

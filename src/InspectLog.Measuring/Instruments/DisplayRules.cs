namespace InspectLog.Measuring;

/// <summary>What no display of an instrument reads.</summary>
internal static class DisplayRules
{
    /// <summary>Values that no instrument of the kind shows.</summary>
    internal static Shown? Impossible(Instrument instrument, IReadOnlyList<TypedNumber.Certain> values)
    {
        if (values.Any(value => !Workable.Is(value.BaseValue)))
        {
            return new Shown.Never(Workable.Problem, IsBeyondRange: false);
        }

        return values.Any(value => value.BaseValue < 0) && !Kinds.MayBeNegative(instrument.Kind)
            ? new Shown.Never(BelowZero(instrument.Kind), IsBeyondRange: false)
            : null;
    }

    /// <summary>Values over the full scale of the range in use; null where they are not, or it is not on file.</summary>
    internal static Shown? Beyond(Instrument instrument, IReadOnlyList<TypedNumber.Certain> values)
    {
        var largest = values.MaxBy(value => Math.Abs(value.BaseValue));
        return largest is not null && instrument.LargestRange() is { } range && !range.Shows(largest.BaseValue)
            ? new Shown.Never($"{Printed.Value(largest.BaseValue, largest.Unit)} is more than the {range.Name} range shows.", IsBeyondRange: true)
            : null;
    }

    /// <summary>Why a kind has nothing below zero, and what to do.</summary>
    internal static string BelowZero(QuantityKind kind) =>
        $"The {Kinds.Noun(kind)} cannot be below zero. Check the reading and the zero of the instrument.";
}

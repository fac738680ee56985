namespace InspectLog.Journal.State;

/// <summary>Something that follows from an immutable state, remembered as long as it is asked for of the same one. A state made
/// by <c>with</c> takes this over, and remembers its own once it is asked. Safe for use by many threads.</summary>
internal sealed class Remembered<TState, TValue>
    where TState : class
    where TValue : class
{
    private Last? _last;

    /// <summary>What follows from a state.</summary>
    /// <param name="state">The state.</param>
    /// <param name="make">Makes it; pure.</param>
    public TValue Of(TState state, Func<TState, TValue> make)
    {
        var last = _last;
        if (last is null || !ReferenceEquals(last.State, state))
        {
            _last = last = new(state, make(state));
        }

        return last.Value;
    }

    /// <summary>One of these is like another: a state is compared by what it says.</summary>
    public override bool Equals(object? obj) => obj is Remembered<TState, TValue>;

    /// <inheritdoc/>
    public override int GetHashCode() => 0;

    private sealed record Last(TState State, TValue Value);
}

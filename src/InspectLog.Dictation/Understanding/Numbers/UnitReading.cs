using InspectLog.Measuring;

namespace InspectLog.Dictation.Understanding.Numbers;

/// <summary>The unit said after a number.</summary>
/// <param name="Next">The token after it.</param>
/// <param name="Units">The units it can mean, likeliest first: two for "mil". Empty for a unit that none of our
/// checks measures in, such as miles or o'clock.</param>
/// <param name="Sign">−1 where the words turn the number round, as in "after top dead centre"; else 1.</param>
/// <param name="Angle">Whether the words speak of the crankshaft: "before top dead centre", "advanced".</param>
internal sealed record UnitReading(int Next, IReadOnlyList<Unit> Units, int Sign, bool Angle)
{
    /// <summary>Why a person should look twice: the word only sounds like the unit.</summary>
    public string? Doubt { get; init; }

    public bool Foreign => Units.Count == 0;
}

namespace InspectLog.Checks.Derived;

/// <summary>What a kind of plug lead should measure.</summary>
/// <param name="Name">Name for people.</param>
/// <param name="LowestPerMetre">Least resistance per length in Ω/m; null where nothing is said.</param>
/// <param name="HighestPerMetre">Most resistance per length in Ω/m; null where nothing is said.</param>
/// <param name="HighestTotal">Most resistance of a lead in Ω, whatever its length; null where nothing is said.</param>
/// <param name="Source">Where the figures come from.</param>
public sealed record LeadClass(
    string Name,
    double? LowestPerMetre,
    double? HighestPerMetre,
    double? HighestTotal,
    string Source)
{
    private const double MetresPerFoot = 0.3048;

    /// <summary>Classes to choose from. They differ from maker to maker: the vehicle's manual wins.</summary>
    public static IReadOnlyList<LeadClass> Known { get; } =
    [
        PerFoot("Suppression lead, 7 to 10 kΩ per foot", 7_000, 10_000, 22_000, Manual(1991)),
        PerFoot("Suppression lead, up to 10 kΩ per foot", null, 10_000, null, Manual(2004)),
        PerFoot("Low-resistance lead, 3 to 7 kΩ per foot", 3_000, 7_000, null, "Common practice, no source"),
        PerFoot("High-resistance lead, 6 to 12 kΩ per foot", 6_000, 12_000, null, "Common practice, no source"),
    ];

    /// <summary>A class given in ohms per foot, as many manuals give it.</summary>
    /// <param name="name">Name for people.</param>
    /// <param name="lowest">Least resistance in Ω per foot, or null.</param>
    /// <param name="highest">Most resistance in Ω per foot, or null.</param>
    /// <param name="highestTotal">Most resistance of one lead in Ω, or null.</param>
    /// <param name="source">Where the figures come from.</param>
    public static LeadClass PerFoot(
        string name, double? lowest, double? highest, double? highestTotal, string source) =>
        new(name, lowest / MetresPerFoot, highest / MetresPerFoot, highestTotal, source);

    private static string Manual(int year) => $"One vehicle's service manual of {year}; other makers differ";
}

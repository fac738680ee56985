using System.Globalization;
using InspectLog.Measuring;

namespace InspectLog.Inspecting.Words;

/// <summary>What is said of a line of an uncertainty budget.</summary>
public static class ContributionWords
{
    /// <summary>How a contribution was found: "B, even, ÷ √3", "A, 2 degrees of freedom" (JCGM 100:2008, 4.2 and 4.3).
    /// </summary>
    public static string FoundFrom(Contribution contribution) => contribution switch
    {
        { Shape: ContributionShape.Even } => "B, even, ÷\u00a0√3",
        { Shape: ContributionShape.Triangular } => "B, triangular, ÷\u00a0√6",
        { DegreesOfFreedom: 1 } => "A, 1\u00a0degree of freedom",
        { DegreesOfFreedom: var degrees } when double.IsFinite(degrees) =>
            $"A, {degrees.ToString("0.#", CultureInfo.InvariantCulture)}\u00a0degrees of freedom",
        { Shape: ContributionShape.Normal } => "B, normal, taken as known",
        _ => "B",
    };

    /// <summary>What the number of readings says about their scatter, and what to do; null where there is nothing to
    /// say.</summary>
    public static string? OfScatter(Reading? reading) => reading switch
    {
        DisplayedReading { Scatter: { DegreesOfFreedom: < 4 }, Values.Count: 1 } =>
            "How far single readings scatter is known from few earlier ones only; more of them would shrink this.",
        DisplayedReading { Scatter: not null } => null,
        DisplayedReading { Values.Count: 1 } =>
            "A single reading hides how far readings scatter, and nothing is added for that here. Four or five readings would show it.",
        DisplayedReading { Values.Count: 2 } =>
            "Two readings say little about scatter, so much is allowed for it. A third and a fourth would shrink that most.",
        DisplayedReading { Values.Count: 3 } =>
            "Three readings say only a little about scatter. One or two more would shrink what is allowed for it.",
        _ => null,
    };
}

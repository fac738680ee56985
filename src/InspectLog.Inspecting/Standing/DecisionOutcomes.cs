using InspectLog.Measuring;

namespace InspectLog.Inspecting.Standing;

/// <summary>What a decision says of the place that was measured.</summary>
public static class DecisionOutcomes
{
    /// <summary>Good, bad, or too near a limit to say.</summary>
    public static PlaceOutcome Outcome(this Decision decision) =>
        decision.IsUnclear() ? PlaceOutcome.Doubtful
        : decision.Accepts() ? PlaceOutcome.Good
        : PlaceOutcome.Bad;
}

using InspectLog.Checks;
using InspectLog.Inspecting.Standing;

namespace InspectLog.Inspecting.Words;

/// <summary>What conditions mean for the decision, as their sheet says, in words.</summary>
public static class ConditionWords
{
    /// <summary>"in order", "needs a look", "fails".</summary>
    public static string Meaning(ConditionMeaning meaning) => meaning switch
    {
        ConditionMeaning.Good => "in order",
        ConditionMeaning.Attention => "needs a look",
        _ => "fails",
    };

    /// <summary>The outcome of a place where the condition is seen.</summary>
    public static PlaceOutcome Outcome(ConditionMeaning meaning) => meaning switch
    {
        ConditionMeaning.Good => PlaceOutcome.Good,
        ConditionMeaning.Attention => PlaceOutcome.Doubtful,
        _ => PlaceOutcome.Bad,
    };
}

using InspectLog.Checks;

namespace InspectLog.App.Bench;

/// <summary>What conditions mean for the decision, as their sheet says, in words.</summary>
public static class ConditionWords
{
    /// <summary>"in order", "needs attention", "fails".</summary>
    public static string Meaning(ConditionMeaning meaning) => meaning switch
    {
        ConditionMeaning.Good => "in order",
        ConditionMeaning.Attention => "needs attention",
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

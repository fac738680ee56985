namespace InspectLog.Measuring;

/// <summary>The words of decisions, as printed and as recorded (ILAC-G8:09/2019).</summary>
public static class DecisionWords
{
    /// <summary>A decision in words: pass, conditional pass, conditional fail, fail; proven conforming, neither proven,
    /// proven non-conforming.</summary>
    public static string Words(this Decision decision) => decision switch
    {
        Decision.Pass => "pass",
        Decision.ConditionalPass => "conditional pass",
        Decision.ConditionalFail => "conditional fail",
        Decision.Fail => "fail",
        Decision.ProvenConforming => "proven conforming",
        Decision.NeitherProven => "neither proven",
        Decision.ProvenNonConforming => "proven non-conforming",
        _ => throw new ArgumentOutOfRangeException(nameof(decision)),
    };

    /// <summary>Whether a value is taken as within its limits.</summary>
    public static bool Accepts(this Decision decision) =>
        decision is Decision.Pass or Decision.ConditionalPass or Decision.ProvenConforming;

    /// <summary>Whether a value is too near a limit for a clear answer.</summary>
    public static bool IsUnclear(this Decision decision) =>
        decision is Decision.ConditionalPass or Decision.ConditionalFail or Decision.NeitherProven;

    /// <summary>Reads the words back; null where they are none of these.</summary>
    public static Decision? Find(string words)
    {
        foreach (var decision in Enum.GetValues<Decision>())
        {
            if (decision.Words() == words)
            {
                return decision;
            }
        }

        return null;
    }
}

namespace InspectLog.Measuring;

/// <summary>The words of decisions, as printed and as recorded (ILAC-G8:09/2019).</summary>
public static class DecisionWords
{
    /// <summary>A decision in words: pass, conditional pass, conditional fail, fail.</summary>
    public static string Words(this Decision decision) => decision switch
    {
        Decision.Pass => "pass",
        Decision.ConditionalPass => "conditional pass",
        Decision.ConditionalFail => "conditional fail",
        Decision.Fail => "fail",
        _ => throw new ArgumentOutOfRangeException(nameof(decision)),
    };

    /// <summary>Reads the words back; null where they are none of the four.</summary>
    public static Decision? Find(string words) => words switch
    {
        "pass" => Decision.Pass,
        "conditional pass" => Decision.ConditionalPass,
        "conditional fail" => Decision.ConditionalFail,
        "fail" => Decision.Fail,
        _ => null,
    };
}

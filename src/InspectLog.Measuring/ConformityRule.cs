namespace InspectLog.Measuring;

/// <summary>Decides readings against limits.</summary>
public static class ConformityRule
{
    /// <summary>Decides a reading by the non-binary rule of ILAC-G8:09/2019.</summary>
    /// <exception cref="ArgumentException">The reading has no value, a value that is not finite, a negative accuracy,
    /// a resolution of 0 or less, or a bracket whose gauges are the wrong way round.</exception>
    public static Conformity Decide(Reading reading, Limits limits) => throw new NotSupportedException("Measuring room");
}

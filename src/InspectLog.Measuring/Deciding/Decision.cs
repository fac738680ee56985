namespace InspectLog.Measuring;

/// <summary>What the non-binary rule says of a value (ILAC-G8:09/2019, 4.2.3), with the guard band equal to the
/// expanded uncertainty.</summary>
public enum Decision
{
    /// <summary>Within the limits by at least the guard band.</summary>
    Pass,

    /// <summary>Within the limits, but by less than the guard band.</summary>
    ConditionalPass,

    /// <summary>Outside a limit, but by no more than the guard band.</summary>
    ConditionalFail,

    /// <summary>Outside a limit by more than the guard band.</summary>
    Fail,
}

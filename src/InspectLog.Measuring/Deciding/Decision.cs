namespace InspectLog.Measuring;

/// <summary>What a rule says of a value: the first four by ILAC-G8:09/2019, 4.2, the last three by ISO 14253-1.</summary>
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

    /// <summary>Within the limits as likely as ISO 14253-1 asks.</summary>
    ProvenConforming,

    /// <summary>As likely neither within the limits nor outside them.</summary>
    NeitherProven,

    /// <summary>Outside the limits as likely as ISO 14253-1 asks.</summary>
    ProvenNonConforming,
}

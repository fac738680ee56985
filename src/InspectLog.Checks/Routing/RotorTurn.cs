namespace InspectLog.Checks.Routing;

/// <summary>Which way the rotor of a distributor turns, seen from above the cap.</summary>
public enum RotorTurn
{
    /// <summary>As the hands of a clock.</summary>
    Clockwise,

    /// <summary>Against the hands of a clock.</summary>
    Anticlockwise,
}

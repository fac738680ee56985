namespace InspectLog.Inspecting.Recording;

/// <summary>Checks that are left out.</summary>
public static class LeavingOut
{
    /// <summary>Reasons to be chosen in one press; any other is typed.</summary>
    public static IReadOnlyList<string> UsualReasons { get; } = ["no time today", "not asked for", "no tool for it here", "out of reach"];
}

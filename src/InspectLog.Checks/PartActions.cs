namespace InspectLog.Checks;

/// <summary>The words for what can be done to a part, as they stand in sheets and records.</summary>
public static class PartActions
{
    /// <summary>A new part was fitted.</summary>
    public const string Replaced = "replaced";

    /// <summary>The part was cleaned.</summary>
    public const string Cleaned = "cleaned";

    /// <summary>A setting was changed.</summary>
    public const string Adjusted = "adjusted";

    /// <summary>The part was taken off or unplugged: a loose end until it is reconnected.</summary>
    public const string Disconnected = "disconnected";

    /// <summary>The part was put back.</summary>
    public const string Reconnected = "reconnected";

    /// <summary>Every action word.</summary>
    public static IReadOnlyList<string> All { get; } = [Replaced, Cleaned, Adjusted, Disconnected, Reconnected];
}

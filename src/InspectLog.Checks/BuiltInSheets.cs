namespace InspectLog.Checks;

/// <summary>The sheets that come with the program.</summary>
public static class BuiltInSheets
{
    /// <summary>Identifier of the six-cylinder breakerless ignition sheet.</summary>
    public const string IgnitionBreakerless6 = "ignition-breakerless-6";

    /// <summary>All built-in sheets.</summary>
    public static IReadOnlyList<CheckSheet> All => throw new NotSupportedException("Checks room");

    /// <summary>The sheet with this id, or null.</summary>
    public static CheckSheet? Find(string id) => All.FirstOrDefault(sheet => sheet.Id == id);
}

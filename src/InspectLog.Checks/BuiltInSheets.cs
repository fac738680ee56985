namespace InspectLog.Checks;

/// <summary>The sheets that come with the program.</summary>
public static class BuiltInSheets
{
    /// <summary>Identifier of the six-cylinder breakerless ignition sheet.</summary>
    public const string IgnitionBreakerless6 = "ignition-breakerless-6";

    private static readonly Lazy<IReadOnlyList<CheckSheet>> Sheets = new(() => [Load(IgnitionBreakerless6)]);

    /// <summary>All built-in sheets.</summary>
    public static IReadOnlyList<CheckSheet> All => Sheets.Value;

    /// <summary>The sheet with this id, or null.</summary>
    public static CheckSheet? Find(string id) => All.FirstOrDefault(sheet => sheet.Id == id);

    private static CheckSheet Load(string id)
    {
        using var resource = typeof(BuiltInSheets).Assembly.GetManifestResourceStream($"Sheets/{id}.json")
            ?? throw new InvalidOperationException($"The sheet {id} is not built in.");
        using var file = new MemoryStream();
        resource.CopyTo(file);
        return CheckSheetFile.Parse(file.ToArray());
    }
}

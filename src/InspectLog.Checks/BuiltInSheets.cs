namespace InspectLog.Checks;

/// <summary>The sheets that come with the program: those inspections are started with, and the earlier ones that
/// inspections were started with.</summary>
public static class BuiltInSheets
{
    /// <summary>Identifier of the breakerless ignition sheet.</summary>
    public const string IgnitionBreakerless = "ignition-breakerless";

    /// <summary>Identifier of its earlier form for six cylinders, which still names it.</summary>
    public const string IgnitionBreakerless6 = "ignition-breakerless-6";

    /// <summary>Identifier of the sheet for a search in depth, with contact points or without.</summary>
    public const string IgnitionInDepth = "ignition-in-depth";

    /// <summary>Identifier of the sheet for ignition with contact points.</summary>
    public const string IgnitionContactBreaker = "ignition-contact-breaker";

    /// <summary>Identifier of the sheet for compression and leak-down.</summary>
    public const string CompressionLeakDown = "compression-leak-down";

    /// <summary>Identifier of the sheet for battery, starter and generator.</summary>
    public const string ChargingStarting = "charging-starting";

    /// <summary>Identifiers of the sheets an inspection can be started with: known without reading any of them.</summary>
    public static IReadOnlyList<string> Ids { get; } =
        [IgnitionBreakerless, IgnitionInDepth, IgnitionContactBreaker, CompressionLeakDown, ChargingStarting];

    private static readonly Lazy<IReadOnlyList<BuiltIn>> Current = new(() => [.. Ids.Select(Load)]);

    // Journals pin them: none of their bytes may change. A sheet that changes leaves its file of before here.
    private static readonly Lazy<IReadOnlyList<BuiltIn>> Earlier = new(() =>
        [Load(IgnitionBreakerless6), Load($"{IgnitionBreakerless}-version-3"), Load($"{IgnitionInDepth}-version-1")]);

    private static readonly Lazy<IReadOnlyList<CheckSheet>> Sheets = new(() => [.. Current.Value.Select(file => file.Sheet)]);

    /// <summary>The sheets an inspection can be started with.</summary>
    public static IReadOnlyList<CheckSheet> All => Sheets.Value;

    /// <summary>The sheet to start with that has this id, or goes on from the one that had; null where there is none.
    /// </summary>
    public static CheckSheet? Find(string id) => All.FirstOrDefault(sheet => sheet.Id == FamilyOf(id));

    /// <summary>The very sheet with this hash, an earlier one included; null where none has it.</summary>
    /// <param name="sha256">SHA-256 of its file, lower-case hex.</param>
    public static CheckSheet? FindExact(string sha256) => File(sha256)?.Sheet;

    /// <summary>The file of the very sheet with this hash; null where none has it.</summary>
    /// <param name="sha256">SHA-256 of the file, lower-case hex.</param>
    public static ReadOnlyMemory<byte>? FileOf(string sha256) => File(sha256)?.Bytes;

    /// <summary>The sheets that go on from each other go by one id: that of the last of them.</summary>
    /// <param name="id">Id of any sheet; one that is not built in is its own.</param>
    public static string FamilyOf(string id) =>
        All.FirstOrDefault(sheet => sheet.Continues.Contains(id))?.Id ?? id;

    private static BuiltIn? File(string sha256) => Current.Value.FirstOrDefault(file => file.Sheet.Sha256 == sha256)
        ?? Earlier.Value.FirstOrDefault(file => file.Sheet.Sha256 == sha256);

    private static BuiltIn Load(string id)
    {
        using var resource = typeof(BuiltInSheets).Assembly.GetManifestResourceStream($"Sheets/{id}.json")
            ?? throw new InvalidOperationException($"The sheet {id} is not built in.");
        using var file = new MemoryStream();
        resource.CopyTo(file);
        return new(CheckSheetFile.Parse(file.ToArray()), file.ToArray());
    }

    private sealed record BuiltIn(CheckSheet Sheet, ReadOnlyMemory<byte> Bytes);
}

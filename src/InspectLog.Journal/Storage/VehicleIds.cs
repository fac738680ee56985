using InspectLog.Journal.Index;

namespace InspectLog.Journal.Storage;

/// <summary>Vehicle ids: the names of their folders. Lower-case ASCII letters, digits and single hyphens, so that
/// they are safe in paths and addresses on every system.</summary>
internal static class VehicleIds
{
    private const int Longest = 40;

    // Names that Windows keeps for devices.
    private static readonly HashSet<string> Reserved =
    [
        "con", "prn", "aux", "nul",
        .. Enumerable.Range(0, 10).SelectMany(n => new[] { $"com{n}", $"lpt{n}" }),
    ];

    /// <summary>An id for a name that is not taken yet.</summary>
    public static string New(string name, Predicate<string> isTaken)
    {
        var plain = Plain(name);
        var id = plain;
        for (var n = 2; Reserved.Contains(id) || isTaken(id); n++)
        {
            id = $"{plain}-{n}";
        }

        return id;
    }

    /// <summary>Whether a folder's name is a vehicle id.</summary>
    public static bool IsId(string name) =>
        name.Length > 0 && name[0] != '-' && name[^1] != '-' && name.All(IsAllowed);

    private static string Plain(string name)
    {
        var ascii = Words.Of(name).Select(word => string.Concat(word.Where(char.IsAsciiLetterOrDigit)));
        var joined = string.Join('-', ascii.Where(word => word.Length > 0));
        var cut = joined[..Math.Min(joined.Length, Longest)].TrimEnd('-');
        return cut.Length == 0 ? "vehicle" : cut;
    }

    private static bool IsAllowed(char c) => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-';
}

using System.Text;

namespace InspectLog.Archives.BagIt;

/// <summary>Paths of files in a bag. They come from strangers, so each is looked at before it is used. Pure.</summary>
public static class BagPath
{
    /// <summary>Longest path taken, in UTF-16 units: with a folder before it, it still fits the systems that take least.</summary>
    public const int Longest = 200;

    // Names that Windows keeps for devices, whatever stands after the point.
    private static readonly HashSet<string> Devices = new(StringComparer.OrdinalIgnoreCase)
    {
        "con", "prn", "aux", "nul",
        "com0", "com1", "com2", "com3", "com4", "com5", "com6", "com7", "com8", "com9",
        "lpt0", "lpt1", "lpt2", "lpt3", "lpt4", "lpt5", "lpt6", "lpt7", "lpt8", "lpt9",
    };

    /// <summary>Why a path is not taken, in a clause; null where it is.</summary>
    /// <param name="path">The path, with slashes.</param>
    public static string? Fault(string path) => path switch
    {
        "" => "has no name",
        { Length: > Longest } => "has a path that is too long for some systems",
        ['/', ..] => "is an absolute path, which leads out of the archive",
        ['~', ..] => "begins with ~, which some systems read as somebody's own folder",
        _ when path.Contains('\\', StringComparison.Ordinal) => "has a backslash in its path, which some systems read as a folder",
        _ when path.Contains(':', StringComparison.Ordinal) => "has a colon in its path, as a drive letter has",
        _ when path.Any(c => char.IsControl(c) && c is not '\r' and not '\n') => "has a sign in its path that does not show",
        _ when path.EnumerateRunes().Any(rune => rune == Rune.ReplacementChar) => "has a path that is not Unicode",
        _ => path.Split('/').Select(FaultOfPart).FirstOrDefault(fault => fault is not null),
    };

    /// <summary>Two paths that are the same file on some system have the same key: there letters large and small are one, or
    /// an accent and its letter are written together or apart.</summary>
    public static string Key(string path) => path.Normalize(NormalizationForm.FormC).ToUpperInvariant();

    /// <summary>A path as a manifest writes it: line ends and the percent sign by their numbers, and nothing else
    /// (RFC 8493, 2.1.3).</summary>
    public static string Encoded(string path) => path
        .Replace("%", "%25", StringComparison.Ordinal)
        .Replace("\r", "%0D", StringComparison.Ordinal)
        .Replace("\n", "%0A", StringComparison.Ordinal);

    /// <summary>A path as a manifest means it.</summary>
    public static string Decoded(string written) => written
        .Replace("%0D", "\r", StringComparison.OrdinalIgnoreCase)
        .Replace("%0A", "\n", StringComparison.OrdinalIgnoreCase)
        .Replace("%25", "%", StringComparison.Ordinal);

    private static string? FaultOfPart(string part) => part switch
    {
        "" => "has a folder without a name in its path",
        "." or ".." => "has a path that leads out of the archive",
        [.., '.' or ' '] => "has a point or space at the end of a name, which some systems leave out",
        _ when Devices.Contains(part.Split('.')[0].TrimEnd()) => "has a name that some systems keep for a device",
        _ => null,
    };
}

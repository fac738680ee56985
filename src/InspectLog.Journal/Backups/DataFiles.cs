using System.Text.RegularExpressions;
using InspectLog.Journal.Storage;

namespace InspectLog.Journal.Backups;

/// <summary>Which files of a data folder belong into a backup: all but those that can be made again, are being written, or are
/// about this computer alone. What is not known here is taken along.</summary>
internal static partial class DataFiles
{
    public const string Workshop = "workshop.jsonl";

    private const string Keys = "keys";
    private const int Deepest = 8;

    private static readonly HashSet<string> LeftOut = new(StringComparer.Ordinal)
    {
        "index.db", "index-log.db", "index.sha256", "inspectlog.lock", "uploads", "pieces", "copies", "archives", "archives-sent",
        BackupRecord.SettingsFile, BackupRecord.LastFile,
    };

    /// <summary>The files, by paths with slashes. Links are followed, as the program follows them.</summary>
    /// <param name="root">The data folder.</param>
    /// <param name="withKeys">Whether the keys belong to it.</param>
    public static IEnumerable<string> Of(string root, bool withKeys) => Within(root, "", 0)
        .Where(path => withKeys || !IsKey(path));

    /// <summary>Whether a file is one of the keys.</summary>
    public static bool IsKey(string path) => path.StartsWith(Keys + "/", StringComparison.Ordinal);

    /// <summary>Whether a file is a journal.</summary>
    public static bool IsJournal(string path) => path == Workshop || VehicleJournal().IsMatch(path);

    /// <summary>The SHA-256 that a file is named by; null where it is named otherwise. Such a file never changes.</summary>
    public static string? NamedBy(string path) => ByHash().Match(path) is { Success: true } match ? match.Groups["hash"].Value : null;

    private static IEnumerable<string> Within(string folder, string prefix, int depth)
    {
        foreach (var one in new DirectoryInfo(folder).EnumerateFileSystemInfos().OrderBy(one => one.Name, StringComparer.Ordinal))
        {
            if ((depth == 0 && LeftOut.Contains(one.Name)) || IsUnfinished(one.Name))
            {
                continue;
            }

            if (Directory.Exists(one.FullName))
            {
                foreach (var path in depth < Deepest ? Within(one.FullName, $"{prefix}{one.Name}/", depth + 1) : [])
                {
                    yield return path;
                }
            }
            else
            {
                yield return prefix + one.Name;
            }
        }
    }

    private static bool IsUnfinished(string name) =>
        name == "incoming" || name.StartsWith(DataFolder.InTheMaking, StringComparison.Ordinal) || name.EndsWith(".new", StringComparison.Ordinal) || Fresh().IsMatch(name);

    [GeneratedRegex(@"\Avehicles/[^/]+/journal\.jsonl\z")]
    private static partial Regex VehicleJournal();

    [GeneratedRegex(@"\A(media/[0-9a-f]{2}/(?<hash>[0-9a-f]{64})|sheets/(?<hash>[0-9a-f]{64})\.json)\z")]
    private static partial Regex ByHash();

    // As WholeFile names what it has not finished.
    [GeneratedRegex(@"\.[a-z0-9]{8}\.[a-z0-9]{3}\z")]
    private static partial Regex Fresh();
}

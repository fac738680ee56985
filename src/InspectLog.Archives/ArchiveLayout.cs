using System.Text.RegularExpressions;
using InspectLog.Journal.Entries;

namespace InspectLog.Archives;

/// <summary>Where things are in an archive, below its folder <c>data</c>. FORMAT.md of this room describes it.</summary>
public static partial class ArchiveLayout
{
    /// <summary>The version of this layout.</summary>
    public const string Version = "1";

    /// <summary>The journal.</summary>
    public const string Journal = "journal.jsonl";

    /// <summary>What the journal names and the archive is without; left out where it is without nothing.</summary>
    public const string Withheld = "withheld.json";

    /// <summary>Readings, as a table.</summary>
    public const string Readings = "readings.csv";

    /// <summary>A recording or photo.</summary>
    public static string Media(MediaFile file) => $"media/{file.Sha256}.{Ending(file.Type)}";

    /// <summary>The copy that stands in the place of a photo.</summary>
    /// <param name="original">The photo.</param>
    public static string Copy(MediaFile original) => $"copies/{original.Sha256}.jpg";

    /// <summary>A check sheet.</summary>
    public static string Sheet(string sha256) => $"sheets/{sha256}.json";

    /// <summary>The report of an inspection.</summary>
    /// <param name="day">When it began.</param>
    /// <param name="number">Its number.</param>
    public static string Report(DateTimeOffset day, long number) =>
        FormattableString.Invariant($"reports/{day:yyyy-MM-dd}-inspection-{number}.html");

    /// <summary>Whether a path is that of a report.</summary>
    internal static bool IsReport(string path) => ReportPath().IsMatch(path);

    private static string Ending(string type) => type switch
    {
        "audio/wav" => "wav",
        "image/jpeg" => "jpg",
        "image/png" => "png",
        _ => "bin",
    };

    [GeneratedRegex(@"\Areports/\d{4}-\d\d-\d\d-inspection-\d{1,19}\.html\z")]
    private static partial Regex ReportPath();
}

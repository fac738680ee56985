using System.Globalization;

namespace InspectLog.Archives;

/// <summary>Labels of what an archive says of itself beyond those of RFC 8493, and how lists stand under them. Pure.</summary>
internal static class ArchiveFields
{
    public const string Version = "InspectLog-Archive-Version";
    public const string Vehicle = "InspectLog-Vehicle-Id";
    public const string Profile = "InspectLog-Profile";
    public const string Entries = "InspectLog-Journal-Entries";
    public const string Head = "InspectLog-Journal-Head";
    public const string WithheldEntries = "InspectLog-Withheld-Entries";
    public const string VinEnding = "InspectLog-VIN-Ending";

    public static string Numbers(IEnumerable<long> numbers) =>
        string.Join(' ', numbers.Order().Select(number => number.ToString(CultureInfo.InvariantCulture)));

    /// <summary>The numbers of a list; null where it is none.</summary>
    public static IReadOnlyList<long>? Numbers(string text)
    {
        var numbers = new List<long>();
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (!long.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out var number))
            {
                return null;
            }

            numbers.Add(number);
        }

        return numbers;
    }
}

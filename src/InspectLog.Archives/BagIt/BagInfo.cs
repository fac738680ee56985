using System.Text;

namespace InspectLog.Archives.BagIt;

/// <summary>What a bag says of itself (RFC 8493, 2.2.2): labels and values in order; a label may come more than once. Pure.
/// </summary>
/// <param name="Fields">Labels and values.</param>
public sealed record BagInfo(IReadOnlyList<(string Label, string Value)> Fields)
{
    /// <summary>The file's name.</summary>
    public const string FileName = "bag-info.txt";

    /// <summary>The first value under a label, however it is spelled in large and small letters; null where there is none.</summary>
    public string? this[string label] =>
        Fields.Where(field => field.Label.Equals(label, StringComparison.OrdinalIgnoreCase)).Select(field => field.Value).FirstOrDefault();

    /// <summary>The file. Values are put on one line each.</summary>
    public byte[] Write() => Encoding.UTF8.GetBytes(string.Concat(Fields.Select(field => $"{field.Label}: {OneLine(field.Value)}\n")));

    /// <summary>Reads one; null where a line is neither a label with a value nor goes on with the one before.</summary>
    public static BagInfo? Read(string text)
    {
        var fields = new List<(string Label, string Value)>();
        foreach (var line in TagText.Lines(text))
        {
            if (line.Length > 0 && line[0] is ' ' or '\t' && fields.Count > 0)
            {
                fields[^1] = (fields[^1].Label, $"{fields[^1].Value} {line.Trim()}");
            }
            else if (line.IndexOf(':', StringComparison.Ordinal) is > 0 and var colon)
            {
                fields.Add((line[..colon].TrimEnd(), line[(colon + 1)..].Trim()));
            }
            else if (line.Trim().Length > 0)
            {
                return null;
            }
        }

        return new(fields);
    }

    private static string OneLine(string value) =>
        string.Join(' ', value.Split(['\r', '\n', '\t', '\v', '\f', '\u0085', '\u2028', '\u2029'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries));
}

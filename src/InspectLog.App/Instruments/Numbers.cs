using System.Globalization;
using InspectLog.App.Forms;
using InspectLog.Measuring;

namespace InspectLog.App.Instruments;

/// <summary>Plain numbers in the fields of an instrument, copied from its papers: with a point, in the unit chosen.</summary>
internal static class Numbers
{
    private const NumberStyles Style = NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign;

    /// <summary>A number above 0; 0 with what is wrong noted on the form, unless the text is empty.</summary>
    public static double AboveZero(PostedForm form, string field, string text, string example)
    {
        if (text.Length == 0 || (Read(text) is { } number && number > 0))
        {
            return Read(text).GetValueOrDefault();
        }

        form.Refuse(field, $"Type a number above 0 with a point, such as {example}.");
        return 0;
    }

    /// <summary>A number; null where the text is none, or too large to work with.</summary>
    public static double? Read(string text) =>
        double.TryParse(text.Replace('−', '-'), Style, CultureInfo.InvariantCulture, out var number) && Workable.Is(number) ? number : null;

    /// <summary>The lines of a field, each parted at its semicolons.</summary>
    public static IReadOnlyList<string[]> Lines(PostedForm form, string field) =>
    [
        .. form.Text(field).Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
            .Select(line => line.Split(';', StringSplitOptions.TrimEntries)),
    ];

    /// <summary>A number in the base unit as it stands in a field.</summary>
    public static string Plain(double? number) => number is { } one
        ? one is > -1e15 and < 1e15 and not (> -1e-12 and < 1e-12) ? ((decimal)one).ToString(CultureInfo.InvariantCulture) : one.ToString(CultureInfo.InvariantCulture)
        : "";
}

namespace InspectLog.App.Forms;

/// <summary>Text as it is kept and shown.</summary>
public static class PlainText
{
    /// <summary>A text without signs that do not show but change how what follows is shown or stored: control
    /// characters but tab and line ends, and the overrides of the writing direction (Unicode, UAX #9). Marks that scripts
    /// written from the right need by themselves stay.</summary>
    public static string Of(string text) => text.Any(IsHidden) ? string.Concat(text.Where(sign => !IsHidden(sign))) : text;

    private static bool IsHidden(char sign) =>
        (char.IsControl(sign) && sign is not ('\t' or '\n' or '\r'))
        || sign is (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069');
}

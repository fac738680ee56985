using System.Globalization;
using InspectLog.Measuring;

namespace InspectLog.App.Forms;

/// <summary>Reads distances as odometers show them. What is wrong is noted on the form.</summary>
public static class OdometerFields
{
    private const double Largest = 9_999_999;

    /// <summary>A whole number of kilometres or miles; null when the field is empty or wrong.</summary>
    public static double? Reading(PostedForm form, string field)
    {
        var text = form.Text(field).Replace(" ", "", StringComparison.Ordinal);
        if (text.Length == 0)
        {
            return null;
        }

        if (double.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var value) && value <= Largest)
        {
            return value;
        }

        form.Refuse(field, "Type it as whole numbers only, such as 88412.");
        return null;
    }

    /// <summary>mi where miles were chosen, else km.</summary>
    public static string Unit(PostedForm form, string field) =>
        form.Text(field) == Units.Mile.Symbol ? Units.Mile.Symbol : Units.Kilometre.Symbol;
}

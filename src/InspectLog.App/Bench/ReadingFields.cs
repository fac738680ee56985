using System.Globalization;
using InspectLog.App.Forms;
using InspectLog.Checks;
using InspectLog.Measuring;

namespace InspectLog.App.Bench;

/// <summary>Reads measured values from a form. What is wrong is noted on the form.</summary>
public static class ReadingFields
{
    /// <summary>The values of the field <c>value</c>, base unit: one, or repeats parted by semicolons. A number that
    /// could mean two things is asked about, unless the field <c>meant</c> brings the answer.</summary>
    public static IReadOnlyList<double> Values(
        PostedForm form, Measurand measurand, out TypedNumber.Ambiguous? ambiguity)
    {
        ambiguity = null;
        if (Meant(form) is { } meant)
        {
            return [meant];
        }

        var values = new List<double>();
        var texts = form.Required("value", "Type the value you read.")
            .Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        foreach (var text in texts)
        {
            switch (form.Number(text, measurand))
            {
                case TypedNumber.Certain certain:
                    values.Add(certain.BaseValue);
                    break;
                case TypedNumber.Ambiguous unsure when texts.Length == 1:
                    ambiguity = unsure;
                    break;
                case TypedNumber.Ambiguous unsure:
                    form.Refuse("value", $"{text}: {unsure.Question} Write it so that it can mean one thing only.");
                    break;
                case TypedNumber.Refused refused:
                    form.Refuse("value", refused.Message);
                    break;
            }
        }

        return values;
    }

    /// <summary>The bracket of the fields <c>goes</c> and <c>stops</c>; null when it is wrong.</summary>
    public static Bracket? Bracket(PostedForm form, Measurand measurand)
    {
        var goes = Single(form, "goes", "Type the largest gauge that goes.", measurand);
        var stops = Single(form, "stops", "Type the smallest gauge that stops.", measurand);
        if (goes >= stops)
        {
            form.Refuse("stops", "The gauge that stops must be thicker than the one that goes.");
        }

        return form.IsValid && goes is { } low && stops is { } high ? new Bracket(low, high) : null;
    }

    private static double? Single(PostedForm form, string field, string missing, Measurand measurand)
    {
        var text = form.Required(field, missing);
        return text.Length == 0 ? null : form.Certain(field, form.Number(text, measurand));
    }

    /// <summary>The answer to an earlier question, base unit; written by our own page, so in one form only.</summary>
    private static double? Meant(PostedForm form) =>
        double.TryParse(
            form.Text("meant"),
            NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent,
            CultureInfo.InvariantCulture,
            out var value) && double.IsFinite(value)
            ? value
            : null;
}

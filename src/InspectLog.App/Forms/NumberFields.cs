using InspectLog.Checks;
using InspectLog.Measuring;

namespace InspectLog.App.Forms;

/// <summary>Numbers typed into a form.</summary>
internal static class NumberFields
{
    /// <summary>The value in the base unit of a number that can mean one thing only. Anything else refuses the field, with
    /// what to do, and gives null.</summary>
    public static double? Certain(this PostedForm form, string field, TypedNumber number)
    {
        switch (number)
        {
            case TypedNumber.Certain certain:
                return certain.BaseValue;
            case TypedNumber.Ambiguous unsure:
                form.Refuse(field, $"{unsure.Question} Write it so that it can mean one thing only.");
                return null;
            case TypedNumber.Refused refused:
                form.Refuse(field, refused.Message);
                return null;
            default:
                return null;
        }
    }

    /// <summary>Reads what was typed for a quantity, in the unit chosen on the form, else in the one it is shown in.</summary>
    public static TypedNumber Number(this PostedForm form, string text, Measurand measurand)
    {
        var unit = Units.Find(form.Text("unit")) is { } chosen && chosen.Kind == measurand.Kind
            ? chosen
            : measurand.DisplayUnit;
        return TypedNumber.Read(text, measurand.Kind, unit, measurand.Plausible);
    }
}

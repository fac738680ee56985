using InspectLog.Checks;
using InspectLog.Measuring;

namespace InspectLog.App.Forms;

/// <summary>Numbers typed into a form.</summary>
internal static class NumberFields
{
    private static readonly TypedNumber.Refused TooLarge = new(Workable.Problem);

    /// <summary>The value in the base unit of a number that can mean one thing only. Anything else refuses the field, with
    /// what to do, and gives null.</summary>
    public static double? Certain(this PostedForm form, string field, TypedNumber number) =>
        form.Certainly(field, number)?.BaseValue;

    /// <summary>A number that can mean one thing only, with its unit. Anything else refuses the field, with what to do, and
    /// gives null.</summary>
    public static TypedNumber.Certain? Certainly(this PostedForm form, string field, TypedNumber number)
    {
        switch (number)
        {
            case TypedNumber.Certain certain:
                return certain;
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
        return TypedNumber.Read(text, measurand.Kind, unit, measurand.Plausible) switch
        {
            TypedNumber.Certain { BaseValue: var value } when !Workable.Is(value) => TooLarge,
            TypedNumber.Ambiguous { Choices: var choices } when !choices.All(one => Workable.Is(one.BaseValue)) => TooLarge,
            var read => read,
        };
    }
}

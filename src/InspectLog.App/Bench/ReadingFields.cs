using InspectLog.App.Forms;
using InspectLog.Checks;
using InspectLog.Inspecting.Recording;
using InspectLog.Measuring;

namespace InspectLog.App.Bench;

/// <summary>Reads measured values from a form. What is wrong is noted on the form. A number that could mean two things,
/// or that lies outside what the check can sensibly read, is asked about, unless the field <c>meant</c> brings the
/// answer.</summary>
public static class ReadingFields
{
    /// <summary>Fields beside which it stands what is wrong with them.</summary>
    public static readonly IReadOnlyList<string> SaidAtTheField = ["value"];

    /// <summary>The values of the field <c>value</c>: one, or repeats parted by semicolons; with what they were read off.
    /// Null when they are wrong or have to be answered for first.</summary>
    /// <param name="form">The form.</param>
    /// <param name="check">The check; it is a measured one.</param>
    /// <param name="readOff">What values were read off.</param>
    /// <param name="asked">What has to be answered first; null where nothing has.</param>
    public static ReadOff.Taken? Values(
        PostedForm form, Check check, Func<IReadOnlyList<TypedNumber.Certain>, ReadOff> readOff, out AskedNumber? asked)
    {
        asked = null;
        var values = new List<TypedNumber.Certain>();
        var texts = form.Required("value", "Type the value you read.")
            .Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        foreach (var text in texts)
        {
            switch (form.Number(text, check.Measurand!))
            {
                case TypedNumber.Certain certain:
                    values.Add(certain);
                    break;
                case TypedNumber.Ambiguous unsure when texts.Length == 1:
                    return Chosen(form, unsure, readOff, out asked);
                case TypedNumber.Ambiguous unsure:
                    form.Refuse("value", $"{text}: {unsure.Question} Write it so that it can mean one thing only.");
                    break;
                case TypedNumber.Refused refused:
                    form.Refuse("value", refused.Message);
                    break;
            }
        }

        return values.Count == 0 || !form.IsValid ? null : Taken(form, readOff(values), Asked(form, values, check), out asked);
    }

    /// <summary>The meaning chosen, where it is one of those asked about, or what the instrument showed of it.</summary>
    private static ReadOff.Taken? Chosen(
        PostedForm form,
        TypedNumber.Ambiguous unsure,
        Func<IReadOnlyList<TypedNumber.Certain>, ReadOff> readOff,
        out AskedNumber? asked)
    {
        // What would be refused is not offered; where all would be, the likeliest says why.
        var possible = unsure.Choices.Where(one => readOff([one]) is not ReadOff.Refused).ToList();
        if (possible.Count == 0)
        {
            return Taken(form, readOff([unsure.Choices[0]]), null, out asked);
        }

        var meant = form.Text("meant");
        var choice = possible.FirstOrDefault(one => AskedNumber.Written([one.BaseValue]) == meant)
            ?? possible.Find(one => readOff([one]) is ReadOff.Asked unshown && unshown.Answered(meant) is ReadOff.Taken);
        asked = choice is null ? AskedNumber.Which(unsure, possible, NotPossible(unsure, readOff)) : null;
        return choice is null ? null : Taken(form, readOff([choice]), null, out asked);
    }

    private static string? NotPossible(TypedNumber.Ambiguous unsure, Func<IReadOnlyList<TypedNumber.Certain>, ReadOff> readOff) =>
        unsure.Choices.Select(one => readOff([one])).OfType<ReadOff.Refused>().FirstOrDefault()?.Message;

    /// <summary>What no instrument shows is refused before anything is asked; who answers what it showed meant the
    /// value.</summary>
    private static ReadOff.Taken? Taken(PostedForm form, ReadOff readOff, AskedNumber? whetherMeant, out AskedNumber? asked)
    {
        var answered = readOff.Answered(form.Text("meant"));
        asked = (readOff, answered) switch
        {
            (ReadOff.Refused, _) or (ReadOff.Asked, ReadOff.Taken) => null,
            (ReadOff.Asked unshown, _) => whetherMeant ?? AskedNumber.Shown(unshown),
            _ => whetherMeant,
        };
        if (readOff is ReadOff.Refused refused)
        {
            form.Refuse("value", refused.Message);
        }

        return asked is null ? answered as ReadOff.Taken : null;
    }

    /// <summary>An answer counts for the very numbers it was given for: who types others is asked again.</summary>
    internal static AskedNumber? Asked(PostedForm form, IReadOnlyList<TypedNumber.Certain> typed, Check check) =>
        form.Text("meant") == AskedNumber.Written(typed.Select(number => number.BaseValue))
            ? null
            : AskedNumber.WhetherMeant(typed, check);
}

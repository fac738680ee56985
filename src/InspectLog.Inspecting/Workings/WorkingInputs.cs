using System.Globalization;

namespace InspectLog.Inspecting.Workings;

/// <summary>What was typed for a working. Numbers are written with a point; anything else is refused, not guessed.</summary>
public sealed class WorkingInputs(IReadOnlyList<WorkingField> fields)
{
    /// <summary>A field as it was typed.</summary>
    public string Text(string name) => Field(name).Value.Trim();

    /// <summary>One of the choices of a field.</summary>
    /// <exception cref="ArgumentException">It is none of them.</exception>
    public string Choice(string name) => Field(name).Choices.Contains(Text(name))
        ? Text(name)
        : throw new ArgumentException($"{Field(name).Label}: choose one from the list.");

    /// <summary>A number.</summary>
    /// <exception cref="ArgumentException">The field is empty or is no number.</exception>
    public double Number(string name) => Optional(name)
        ?? throw new ArgumentException($"{Field(name).Label}: type a number.");

    /// <summary>A number, or null when the field is empty.</summary>
    /// <exception cref="ArgumentException">The field is no number.</exception>
    public double? Optional(string name)
    {
        var text = Text(name);
        if (text.Length == 0)
        {
            return null;
        }

        var isNumber = double.TryParse(
            text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number);
        return isNumber && double.IsFinite(number)
            ? number
            : throw new ArgumentException(
                $"{Field(name).Label}: \"{text}\" is not a number here. Write it with a point and no commas, such as 0.35.");
    }

    /// <summary>A whole number.</summary>
    /// <exception cref="ArgumentException">The field is empty or is no whole number.</exception>
    public int Whole(string name) =>
        int.TryParse(Text(name), NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            ? number
            : throw new ArgumentException($"{Field(name).Label}: type a whole number.");

    private WorkingField Field(string name) => fields.First(field => field.Name == name);
}

namespace InspectLog.App.Forms;

/// <summary>A form that was refused: what was typed and what is wrong, by field.</summary>
/// <param name="Name">Which form: "reading", "bracket", "vehicle".</param>
/// <param name="Typed">The fields as typed.</param>
/// <param name="Errors">What is wrong and what to do, by field; under "" for the form as a whole.</param>
public sealed record RefusedForm(
    string Name, IReadOnlyDictionary<string, string> Typed, IReadOnlyDictionary<string, string> Errors)
{
    /// <summary>What was typed in a field; empty when nothing was.</summary>
    public string Value(string field) => Typed.GetValueOrDefault(field, "");

    /// <summary>What is wrong with a field; null when nothing is.</summary>
    public string? Error(string field) => Errors.GetValueOrDefault(field);
}

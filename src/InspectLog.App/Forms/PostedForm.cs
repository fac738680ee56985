using System.Globalization;

namespace InspectLog.App.Forms;

/// <summary>A posted form, read field by field as text. Errors are collected, so that all are shown at once and
/// nothing typed is lost.</summary>
public sealed class PostedForm
{
    /// <summary>Longest text taken in one field; longer is refused, not cut.</summary>
    public const int LongestText = 4000;

    private readonly IFormCollection _fields;
    private readonly Dictionary<string, string> _errors = [];

    private PostedForm(IFormCollection fields) => _fields = fields;

    /// <summary>Reads the body of a request as a form; a body that is none gives an empty form.</summary>
    public static async Task<PostedForm> ReadAsync(HttpRequest request) =>
        new(request.HasFormContentType ? await request.ReadFormAsync(request.HttpContext.RequestAborted) : FormCollection.Empty);

    public bool IsValid => _errors.Count == 0;

    public IFormFileCollection Files => _fields.Files;

    /// <summary>The text of a field without spaces around it; empty when it is absent.</summary>
    public string Text(string field)
    {
        var text = _fields[field].ToString().Trim();
        if (text.Length > LongestText)
        {
            Refuse(field, $"Keep this to {LongestText} characters.");
        }

        return text;
    }

    /// <summary>The text of a field that must not be empty.</summary>
    public string Required(string field, string message)
    {
        var text = Text(field);
        if (text.Length == 0)
        {
            Refuse(field, message);
        }

        return text;
    }

    /// <summary>All texts of a field that occurs more than once, without empty ones.</summary>
    public IReadOnlyList<string> All(string field) =>
        [.. _fields[field].Select(text => text?.Trim() ?? "").Where(text => text.Length > 0)];

    /// <summary>Whether a check box is ticked.</summary>
    public bool Ticked(string field) => _fields[field].ToString().Length > 0;

    /// <summary>A whole number; null when the field is empty or absent.</summary>
    public int? Whole(string field, string message)
    {
        var text = Text(field);
        if (text.Length == 0)
        {
            return null;
        }

        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number))
        {
            return number;
        }

        Refuse(field, message);
        return null;
    }

    /// <summary>Notes what is wrong with a field. The first word on a field stands.</summary>
    public void Refuse(string field, string message) => _errors.TryAdd(field, message);

    /// <summary>The form as it was typed, with what is wrong.</summary>
    public RefusedForm Refused(string name) => new(
        name,
        _fields.ToDictionary(field => field.Key, field => field.Value.ToString(), StringComparer.Ordinal),
        _errors);
}

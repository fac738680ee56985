using System.Globalization;

namespace InspectLog.App.Forms;

/// <summary>A posted form, read field by field as text. Errors are collected, so that all are shown at once and
/// nothing typed is lost.</summary>
public sealed class PostedForm
{
    /// <summary>Longest text taken in one field; longer is refused, not cut.</summary>
    public const int LongestText = 4000;

    /// <summary>What an I/O error has where the reader of forms made it itself, at the end of a body that is not whole;
    /// one of the system, such as a full disk, has the system's number.</summary>
    private const int EndedEarly = unchecked((int)0x80131620);

    private readonly IFormCollection _fields;
    private readonly Dictionary<string, string> _errors = [];

    private PostedForm(IFormCollection fields) => _fields = fields;

    /// <summary>Reads the body of a request as a form; a body that is none gives an empty form.</summary>
    /// <exception cref="UnreadableFormException">It is not whole, or holds more than is taken.</exception>
    public static async Task<PostedForm> ReadAsync(HttpRequest request)
    {
        if (!request.HasFormContentType)
        {
            return new(FormCollection.Empty);
        }

        try
        {
            return new(await request.ReadFormAsync(request.HttpContext.RequestAborted));
        }
        catch (InvalidDataException problem)
        {
            throw new UnreadableFormException(problem);
        }
        catch (IOException problem) when (problem is not BadHttpRequestException && problem.HResult == EndedEarly)
        {
            throw new UnreadableFormException(problem);
        }
    }

    public bool IsValid => _errors.Count == 0;

    public IFormFileCollection Files => _fields.Files;

    /// <summary>All fields as they were typed, in the order of their names.</summary>
    public IEnumerable<(string Name, string Text)> Fields =>
        _fields.OrderBy(one => one.Key, StringComparer.Ordinal).SelectMany(one => one.Value.Select(text => (one.Key, text ?? "")));

    /// <summary>Whether the form has a field of this name, be it empty.</summary>
    public bool Has(string field) => _fields.ContainsKey(field);

    /// <summary>The text of a field without spaces around it; empty when it is absent. Signs that do not show are left
    /// out (<see cref="PlainText"/>); the sign that ends texts for the system is refused.</summary>
    public string Text(string field)
    {
        var typed = _fields[field].ToString();
        if (typed.Contains('\0', StringComparison.Ordinal))
        {
            Refuse(field, "This holds a sign that no keyboard types, so it was not saved. Type it again.");
        }

        var text = PlainText.Of(typed).Trim();
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
        [.. _fields[field].Select(text => PlainText.Of(text ?? "").Trim()).Where(text => text.Length > 0)];

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

    /// <summary>One of the names of an enumeration, as a list offers them.</summary>
    /// <param name="field">The field.</param>
    /// <param name="empty">What an empty or absent field means.</param>
    /// <param name="message">What is said where it is none of them.</param>
    public T Choice<T>(string field, T empty, string message)
        where T : struct, Enum
    {
        var text = Text(field);
        if (text.Length == 0)
        {
            return empty;
        }

        // Enum.TryParse would take any number too.
        if (Enum.GetNames<T>().FirstOrDefault(name => name.Equals(text, StringComparison.OrdinalIgnoreCase)) is { } known)
        {
            return Enum.Parse<T>(known);
        }

        Refuse(field, message);
        return empty;
    }

    /// <summary>Notes what is wrong with a field. The first word on a field stands.</summary>
    public void Refuse(string field, string message) => _errors.TryAdd(field, message);

    /// <summary>The form as it was typed, with what is wrong.</summary>
    public RefusedForm Refused(string name) => new(
        name,
        _fields.ToDictionary(field => field.Key, field => PlainText.Of(field.Value.ToString()), StringComparer.Ordinal),
        _errors);
}

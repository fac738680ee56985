using System.Text.Json;

namespace InspectLog.Checks.Sheets;

/// <summary>A value in a sheet file together with its path, so that each complaint can say where it belongs.</summary>
internal readonly struct SheetNode(JsonElement element, string path)
{
    /// <summary>Refuses anything but an object with no members besides these.</summary>
    public SheetNode Object(params ReadOnlySpan<string> known)
    {
        if (element.ValueKind != JsonValueKind.Object)
        {
            throw Wrong("this must be an object in braces.");
        }

        foreach (var member in element.EnumerateObject())
        {
            if (!known.Contains(member.Name))
            {
                throw Wrong($"'{member.Name}' is not a member known here. Known are: {string.Join(", ", known!)}.");
            }
        }

        return this;
    }

    public SheetNode this[string name] =>
        Optional(name) ?? throw Wrong($"the member '{name}' is missing.");

    public SheetNode? Optional(string name) =>
        element.TryGetProperty(name, out var value)
            ? new SheetNode(value, path.Length == 0 ? name : $"{path}.{name}")
            : null;

    public bool IsList => element.ValueKind == JsonValueKind.Array;

    public IReadOnlyList<T> List<T>(Func<SheetNode, T> read, bool atLeastOne = false)
    {
        if (element.ValueKind != JsonValueKind.Array)
        {
            throw Wrong("this must be a list in square brackets.");
        }

        if (atLeastOne && element.GetArrayLength() == 0)
        {
            throw Wrong("the list is empty; give at least one.");
        }

        var items = new List<T>(element.GetArrayLength());
        foreach (var item in element.EnumerateArray())
        {
            items.Add(read(new SheetNode(item, $"{path}[{items.Count}]")));
        }

        return items.AsReadOnly();
    }

    public IReadOnlyList<string> Texts(bool atLeastOne = false)
    {
        var texts = List(node => node.Text(), atLeastOne);
        return FirstRepeated(texts) is { } repeated ? throw Wrong($"'{repeated}' stands in the list twice.") : texts;
    }

    public string Text()
    {
        var text = element.ValueKind == JsonValueKind.String
            ? element.GetString()!
            : throw Wrong("this must be text in quotes.");
        if (text.Length == 0)
        {
            throw Wrong("the text is empty.");
        }

        return text.Trim().Length == text.Length
            ? text
            : throw Wrong("the text starts or ends with a space or line break.");
    }

    public string Word(params IReadOnlyList<string> allowed)
    {
        var text = Text();
        return allowed.Contains(text, StringComparer.Ordinal)
            ? text
            : throw Wrong($"'{text}' is not one of: {string.Join(", ", allowed)}.");
    }

    public double Number()
    {
        var number = element.ValueKind == JsonValueKind.Number
            ? element.GetDouble()
            : throw Wrong("this must be a number.");
        return double.IsFinite(number) ? number : throw Wrong("the number is too large.");
    }

    public int Whole(int from, int to)
    {
        var number = Number();
        return number == Math.Floor(number) && number >= from && number <= to
            ? (int)number
            : throw Wrong($"this must be a whole number from {from} to {to}.");
    }

    public bool YesNo() => element.ValueKind switch
    {
        JsonValueKind.True => true,
        JsonValueKind.False => false,
        _ => throw Wrong("this must be true or false."),
    };

    public CheckSheetFormatException Wrong(string problem) => new(path, problem);

    public static string? FirstRepeated(IEnumerable<string> texts)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        return texts.FirstOrDefault(text => !seen.Add(text));
    }
}

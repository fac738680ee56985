using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Json;

namespace InspectLog.Journal.Record;

/// <summary>JSON in the canonical form of RFC 8785: one spelling for each value, so that it can be hashed.</summary>
internal static class CanonicalJson
{
    private static readonly UTF8Encoding StrictUtf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    private static readonly SearchValues<char> Escaped =
        SearchValues.Create(['"', '\\', .. Enumerable.Range(0, ' ').Select(c => (char)c)]);

    // RFC 8785 builds on I-JSON (RFC 7493), which forbids two members of one name.
    private static readonly JsonDocumentOptions IJson = new() { AllowDuplicateProperties = false };

    /// <summary>The canonical form of a JSON text.</summary>
    /// <exception cref="FormatException">The text is not I-JSON: malformed, a member twice, a number beyond
    /// IEEE 754 double, or a surrogate without its pair.</exception>
    public static byte[] Of(ReadOnlyMemory<byte> json)
    {
        using var document = Parse(json);
        return Of(document.RootElement);
    }

    /// <summary>Parses one JSON value and nothing after it.</summary>
    /// <exception cref="FormatException">The text is not JSON, or has a member twice or one that is not Unicode.</exception>
    public static JsonDocument Parse(ReadOnlyMemory<byte> json)
    {
        try
        {
            return JsonDocument.Parse(json, IJson);
        }
        catch (Exception problem) when (problem is JsonException or InvalidOperationException)
        {
            throw new FormatException("it is not JSON", problem);
        }
    }

    /// <summary>The canonical form of a value.</summary>
    /// <exception cref="FormatException">It holds a number beyond IEEE 754 double or a surrogate without its pair.</exception>
    public static byte[] Of(JsonElement value)
    {
        var text = new StringBuilder();
        try
        {
            Append(text, value);
            return StrictUtf8.GetBytes(text.ToString());
        }
        catch (Exception problem) when (problem is InvalidOperationException or EncoderFallbackException)
        {
            throw new FormatException("it holds text that is not Unicode", problem);
        }
    }

    /// <summary>Appends a string with its quotes.</summary>
    public static StringBuilder AppendString(StringBuilder text, string value)
    {
        text.Append('"');
        var rest = value.AsSpan();
        for (var at = rest.IndexOfAny(Escaped); at >= 0; at = rest.IndexOfAny(Escaped))
        {
            AppendEscape(text.Append(rest[..at]), rest[at]);
            rest = rest[(at + 1)..];
        }

        return text.Append(rest).Append('"');
    }

    private static void Append(StringBuilder text, JsonElement value)
    {
        switch (value.ValueKind)
        {
            case JsonValueKind.Object:
                AppendObject(text, value);
                break;
            case JsonValueKind.Array:
                AppendArray(text, value);
                break;
            case JsonValueKind.String:
                AppendString(text, value.GetString()!);
                break;
            case JsonValueKind.Number:
                text.Append(EcmaNumber.Format(value.GetDouble()));
                break;
            default:
                text.Append(value.GetRawText()); // true, false, null have one spelling
                break;
        }
    }

    private static void AppendObject(StringBuilder text, JsonElement value)
    {
        text.Append('{');
        var first = true;
        var members = value.EnumerateObject().Select(member => (member.Name, member.Value)).ToArray();
        Array.Sort(members, (one, other) => string.CompareOrdinal(one.Name, other.Name)); // by UTF-16 units
        foreach (var (name, member) in members)
        {
            AppendString(first ? text : text.Append(','), name).Append(':');
            Append(text, member);
            first = false;
        }

        text.Append('}');
    }

    private static void AppendArray(StringBuilder text, JsonElement value)
    {
        text.Append('[');
        var first = true;
        foreach (var item in value.EnumerateArray())
        {
            Append(first ? text : text.Append(','), item);
            first = false;
        }

        text.Append(']');
    }

    private static void AppendEscape(StringBuilder text, char c) => _ = c switch
    {
        '"' => text.Append("\\\""),
        '\\' => text.Append(@"\\"),
        '\b' => text.Append("\\b"),
        '\t' => text.Append("\\t"),
        '\n' => text.Append("\\n"),
        '\f' => text.Append("\\f"),
        '\r' => text.Append("\\r"),
        _ => text.Append(CultureInfo.InvariantCulture, $"\\u{(int)c:x4}"),
    };
}

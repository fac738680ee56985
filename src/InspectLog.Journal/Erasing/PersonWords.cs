using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using InspectLog.Journal.Record;

namespace InspectLog.Journal.Erasing;

/// <summary>The words by which a person is found in texts: the name, and what was noted of how to reach them. Pure.</summary>
internal sealed partial class PersonWords
{
    private const int FewestDigits = 6; // of a telephone number

    private readonly List<Regex> _patterns;

    /// <param name="name">The name; case does not matter, and blanks are one.</param>
    /// <param name="contacts">What was noted of how to reach them.</param>
    public PersonWords(string name, IEnumerable<string> contacts)
    {
        Name = string.Join(' ', name.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        _patterns =
        [
            .. contacts.SelectMany(Parts).Append(Name).Where(part => part.Length > 0).Distinct(StringComparer.OrdinalIgnoreCase)
                .OrderByDescending(part => part.Length)
                .Select(Pattern),
        ];
    }

    /// <summary>The name, with single blanks.</summary>
    public string Name { get; }

    /// <summary>Whether a text is the person's name and nothing else.</summary>
    public bool Is(string? text) => text is not null
        && string.Equals(string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)), Name, StringComparison.OrdinalIgnoreCase);

    /// <summary>Whether a contact names the person, and not only in an address.</summary>
    public bool IsNamedIn(string contact) => IsIn(MailAddress().Replace(contact, " "));

    /// <summary>Whether a text names the person, or says how to reach them.</summary>
    public bool IsIn(string? text) => text is not null && _patterns.Exists(pattern => pattern.IsMatch(text));

    /// <summary>A text without the person.</summary>
    public string Without(string text) => _patterns.Aggregate(text, (left, pattern) => pattern.Replace(left, Erased.Name));

    /// <summary>Whether bytes of any file hold the person's words, as far as they are text.</summary>
    public bool IsIn(ReadOnlySpan<byte> bytes) => IsIn(Encoding.UTF8.GetString(bytes));

    /// <summary>Whether a body says something of the person in any of its texts.</summary>
    /// <param name="body">The body.</param>
    /// <param name="skip">Members at its top that are passed over.</param>
    public bool IsIn(JsonElement body, IReadOnlySet<string> skip) => body.ValueKind switch
    {
        JsonValueKind.Object => body.EnumerateObject().Any(member => !skip.Contains(member.Name) && IsIn(member.Value, Nothing)),
        JsonValueKind.Array => body.EnumerateArray().Any(one => IsIn(one, Nothing)),
        JsonValueKind.String => IsIn(body.GetString()),
        _ => false,
    };

    /// <summary>A body without the person.</summary>
    public JsonElement Without(JsonElement body, IReadOnlySet<string> skip)
    {
        var left = JsonNode.Parse(body.GetRawText())!;
        Clean(left, skip);
        return JsonSerializer.SerializeToElement(left);
    }

    private static readonly HashSet<string> Nothing = [];

    private void Clean(JsonNode node, IReadOnlySet<string> skip)
    {
        if (node is JsonObject members)
        {
            foreach (var (name, value) in members.ToList().Where(member => !skip.Contains(member.Key)))
            {
                Clean(value, to => members[name] = to);
            }
        }
        else if (node is JsonArray items)
        {
            for (var at = 0; at < items.Count; at++)
            {
                var place = at;
                Clean(items[at], to => items[place] = to);
            }
        }
    }

    private void Clean(JsonNode? value, Action<JsonNode> put)
    {
        if (value is JsonValue text && text.GetValueKind() == JsonValueKind.String)
        {
            if (IsIn(text.GetValue<string>()))
            {
                put(Without(text.GetValue<string>()));
            }
        }
        else if (value is not null)
        {
            Clean(value, Nothing);
        }
    }

    /// <summary>What of a contact is looked for elsewhere: all of it, and the addresses and numbers in it.</summary>
    private static IEnumerable<string> Parts(string contact) =>
        contact.Trim() is not { Length: > 0 } whole ? [] :
        [
            whole,
            .. MailAddress().Matches(whole).Select(match => match.Value),
            .. Number().Matches(whole).Select(match => match.Value.Trim()).Where(number => number.Count(char.IsAsciiDigit) >= FewestDigits),
        ];

    /// <summary>Blanks are any blanks; the words must not go on on either side.</summary>
    private static Regex Pattern(string part)
    {
        var spelled = string.Join(@"\s+", part.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Select(Regex.Escape));
        return new($@"(?<![\p{{L}}\p{{Nd}}]){spelled}(?![\p{{L}}\p{{Nd}}])", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);
    }

    [GeneratedRegex(@"[^\s,;<>()]+@[^\s,;<>()]+")]
    private static partial Regex MailAddress();

    [GeneratedRegex(@"\+?[0-9][0-9 ()/.-]*[0-9]")]
    private static partial Regex Number();
}

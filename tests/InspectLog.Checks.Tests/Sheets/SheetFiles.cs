using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;

namespace InspectLog.Checks.Tests.Sheets;

/// <summary>The built-in sheet and its schema as files, and the schema's verdict on a file.</summary>
internal static class SheetFiles
{
    private static readonly Lazy<JsonSchema> Schema =
        new(() => JsonSchema.FromText(Encoding.UTF8.GetString(Resource("check-sheet.schema"))));

    public static byte[] Ignition() => Resource(BuiltInSheets.IgnitionBreakerless);

    /// <summary>The built-in sheet with one value put in or, where it is null, taken out.</summary>
    /// <param name="at">Where: <c>/checks/4/title</c>.</param>
    /// <param name="value">The value as JSON, with single quotes for double ones.</param>
    public static JsonNode Changed(string at, string? value)
    {
        var sheet = JsonNode.Parse(Ignition())!;
        var steps = at.Split('/', StringSplitOptions.RemoveEmptyEntries);
        var parent = steps[..^1].Aggregate(sheet, (node, step) =>
            node is JsonArray list ? list[Index(step)]! : node[step]!);
        var put = value is null ? null : JsonNode.Parse(value.Replace('\'', '"'));
        switch (parent)
        {
            case JsonArray list when Index(steps[^1]) == list.Count:
                list.Add(put);
                break;
            case JsonArray list:
                list[Index(steps[^1])] = put;
                break;
            case JsonObject members when value is null:
                Assert.True(members.Remove(steps[^1]), $"{at} is not there to be taken out");
                break;
            default:
                parent[steps[^1]] = put;
                break;
        }

        return sheet;
    }

    public static bool SchemaAccepts(JsonNode sheet) =>
        Schema.Value.Evaluate(JsonSerializer.SerializeToElement(sheet)).IsValid;

    public static IEnumerable<string> SchemaUnits(string kind)
    {
        var schema = JsonNode.Parse(Resource("check-sheet.schema"))!;
        var pair = schema["$defs"]!["measurand"]!["oneOf"]!.AsArray().Select(one => one!["properties"]!)
            .Single(one => one["kind"]!["const"]!.GetValue<string>() == kind);
        return pair["displayUnit"]!["enum"]!.AsArray().Select(unit => unit!.GetValue<string>());
    }

    public static byte[] Bytes(JsonNode sheet) => Encoding.UTF8.GetBytes(sheet.ToJsonString());

    private static int Index(string step) => int.Parse(step, System.Globalization.CultureInfo.InvariantCulture);

    public static byte[] Resource(string name)
    {
        using var stream = typeof(BuiltInSheets).Assembly.GetManifestResourceStream($"Sheets/{name}.json")!;
        using var copy = new MemoryStream();
        stream.CopyTo(copy);
        return copy.ToArray();
    }
}

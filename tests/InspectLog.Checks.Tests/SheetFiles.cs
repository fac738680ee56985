using System.Text;
using System.Text.Json.Nodes;
using Json.Schema;

namespace InspectLog.Checks.Tests;

/// <summary>The built-in sheet and its schema as files, and the schema's verdict on a file.</summary>
internal static class SheetFiles
{
    private static readonly Lazy<JsonSchema> Schema =
        new(() => JsonSchema.FromText(Encoding.UTF8.GetString(Resource("check-sheet.schema"))));

    public static byte[] Ignition() => Resource(BuiltInSheets.IgnitionBreakerless6);

    public static JsonNode IgnitionAsJson() => JsonNode.Parse(Ignition())!;

    public static bool SchemaAccepts(JsonNode sheet)
    {
        var element = System.Text.Json.JsonSerializer.SerializeToElement(sheet);
        return Schema.Value.Evaluate(element).IsValid;
    }

    public static byte[] Bytes(JsonNode sheet) => Encoding.UTF8.GetBytes(sheet.ToJsonString());

    private static byte[] Resource(string name)
    {
        using var stream = typeof(BuiltInSheets).Assembly.GetManifestResourceStream($"Sheets/{name}.json")!;
        using var copy = new MemoryStream();
        stream.CopyTo(copy);
        return copy.ToArray();
    }
}

using System.CommandLine;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace InspectLog.App.Commands.Json;

/// <summary>Writes results as JSON, one value a line.</summary>
internal static class JsonLines
{
    private static readonly JsonSerializerOptions Format = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase) },

        // Output goes to a terminal or another program, never into a web page: Ω stays Ω.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static Option<bool> Option() => new("--json") { Description = "Write one JSON value a line." };

    /// <summary>The number, or null where it is none that JSON can hold.</summary>
    public static double? Finite(double number) => double.IsFinite(number) ? number : null;

    public static void WriteJson<T>(this TextWriter output, T value)
    {
        output.Write(JsonSerializer.Serialize(value, Format));
        output.Write('\n');
        output.Flush();
    }
}

using System.Text.Json;
using InspectLog.Checks;

namespace InspectLog.Benchmarks.Dictation;

/// <summary>A line of the corpus: a text and the findings it means.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Text">What was said.</param>
/// <param name="Form">How it is written down: "spoken" in words, "written" as a speech model writes it, "noisy" with
/// words misheard, dropped or filled in.</param>
/// <param name="OpenCheck">The check open on the bench; null where none is.</param>
/// <param name="Findings">What it means; empty for speech that is no finding.</param>
internal sealed record Utterance(string Id, string Text, string Form, string? OpenCheck, IReadOnlyList<ExpectedFinding> Findings)
{
    /// <summary>Id of the check sheet it is said with.</summary>
    public string Sheet { get; init; } = BuiltInSheets.IgnitionBreakerless;

    /// <summary>How many cylinders the car has.</summary>
    public int Cylinders { get; init; } = CheckSheet.UsualCylinders;

    public static IReadOnlyList<Utterance> Load(string file) =>
        [.. File.ReadLines(file).Where(line => line.Length > 0).Select(Parse)];

    private static Utterance Parse(string line)
    {
        using var json = JsonDocument.Parse(line);
        var root = json.RootElement;
        return new(
            root.GetProperty("id").GetString()!,
            root.GetProperty("text").GetString()!,
            root.TryGetProperty("form", out var form) ? form.GetString()! : "spoken",
            root.TryGetProperty("open", out var open) && open.ValueKind == JsonValueKind.String ? open.GetString() : null,
            [.. root.GetProperty("findings").EnumerateArray().Select(ExpectedFinding.From)])
        {
            Sheet = root.TryGetProperty("sheet", out var sheet) && sheet.ValueKind == JsonValueKind.String ? sheet.GetString()! : BuiltInSheets.IgnitionBreakerless,
            Cylinders = root.TryGetProperty("cylinders", out var cylinders) ? cylinders.GetInt32() : CheckSheet.UsualCylinders,
        };
    }
}

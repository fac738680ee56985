using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using InspectLog.Checks;
using InspectLog.Dictation.Understanding;
using InspectLog.Dictation.Understanding.Events;
using InspectLog.Dictation.Understanding.Lattice;

namespace InspectLog.Training;

/// <summary>A note of the corpus with what it means, in the reader's terms.</summary>
internal sealed partial record TrainingNote(string Id, string Text, string? Open, string Sheet, int Cylinders, IReadOnlyList<(Claim Claim, int Place)> Findings)
{
    private const string UsualSheet = "ignition-breakerless";

    /// <summary>Id without the mark of a form made from another: all forms of an utterance go together.</summary>
    public string Base => MadeFrom().Replace(Id, "");

    /// <summary>In which of some parts of the corpus it falls, by its id alone.</summary>
    public int Part(int parts) => SHA256.HashData(Encoding.UTF8.GetBytes($"part {Base}"))[0] % parts;

    /// <summary>The notes of a file.</summary>
    /// <param name="file">A file of the corpus.</param>
    /// <param name="lexicons">The sheets by id and number of cylinders.</param>
    public static IEnumerable<TrainingNote> Load(string file, Func<string, int, SheetLexicon?> lexicons)
    {
        foreach (var line in File.ReadLines(file).Where(line => line.Length > 0))
        {
            using var json = JsonDocument.Parse(line);
            var root = json.RootElement;
            var sheet = root.TryGetProperty("sheet", out var named) && named.ValueKind == JsonValueKind.String ? named.GetString()! : UsualSheet;
            var cylinders = root.TryGetProperty("cylinders", out var number) ? number.GetInt32() : CheckSheet.UsualCylinders;
            if (lexicons(sheet, cylinders) is not { } lexicon)
            {
                continue;
            }

            var open = root.TryGetProperty("open", out var opened) && opened.ValueKind == JsonValueKind.String ? opened.GetString() : null;
            yield return new(
                root.GetProperty("id").GetString()!,
                root.GetProperty("text").GetString()!,
                open,
                sheet,
                cylinders,
                [.. root.GetProperty("findings").EnumerateArray().Select(finding => Meant(finding, lexicon))]);
        }
    }

    private static (Claim Claim, int Place) Meant(JsonElement finding, SheetLexicon lexicon)
    {
        var id = finding.GetProperty("check").GetString();
        var check = lexicon.Checks.FirstOrDefault(one => one.Check.Id == id) ?? throw new InvalidDataException($"There is no check {id} on the sheet {lexicon.Sheet.Id}.");
        var place = finding.TryGetProperty("place", out var at) && at.ValueKind == JsonValueKind.Object ? at.GetProperty("cylinder").GetInt32() : 0;
        return (finding.GetProperty("kind").GetString() switch
        {
            "reading" when finding.TryGetProperty("bracket", out var bracket) && bracket.ValueKind == JsonValueKind.Object =>
                Claim.Gauges(check.Index, bracket.GetProperty("goes").GetDouble(), bracket.GetProperty("stops").GetDouble()),
            "reading" => Claim.Reading(check.Index, finding.GetProperty("value").GetDouble()),
            "observation" => Claim.Observation(
                check.Index,
                check.Check.Conditions.ToList().FindIndex(condition => condition.Id == finding.GetProperty("condition").GetString()),
                finding.TryGetProperty("negated", out var negated) && negated.ValueKind == JsonValueKind.True),
            _ => Claim.Done(check.Index, finding.GetProperty("action").GetString()!),
        }, place);
    }

    [GeneratedRegex(@"-[wn]\d*$")]
    private static partial Regex MadeFrom();
}

using System.Security.Cryptography;
using System.Text.Json;
using InspectLog.Checks.Sheets;
using InspectLog.Measuring;

namespace InspectLog.Checks;

/// <summary>Reads check sheets from their JSON data files. The form is described by
/// <c>Sheets/check-sheet.schema.json</c>.</summary>
public static class CheckSheetFile
{
    private const int MostCylinders = 16;

    // A byte order mark, which some editors put in front, is not part of JSON.
    private static ReadOnlySpan<byte> ByteOrderMark => [0xEF, 0xBB, 0xBF];

    /// <summary>Reads a sheet from the bytes of its file. Strict: unknown and repeated members are refused, so that a
    /// misspelt name is never silently without effect.</summary>
    /// <param name="file">The whole file, UTF-8.</param>
    /// <exception cref="CheckSheetFormatException">The file is not a check sheet that can be used.</exception>
    public static CheckSheet Parse(ReadOnlyMemory<byte> file)
    {
        using var document = ParseJson(file);
        var sheet = new SheetNode(document.RootElement, "")
            .Object("id", "version", "title", "cylinders", "continues", "notice", "decisionRule", "coverage", "parts", "checks");
        var counts = CylinderCounts(sheet["cylinders"]);
        var parts = SheetParts.Read(sheet.Optional("parts"));
        var checks = ReadChecks(sheet["checks"], parts);
        parts.RefuseWhatNothingNames(sheet.Optional("parts"), checks);
        return new CheckSheet(
            CheckReader.Id(sheet["id"]),
            sheet["version"].Whole(1, 1_000_000),
            sheet["title"].Text(),
            counts.Contains(CheckSheet.UsualCylinders) ? CheckSheet.UsualCylinders : counts[0],
            sheet["notice"].Text(),
            checks,
            Convert.ToHexStringLower(SHA256.HashData(file.Span)))
        {
            CylinderCounts = counts,
            Continues = sheet.Optional("continues") is { } earlier ? Earlier(earlier) : [],
            Rule = sheet.Optional("decisionRule") is { } rule ? ReadRule(rule) : DecisionRule.NonBinary,
            Evaluation = sheet.Optional("coverage") is { } coverage ? ReadCoverage(coverage) : Evaluation.Default,
        };
    }

    private static JsonDocument ParseJson(ReadOnlyMemory<byte> file)
    {
        var json = file.Span.StartsWith(ByteOrderMark) ? file[ByteOrderMark.Length..] : file;
        try
        {
            return JsonDocument.Parse(json, new JsonDocumentOptions { AllowDuplicateProperties = false });
        }
        catch (JsonException e)
        {
            throw new CheckSheetFormatException("", $"The file is not sound JSON. {e.Message}", e);
        }
    }

    // Sheets from before one could be for several numbers of cylinders give the number alone.
    private static IReadOnlyList<int> CylinderCounts(SheetNode node)
    {
        if (!node.IsList)
        {
            return [node.Whole(1, MostCylinders)];
        }

        var counts = node.List(count => count.Whole(1, MostCylinders), atLeastOne: true);
        return counts.Zip(counts.Skip(1)).All(pair => pair.First < pair.Second)
            ? counts
            : throw node.Wrong("write the numbers of cylinders in rising order, each once.");
    }

    private static IReadOnlyList<string> Earlier(SheetNode node)
    {
        node.Texts();
        return node.List(CheckReader.Id);
    }

    private static DecisionRule ReadRule(SheetNode node) => DecisionRule.Find(node.Text())
        ?? throw node.Wrong(
            $"'{node.Text()}' is no decision rule. Write non-binary, simple, 'guard band 0.83' (times the expanded "
            + "uncertainty, above 0 and up to 5) or 'risk 0.05' (above 0 and up to 0.5).");

    private static Evaluation ReadCoverage(SheetNode node)
    {
        try
        {
            return Evaluation.Covering(node.Number());
        }
        catch (ArgumentException refusal)
        {
            throw node.Wrong($"{refusal.Message} 95.45 is the usual one, 95 and 99 are common.");
        }
    }

    private static IReadOnlyList<Check> ReadChecks(SheetNode node, SheetParts parts)
    {
        var checks = node.List(check => CheckReader.Read(check, parts), atLeastOne: true);
        if (SheetNode.FirstRepeated(checks.Select(check => check.Id)) is { } repeated)
        {
            throw node.Wrong($"two checks have the id '{repeated}'. Each needs its own.");
        }

        PlaceReader.RefuseTwoSetsOfOneName(node, checks);

        // Several checks may take off the same part; it is one loose end only if all of them mean the same thing, and
        // allow it for the same time.
        var twoMeanings = checks.SelectMany(check => check.Disturbs).GroupBy(disturbance => disturbance.Id)
            .FirstOrDefault(sameId => sameId.Distinct().Count() > 1);
        return twoMeanings is null
            ? Comparisons.Read(node, checks)
            : throw node.Wrong(
                $"the disturbance '{twoMeanings.Key}' is worded in two ways. Word it the same, its limit of time included, or use two ids.");
    }
}

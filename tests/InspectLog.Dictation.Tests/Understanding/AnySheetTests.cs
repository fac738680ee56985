using System.Globalization;
using InspectLog.Checks;
using InspectLog.Dictation.Understanding;

namespace InspectLog.Dictation.Tests.Understanding;

/// <summary>Plain sentences made of the words of each built-in sheet: what a sheet says is read, whatever it is about.</summary>
public sealed class AnySheetTests
{
    private const double LeastShare = 0.85;

    public static TheoryData<string> Sheets() => [.. BuiltInSheets.All.Select(sheet => sheet.Id)];

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Values_with_their_units_are_read_for_the_checks_they_are_said_of(string id)
    {
        var (sheet, reader) = Of(id);
        var said = sheet.Checks.Where(check => check.Measurand is not null).Select(check =>
        {
            var (text, value) = Value(check.Measurand!);
            return (Check: check, Text: $"{Name(check)} is {text}.", Value: value);
        }).ToList();

        AssertMost(said.ConvertAll(one => (one.Text, Right: reader.Read(one.Text).Any(finding => finding.Check == one.Check.Id && Math.Abs(finding.Value.GetValueOrDefault() - one.Value) <= 1e-6 * Math.Abs(one.Value)))));
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Conditions_are_read_for_the_checks_they_are_said_of(string id)
    {
        var (sheet, reader) = Of(id);
        var said = sheet.Checks.SelectMany(check => check.Conditions.Select(condition => (Check: check, Condition: condition.Id, Text: $"{Name(check)} is {condition.Id}."))).ToList();

        AssertMost(said.ConvertAll(one => (one.Text, Right: reader.Read(one.Text).Any(finding => finding.Check == one.Check.Id && finding.Condition == one.Condition))));
    }

    private static (CheckSheet Sheet, FindingReader Reader) Of(string id)
    {
        var sheet = BuiltInSheets.Find(id)!;
        return (sheet, new(sheet));
    }

    private static string Name(Check check)
    {
        var name = check.Spoken.Subjects[0];
        var place = check.Places is not { } places ? "" : places.Names.Count > 0 ? $" {places.Names[0].Name}" : " 2";
        return $"{char.ToUpperInvariant(name[0])}{name[1..]}{place}";
    }

    private static (string Text, double Value) Value(Measurand measurand)
    {
        var (from, to) = (measurand.Limits?.Lower ?? measurand.Plausible.From, measurand.Limits?.Upper ?? measurand.Plausible.To);
        var shown = Math.Round(measurand.DisplayUnit.FromBase((from + to) / 2), 2);
        return (string.Create(CultureInfo.InvariantCulture, $"{shown} {measurand.DisplayUnit.Symbol}"), measurand.DisplayUnit.ToBase(shown));
    }

    private static void AssertMost(List<(string Text, bool Right)> read) =>
        Assert.True(read.Count(one => one.Right) >= LeastShare * read.Count, string.Join(Environment.NewLine, read.Where(one => !one.Right).Select(one => one.Text)));
}

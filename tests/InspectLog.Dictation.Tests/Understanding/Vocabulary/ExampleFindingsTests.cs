using System.Globalization;
using System.Text.RegularExpressions;
using InspectLog.Checks;
using InspectLog.Dictation.Understanding;
using InspectLog.Dictation.Understanding.Vocabulary;
using InspectLog.Measuring;

namespace InspectLog.Dictation.Tests.Understanding.Vocabulary;

public sealed partial class ExampleFindingsTests
{
    private static readonly OwnWord[] Words =
    [
        new("sparkler", "plug-condition", null),
        new("cooked", "lead-condition", "burnt"),
        new("king wire thingy", "coil-secondary-resistance", null),
        new("gone", "no-such-check", null),
    ];

    private static readonly CheckSheet Sheet = Read.Reader.Sheet;

    public static TheoryData<string, string> Checks =>
        new(BuiltInSheets.All.SelectMany(sheet => sheet.Checks.Select(check => (sheet.Id, check.Id))));

    [Theory]
    [InlineData("coil-secondary-resistance", "Coil secondary 71.5 k.")]
    [InlineData("coil-circuit-resistance", "Coil circuit 14.3 ohms.")]
    [InlineData("pickup-air-gap", "Pickup air gap 0.03 mm.")]
    [InlineData("ignition-timing", "Ignition timing 86 degrees.")]
    [InlineData("lead-resistance", "Lead 7, 143 k.")]
    [InlineData("lead-condition", "Number 7 lead chafed.")]
    [InlineData("rotor-blade", "Rotor blade worn, replaced it.")]
    public void Open_check_comes_first_in_the_wanted_spelling(string open, string first) =>
        Assert.StartsWith(first, ExampleFindings.Prompt(Sheet, open, []), StringComparison.Ordinal);

    [Theory]
    [InlineData("lead-condition", "Number 7 lead chafed. Number 8 lead cooked.")]
    [InlineData("coil-secondary-resistance", "Coil secondary 71.5 k. King wire thingy 78.5 k.")]
    [InlineData("plug-condition", "Number 7 plug sooty. Number 8 sparkler sooty.")]
    public void Own_words_of_the_open_check_come_next(string open, string start) =>
        Assert.StartsWith(start, ExampleFindings.Prompt(Sheet, open, Words), StringComparison.Ordinal);

    [Fact]
    public void Own_words_of_other_checks_follow_the_newest_first() => Assert.StartsWith(
        "Rotor blade worn, replaced it. King wire thingy 71.5 k. Number 7 lead cooked. Number 8 sparkler sooty. Lead 9, 143 k.",
        ExampleFindings.Prompt(Sheet, "rotor-blade", Words),
        StringComparison.Ordinal);

    [Fact]
    public void Own_words_leave_half_of_the_room_to_the_spelling_of_numbers()
    {
        OwnWord[] many = [.. Enumerable.Range(0, 40).Select(i => new OwnWord($"thingy{(char)('a' + i % 26)}", "rotor-top", null))];

        var prompt = ExampleFindings.Prompt(Sheet, "rotor-top", many);

        Assert.InRange(Sentences(prompt).Count(sentence => sentence.StartsWith("Thingy", StringComparison.Ordinal)), 3, 7);
        Assert.Contains(" k.", prompt, StringComparison.Ordinal);
        Assert.Contains(" volts.", prompt, StringComparison.Ordinal);
    }

    [Fact]
    public void Each_unit_is_shown_without_an_open_check()
    {
        var prompt = ExampleFindings.Prompt(Sheet, null, []);

        Assert.All(
            [" k.", " mm.", " thou.", " volts.", " ohms.", " degrees."],
            ending => Assert.Contains(ending, prompt, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Checks))]
    public void Prompt_is_short_and_of_whole_sentences_and_always_the_same(string id, string open)
    {
        var sheet = BuiltInSheets.Find(id)!;
        OwnWord[] many = [.. Words, .. Enumerable.Range(0, 40).Select(i => new OwnWord(new string((char)('a' + i % 26), 40), open, null))];

        foreach (var words in new OwnWord[][] { [], Words, many })
        {
            var prompt = ExampleFindings.Prompt(sheet, open, words);

            Assert.InRange(prompt.Length, 100, ExampleFindings.LongestPrompt);
            Assert.EndsWith(".", prompt, StringComparison.Ordinal);
            Assert.Equal(prompt, ExampleFindings.Prompt(sheet, open, words));
            var sentences = Sentences(prompt);
            Assert.Equal(sentences.Distinct(), sentences);
        }
    }

    [Theory]
    [MemberData(nameof(Checks))]
    public void No_number_looks_like_a_limit_or_nominal_of_the_open_check(string id, string open) =>
        AssertNoneLooksLikeALimit(BuiltInSheets.Find(id)!, open);

    [Theory]
    [InlineData(7, 8)]
    [InlineData(69.9, 82)]
    [InlineData(143, 25.7)]
    public void No_number_looks_like_a_limit_of_the_vehicles_own_either(double lower, double upper)
    {
        var own = new LimitOverride("coil-secondary-resistance", Limits.Of(Math.Min(lower, upper) * 1000, Math.Max(lower, upper) * 1000), "Our manual, page 9");

        AssertNoneLooksLikeALimit(LimitOverride.ApplyAll(Sheet, [own]), own.CheckId);
    }

    [Theory]
    [MemberData(nameof(Checks))]
    public void Number_that_is_copied_from_it_is_never_a_finding_without_doubt(string id, string open)
    {
        var sheet = BuiltInSheets.Find(id)!;
        var reader = new FindingReader(sheet, Words);

        foreach (var sentence in Sentences(ExampleFindings.Prompt(sheet, open, Words)).Where(sentence => sentence.Any(char.IsDigit)))
        {
            Assert.All(reader.Read(sentence), finding => Assert.True(!finding.IsPlain || NeedsAPlace(finding, sheet), sentence));
        }
    }

    [Fact]
    public void Check_the_sheet_does_not_have_is_as_none() =>
        Assert.Equal(ExampleFindings.Prompt(Sheet, null, Words), ExampleFindings.Prompt(Sheet, "brakes", Words));

    // A finding of one cylinder that names none cannot be confirmed before a person has chosen it.
    private static bool NeedsAPlace(Finding finding, CheckSheet sheet) => finding.Place is null && sheet.Find(finding.Check)!.PerCylinder;

    private static void AssertNoneLooksLikeALimit(CheckSheet sheet, string open)
    {
        if (sheet.Find(open)!.Measurand is not { } measurand)
        {
            return;
        }

        double?[] sizes = [measurand.Limits?.Lower, measurand.Limits?.Upper, measurand.Nominal];
        var limits = sizes.OfType<double>().SelectMany(size => new[] { size, measurand.DisplayUnit.FromBase(size) }).ToList();
        foreach (var number in Number().Matches(ExampleFindings.Prompt(sheet, open, Words)).Select(match => double.Parse(match.Value, CultureInfo.InvariantCulture)))
        {
            Assert.All(limits, limit => Assert.False(Math.Abs(number - limit) < 0.04 * Math.Abs(limit), $"{number} looks like {limit}"));
        }
    }

    private static string[] Sentences(string prompt) => [.. prompt.Split(". ").Select(sentence => sentence.TrimEnd('.'))];

    [GeneratedRegex(@"\d+(\.\d+)?")]
    private static partial Regex Number();
}

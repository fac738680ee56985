using System.Globalization;
using CsCheck;
using InspectLog.Benchmarks.Dictation;
using InspectLog.Checks;
using InspectLog.Dictation.Understanding;

namespace InspectLog.Dictation.Tests.Understanding;

public sealed class OwnWordTests
{
    private static readonly OwnWord[] Words =
    [
        new("sparkler", "plug-condition", null),
        new("dizzy lid", "cap-contacts", null),
        new("king wire thingy", "coil-secondary-resistance", null),
        new("cooked", "lead-condition", "burnt"),
        new("cooked", "plug-condition", "worn"),
        new("gone soft", "spark", "weak"),
        new("light thingy", "spark", null),
    ];

    private static readonly FindingReader Reader = new(Read.Reader.Sheet, Words);

    [Theory]
    [InlineData("Sparkler three is wet.", "plug-condition @3 wet")]
    [InlineData("Sparklers two and five are sooty.", "plug-condition @2 sooty; plug-condition @5 sooty")]
    [InlineData("All the sparklers are good except four, wet.", "plug-condition @1 good; plug-condition @2 good; plug-condition @3 good; plug-condition @5 good; plug-condition @6 good; plug-condition @4 wet")]
    [InlineData("Replaced sparkler six.", "plug-condition @6 replaced")]
    [InlineData("Sparkler two gap point nine.", "plug-gap @2 0.9")]
    [InlineData("The dizzy lid is cracked.", "cap-contacts cracked")]
    [InlineData("DIZZY LID, um, cracked.", "cap-contacts cracked")]
    [InlineData("King wire thingy nine point four k.", "coil-secondary-resistance 9400")]
    [InlineData("Lead three is cooked.", "lead-condition @3 burnt")]
    [InlineData("Plug three is cooked.", "plug-condition @3 worn")]
    [InlineData("Lead three is not cooked.", "lead-condition @3 no burnt")]
    [InlineData("Spark on two has gone soft.", "spark @2 weak")]
    [InlineData("The light thingy on four is weak.", "spark @4 weak")]
    public void Own_words_are_understood_as_what_they_stand_for(string text, string findings) =>
        Assert.Equal(findings, Line(Reader, text));

    [Fact]
    public void Finding_of_an_own_word_keeps_the_words_that_were_said_and_is_not_in_doubt()
    {
        const string text = "So, sparkler three is wet.";

        var finding = Assert.Single(Reader.Read(text));

        Assert.Equal("sparkler three is wet", finding.Words);
        Assert.Equal(finding.Words, text[finding.Start..finding.End]);
        Assert.Empty(finding.Doubts);
    }

    [Theory]
    [InlineData("Sparkler three is wet.")]
    [InlineData("Lead three is cooked.")]
    public void Without_the_own_word_the_same_text_says_nothing_plain(string text) =>
        Assert.DoesNotContain(Read.Reader.Read(text), finding => finding.IsPlain);

    [Theory]
    [InlineData("Need to replace sparkler six.")]
    [InlineData("Is the dizzy lid cracked?")]
    [InlineData("I'd buy a sparkler.")]
    public void Plan_or_question_with_an_own_word_is_no_finding(string text) => Assert.Empty(Reader.Read(text));

    public static TheoryData<string> EveryCheck() => [.. Read.Reader.Sheet.Checks.Select(check => check.Id)];

    [Theory]
    [MemberData(nameof(EveryCheck))]
    public void Every_check_can_be_given_a_name_of_ones_own(string id)
    {
        var check = Read.Reader.Sheet.Find(id)!;
        var reader = new FindingReader(Read.Reader.Sheet, [new("frobnitz", id, null)]);
        var place = check.PerCylinder ? " three" : "";
        var said = check.Measurand is { } measurand
            ? string.Create(CultureInfo.InvariantCulture, $"{Middle(measurand)} {measurand.DisplayUnit.Symbol}")
            : $"is {check.Conditions[^1].Id}";

        var finding = Assert.Single(reader.Read($"Frobnitz{place} {said}."));

        Assert.Equal((id, check.PerCylinder ? 3 : null, true), (finding.Check, finding.Place?.Cylinder, finding.IsPlain));
    }

    [Fact]
    [Trait("Takes", "long")]
    public void Texts_of_the_corpus_are_read_as_ever()
    {
        var words = new HashSet<string>(["sparkler", "dizzy", "thingy", "cooked", "soft"], StringComparer.OrdinalIgnoreCase);
        var texts = Utterance.Load(Corpus.File("look.jsonl")).Select(utterance => utterance.Text)
            .Where(text => !text.Split(' ', '.', ',').Any(words.Contains)).ToList();

        Assert.True(texts.Count > 500);
        Assert.All(texts, text => Assert.Equal(Read.Reader.Read(text), Reader.Read(text)));
    }

    [Fact]
    public void Word_of_a_check_or_condition_the_sheet_lost_says_nothing()
    {
        var reader = new FindingReader(Read.Reader.Sheet, [new("sparkler", "gone", null), new("cooked", "lead-condition", "gone")]);

        Assert.Equal("plug-condition @3 wet", Line(reader, "Plug three is wet."));
        Assert.DoesNotContain(reader.Read("Sparkler three is wet. Lead three is cooked."), finding => finding.IsPlain);
    }

    [Theory]
    [InlineData("", "Type the word")]
    [InlineData("frobnitzfrobnitzfrobnitz gubbinsgubbinsgubbinsgubbins twiddlebit", "60 characters")]
    [InlineData("one word more than five zorbs", "5 words")]
    [InlineData("sparkler 3", "Leave figures out")]
    [InlineData("spark/ler", "letters, spaces and hyphens")]
    [InlineData("-", "letters, spaces and hyphens")]
    [InlineData("twelve", "Numbers and units")]
    [InlineData("nine point four k", "Numbers and units")]
    [InlineData("kilohms", "Numbers and units")]
    [InlineData("the", "everyday words")]
    [InlineData("is", "everyday words")]
    [InlineData("on the two", "everyday words")]
    [InlineData("tomorrow", "everyday words")]
    [InlineData("rotor blade", "already knows “rotor blade”")]
    [InlineData("weak", "already knows “weak”")]
    [InlineData("replaced", "already knows “replaced”")]
    [InlineData("blade lead", "already have a meaning")]
    [InlineData("Sparklers", "already, with this meaning")]
    public void Phrase_that_cannot_be_added_is_refused_with_the_reason(string phrase, string reason) =>
        Assert.Contains(reason, Vocabulary.Problem(new(phrase, "plug-condition", null)), StringComparison.Ordinal);

    [Fact]
    public void Phrase_with_another_meaning_already_is_refused_with_what_it_means()
    {
        Assert.Equal(
            "“sparkler” already stands for Plug condition. Remove that first, or choose other words.",
            Vocabulary.Problem(new("sparkler", "spark", null)));
        Assert.Contains("Lead condition: burnt", Vocabulary.Problem(new("cooked", "lead-condition", "loose")), StringComparison.Ordinal);
        Assert.NotNull(Vocabulary.Problem(new("cooked", "rotor-blade", null)));
    }

    [Theory]
    [InlineData("frobnitz", "plug-condition", null)]
    [InlineData("cooked", "rotor-blade", "burnt")]
    [InlineData("half-baked", "rotor-blade", "worn")]
    [InlineData("Zündkerze", "plug-condition", null)]
    [InlineData("top frobnitz of the rotor", "rotor-top", null)]
    public void Phrase_with_a_word_of_its_own_can_be_added(string phrase, string check, string? condition) =>
        Assert.Null(Vocabulary.Problem(new(phrase, check, condition)));

    [Theory]
    [InlineData("Frobnitz gubbins three is wet.", "Frobnitz gubbins")]
    [InlineData("Lead three is all crispy.", "crispy")]
    [InlineData("Sparkler three is cooked.", "")]
    [InlineData("Nine point four k.", "")]
    [InlineData("", "")]
    public void Words_nobody_knows_are_found_in_a_text(string text, string unknown) =>
        Assert.Equal(unknown, Vocabulary.UnknownIn(text));

    [Fact]
    public void Any_text_can_be_asked_for_or_looked_through() => Gen.String.Sample(text =>
    {
        var phrase = OwnVocabulary.Tidy(text);
        var unknown = Vocabulary.UnknownIn(text);
        return text.Contains(unknown, StringComparison.Ordinal)
            && (Vocabulary.Problem(new(phrase, "spark", null)) is not null
                || new FindingReader(Read.Reader.Sheet, [new(phrase, "spark", null)]).Read($"{phrase} on three is weak.").Count >= 0);
    });

    private static OwnVocabulary Vocabulary { get; } = new(Read.Reader.Sheet, Words);

    private static double Middle(Measurand measurand)
    {
        var limits = measurand.Limits;
        var (from, to) = (limits?.Lower ?? measurand.Plausible.From, limits?.Upper ?? measurand.Plausible.To);
        return Math.Round(measurand.DisplayUnit.FromBase((from + to) / 2), 2);
    }

    private static string Line(FindingReader reader, string text) => string.Join("; ", reader.Read(text).Select(Read.Short));
}

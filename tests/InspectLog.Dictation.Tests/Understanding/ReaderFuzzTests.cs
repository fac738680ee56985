using CsCheck;
using InspectLog.Benchmarks.Dictation;
using InspectLog.Benchmarks.Dictation.Fuzz;

namespace InspectLog.Dictation.Tests.Understanding;

public sealed class ReaderFuzzTests
{
    private static readonly string[] Vocabulary =
    [
        "lead", "leads", "plug", "gap", "secondary", "feed", "timing", "tower", "cap", "rotor", "spark", "one", "two", "three",
        "six", "ten", "twelve", "point", "oh", "half", "and", "a", "to", "through", "thousand", "hundred", "k", "kilohms", "volts", "thou",
        "mm", "degrees", "before", "after", "1", "2", "6.8", "9.850", "1.2.3.4", ".3", "3/4", "12,300", ",", ".", "?", ":", "-", "no", "not",
        "except", "all", "every", "burnt", "sooty", "good", "worn", "sorry", "scratch that", "I mean", "was", "now", "set it to",
        "goes", "doesn't", "same", "on", "the rest", "replaced", "put back", "pulled", "off", "new", "it", "#", "°", "Ω", "¾", "999999999999",
    ];

    [Fact]
    public void Any_text_is_read_without_fault()
    {
        Gen.String.Sample(text => Check(text), iter: 3000);
    }

    [Fact]
    public void Any_string_of_known_words_is_read_without_fault()
    {
        Gen.OneOf(Vocabulary).Array[0, 40].Sample(words => Check(string.Join(' ', words)), iter: 1000);
    }

    [Fact]
    public void Two_thousand_characters_of_known_words_are_read_without_fault()
    {
        Gen.OneOf(Vocabulary).Array[1000].Sample(
            words => Check(string.Join(' ', words)[..2000]), iter: 15);
    }

    // The benchmark's "dictation --fuzz 1000000" reads many more.
    [Fact]
    [Trait("Takes", "long")]
    public void Texts_of_all_sorts_are_read_without_fault() =>
        new FuzzTexts(Read.Reader.Sheet, Utterance.Load(Corpus.File("look.jsonl")).Select(utterance => utterance.Text))
            .All.Sample(text => Check(text.Text), iter: 1500);

    // What is found in it is another matter; it once was a fault.
    [Fact]
    public void Heap_of_figures_is_read_without_fault() =>
        Check(".3 kΩ 6.8 between 12,300 free hundred 0.35 too for 0.35 0.35 .3 ¾ 0.35 k .3 psi eleven 0.35 won won 2");

    private static void Check(string text)
    {
        foreach (var finding in Read.Reader.Read(text))
        {
            Assert.Equal(text[finding.Start..finding.End], finding.Words);
            Assert.NotNull(Read.Reader.Sheet.Find(finding.Check));
            Assert.True(finding.Value is null || double.IsFinite(finding.Value.Value));
            Assert.InRange(finding.Place?.Cylinder ?? 1, 1, Read.Reader.Sheet.Cylinders);
        }
    }
}

using InspectLog.Dictation.Hearing;
using InspectLog.Dictation.Understanding.Saying;
using InspectLog.Doubts;

namespace InspectLog.Dictation.Tests.Understanding;

public sealed class DoubtTests
{
    [Theory]
    [InlineData("Coil secondary nine point four k.")]
    [InlineData("Lead two is burnt.")]
    [InlineData("Pickup air gap 0.3 mm.")]
    public void What_is_plain_carries_no_doubt(string text) => Assert.Empty(Read.Single(text).Doubts);

    [Fact]
    public void A_number_heard_with_a_low_probability_is_marked()
    {
        var finding = Assert.Single(Read.Reader.Read(Heard("Coil secondary 9.4 k", 0.9, 0.9, 0.3, 0.9)));

        Assert.Equal(9400, finding.Value);
        Assert.Contains(new HeardUnclearly(["9.4"]), finding.Doubts);
    }

    [Theory]
    [InlineData(UnclearWords.Unclear, 0.9)]
    [InlineData(0.9, UnclearWords.UnclearNumber)]
    public void A_name_or_a_number_heard_with_a_fair_probability_is_not(double name, double number) =>
        Assert.DoesNotContain(Assert.Single(Read.Reader.Read(Heard("Coil secondary 9.4 k", name, name, number, 0.9))).Doubts, doubt => doubt is HeardUnclearly);

    [Fact]
    public void Only_the_finding_with_the_unclear_number_is_marked_for_it()
    {
        var findings = Read.Reader.Read(Heard("Lead 2 burnt. Lead 3 burnt.", 0.9, 0.9, 0.9, 0.9, 0.2, 0.9));

        Assert.Collection(findings,
            two => Assert.DoesNotContain(two.Doubts, doubt => doubt is HeardUnclearly),
            three => Assert.Contains(three.Doubts, doubt => doubt is HeardUnclearly));
    }

    // Whatever is marked says why, in a kind of doubt that has words.
    [Fact]
    public void Every_doubt_of_the_corpus_has_a_kind()
    {
        var marked = InspectLog.Benchmarks.Dictation.Utterance.Load(InspectLog.Benchmarks.Dictation.Corpus.File("notes-1.jsonl"))
            .SelectMany(note => Read.Reader.Read(note.Text, note.OpenCheck)).Where(finding => !finding.IsPlain).ToList();

        Assert.NotEmpty(marked);
        Assert.All(marked, finding => Assert.NotEmpty(finding.Doubts));
    }

    private static Transcript Heard(string text, params double[] probabilities)
    {
        var at = 0;
        var words = new List<HeardWord>();
        foreach (var (word, probability) in text.Split(' ').Zip(probabilities))
        {
            words.Add(new(word, words.Count, words.Count + 1, probability, at));
            at += word.Length + 1;
        }

        return new(text, words, SpeechFound: true, TimeSpan.FromSeconds(words.Count));
    }
}

using InspectLog.Benchmarks.Dictation;

namespace InspectLog.Dictation.Tests.Understanding;

public sealed class SpokenSentencesTests
{
    // The bar is 90 in 100; the sentences are examples of the conventions, so a miss here is a rule not yet understood.
    [Fact]
    public void Spoken_sentences_as_text_give_their_findings()
    {
        var score = new Score();
        foreach (var utterance in Utterance.Load(Corpus.File("spoken/sentences.jsonl")))
        {
            score.Add(utterance, utterance.Text, Read.Reader.Read(utterance.Text, utterance.OpenCheck));
        }

        Assert.Equal(105, score.Utterances);
        Assert.True(score.Exact >= 100, string.Join(Environment.NewLine, score.Misses));
        Assert.True(score.WrongUnmarked <= 1, string.Join(Environment.NewLine, score.Misses));
    }
}

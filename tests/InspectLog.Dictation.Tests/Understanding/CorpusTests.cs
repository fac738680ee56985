using InspectLog.Benchmarks.Dictation;

namespace InspectLog.Dictation.Tests.Understanding;

/// <summary>Holds what the reader reaches on the corpus. The scored part was written before the reader was tried on
/// it and its misses are not looked at, so its share tells how the reader does on sentences nobody tuned it to.
/// </summary>
public sealed class CorpusTests
{
    [Theory]
    [InlineData("look.jsonl", 0.99)]
    [InlineData("scored.jsonl", 0.96)]
    public void Corpus_is_read_exactly(string file, double share)
    {
        var score = Scored(file);

        Assert.True(score.ExactShare >= share, $"{score.ExactShare:P1} exact");
        Assert.True(score.WrongUnmarked <= 0.01 * score.Read, $"{score.WrongUnmarked} of {score.Read} findings wrong and unmarked");
    }

    [Theory]
    [InlineData("look.jsonl")]
    [InlineData("scored.jsonl")]
    public void Talk_of_the_corpus_gives_no_unmarked_reading(string file)
    {
        var talk = Scored(file).Talk;

        Assert.InRange(talk.All, 80, int.MaxValue);
        Assert.InRange(talk.Proposed, 0, Math.Ceiling(0.01 * talk.All));
        Assert.Equal(0, talk.UnmarkedReading);
    }

    private static Score Scored(string file)
    {
        var score = new Score();
        foreach (var utterance in Utterance.Load(Corpus.File(file)))
        {
            score.Add(utterance, utterance.Text, Read.Reader.Read(utterance.Text, utterance.OpenCheck));
        }

        return score;
    }
}

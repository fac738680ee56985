using InspectLog.Benchmarks.Dictation;

namespace InspectLog.Dictation.Tests.Understanding;

/// <summary>Holds what the reader reaches on the corpus. The scored part was written before the reader was tried on
/// it and its misses are not looked at, so its share tells how the reader does on sentences nobody tuned it to.
/// </summary>
public sealed class CorpusTests
{
    [Theory]
    [InlineData("look.jsonl", "spoken", 0.94, 0.02)]
    [InlineData("look.jsonl", "written", 0.93, 0.02)]
    [InlineData("scored.jsonl", "spoken", 0.93, 0.02)]
    [InlineData("scored.jsonl", "written", 0.93, 0.02)]
    public void Corpus_is_read_exactly(string file, string form, double share, double unmarked)
    {
        var score = Scored(file, utterance => utterance.Form == form);

        Assert.True(score.ExactShare >= share, $"{score.ExactShare:P1} exact");
        Assert.True(score.WrongUnmarked <= unmarked * score.Read, $"{score.WrongUnmarked} of {score.Read} findings wrong and unmarked");
    }

    [Theory]
    [InlineData("look.jsonl", 0.03, 2)]
    [InlineData("scored.jsonl", 0.055, 2)]
    public void Talk_of_the_corpus_seldom_gives_a_proposal(string file, double share, int unmarked)
    {
        var talk = Scored(file, utterance => utterance.Form == "spoken").Talk;

        Assert.InRange(talk.All, 80, int.MaxValue);
        Assert.InRange(talk.Proposed, 0, Math.Ceiling(share * talk.All));
        Assert.InRange(talk.UnmarkedReading, 0, unmarked);
    }

    [Theory]
    [InlineData("look.jsonl")]
    [InlineData("scored.jsonl")]
    public void Every_utterance_has_a_form_and_a_name_of_its_own(string file)
    {
        var utterances = Utterance.Load(Corpus.File(file));

        Assert.All(utterances, utterance => Assert.True(utterance.Form is "spoken" or "written" or "noisy", utterance.Id));
        Assert.Equal(utterances.Count, utterances.DistinctBy(utterance => utterance.Id).Count());
    }

    private static Score Scored(string file, Func<Utterance, bool> which)
    {
        var score = new Score();
        foreach (var utterance in Utterance.Load(Corpus.File(file)).Where(which))
        {
            score.Add(utterance, utterance.Text, Read.Reader.Read(utterance.Text, utterance.OpenCheck));
        }

        return score;
    }
}

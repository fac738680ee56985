using InspectLog.Dictation.Hearing;

namespace InspectLog.Dictation.Tests.Hearing;

public sealed class DecodedClipTests
{
    private const double Clip = 4;
    private const int Cap = 64;

    [Theory]
    [InlineData("Lead 3 is burnt.", 4, -0.2, false)]
    [InlineData("", 0, -0.2, true)]
    [InlineData("Lead 3 is burnt.", 4, -1.2, true)]
    [InlineData("Lead 3 is burnt.", 100, -0.2, true)]
    [InlineData("it is it is it is it is it is it", 11, -0.2, true)]
    [InlineData("lead 1 good, lead 2 good, lead 3 good", 12, -0.2, false)]
    public void Result_that_lost_its_way_is_noticed(string text, int tokens, double logProbability, bool wrong)
    {
        var pieces = Enumerable.Range(0, tokens).Select(i => new TextPiece(" x", i * 0.01, i * 0.01, logProbability)).ToList();
        Assert.Equal(wrong, new DecodedClip(text, pieces).LooksWrong(Clip, Cap));
    }

    [Fact]
    public void Word_after_the_end_of_the_clip_is_noticed() =>
        Assert.True(new DecodedClip("good", [new TextPiece(" good", 4.0, 4.6, -0.1)]).LooksWrong(Clip, Cap));

    [Theory]
    [InlineData(-0.29, true)]
    [InlineData(-0.31, false)]
    public void Improbable_words_are_not_clear(double logProbability, bool clear) =>
        Assert.Equal(clear, Heard("lead 3 burnt", logProbability).IsClear(Clip, Cap));

    private static DecodedClip Heard(string text, double logProbability) =>
        new(text, [.. text.Split(' ').Select((word, i) => new TextPiece(" " + word, i * 0.1, (i + 1) * 0.1, logProbability))]);
}

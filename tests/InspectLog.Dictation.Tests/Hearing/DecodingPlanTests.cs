using InspectLog.Dictation.Hearing;

namespace InspectLog.Dictation.Tests.Hearing;

public sealed class DecodingPlanTests
{
    [Theory]
    [InlineData(0.3, 512)]
    [InlineData(3, 512)]
    [InlineData(7, 512)]
    [InlineData(7.68, 512)]
    [InlineData(7.7, 768)]
    [InlineData(15, 1024)]
    [InlineData(20, 1280)]
    [InlineData(23, 1280)]
    [InlineData(23.1, null)]
    [InlineData(28, null)]
    public void Window_fits_the_clip_with_room_for_silence(double seconds, int? context) =>
        Assert.Equal(context, DecodingPlan.For(seconds).AudioContext);

    [Fact]
    public void Token_cap_grows_with_the_clip() => Assert.Equal([16, 76], [DecodingPlan.For(0).TokenCap, DecodingPlan.For(5).TokenCap]);

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
        Assert.Equal(wrong, new DecodedClip(text, pieces).LooksWrong(seconds: 4, tokenCap: 64));
    }

    [Fact]
    public void Word_after_the_end_of_the_clip_is_noticed() =>
        Assert.True(new DecodedClip("good", [new TextPiece(" good", 4.0, 4.6, -0.1)]).LooksWrong(seconds: 4, tokenCap: 64));
}

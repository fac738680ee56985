using InspectLog.Dictation.Hearing;

namespace InspectLog.Dictation.Tests.Hearing;

public sealed class HearingsTests
{
    [Fact]
    public void More_probable_hearing_is_taken() => Assert.Equal("spark weak on 3", BestOf(Heard("spark leak on 3", -0.5), Heard("spark weak on 3", -0.2)).Text);

    [Fact]
    public void Hearing_that_is_hardly_more_probable_is_not_taken() =>
        Assert.Equal("spark leak on 3", BestOf(Heard("spark leak on 3", -0.5), Heard("spark weak on 3", -0.47)).Text);

    [Theory]
    [InlineData("it is it is it is it is it is it")]
    [InlineData("Lead 3. lead 3,")]
    public void Hearing_that_goes_round_in_circles_is_not_taken(string text)
    {
        var circles = Heard(text, -0.1);
        Assert.Equal("it is", BestOf(Heard("it is", -0.9), circles).Text);
        Assert.Equal("it is", BestOf(circles, Heard("it is", -0.9)).Text);
    }

    [Fact]
    public void Something_is_better_than_nothing_and_none_of_it_is_sure()
    {
        var nothing = new DecodedClip("", []);
        var heard = BestOf(nothing, Heard("lead 3", -0.1));
        Assert.Equal("lead 3", heard.Text);
        Assert.Equal([0.25, 0.25], Probabilities(heard));
        Assert.Equal("lead 3", BestOf(Heard("lead 3", -2), nothing).Text);
    }

    [Theory]
    [InlineData("Lead 9 is burnt.")]
    [InlineData("coil secondary 71.5 k")]
    public void Hearing_that_only_repeats_an_example_is_not_taken(string repeated)
    {
        Assert.Equal("mumble", BestOf("Coil secondary 71.5 k. Lead 9 is burnt. Plug 8 gap 0.3 mm.", Heard("mumble", -2), Heard(repeated, -0.1)).Text);
        Assert.Equal(repeated, BestOf("Plug 8 gap 0.3 mm.", Heard("mumble", -2), Heard(repeated, -0.1)).Text);
    }

    [Fact]
    public void Words_that_any_hearing_lacks_are_unsure()
    {
        var (first, second, third) = (Heard("plug 3 gap 1.2 mm", -0.5), Heard("Plug 2 gap is 1.2 mm", -0.1), Heard("plug 2 gap 1.4 mm", -0.4));
        Assert.Equal([0.61, 0.25, 0.61, 0.61, 0.61], Probabilities(BestOf(first, Heard("Plug 2 gap is 1.2 mm", -0.6))));
        Assert.Equal([0.9, 0.25, 0.9, 0.25, 0.9, 0.9], Probabilities(BestOf(first, second)));
        Assert.Equal([0.9, 0.25, 0.9, 0.25, 0.25, 0.9], Probabilities(BestOf(first, second, third)));
    }

    [Fact]
    public void Number_that_only_the_hearings_with_examples_have_is_unsure()
    {
        var best = BestOf(Heard("gap on two", -0.9), Heard("gap 0.3 on 2", -0.4), Heard("gap 0.3 on 2", -0.1));
        Assert.Equal([0.9, 0.25, 0.9, 0.25], Probabilities(best));
    }

    private static DecodedClip BestOf(params ReadOnlySpan<DecodedClip> heard) => BestOf(null, heard);

    private static DecodedClip BestOf(string? examples, params ReadOnlySpan<DecodedClip> heard)
    {
        var hearings = new Hearings(heard[0], examples);
        foreach (var later in heard[1..])
            hearings.Add(later);
        return hearings.BestWithDoubt();
    }

    private static IEnumerable<double> Probabilities(DecodedClip clip) => clip.Pieces.Select(piece => Math.Round(piece.Probability, 2));

    private static DecodedClip Heard(string text, double logProbability) =>
        new(text, [.. text.Split(' ').Select((word, i) => new TextPiece(" " + word, i * 0.1, (i + 1) * 0.1, logProbability))]);
}

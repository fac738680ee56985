using InspectLog.Dictation.Hearing;
using InspectLog.Dictation.Understanding;

namespace InspectLog.Dictation.Tests.Understanding;

public sealed class DoubtTests
{
    [Theory]
    [InlineData("Secondary 94 k", "unlikely")]
    [InlineData("Secondary 9.4 volts", "does not fit")]
    [InlineData("Secondary just under ten k", "bound")]
    [InlineData("Secondary between nine and ten k", "range")]
    [InlineData("I think lead two is cracked", "doubt")]
    [InlineData("Gap is point nine", "may be")]
    [InlineData("Twelve point four volts", "no check was named")]
    public void A_doubt_says_why(string text, string word) =>
        Assert.All(Read.Reader.Read(text), finding => Assert.Contains(word, finding.Doubt ?? "", StringComparison.Ordinal));

    [Theory]
    [InlineData("Secondary nine point four")]
    [InlineData("Air gap point three")]
    [InlineData("Lead one six point four k")]
    [InlineData("Twelve degrees before top dead centre")]
    [InlineData("Lead two is burnt")]
    public void What_is_plain_carries_no_doubt(string text) => Assert.Null(Read.Single(text).Doubt);

    [Fact]
    public void A_number_heard_with_a_low_probability_is_marked()
    {
        var finding = Assert.Single(Read.Reader.Read(Heard("Secondary 9.4 k", 0.9, 0.3, 0.9)));

        Assert.Equal(9400, finding.Value);
        Assert.Equal("'9.4' was not heard clearly", finding.Doubt);
    }

    [Theory]
    [InlineData(0.3, 0.9)]
    [InlineData(0.9, UnclearNumbers.Unclear)]
    public void A_name_heard_with_a_low_probability_or_a_number_with_a_fair_one_is_not(double name, double number) =>
        Assert.Null(Assert.Single(Read.Reader.Read(Heard("Secondary 9.4 k", name, number, 0.9))).Doubt);

    [Fact]
    public void Only_the_finding_with_the_unclear_number_is_marked()
    {
        var findings = Read.Reader.Read(Heard("Lead 2 burnt. Lead 3 burnt.", 0.9, 0.9, 0.9, 0.9, 0.2, 0.9));

        Assert.Collection(findings, two => Assert.Null(two.Doubt), three => Assert.NotNull(three.Doubt));
    }

    [Theory]
    [InlineData("Lead to is cracked.")]
    [InlineData("Lead for is cracked.")]
    [InlineData("Lead won is cracked.")]
    [InlineData("Supply is eleven point to.")]
    public void A_word_that_sounds_like_a_number_beside_one_is_marked(string text) =>
        Assert.NotNull(Read.Single(text).Doubt);

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

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
}

namespace InspectLog.Dictation.Tests.Understanding;

public sealed class CorrectionsTests
{
    [Theory]
    [InlineData("Secondary nine k, no, ten k.", "coil-secondary-resistance 10000")]
    [InlineData("Secondary nine k, sorry, ten k.", "coil-secondary-resistance 10000")]
    [InlineData("Secondary nine k, correction, ten k.", "coil-secondary-resistance 10000")]
    [InlineData("Secondary nine k, I mean ten k.", "coil-secondary-resistance 10000")]
    [InlineData("Secondary nine k, make that ten k.", "coil-secondary-resistance 10000")]
    [InlineData("Secondary nine k, scratch that, ten k.", "coil-secondary-resistance 10000")]
    [InlineData("Secondary nine k. No, ten k.", "coil-secondary-resistance 10000")]
    [InlineData("Secondary nine k, no ten k.", "coil-secondary-resistance 10000")]
    [InlineData("Secondary ten k, not nine k.", "coil-secondary-resistance 10000")]
    public void A_corrected_value_gives_only_the_right_one(string text, string findings) => Assert.Equal(findings, Read.Line(text));

    [Theory]
    [InlineData("Plug gap on five, correction, on six, point nine.", "plug-gap @6 0.9")]
    [InlineData("Lead four, sorry, five, is loose.", "lead-condition @5 loose")]
    [InlineData("No spark on two, sorry, three.", "spark @3 no present")]
    [InlineData("Plug gap on five point nine, correction, on six.", "plug-gap @6 0.9")]
    public void A_corrected_place_gives_only_the_right_one(string text, string findings) => Assert.Equal(findings, Read.Line(text));

    [Theory]
    [InlineData("Plug two is wet, no, sooty.", "plug-condition @2 sooty")]
    [InlineData("Lead two is burnt, no, lead three is burnt.", "lead-condition @3 burnt")]
    [InlineData("Secondary, no, coil circuit one point five ohms.", "coil-circuit-resistance 1.5")]
    public void A_corrected_word_gives_only_the_right_one(string text, string findings) => Assert.Equal(findings, Read.Line(text));

    [Theory]
    [InlineData("Plug two is wet. Scratch that.")]
    [InlineData("Secondary nine k, strike that.")]
    public void What_is_taken_back_is_no_finding(string text) => Assert.Empty(Read.Reader.Read(text));

    [Fact]
    public void What_follows_a_corrected_value_stands_by_itself() => Assert.Equal(
        "supply-voltage 11.7; coil-circuit-resistance 1.7",
        Read.Line("Feed is twelve point seven, no, eleven point seven volts, coil circuit one point seven ohms."));
}

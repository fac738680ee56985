using CsCheck;

namespace InspectLog.Dictation.Tests.Understanding;

public sealed class YearsTests
{
    [Fact]
    public void What_was_done_in_a_year_is_no_finding() =>
        Gen.Select(Gen.Int[1950, 2030], Gen.OneOf("In", "Since", "Back in")).Sample((year, when) =>
            Assert.Empty(Read.Reader.Read($"{when} {year} the coil was replaced.")));

    [Theory]
    [InlineData("In nineteen seventy two the coil was replaced.")]
    [InlineData("The secondary is from nineteen eighty.")]
    [InlineData("The coil has been on since two thousand and twelve.")]
    [InlineData("These leads were fitted in twenty twelve.")]
    [InlineData("The coil is a 1985 one.")]
    public void A_year_may_be_said_in_words(string text) => Assert.Empty(Read.Reader.Read(text));

    [Theory]
    [InlineData("Air gap opened from twenty thou to thirty.", "pickup-air-gap 0.508; pickup-air-gap 0.762; pickup-air-gap adjusted")]
    [InlineData("Secondary 1985 ohms.", "coil-secondary-resistance 1985")]
    public void A_value_with_its_unit_is_no_year(string text, string findings) => Assert.Equal(findings, Read.Line(text));
}

using CsCheck;
using InspectLog.Dictation.Understanding.Sounds;

namespace InspectLog.Dictation.Tests.Understanding.Sounds;

public sealed class PronunciationsTests
{
    [Theory]
    [InlineData("gapped", "G AE P T")]
    [InlineData("towers", "T AW ER Z")]
    [InlineData("regapped", "R IY G AE P T")]
    [InlineData("insulated", "IH N S AH L EY T IH D")]
    public void A_word_with_an_ending_is_said_by_its_stem(string word, string phones) =>
        Assert.Contains(Pronunciations.Of(word), said => said.SequenceEqual(Phones.Parse(phones)));

    [Theory]
    [InlineData("blick", "B L IH K")]
    [InlineData("shrate", "SH R EY T")]
    [InlineData("vooth", "V UW TH")]
    public void A_word_nobody_lists_is_said_by_its_letters(string word, string phones) =>
        Assert.Equal(Phones.Parse(phones), LetterSounds.Of(word));

    [Fact]
    public void Any_word_is_said_without_fault() =>
        Gen.String.Sample(word => Assert.All(Pronunciations.Of(word.ToLowerInvariant()), said => Assert.NotEmpty(said)), iter: 3000);
}

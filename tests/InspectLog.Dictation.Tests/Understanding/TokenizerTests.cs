using CsCheck;
using InspectLog.Dictation.Understanding.Language;

namespace InspectLog.Dictation.Tests.Understanding;

public sealed class TokenizerTests
{
    [Theory]
    [InlineData("Lead 3 won't fit.", "lead|3|will|not|fit|.")]
    [InlineData("It's 9.4kΩ", "it|'s|9.4|k|ohm")]
    [InlineData("12,300 ohms", "12300|ohms")]
    [InlineData("Plugs 1-3", "plugs|1|-|3")]
    [InlineData("minus -5°", "minus|minus|5|degree")]
    [InlineData("No. 3, um, is wet", "number|3|,|is|wet")]
    [InlineData("T.D.C. at 5", "tdc|at|5")]
    [InlineData("Number 2's wet", "number|2|'s|wet")]
    [InlineData("11½ volts", "11|1/2|volts")]
    [InlineData("0.012\" gap", "0.012|inch|gap")]
    public void Text_is_cut_into_its_words(string text, string words) =>
        Assert.Equal(words, string.Join('|', SpokenLanguage.English.Tokenizer.Cut(text).Select(token => token.Text)));

    [Fact]
    public void Any_text_is_cut_in_order_and_within_itself() => Gen.String.Sample(text =>
    {
        var at = 0;
        foreach (var token in SpokenLanguage.English.Tokenizer.Cut(text))
        {
            Assert.True(token.Start >= 0 && token.End <= text.Length && token.Start <= token.End && token.End >= at);
            at = token.Start;
        }
    });
}

using CsCheck;
using InspectLog.Journal.Index;

namespace InspectLog.Journal.Tests.Index;

/// <summary>How texts are cut into words, and which word finds which.</summary>
public sealed class WordsTests
{
    [Theory]
    [InlineData("Plug no. 3: 0,7 mm", "plug no 3 0.7 mm")]
    [InlineData("9.40\u00a0kΩ", "9.40 kω")]
    [InlineData("9.4k", "9.4 k")]
    [InlineData("firing order 1,5,3,6,2,4", "firing order 1 5 3 6 2 4")]
    [InlineData("25.11.2026", "25 11 2026")]
    [InlineData("Lead 4.", "lead 4")]
    [InlineData("ÅÉÎøØ ŁÓDŹ", "aeioo lodz")]
    [InlineData("ﬁlter ½ Ω", "filter 1 2 ω")]
    [InlineData("", "")]
    public void Text_is_cut_into_words_without_case_and_accents(string text, string words) =>
        Assert.Equal(words, string.Join(' ', Words.Of(text)));

    [Theory]
    [InlineData("kil", "kilohms", true)]
    [InlineData("9.4", "9.40", true)]
    [InlineData("9", "9", true)]
    [InlineData("9", "9.40", true)]
    [InlineData("9", "92", false)]
    [InlineData("9", "0.9", false)]
    [InlineData("s1", "s123", true)]
    public void Word_finds_itself_and_its_beginning_and_a_whole_number_no_other(string wanted, string held, bool finds) =>
        Assert.Equal(finds, Words.Finds(wanted, held));

    [Theory]
    [InlineData("Lead 4: 9.40 kΩ", "9,4 lead", "Lead|9.40")]
    [InlineData("Crème brûlée", "creme", "Crème")]
    [InlineData("Cre\u0300me", "creme", "Cre\u0300me")]
    [InlineData("Tower 3, tower 30", "tower 3", "Tower|3|tower")]
    [InlineData("Hauptstraße", "hauptstrasse", "Hauptstraße")]
    [InlineData("nothing", "walrus", "")]
    public void Words_looked_for_are_shown_where_they_stand(string text, string words, string marked) =>
        Assert.Equal(marked, string.Join('|', SearchedWords.In(text, words).Select(span => text[span.Start..span.End])));

    [Fact]
    public void Any_text_can_be_cut_and_each_of_its_words_marked() => Gen.String.Sample(text =>
    {
        var spans = SearchedWords.In(text, text).ToList();
        Assert.All(spans, span => Assert.InRange(span.End, span.Start + 1, text.Length));
        Assert.All(spans.Zip(spans.Skip(1)), pair => Assert.True(pair.First.End <= pair.Second.Start));
    });
}

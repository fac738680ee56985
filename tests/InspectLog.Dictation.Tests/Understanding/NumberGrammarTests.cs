using InspectLog.Dictation.Understanding.Language;
using InspectLog.Dictation.Understanding.Lattice;
using InspectLog.Measuring;

namespace InspectLog.Dictation.Tests.Understanding;

public sealed class NumberGrammarTests
{
    private static readonly SpokenLanguage Language = SpokenLanguage.English;

    [Theory]
    [InlineData("nine point four", 9.4)]
    [InlineData("point three five", 0.35)]
    [InlineData("nought point two", 0.2)]
    [InlineData("twelve point oh five", 12.05)]
    [InlineData("eleven and a half", 11.5)]
    [InlineData("one and three quarters", 1.75)]
    [InlineData("thirteen thousand six hundred", 13600)]
    [InlineData("two hundred and forty", 240)]
    [InlineData("nine hundred thousand", 900000)]
    [InlineData("nine eight", 9.8)]
    [InlineData("one fifty", 150)]
    [InlineData("twelve sixty", 1260)]
    [InlineData("one two point four", 12.4)]
    [InlineData("minus four", -4)]
    [InlineData("11 1/2", 11.5)]
    [InlineData("9,4", 9.4)]
    [InlineData("top dead centre", 0)]
    [InlineData("third", 3)]
    public void Number_can_be_read_as_it_is_meant(string text, double value)
    {
        var tokens = Language.Tokenizer.Cut(text);

        Assert.Contains(new NumberGrammar(Language, tokens).At(0), reading => reading.Next == tokens.Count && Math.Abs(reading.Value - value) < 1e-9);
    }

    [Theory]
    [InlineData("and")]
    [InlineData("burnt")]
    public void Other_words_are_no_number(string text) => Assert.Empty(new NumberGrammar(Language, Language.Tokenizer.Cut(text)).At(0));

    public static TheoryData<string> EveryUnit() => [.. Units.All.Select(unit => unit.Symbol)];

    [Theory]
    [MemberData(nameof(EveryUnit))]
    public void Every_unit_of_the_program_has_a_spoken_name(string symbol)
    {
        var names = Language.File.Units.Where(unit => unit.Unit == symbol).SelectMany(unit => unit.Names).ToList();

        Assert.NotEmpty(names);
        Assert.All(names, name => Assert.Contains(Language.Units.At(Language.Tokenizer.Cut(name), 0)!.Value.Meanings, meaning => meaning.Unit?.Symbol == symbol));
    }

    [Theory]
    [InlineData("seven in the cap", false)]
    [InlineData("0.3in gap", true)]
    public void Short_signs_are_units_only_where_they_are_written_against_figures(string text, bool unit) =>
        Assert.Equal(unit, Language.Units.At(Language.Tokenizer.Cut(text), 1) is not null);
}

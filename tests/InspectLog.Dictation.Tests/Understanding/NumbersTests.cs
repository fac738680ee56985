namespace InspectLog.Dictation.Tests.Understanding;

/// <summary>Numbers in the ways people say them and in the ways Whisper writes them. The meanings are plain English;
/// no outside source is needed.</summary>
public sealed class NumbersTests
{
    [Theory]
    [InlineData("Secondary nine point four k.", 9400)]
    [InlineData("Secondary 9.4 kΩ.", 9400)]
    [InlineData("Secondary 9.4kΩ", 9400)]
    [InlineData("Secondary 9.4K ohms", 9400)]
    [InlineData("Secondary 9.4 kilo-ohms", 9400)]
    [InlineData("Secondary 9.4 kilo ohms", 9400)]
    [InlineData("Secondary nine point four kilohms", 9400)]
    [InlineData("Secondary nine thousand four hundred ohms", 9400)]
    [InlineData("Secondary 9,400 ohms", 9400)]
    [InlineData("Secondary 9.850 ohms", 9850)]
    [InlineData("Secondary 9,850", 9850)]
    [InlineData("Secondary 12,300 ohms", 12300)]
    [InlineData("Secondary thirteen thousand ohms", 13000)]
    [InlineData("Secondary 9 thousand 2 hundred ohms", 9200)]
    [InlineData("Secondary twelve thousand three hundred and fifty ohms", 12350)]
    [InlineData("Secondary eleven hundred ohms", 1100)]
    [InlineData("Secondary nine and a half k", 9500)]
    [InlineData("Secondary nine point seven five k", 9750)]
    [InlineData("Secondary fourteen point 4 k", 14400)]
    [InlineData("Secondary 3 point 2 k", 3200)]
    [InlineData("Secondary nine point nought four k", 9040)]
    [InlineData("Secondary nine point seventy five k", 9750)]
    [InlineData("Secondary ten thousand one hundred", 10100)]
    [InlineData("Secondary twelve point er, four k", 12400)]
    public void Resistances_are_read_in_every_form(string text, double ohms) =>
        Assert.Equal(ohms, Read.Single(text).Value);

    [Theory]
    [InlineData("Feed twelve point four volts", 12.4)]
    [InlineData("Feed 12.4V", 12.4)]
    [InlineData("Feed 12 volts", 12)]
    [InlineData("Feed twelve and a half volts", 12.5)]
    [InlineData("Feed 11 and 3/4 volts", 11.75)]
    [InlineData("Feed 11 3/4 volts", 11.75)]
    [InlineData("Feed 11¾ volts", 11.75)]
    [InlineData("Feed eleven and three quarters", 11.75)]
    [InlineData("Feed twelve four", 12.4)]
    [InlineData("Feed twelve oh four", 12.04)]
    [InlineData("Feed twelve point oh four", 12.04)]
    [InlineData("Feed twelve point three five volts", 12.35)]
    [InlineData("Feed 12,4 volts", 12.4)]
    public void Voltages_are_read_in_every_form(string text, double volts) =>
        Assert.Equal(volts, Read.Single(text).Value);

    // 1 in = 25.4 mm exactly (international inch); 1 thou = 0.001 in.
    [Theory]
    [InlineData("Air gap point three millimetres", 0.3)]
    [InlineData("Air gap 0.3 mm", 0.3)]
    [InlineData("Air gap 0.3mm", 0.3)]
    [InlineData("Air gap .3", 0.3)]
    [InlineData("Air gap point 3", 0.3)]
    [InlineData("Air gap nought point three five", 0.35)]
    [InlineData("Air gap oh point three", 0.3)]
    [InlineData("Air gap three tenths of a millimetre", 0.3)]
    [InlineData("Air gap half a millimetre", 0.5)]
    [InlineData("Air gap 12 thou", 0.3048)]
    [InlineData("Air gap twelve thousandths of an inch", 0.3048)]
    [InlineData("Air gap point oh one two inches", 0.3048)]
    [InlineData("Air gap twelve", 0.3048)]
    [InlineData("Air gap 0.28 millimeters", 0.28)]
    public void Gaps_are_read_in_every_form(string text, double millimetres) =>
        Assert.Equal(millimetres, Read.Single(text).Value);

    [Theory]
    [InlineData("Timing 8 degrees BTDC", 8)]
    [InlineData("Timing 8° before top-dead center", 8)]
    [InlineData("Timing eight degrees B.T.D.C.", 8)]
    [InlineData("Timing eight before", 8)]
    [InlineData("Timing two and a half degrees before top dead centre", 2.5)]
    [InlineData("Timing ten after", -10)]
    [InlineData("Timing minus two degrees", -2)]
    [InlineData("Timing two degrees retarded", -2)]
    [InlineData("Timing six degrees of advance", 6)]
    [InlineData("Timing zero degrees", 0)]
    public void Angles_before_top_dead_centre_are_positive(string text, double degrees) =>
        Assert.Equal(degrees, Read.Single(text).Value);

    [Theory]
    [InlineData("Lead four eight k", "lead-resistance @4 8000")]
    [InlineData("Lead 4 8 k", "lead-resistance @4 8000")]
    [InlineData("Lead 4, 8 k", "lead-resistance @4 8000")]
    [InlineData("Lead three thirteen thousand ohms", "lead-resistance @3 13000")]
    [InlineData("#3 lead 9.2 k", "lead-resistance @3 9200")]
    [InlineData("No. 3 lead 9.2 k", "lead-resistance @3 9200")]
    [InlineData("Third lead 9.2 k", "lead-resistance @3 9200")]
    [InlineData("Plug gap three point eight", "plug-gap @3 0.8")]
    [InlineData("Lead one six point four, two five point nine, three seven point one k",
        "lead-resistance @1 6400; lead-resistance @2 5900; lead-resistance @3 7100")]
    [InlineData("Plug gaps from 1 to 6.8, 0.8, 0.9, 0.8, 0.85, 0.9",
        "plug-gap @1 0.8; plug-gap @2 0.8; plug-gap @3 0.9; plug-gap @4 0.8; plug-gap @5 0.85; plug-gap @6 0.9")]
    public void Cylinders_are_told_from_values(string text, string findings) => Assert.Equal(findings, Read.Line(text));

    [Theory]
    [InlineData("Secondary 9.4 volts")]
    [InlineData("Secondary 94 k")]
    [InlineData("Air gap thirty millimetres")]
    [InlineData("Feed 124 volts")]
    [InlineData("Lead resistance 9 k")]
    public void A_value_that_cannot_be_right_is_marked(string text) => Assert.NotNull(Read.Single(text).Doubt);
}

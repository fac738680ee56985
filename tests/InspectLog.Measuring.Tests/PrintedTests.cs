using System.Globalization;

namespace InspectLog.Measuring.Tests;

public class PrintedTests
{
    // A no-break space stands between number and unit.
    private static string Plain(string text) => text.Replace('\u00A0', ' ');

    [Theory]
    [InlineData(0.64, 0.15, "0.64 Ω ± 0.15 Ω")]
    [InlineData(0.65, 0.1, "0.65 Ω ± 0.10 Ω")]
    [InlineData(0.6449999, 0.1449999, "0.64 Ω ± 0.14 Ω")]
    [InlineData(0.645, 0.145, "0.65 Ω ± 0.15 Ω")]
    [InlineData(1.23456, 0.0996, "1.23 Ω ± 0.10 Ω")]
    [InlineData(1.23456, 0.00996, "1.235 Ω ± 0.010 Ω")]
    [InlineData(12.3456, 1.26, "12.3 Ω ± 1.3 Ω")]
    [InlineData(123.4, 12.6, "123 Ω ± 13 Ω")]
    [InlineData(9403.7, 126, "9400 Ω ± 130 Ω")]
    [InlineData(9403.7, 996, "9400 Ω ± 1000 Ω")]
    [InlineData(-0.004, 0.5, "0.00 Ω ± 0.50 Ω")]
    [InlineData(-2.04, 0.5, "−2.04 Ω ± 0.50 Ω")]
    [InlineData(0.65, 0, "0.65 Ω ± 0 Ω")]
    [InlineData(0.65, 1e-30, "0.650000000000000 Ω ± 0.000000000000000 Ω")]
    public void Uncertain_value_has_two_digits_of_uncertainty(double value, double expanded, string expected) =>
        Assert.Equal(expected, Plain(Printed.Uncertain(value, expanded, Units.Ohm)));

    [Fact]
    public void Uncertain_value_is_printed_in_the_display_unit()
    {
        Assert.Equal("9.40 kΩ ± 0.12 kΩ", Plain(Printed.Uncertain(9403, 123, Units.Kilohm)));
        Assert.Equal("68.0 °F ± 3.6 °F", Plain(Printed.Uncertain(20, 2, Units.Fahrenheit)));
        Assert.Equal("12.0° ± 1.5°", Printed.Uncertain(12, 1.5, Units.Degree));
        Assert.Equal(("9.40", "0.12"), Printed.UncertainNumbers(9403, 123, Units.Kilohm));
    }

    [Theory]
    [InlineData(0.3, "0.3 mm")]
    [InlineData(0.30480000000000002, "0.3048 mm")]
    [InlineData(0.1 + 0.2, "0.3 mm")]
    [InlineData(13, "13 mm")]
    [InlineData(7.874015748, "7.87402 mm")]
    [InlineData(1234567.8, "1234568 mm")]
    [InlineData(0, "0 mm")]
    [InlineData(1e-20, "0 mm")]
    [InlineData(1e25, "1E+25 mm")]
    [InlineData(double.NaN, "no number mm")]
    public void Value_has_the_digits_it_needs(double value, string expected) =>
        Assert.Equal(expected, Plain(Printed.Value(value, Units.Millimetre)));

    [Theory]
    [InlineData(600.0, 2000.0, "0.6 to 2.0 kΩ")]
    [InlineData(8000.0, 13000.0, "8 to 13 kΩ")]
    [InlineData(null, 25000.0, "at most 25 kΩ")]
    [InlineData(10.0, null, "at least 0.01 kΩ")]
    public void Limits_are_printed_to_one_place(double? lower, double? upper, string expected) =>
        Assert.Equal(expected, Plain(Printed.Span(Limits.Of(lower, upper), Units.Kilohm)));

    [Theory]
    [InlineData(0.84134, "84 in 100")]
    [InlineData(0.5, "50 in 100")]
    [InlineData(0.994, "99 in 100")]
    [InlineData(0.996, "more than 99 in 100")]
    [InlineData(1, "more than 99 in 100")]
    [InlineData(0.006, "1 in 100")]
    [InlineData(0.004, "less than 1 in 100")]
    [InlineData(0, "less than 1 in 100")]
    public void Chance_is_told_in_a_hundred(double probability, string expected) =>
        Assert.Equal(expected, Printed.Chance(probability));

    [Fact]
    public void Sentence_tells_value_decision_and_chance()
    {
        var limits = Limits.Of(0.6, 2.0);
        var reading = Some.With(0.65, 0.05);

        Assert.Equal(
            "0.65 Ω ± 0.10 Ω: conditional pass. 84 in 100 that it is within 0.6 to 2.0 Ω.",
            Plain(Printed.Sentence(reading, ConformityRule.Decide(reading, limits), limits, Units.Ohm)));
    }

    [Fact]
    public void Sentence_for_one_limit_and_a_bracket_reads_as_speech()
    {
        var limits = Limits.Of(null, 0.3);
        var bracket = new Bracket(0.25, 0.35);

        Assert.Equal(
            "Between 0.25 and 0.35 mm: conditional pass. 50 in 100 that it is at most 0.3 mm.",
            Plain(Printed.Sentence(bracket, ConformityRule.Decide(bracket, limits), limits, Units.Millimetre)));
    }

    [Fact]
    public void Sentence_near_certainty_starts_with_a_capital()
    {
        var limits = Limits.Of(10_000, null);
        var reading = Some.With(12_000, 100);

        Assert.Equal(
            "12.00 kΩ ± 0.20 kΩ: pass. More than 99 in 100 that it is at least 10 kΩ.",
            Plain(Printed.Sentence(reading, ConformityRule.Decide(reading, limits), limits, Units.Kilohm)));
    }

    [Fact]
    public void Culture_of_the_machine_changes_nothing()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("de-DE");
            Assert.Equal("1.94 Ω ± 0.15 Ω", Plain(Printed.Uncertain(1.94, 0.15, Units.Ohm)));
            Assert.Equal("0.6 to 2.0 Ω", Plain(Printed.Span(Limits.Of(0.6, 2), Units.Ohm)));
            Assert.Equal(1.5, Assert.IsType<TypedNumber.Certain>(TypedNumber.Read(
                "1.5", QuantityKind.Resistance, Units.Ohm, new PlausibleSpan(0, 5))).BaseValue);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [InlineData(Decision.Pass, "pass")]
    [InlineData(Decision.ConditionalPass, "conditional pass")]
    [InlineData(Decision.ConditionalFail, "conditional fail")]
    [InlineData(Decision.Fail, "fail")]
    public void Decision_has_its_words_and_reads_back(Decision decision, string words)
    {
        Assert.Equal(words, decision.Words());
        Assert.Equal(decision, DecisionWords.Find(words));
    }

    [Fact]
    public void Unknown_decision_has_no_words()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => ((Decision)9).Words());
        Assert.Null(DecisionWords.Find("maybe"));
    }
}

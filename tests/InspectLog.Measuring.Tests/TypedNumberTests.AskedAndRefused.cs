namespace InspectLog.Measuring.Tests;

/// <content>What is asked about, and what is refused in which words.</content>
public partial class TypedNumberTests
{
    [Theory]
    [InlineData("abcdefghijklmnopqrst", "“abcdefghijklmnopqrst” is")]
    [InlineData("abcdefghijklmnopqrstu", "“abcdefghijklmnopqrst…” is")]
    public void Refusal_repeats_twenty_characters_of_what_was_typed(string typed, string said) =>
        Assert.StartsWith(said.Replace('“', '"').Replace('”', '"'), Assert.IsType<TypedNumber.Refused>(Resistance(typed)).Message, StringComparison.Ordinal);

    [Fact]
    public void Degrees_without_their_scale_are_asked_about() =>
        IsAsked([30, -1.1111111111111112], TypedNumber.Read(
            "30 deg", QuantityKind.Temperature, Units.Celsius, new PlausibleSpan(-20, 120)));

    [Fact]
    public void Unit_is_the_one_typed_or_else_the_field_s()
    {
        Assert.Same(Units.Ohm, Assert.IsType<TypedNumber.Certain>(Resistance("9400 ohm")).Unit);
        Assert.Same(Units.Kilohm, Assert.IsType<TypedNumber.Certain>(Resistance("9.4")).Unit);
    }

    [Fact]
    public void Thousands_or_decimal_is_asked_where_both_could_be()
    {
        var wide = new PlausibleSpan(1, 100_000);

        IsAsked([9400, 9.4], TypedNumber.Read("9,400", QuantityKind.Resistance, Units.Ohm, wide));
        IsAsked([9.4, 9400], TypedNumber.Read("9.400", QuantityKind.Resistance, Units.Ohm, wide));
    }

    [Fact]
    public void Thousands_or_decimal_is_asked_where_neither_could_be() =>
        IsAsked([9_400_000, 9_400_000_000], Resistance("9.400 M"));

    [Fact]
    public void Number_that_only_fits_another_unit_is_asked_about()
    {
        IsAsked([9400, 9.4], Resistance("9.4", Units.Ohm));
        IsAsked([0.3048, 12], Length("12"));
        IsAsked([0.3048, 0.012], Length("0.012"));
    }

    [Fact]
    public void Question_names_the_choices_likeliest_first()
    {
        var asked = Assert.IsType<TypedNumber.Ambiguous>(Length("12"));

        Assert.Equal("Do you mean 12\u00A0thou or 12\u00A0mm?", asked.Question);
    }

    [Fact]
    public void Small_or_large_m_is_asked_about() => IsAsked([5_000_000, 0.005], Resistance("5m"));

    [Fact]
    public void Value_beyond_the_plausible_span_is_taken_as_typed_when_its_unit_was_said()
    {
        IsCertain(9.4, Resistance("9.4 Ω"));
        IsCertain(940_000, Resistance("940"));
    }

    [Theory]
    [InlineData("", "Type the value")]
    [InlineData("   ", "Type the value")]
    [InlineData("NaN", "not a number")]
    [InlineData("about 9", "not a number")]
    [InlineData("~9.4", "not a number")]
    [InlineData("k", "not a number")]
    [InlineData("½", "not a number")]
    [InlineData("1e400", "too large")]
    [InlineData("1e308 M", "too large")]
    [InlineData("1e-400", "too small")]
    [InlineData("1e99999", "one number at a time")]
    [InlineData("3/4?", "decimal number")]
    [InlineData("3/4", "decimal number")]
    [InlineData("9.4-9.6", "one number at a time")]
    [InlineData("9.4 ± 0.1", "one number at a time")]
    [InlineData("9.4 k 9.5 k", "one number at a time")]
    [InlineData("1,2k4", "one number at a time")]
    [InlineData("9.4, 9.5", "do not fit one number")]
    [InlineData("9, 400", "do not fit one number")]
    [InlineData("1,23.5", "do not fit one number")]
    [InlineData("1.2.3", "do not fit one number")]
    [InlineData("1,2345,678", "do not fit one number")]
    [InlineData("0,234.5", "do not fit one number")]
    [InlineData("9 4", "do not fit one number")]
    [InlineData("1..5", "do not fit one number")]
    [InlineData("9 400.5 1", "do not fit one number")]
    [InlineData("9.", "stops at its decimal mark")]
    [InlineData("9,", "stops at its decimal mark")]
    [InlineData("12 V", "unit of voltage")]
    [InlineData("9V4", "unit of voltage")]
    [InlineData("5 mm", "unit of length")]
    [InlineData("9.4 bananas", "not a unit this check knows")]
    [InlineData("9.4k?", "not a unit this check knows")]
    [InlineData("5²", "not a unit this check knows")]
    [InlineData("50%", "% is a unit of ratio, but this check measures resistance")]
    [InlineData("9.4 kg/m3", "kg/m³ is a unit of density")]
    [InlineData("−2", "below zero")]
    [InlineData("OL", "beyond its range")]
    [InlineData("O.L", "beyond its range")]
    [InlineData("0L", "beyond its range")]
    [InlineData("0.L", "beyond its range")]
    [InlineData("∞", "beyond its range")]
    [InlineData("infinity", "beyond its range")]
    public void Anything_else_is_refused_with_what_to_do(string text, string reason) =>
        IsRefused(reason, Resistance(text));

    [Theory]
    [InlineData("-2 ATDC", "not both")]
    [InlineData("2 sideways", "not a unit")]
    public void Timing_that_makes_no_sense_is_refused(string text, string reason) => IsRefused(reason, Angle(text));

    [Fact]
    public void Letter_of_another_kind_is_refused_for_a_length() => IsRefused("not a unit", Length("3k5"));

    [Theory]
    [InlineData('9')]
    [InlineData('x')]
    [InlineData(',')]
    [InlineData('\u0000')]
    [InlineData('\uD800')]
    public void Five_hundred_characters_of_rubbish_get_a_short_answer(char rubbish)
    {
        var refused = Assert.IsType<TypedNumber.Refused>(Resistance(new string(rubbish, 500)));

        Assert.Contains("too long", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Message_quotes_no_more_than_it_can_hold()
    {
        var refused = Assert.IsType<TypedNumber.Refused>(Resistance("9.4 " + new string('x', 50)));

        Assert.DoesNotContain(new string('x', 21), refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Message_for_a_wrong_unit_says_which_fit()
    {
        var refused = Assert.IsType<TypedNumber.Refused>(Resistance("12 V"));

        Assert.Equal(
            "V is a unit of voltage, but this check measures resistance in Ω, kΩ, MΩ or mΩ. "
            + "Type that value, or choose the other check.",
            refused.Message);
    }

    [Fact]
    public void Field_unit_of_another_kind_is_a_mistake_of_the_caller() =>
        Assert.Throws<ArgumentException>(() => TypedNumber.Read("1", QuantityKind.Length, Units.Volt, Gap));
}

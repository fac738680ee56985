using CsCheck;

namespace InspectLog.Measuring.Tests;

public class AccuracyTests
{
    [Theory]
    [InlineData("0.8%+3", 0.8, 3)]
    [InlineData("0.8 % + 3", 0.8, 3)]
    [InlineData("±(0.8 % + 3)", 0.8, 3)]
    [InlineData("± 0.8 % of reading + 3 digits", 0.8, 3)]
    [InlineData("+/-(0.8% rdg + 3 dgt)", 0.8, 3)]
    [InlineData("0,8 % + 3", 0.8, 3)]
    [InlineData(".5%", 0.5, 0)]
    [InlineData("2%", 2, 0)]
    [InlineData("+3", 0, 3)]
    [InlineData(" + 3 counts ", 0, 3)]
    [InlineData("0%+1", 0, 1)]
    [InlineData("1.5%+0.5", 1.5, 0.5)]
    public void Accuracy_is_read_as_data_sheets_write_it(string text, double percent, double counts)
    {
        Assert.True(Accuracy.TryParse(text, QuantityKind.Resistance, out var accuracy, out var problem), problem);
        Assert.Equal(new Accuracy(percent, counts), accuracy);
    }

    [Theory]
    [InlineData(null, "missing")]
    [InlineData("  ", "missing")]
    [InlineData("3", "percent or counts")]
    [InlineData("0.8", "percent or counts")]
    [InlineData("-0.8%+3", "negative")]
    [InlineData("0.8%+-3", "negative")]
    [InlineData("−1%", "negative")]
    [InlineData("good", "not an accuracy")]
    [InlineData("0.8%+3+2", "not an accuracy")]
    [InlineData("0.8%3", "not an accuracy")]
    [InlineData("±(0.8%+3", "not an accuracy")]
    [InlineData("±", "not an accuracy")]
    [InlineData("1,000%", "not an accuracy")]
    [InlineData("0.8%+1,000", "not an accuracy")]
    [InlineData("NaN%", "not an accuracy")]
    [InlineData("800%+3", "more than 100 %")]
    [InlineData("1%+9999999", "more than a million counts")]
    public void Anything_else_is_refused_with_the_reason(string? text, string reason)
    {
        Assert.False(Accuracy.TryParse(text, QuantityKind.Resistance, out var accuracy, out var problem));
        Assert.Null(accuracy);
        Assert.Contains(reason, problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Long_rubbish_is_refused_shortly()
    {
        Assert.False(Accuracy.TryParse(new string('9', 500) + "%" + new string(' ', 500) + "x", null, out _, out var problem));
        Assert.Contains("too long", problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("100%+3", 100, 3)]
    [InlineData("1%+1000000", 1, 1_000_000)]
    public void Largest_accuracies_are_still_read(string text, double percent, double counts)
    {
        Assert.True(Accuracy.TryParse(text, QuantityKind.Resistance, out var accuracy, out _));
        Assert.Equal(new Accuracy(percent, counts), accuracy);
        Assert.True(Accuracy.TryParse(text.PadRight(100), QuantityKind.Resistance, out _, out _));
        Assert.False(Accuracy.TryParse(text.PadRight(101), QuantityKind.Resistance, out _, out _));
    }

    [Fact]
    public void Written_accuracy_reads_back()
    {
        var accuracy = new Accuracy(0.8, 3);

        Assert.Equal("±(0.8 % + 3)", accuracy.Written(Units.Ohm));
        Assert.True(Accuracy.TryParse(accuracy.Written(Units.Ohm), null, out var again, out _));
        Assert.Equal(accuracy, again);
    }

    [Theory]
    [InlineData("0.5% rdg + 0.1% rng + 2 + 0.05 Ω", 0.5, 0.1, 2, 0.05)]
    [InlineData("±(0.0020 % of reading + 0.0005 % of range)", 0.0020, 0.0005, 0, 0)]
    [InlineData("0.1% FS", 0, 0.1, 0, 0)]
    [InlineData("+/- 0.1 % of full scale + 0.2 % of the reading", 0.2, 0.1, 0, 0)]
    [InlineData("0.05 ohm", 0, 0, 0, 0.05)]
    [InlineData("2 dgts + 50 mΩ + 1%", 1, 0, 2, 0.05)]
    [InlineData("2 + 0.5%", 0.5, 0, 2, 0)]
    [InlineData("0,5% rdg. + 0,05 kΩ", 0.5, 0, 0, 50)]
    public void Sum_of_any_terms_is_read(string text, double ofReading, double ofRange, double counts, double size)
    {
        Assert.True(Accuracy.TryParse(text, QuantityKind.Resistance, out var accuracy, out var problem), problem);
        Assert.Equal(new Accuracy(ofReading, counts) { PercentOfRange = ofRange, Fixed = size }, accuracy);
    }

    [Theory]
    [InlineData("0.5% + 0.1%", "two percentages of the reading")]
    [InlineData("0.1% rng + 0.2% FS", "two terms of the same kind")]
    [InlineData("1 Ω + 2 mΩ", "two terms of the same kind")]
    [InlineData("0.5% + 0.05 V", "V is a unit of voltage, but the instrument measures resistance")]
    [InlineData("0.5% + 0.05 sparks", "not an accuracy")]
    [InlineData("0.5% of the moon", "not an accuracy")]
    [InlineData("0.5% + + 3", "not an accuracy")]
    [InlineData("++3", "not an accuracy")]
    [InlineData("200% rng", "more than 100 %")]
    [InlineData("9999999999999999 Ω", "No instrument shows a number that large")]
    [InlineData("0.5% + -0.1% rng", "negative")]
    public void Sum_that_is_unclear_is_refused_with_the_reason(string text, string reason)
    {
        Assert.False(Accuracy.TryParse(text, QuantityKind.Resistance, out var accuracy, out var problem));
        Assert.Null(accuracy);
        Assert.Contains(reason, problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Terms_that_are_none_are_left_out_of_what_is_written()
    {
        var whole = new Accuracy(0.5, 2) { PercentOfRange = 0.1, Fixed = 0.05 };

        Assert.Equal("±(0.5 % + 0.1 % of range + 2 + 50 mΩ)", whole.Written(Units.Milliohm));
        Assert.Equal("±(0.5 % + 2 + 0.05 Ω)", (whole with { PercentOfRange = 0 }).Written(Units.Ohm));
        Assert.Equal(new Accuracy(0.5, 2), whole with { PercentOfRange = 0, Fixed = 0 });
    }

    [Fact]
    public void Every_written_accuracy_reads_back() =>
        Gen.Select(Term(100), Term(100), Term(1_000_000), Term(1_000_000), Gen.OneOf([Units.Ohm, Units.Kilohm, Units.Megohm, Units.Milliohm]))
            .Sample((ofReading, ofRange, counts, size, unit) =>
            {
                var accuracy = new Accuracy(ofReading, counts) { PercentOfRange = ofRange, Fixed = unit.DifferenceToBase(size) };

                return Accuracy.TryParse(accuracy.Written(unit), QuantityKind.Resistance, out var again, out _) && again == accuracy;
            });

    [Fact]
    public void Any_text_is_read_or_refused_with_a_reason() =>
        Gen.String[0, 60].Sample(text =>
            Accuracy.TryParse(text, QuantityKind.Resistance, out var accuracy, out var problem) ? accuracy is not null : problem is { Length: > 0 });

    // None, or up to six decimals, as data sheets write them.
    private static Gen<double> Term(int largest) =>
        Gen.Frequency((1, Gen.Const(0.0)), (4, Gen.Long[1, largest * 1_000_000L].Select(millionths => (double)(millionths / 1_000_000m))));
}

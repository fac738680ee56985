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
        Assert.True(Accuracy.TryParse(text, out var accuracy, out var problem), problem);
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
        Assert.False(Accuracy.TryParse(text, out var accuracy, out var problem));
        Assert.Null(accuracy);
        Assert.Contains(reason, problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Long_rubbish_is_refused_shortly()
    {
        Assert.False(Accuracy.TryParse(new string('9', 500) + "%" + new string(' ', 500) + "x", out _, out var problem));
        Assert.Contains("too long", problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("100%+3", 100, 3)]
    [InlineData("1%+1000000", 1, 1_000_000)]
    public void Largest_accuracies_are_still_read(string text, double percent, double counts)
    {
        Assert.True(Accuracy.TryParse(text, out var accuracy, out _));
        Assert.Equal(new Accuracy(percent, counts), accuracy);
        Assert.True(Accuracy.TryParse(text.PadRight(60), out _, out _));
        Assert.False(Accuracy.TryParse(text.PadRight(61), out _, out _));
    }

    [Fact]
    public void Written_accuracy_reads_back()
    {
        var accuracy = new Accuracy(0.8, 3);

        Assert.Equal("±(0.8 % + 3)", accuracy.ToString());
        Assert.True(Accuracy.TryParse(accuracy.ToString(), out var again, out _));
        Assert.Equal(accuracy, again);
    }
}

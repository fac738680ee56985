using InspectLog.Benchmarks.Dictation;

namespace InspectLog.Dictation.Tests.Benchmarks;

public sealed class CountOptionTests
{
    [Theory]
    [InlineData("--every 8", 8)]
    [InlineData("--look --every 12 --misses", 12)]
    [InlineData("--look", 3)]
    [InlineData("", 3)]
    public void A_whole_number_is_taken_and_without_the_option_another_counts(string line, int expected) =>
        Assert.Equal(expected, CountOption.Read(line.Split(' '), "--every", otherwise: 3));

    [Theory]
    [InlineData("--every", "none was given")]
    [InlineData("--every eight", "not \"eight\"")]
    [InlineData("--every 0", "not \"0\"")]
    [InlineData("--every -2", "not \"-2\"")]
    [InlineData("--every 2.5", "not \"2.5\"")]
    [InlineData("--every 99999999999", "not \"99999999999\"")]
    [InlineData("--every --look", "not \"--look\"")]
    public void Anything_else_is_refused_and_the_message_says_what_was_given(string line, string told)
    {
        var refusal = Assert.Throws<ScoringException>(() => CountOption.Read(line.Split(' '), "--every", otherwise: 3));

        Assert.StartsWith("--every takes a whole number", refusal.Message, StringComparison.Ordinal);
        Assert.Contains(told, refusal.Message, StringComparison.Ordinal);
    }
}

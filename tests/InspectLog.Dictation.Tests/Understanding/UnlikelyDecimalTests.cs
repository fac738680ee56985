using System.Globalization;
using CsCheck;

namespace InspectLog.Dictation.Tests.Understanding;

/// <summary>A decimal that no check can have is not taken apart until its end looks likely.</summary>
public sealed class UnlikelyDecimalTests
{
    [Theory]
    [InlineData("Coil secondary 71.5 k.", "coil-secondary-resistance 71500")]
    [InlineData("Coil secondary seventy-one point five k.", "coil-secondary-resistance 71500")]
    [InlineData("Supply voltage 25.7 volts.", "supply-voltage 25.7")]
    [InlineData("Supply voltage twenty point seven volts.", "supply-voltage 20.7")]
    [InlineData("Supply voltage 20.7.", "supply-voltage 20.7")]
    [InlineData("Coil circuit 14.3 ohms.", "coil-circuit-resistance 14.3")]
    public void It_is_read_whole_and_marked(string text, string finding)
    {
        Assert.Equal(finding, Read.Line(text));
        Assert.Contains("unlikely", Read.Single(text).Doubt!, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_no_check_done_once_is_a_part_of_it_a_value_without_doubt()
    {
        var once = Read.Reader.Sheet.Checks.Where(check => check is { Measurand: not null, PerCylinder: false }).ToArray();
        var numbers = Gen.Select(Gen.Int[1, 999], Gen.Int[1, 99], (whole, part) => decimal.Parse($"{whole}.{part:00}", CultureInfo.InvariantCulture));

        Gen.Select(Gen.Int[0, once.Length - 1].Select(i => once[i]), numbers).Where((check, number) => IsUnlikely(check, number)).Sample((check, number) =>
        {
            var text = string.Create(CultureInfo.InvariantCulture, $"{check.Spoken.Subjects[0]} {number} {check.Measurand!.DisplayUnit.Symbol}");
            Assert.All(Read.Reader.Read(text), finding => Assert.NotNull(finding.Doubt));
        });
    }

    private static bool IsUnlikely(Checks.Check check, decimal number) =>
        !check.Measurand!.Plausible.Holds(check.Measurand.DisplayUnit.ToBase((double)number));
}

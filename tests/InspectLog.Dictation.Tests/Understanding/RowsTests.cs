using System.Globalization;
using CsCheck;

namespace InspectLog.Dictation.Tests.Understanding;

/// <summary>Rows: as many values or conditions as places, one for each.</summary>
public sealed class RowsTests
{
    private static readonly string[] Words = ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"];

    private static readonly string[] TowerConditions = ["clean", "corroded", "burnt", "cracked", "worn"];

    [Fact]
    public void Whole_numbers_after_a_range_of_leads_are_values_one_for_each()
    {
        Gen.Int[3, 9].Array[2, 6].Sample(thousands =>
        {
            var said = string.Join(", ", thousands.Select(value => Words[value]));
            var findings = string.Join("; ", thousands.Select((value, i) => $"lead-resistance @{i + 1} {value * 1000}"));
            Assert.Equal(findings, Read.Line($"Leads one to {Words[thousands.Length]}: {said} k."));
        });
    }

    [Fact]
    public void Figures_joined_to_the_number_of_the_plug_are_taken_apart_and_marked()
    {
        Gen.Int[3, 9].Array[2, 6].Sample(tenths =>
        {
            var findings = Read.Reader.Read(string.Join(", ", tenths.Select((tenth, i) => $"{(i == 0 ? "Plug" : "plug")} {i + 1}.{tenth}")) + ".");

            Assert.Equal(
                tenths.Select((tenth, i) => string.Create(CultureInfo.InvariantCulture, $"plug-gap @{i + 1} {tenth / 10.0:R}")),
                findings.Select(Read.Short));
            Assert.All(findings.Take(1), finding => Assert.NotNull(finding.Doubt));
        });
    }

    [Fact]
    public void A_single_joined_figure_is_not_taken_apart() => Assert.Equal("plug-gap 1.8", Read.Line("Plug 1.8."));

    [Fact]
    public void Conditions_after_a_range_of_towers_are_said_one_for_each()
    {
        Gen.Int[0, TowerConditions.Length - 1].Array[3, 6].Where(HasNeighbours).Sample(row =>
        {
            var said = string.Join(", ", row.Select(one => TowerConditions[one]));
            var findings = string.Join("; ", row.Select((one, i) => $"cap-contacts @{i + 1} {TowerConditions[one]}"));
            Assert.Equal(findings, Read.Line($"Towers one to {Words[row.Length]}: {said}."));
        });
    }

    [Fact]
    public void Two_conditions_of_two_towers_hold_for_both() =>
        Assert.Equal(
            "cap-contacts @1 burnt; cap-contacts @2 burnt; cap-contacts @1 cracked; cap-contacts @2 cracked",
            Read.Line("Towers one and two: burnt, cracked."));

    [Theory]
    [InlineData("The first three plugs are sooty.", "1 2 3")]
    [InlineData("The last two plugs are sooty.", "5 6")]
    public void Cylinders_are_counted_from_either_end(string text, string cylinders) =>
        Assert.Equal(cylinders, string.Join(' ', Read.Reader.Read(text).Select(finding => finding.Place!.Cylinder)));

    [Theory]
    [InlineData("Three readings on the feed: twelve point two, twelve point three.", "supply-voltage 12.2; supply-voltage 12.3")]
    [InlineData("Primary is one ohm and a half.", "coil-circuit-resistance 1.5")]
    [InlineData("Primary is a full ohm.", "coil-circuit-resistance 1")]
    [InlineData("Secondary just over nine k, nine point one.", "coil-secondary-resistance 9100")]
    [InlineData("Feed is twelve and a bit, twelve point one.", "supply-voltage 12.1")]
    public void Counts_and_bounds_beside_a_value_are_not_values(string text, string findings) => Assert.Equal(findings, Read.Line(text));

    // Two equal conditions side by side tell a row from a list said of all.
    private static bool HasNeighbours(int[] row) => row.Zip(row.Skip(1)).Any(pair => pair.First == pair.Second);

    [Theory]
    [InlineData("Spark: 1 fine, 2 nothing, 3 fine.")]
    [InlineData("Spark, 1 fine, 2 nothing, 3 fine.")]
    [InlineData("Spark on 1 fine, 2 nothing, 3 fine.")]
    [InlineData("Spark test. 1 fine, 2 nothing, 3 fine.")]
    public void Nothing_between_two_commas_is_said_of_the_cylinder_before_it(string text)
    {
        Assert.Equal("spark @1 present; spark @2 no present; spark @3 present", Read.Line(text));
        Assert.All(Read.Reader.Read(text), finding => Assert.Null(finding.Doubt));
    }

    [Theory]
    [InlineData("Lead resistance, 1 through 6: 5, 5, 6, 6, 7, 8 k.")]
    [InlineData("Lead resistance: 1 through 6, 5, 5, 6, 6, 7, 8 k.")]
    public void Figures_after_a_range_that_name_its_cylinders_again_are_values(string text) =>
        Assert.Equal(
            "lead-resistance @1 5000; lead-resistance @2 5000; lead-resistance @3 6000; lead-resistance @4 6000; lead-resistance @5 7000; lead-resistance @6 8000",
            Read.Line(text));

    [Fact]
    public void Figures_that_count_one_two_three_before_each_value_are_the_cylinders() =>
        Assert.Equal(
            "lead-resistance @1 5000; lead-resistance @2 5200; lead-resistance @3 5100",
            Read.Line("1, 5 k, 2, 5.2, 3, 5.1.", "lead-resistance"));
}

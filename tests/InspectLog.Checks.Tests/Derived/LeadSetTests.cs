using InspectLog.Checks.Derived;

namespace InspectLog.Checks.Tests.Derived;

public class LeadSetTests
{
    // Ω per foot ÷ 0.3048: shared table of check values, 9.7 "per metre".
    [Theory]
    [InlineData(3_000, 9842.52)]
    [InlineData(6_000, 19685.04)]
    [InlineData(7_000, 22965.88)]
    [InlineData(10_000, 32808.40)]
    [InlineData(12_000, 39370.08)]
    public void Class_per_foot_is_held_per_metre(double perFoot, double perMetre) =>
        Assert.Equal(perMetre, LeadClass.PerFoot("Any", perFoot, null, null, "Test").LowestPerMetre!.Value, 5e-3);

    // Same table, "lead total".
    [Theory]
    [InlineData(10_000, 0.60, 19685.0)]
    [InlineData(12_000, 0.90, 35433.1)]
    [InlineData(7_000, 0.45, 10334.6)]
    public void Most_for_a_lead_grows_with_its_length(double perFoot, double length, double total)
    {
        var figures = Compare(LeadClass.PerFoot("Any", null, perFoot, null, "Test"), new Lead(1, 8_000, length));

        Assert.Equal(total, figures[0].Highest!.Value, 0.05);
    }

    // Service manual 1991 (manuals.autorepairshq.com): about 7 to 10 kΩ/ft, not above 22 kΩ for a lead.
    [Theory]
    [InlineData(15_000, 0.60, LeadStanding.Within)]
    [InlineData(13_700, 0.60, LeadStanding.Below)]
    [InlineData(19_700, 0.60, LeadStanding.Above)]
    [InlineData(22_500, 0.90, LeadStanding.Above)]
    [InlineData(15_000, null, LeadStanding.LengthUnknown)]
    [InlineData(22_500, null, LeadStanding.Above)]
    public void Lead_stands_against_its_class(double resistance, double? length, LeadStanding expected) =>
        Assert.Equal(expected, Compare(LeadClass.Known[0], new Lead(1, resistance, length))[0].Standing);

    [Fact]
    public void Class_of_a_total_alone_needs_no_length() =>
        Assert.Equal(
            LeadStanding.Within,
            Compare(new LeadClass("Any", null, null, 20_000, "Test"), new Lead(1, 9_000, null))[0].Standing);

    [Fact]
    public void Each_lead_is_set_against_the_median_of_the_others()
    {
        var figures = Compare(
            LeadClass.Known[1],
            new Lead(1, 10_000, 0.5), new Lead(2, 9_000, 0.5), new Lead(3, 30_000, 0.5), new Lead(4, 8_000, null));

        // Per metre 20 000, 18 000 and 60 000; lead 4 has no length and is left aside.
        Assert.Equal(20_000.0 / 39_000, figures[0].TimesTheOthers!.Value, 12);
        Assert.Equal(18_000.0 / 40_000, figures[1].TimesTheOthers!.Value, 12);
        Assert.Equal(60_000.0 / 19_000, figures[2].TimesTheOthers!.Value, 12);
        Assert.Null(figures[3].TimesTheOthers);
        Assert.Null(figures[3].PerMetre);
    }

    [Fact]
    public void Two_leads_are_too_few_to_compare_and_dead_shorts_give_no_ratio()
    {
        Assert.Null(Compare(LeadClass.Known[1], new Lead(1, 9_000, 0.5), new Lead(2, 9_000, 0.5))[0].TimesTheOthers);
        Assert.Null(Compare(
            LeadClass.Known[1], new Lead(1, 9_000, 0.5), new Lead(2, 0, 0.5), new Lead(3, 0, 0.5))[0].TimesTheOthers);
    }

    [Fact]
    public void Working_shows_the_length_and_the_class()
    {
        var steps = Compare(LeadClass.Known[0], new Lead(1, 15_000, 0.6))[0].Steps;

        Assert.Equal(["25000 Ω/m", "13780 Ω", "19685 Ω"], steps.Select(step => step.Result.Text));
    }

    [Fact]
    public void Every_known_class_says_its_source() =>
        Assert.All(LeadClass.Known, known => Assert.NotEmpty(known.Source));

    [Theory]
    [InlineData(-1.0, 0.5, "resistance of lead 1")]
    [InlineData(double.NaN, 0.5, "resistance of lead 1")]
    [InlineData(9_000.0, 0.0, "length of lead 1")]
    public void Number_out_of_range_is_refused(double resistance, double length, string says) =>
        Assert.Contains(
            says,
            Assert.Throws<ArgumentException>(
                () => Compare(LeadClass.Known[0], new Lead(1, resistance, length))).Message,
            StringComparison.Ordinal);

    [Fact]
    public void Cylinder_given_twice_is_refused() =>
        Assert.Contains(
            "Cylinder 2 is given twice",
            Assert.Throws<ArgumentException>(
                () => Compare(LeadClass.Known[0], new Lead(2, 1, 1), new Lead(2, 1, 1))).Message,
            StringComparison.Ordinal);

    private static IReadOnlyList<LeadFigures> Compare(LeadClass kind, params Lead[] leads) =>
        LeadSet.Compare(leads, kind);
}

namespace InspectLog.Dictation.Tests.Understanding;

/// <summary>Numbers said figure by figure, and small words beside them that are no part of them.</summary>
public sealed class FiguresSaidTests
{
    [Theory]
    [InlineData("Secondary nine five double oh.", "coil-secondary-resistance 9500")]
    [InlineData("Feed is one two point four volts.", "supply-voltage 12.4")]
    [InlineData("Plug gap oh eight five on number two.", "plug-gap @2 0.85")]
    [InlineData("Lead one two point four k.", "lead-resistance @1 2400")]
    [InlineData("Secondary is 9 5 double oh.", "coil-secondary-resistance 9500")]
    [InlineData("Lead 1, 5 8. 2, 6 1.", "lead-resistance @1 5800; lead-resistance @2 6100")]
    [InlineData("Primary, one ohm six.", "coil-circuit-resistance 1.6")]
    [InlineData("Lead two, five k five.", "lead-resistance @2 5500")]
    public void Figures_make_one_number_where_only_that_fits(string text, string findings) => Assert.Equal(findings, Read.Line(text));

    [Fact]
    public void A_figure_said_behind_the_unit_is_marked() => Assert.NotNull(Read.Single("Lead two, five k five.").Doubt);

    [Theory]
    [InlineData("Feed twelve point two twelve point three.", "supply-voltage 12.2; supply-voltage 12.3")]
    [InlineData("One point four one point five.", "coil-circuit-resistance 1.4; coil-circuit-resistance 1.5")]
    public void A_number_ends_where_the_next_one_has_its_point(string text, string findings) =>
        Assert.Equal(findings, Read.Line(text, "coil-circuit-resistance"));

    [Theory]
    [InlineData("Timing's twelve after adjusting.", 12)]
    [InlineData("Timing was ten before I moved it.", 10)]
    [InlineData("Timing's twelve after top dead centre.", -12)]
    public void After_may_tell_a_time_and_no_angle(string text, double degrees) =>
        Assert.Equal(degrees, Read.Reader.Read(text)[0].Value);

    [Theory]
    [InlineData("Set the timing to ten, it had been six.", "ignition-timing 6; ignition-timing 10; ignition-timing adjusted")]
    [InlineData("We timed it at eight, and after turning the distributor it came out at twelve.", "ignition-timing 8; ignition-timing 12; ignition-timing adjusted")]
    [InlineData("Plug one gap's too big, one point three, I closed it to point eight.", "plug-gap @1 1.3; plug-gap @1 0.8; plug-gap @1 adjusted")]
    public void What_was_before_goes_before_what_was_set(string text, string findings) => Assert.Equal(findings, Read.Line(text));

    [Theory]
    [InlineData("Point two five easy, point three five no chance, point three just drags.", "pickup-air-gap 0.3|0.35")]
    [InlineData("I tried the point four, it wouldn't go, point three five did.", "pickup-air-gap 0.35|0.4")]
    [InlineData("Point nine is tight and point eight five is easy.", "pickup-air-gap 0.85|0.9")]
    public void A_bracket_lies_between_the_closest_gauges(string text, string findings) => Assert.Equal(findings, Read.Line(text, "pickup-air-gap"));

    [Theory]
    [InlineData("Goes at point two five and no go at point three on the pickup.", "pickup-air-gap 0.25|0.3")]
    [InlineData("Lead six no good, boot torn.", "lead-condition @6 cracked")]
    [InlineData("She started at the second attempt.", "engine-restart started")]
    [InlineData("The car won't start.", "engine-restart no started")]
    [InlineData("The car is fine.", "")]
    [InlineData("Engine starts but misfires on three.", "engine-restart started; spark @3 weak")]
    [InlineData("The plug leads are in the correct order.", "lead-routing correct")]
    [InlineData("No spark on two. Fitted a new lead and now it sparks.", "spark @2 no present; lead-condition @2 replaced; spark @2 present")]
    [InlineData("Lead three six, lead four open.", "lead-resistance @3 6000; lead-resistance @4 open circuit")]
    [InlineData("Timing is ten degrees, was twelve.", "ignition-timing 12; ignition-timing 10")]
    public void Names_and_faults_may_come_late(string text, string findings) => Assert.Equal(findings, Read.Line(text));

    [Fact]
    public void A_cylinder_that_is_missing_has_no_spark() => Assert.Equal("spark @4 no present; spark @5 present", Read.Line("Four's missing, five is firing.", "spark"));

    [Theory]
    [InlineData("It's running but the timing is late, two degrees after.", "engine-restart started; ignition-timing -2")]
    [InlineData("The plug in four is fine but its lead is scorched.", "plug-condition @4 good; lead-condition @4 burnt")]
    [InlineData("Not much of a spark on six.", "spark @6 weak")]
    public void What_follows_but_has_a_subject_of_its_own(string text, string findings) => Assert.Equal(findings, Read.Line(text));

    [Theory]
    [InlineData("Removed all the plugs and cleaned them.", "disconnected", "cleaned")]
    [InlineData("Replaced all the leads and pushed them home.", "replaced", "reconnected")]
    public void Them_stands_for_all_of_those_named_before(string text, string first, string second) =>
        Assert.Equal(
            Enumerable.Range(1, 6).Select(i => (i, first)).Concat(Enumerable.Range(1, 6).Select(i => (i, second))),
            Read.Reader.Read(text).Select(finding => (finding.Place!.Cylinder, finding.Action!)));

    [Fact]
    public void One_gap_said_for_all_in_the_plural_is_for_each_and_marked() =>
        Assert.All(Read.Reader.Read("Plug gaps point eight."), (finding, i) => Assert.Equal((i + 1, true), (finding.Place!.Cylinder, finding.Doubt is not null)));
}

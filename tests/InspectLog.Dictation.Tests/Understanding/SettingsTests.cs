namespace InspectLog.Dictation.Tests.Understanding;

public sealed class SettingsTests
{
    [Theory]
    [InlineData("Air gap was point five, set it to point three.", "pickup-air-gap 0.5; pickup-air-gap 0.3; pickup-air-gap adjusted")]
    [InlineData("Changed the air gap from point five to point three.", "pickup-air-gap 0.5; pickup-air-gap 0.3; pickup-air-gap adjusted")]
    [InlineData("Air gap was point five, now point three.", "pickup-air-gap 0.5; pickup-air-gap 0.3; pickup-air-gap adjusted")]
    [InlineData("Air gap was point five. It's now point three.", "pickup-air-gap 0.5; pickup-air-gap 0.3; pickup-air-gap adjusted")]
    [InlineData("Set the timing to eight degrees.", "ignition-timing 8; ignition-timing adjusted")]
    [InlineData("Regapped plug two to point eight.", "plug-gap @2 0.8; plug-gap @2 adjusted")]
    [InlineData("Adjusted the timing.", "ignition-timing adjusted")]
    [InlineData("Timing is set to eight degrees.", "ignition-timing 8")]
    [InlineData("Plug two is gapped at point eight.", "plug-gap @2 0.8")]
    [InlineData("Feed was eleven volts, now twelve.", "supply-voltage 11; supply-voltage 12")]
    public void A_changed_setting_gives_its_values_and_that_it_was_adjusted(string text, string findings) =>
        Assert.Equal(findings, Read.Line(text));

    [Theory]
    [InlineData("Air gap: point two goes, point two five doesn't.", "pickup-air-gap 0.2|0.25")]
    [InlineData("Air gap, point three won't go, point two five does.", "pickup-air-gap 0.25|0.3")]
    [InlineData("The point three feeler slides through and the point three five won't.", "pickup-air-gap 0.3|0.35")]
    [InlineData("Air gap goes at point three, stops at point three five.", "pickup-air-gap 0.3|0.35")]
    [InlineData("Plug four: point eight goes, point nine stops.", "plug-gap @4 0.8|0.9")]
    [InlineData("The pickup takes a point three millimetre feeler and refuses point three five.", "pickup-air-gap 0.3|0.35")]
    [InlineData("Air gap: point three slides in, won't take point three five.", "pickup-air-gap 0.3|0.35")]
    [InlineData("Air gap accepts point three and point three five binds.", "pickup-air-gap 0.3|0.35")]
    public void Gauges_give_a_bracket(string text, string findings) => Assert.Equal(findings, Read.Line(text));

    [Fact]
    public void A_gauge_that_goes_above_one_that_stops_is_marked() =>
        Assert.NotNull(Read.Single("Air gap: point four goes, point three doesn't.").Doubt);
}

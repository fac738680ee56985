using InspectLog.Dictation.Hearing;
using InspectLog.Dictation.Understanding;

namespace InspectLog.Dictation.Tests.Understanding;

/// <summary>Words that sound the same as others, of which only one can stand, are taken for it and marked; what can stand stays.
/// </summary>
public sealed class TakenWordsTests
{
    [Theory]
    [InlineData("The pickup 2 reluctor gap is 13 thou.", "pickup-air-gap 0.3302")]
    [InlineData("Lead 4 cylinder 5, 12 k.", "lead-resistance @5 12000")]
    [InlineData("7.5 degrees by 4, timing.", "ignition-timing 7.5")]
    [InlineData("Timing was 3 degrees at the DC.", "ignition-timing -3")]
    [InlineData("Timing is 8 BT DC.", "ignition-timing 8")]
    [InlineData("Timing at 2DC.", "ignition-timing 0")]
    [InlineData("Sparks week on 2.", "spark @2 weak")]
    [InlineData("Spark on 6 week.", "spark @6 weak")]
    [InlineData("Number 3 has park.", "spark @3 present")]
    [InlineData("Moved the pickup, no the gap is 0.35.", "pickup-air-gap 0.35")]
    [InlineData("Boot plug 2 back in.", "plug-condition @2 reconnected")]
    [InlineData("Timing red 12.", "ignition-timing 12")]
    [InlineData("Gap 4 plug 2, 30 thou.", "plug-gap @2 0.762")]
    [InlineData("Total 4 coil and ballast is 1.55 ohms.", "coil-circuit-resistance 1.55")]
    [InlineData("Plug 6, 10.", "plug-condition @6 good")]
    [InlineData("Plugs 5 and 6, both nice and 10.", "plug-condition @5 good; plug-condition @6 good")]
    [InlineData("The gap at the reluctor 2, 0.34 mm.", "pickup-air-gap 0.34")]
    [InlineData("Plug 3 redap to 0.8.", "plug-gap @3 0.8; plug-gap @3 adjusted")]
    [InlineData("Cleaned and read gap plug 3.", "plug-condition @3 cleaned; plug-gap @3 adjusted")]
    public void Word_that_cannot_stand_is_taken_for_one_that_sounds_the_same_and_marked(string text, string findings)
    {
        Assert.Equal(findings, Read.Line(text));
        Assert.All(Read.Reader.Read(text), finding => Assert.Contains("was heard as", finding.Doubt, StringComparison.Ordinal));
    }

    [Fact]
    public void New_1_is_the_part_just_fitted_and_no_cylinder() =>
        Assert.Equal(
            ["lead-condition @6 replaced", "lead-resistance @6 6500 ('one' was heard as '1')"],
            Read.Reader.Read("Replaced lead 6. New 1 is 6.5 k.").Select(finding => Read.Short(finding) + (finding.Doubt is { } doubt ? $" ({doubt})" : "")));

    [Fact]
    public void A_before_several_is_all() =>
        Assert.Equal(Read.Line("All leads reconnected."), Read.Line("A leads reconnected."));

    [Fact]
    public void Point_in_a_fraction_beside_a_whole_number_is_read_as_its_bar_and_marked()
    {
        Assert.Equal("coil-secondary-resistance 9750", Read.Line("Secondary 9 and 3.4 k."));
        Assert.Equal("3.4 may be 3/4", Read.Single("Secondary 9 and 3.4 k.").Doubt);
    }

    [Theory]
    [InlineData("Lead 2 boot cracked.", "lead-condition @2 cracked")]
    [InlineData("Plug 4, number 5 wet.", "plug-condition @4 wet; plug-condition @5 wet")]
    [InlineData("Timing is 10 degrees BTDC.", "ignition-timing 10")]
    [InlineData("Number 2's wet.", "plug-condition @2 wet")]
    [InlineData("Cylinder 3 isnt firing.", "spark @3 no present")]
    [InlineData("Air gap, quarter of the mm.", "pickup-air-gap 0.25")]
    [InlineData("Replaced lead 6. The new one reads 6.5 k.", "lead-condition @6 replaced; lead-resistance @6 6500")]
    [InlineData("Boot on 2 is back on.", "lead-condition @2 reconnected")]
    public void What_can_stand_stays_and_is_not_marked(string text, string findings)
    {
        Assert.Equal(findings, Read.Line(text));
        Assert.All(Read.Reader.Read(text), finding => Assert.Null(finding.Doubt));
    }

    [Theory]
    [InlineData("Change the pickup gap to 0.35.", "pickup-air-gap 0.35; pickup-air-gap adjusted")]
    [InlineData("Open plug 3 to 0.9.", "plug-gap @3 0.9; plug-gap @3 adjusted")]
    [InlineData("Wire brush plug 4.", "plug-condition @4 cleaned")]
    [InlineData("Cleaned and regap plug 3.", "plug-condition @3 cleaned; plug-gap @3 adjusted")]
    [InlineData("Lead 3 replace.", "lead-condition @3 replaced")]
    [InlineData("Pull the rotor and replaced it.", "rotor-blade disconnected; rotor-blade replaced")]
    [InlineData("Plug all the leads back in.", "lead-condition @1 reconnected; lead-condition @2 reconnected; lead-condition @3 reconnected; "
        + "lead-condition @4 reconnected; lead-condition @5 reconnected; lead-condition @6 reconnected")]
    public void What_was_heard_as_an_order_is_taken_for_what_was_done_and_marked(string text, string findings)
    {
        var heard = Read.Reader.Read(Heard(text));

        Assert.Equal(findings, string.Join("; ", heard.Select(Read.Short)));
        Assert.Contains(heard, finding => finding.Doubt?.Contains("was heard as", StringComparison.Ordinal) == true);
    }

    [Theory]
    [InlineData("Clean the rotor, please.")]
    [InlineData("Change the plugs if they are worn.")]
    [InlineData("You replace the cap every two years.")]
    [InlineData("Replace the cap next time.")]
    [InlineData("Should we change the leads?")]
    [InlineData("Take plug four out.")]
    [InlineData("Clean your hands first.")]
    public void An_order_or_a_rule_stays_one(string text) => Assert.Empty(Read.Reader.Read(Heard(text)));

    [Fact]
    public void What_is_written_as_an_order_stays_one() => Assert.Empty(Read.Reader.Read("Replace all the leads."));

    private static Transcript Heard(string text) => new(text, [], SpeechFound: true, TimeSpan.FromSeconds(3));
}

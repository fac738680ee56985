namespace InspectLog.Dictation.Tests.Understanding;

/// <summary>Talk that names parts, numbers and conditions, told from findings by how it is built. Each class stands beside
/// findings that are close to it.</summary>
public sealed class TalkTests
{
    [Theory]
    [InlineData("A split lead lets the spark out.")]
    [InlineData("Corrosion in a tower costs you spark.")]
    [InlineData("Black plugs point to a rich mixture.")]
    [InlineData("These rotors go after a year.")]
    [InlineData("Each tower feeds one plug.")]
    [InlineData("An eight k coil won't suit it.")]
    public void What_is_said_of_a_kind_is_no_finding(string text) => Assert.Empty(Read.Reader.Read(text));

    [Theory]
    [InlineData("A new cap is on.", "cap-contacts replaced")]
    [InlineData("A twelve thou gap at the pickup.", "pickup-air-gap 0.3048")]
    [InlineData("There's a split lead on number two.", "lead-condition @2 cracked")]
    [InlineData("Burnt contacts on towers one and two.", "cap-contacts @1 burnt; cap-contacts @2 burnt")]
    public void One_part_of_this_car_is_no_kind(string text, string findings) => Assert.Equal(findings, Read.Line(text));

    [Theory]
    [InlineData("His rotor is burnt.")]
    [InlineData("The neighbour's lead is split.")]
    [InlineData("The diesel version runs a gap of point six.")]
    [InlineData("The sticker reads nine point five kilohms.")]
    [InlineData("The insulation in the shed is perished.")]
    public void What_another_owns_or_says_is_no_finding(string text) => Assert.Empty(Read.Reader.Read(text));

    [Theory]
    [InlineData("The coil's secondary reads nine point five k.", "coil-secondary-resistance 9500")]
    [InlineData("The customer was right, lead three is burnt.", "lead-condition @3 burnt")]
    [InlineData("The hose is split and the rotor is burnt.", "rotor-blade burnt")]
    public void What_is_ours_counts_beside_it(string text, string findings) => Assert.Equal(findings, Read.Line(text));

    [Theory]
    [InlineData("You take lead two off.")]
    [InlineData("Set the gap to point three and lock it.")]
    [InlineData("Had the lead been loose it would have shown.")]
    public void What_is_asked_for_or_supposed_is_no_finding(string text) => Assert.Empty(Read.Reader.Read(text));

    [Theory]
    [InlineData("Set the air gap to point three and locked it.", "pickup-air-gap 0.3; pickup-air-gap adjusted")]
    [InlineData("Had the cap off.", "cap-contacts disconnected")]
    public void What_was_done_is_not_asked_for(string text, string findings) => Assert.Equal(findings, Doubted(text));

    [Theory]
    [InlineData("That's forty for the leads and twelve for the cap.")]
    [InlineData("Ten past two and still no cap.")]
    public void A_price_or_a_time_is_no_value(string text) => Assert.Empty(Read.Reader.Read(text));

    [Theory]
    [InlineData("Nine k for lead two.", "lead-resistance @2 9000")]
    [InlineData("Nine point four for the secondary.", "coil-secondary-resistance 9400")]
    public void A_value_for_a_part_is_no_price(string text, string findings) => Assert.Equal(findings, Read.Line(text));

    [Theory]
    [InlineData("The cheap rotor they sell fell apart, burnt.")]
    [InlineData("The beach wire was broken and nobody sang on the pier.")]
    public void Among_many_words_not_understood_a_part_and_a_condition_say_nothing(string text) => Assert.Empty(Read.Reader.Read(text));

    [Theory]
    [InlineData("The cap goes on with two clips.")]
    [InlineData("Six leads, six plugs, one cap, one coil.")]
    [InlineData("Lead three is the long one.")]
    [InlineData("The secondary is the high one.")]
    [InlineData("I've got lead two in one hand.")]
    [InlineData("I've got a new cap and a new rotor with me.")]
    [InlineData("The Mark two had no ballast.")]
    public void A_count_or_one_that_stands_for_a_thing_is_no_value(string text) => Assert.Empty(Read.Reader.Read(text));

    [Theory]
    [InlineData("Lead three was the loose one.", "lead-condition @3 loose")]
    [InlineData("The plugs on two and four are the wet ones.", "plug-condition @2 wet; plug-condition @4 wet")]
    [InlineData("The gap on plug six is one point one.", "plug-gap @6 1.1")]
    [InlineData("The plug gap on three is nine tenths.", "plug-gap @3 0.9")]
    [InlineData("Timing mark at eight degrees.", "ignition-timing 8")]
    public void A_number_that_is_one_still_counts(string text, string findings) => Assert.Equal(findings, Read.Line(text));

    [Theory]
    [InlineData("We did the leads on the ambulance yesterday, all six were chafed.")]
    [InlineData("My first Triumph had a cracked rotor.")]
    [InlineData("There was a Healey in with lead four burnt.")]
    [InlineData("The breakdown man swapped a lead.")]
    [InlineData("I burnt my arm on it.")]
    [InlineData("The tape on lead four came off.")]
    [InlineData("The numbers on the leads are worn off.")]
    [InlineData("That was the battery, not the feed, twelve point six.")]
    public void Another_car_another_doer_or_another_thing_is_no_finding(string text) => Assert.Empty(Read.Reader.Read(text));

    [Theory]
    [InlineData("The Bosch coil's secondary reads nine k.", "coil-secondary-resistance 9000")]
    [InlineData("The clip end of lead four is burnt.", "lead-condition @4 burnt")]
    [InlineData("The timing was ten degrees yesterday, now it is eight.", "ignition-timing 8")]
    public void What_is_of_this_car_counts_beside_it(string text, string findings) => Assert.Equal(findings, Read.Line(text));

    [Fact]
    public void A_name_marks_the_findings_of_its_sentence() =>
        Assert.All(Read.Reader.Read("Back home with the Morris, soot on every plug."), finding => Assert.Contains("morris", finding.Doubt, StringComparison.Ordinal));

    [Theory]
    [InlineData("Page nine: air gap, point three to point four millimetres.")]
    [InlineData("Option b, the cap is cracked.")]
    [InlineData("My point three blade is bent.")]
    [InlineData("The spare cap has a burnt tower.")]
    [InlineData("All leads get brittle in the end.")]
    [InlineData("Assume the feed is twelve volts.")]
    public void What_is_read_out_taught_or_of_a_tool_is_no_finding(string text) => Assert.Empty(Read.Reader.Read(text));

    [Theory]
    [InlineData("The point three blade goes, the point three five doesn't.", "pickup-air-gap 0.3|0.35")]
    [InlineData("Replaced the cap with the spare cap.", "cap-contacts replaced")]
    [InlineData("All leads are brittle.", "lead-condition @1 cracked; lead-condition @2 cracked; lead-condition @3 cracked; lead-condition @4 cracked; lead-condition @5 cracked; lead-condition @6 cracked")]
    public void What_was_found_beside_it_counts(string text, string findings) => Assert.Equal(findings, Read.Line(text));

    [Theory]
    [InlineData("I'm off at ten today.")]
    [InlineData("Nine, I said, not five.")]
    [InlineData("I started at eight this morning.")]
    public void A_number_in_talk_is_never_an_unmarked_value_of_the_open_check(string text) =>
        Assert.DoesNotContain(Read.Reader.Read(text, "coil-secondary-resistance"), finding => finding.Doubt is null);

    [Theory]
    [InlineData("Ten.", "coil-secondary-resistance 10000")]
    [InlineData("It reads ten, good.", "coil-secondary-resistance 10000")]
    [InlineData("I get ten k.", "coil-secondary-resistance 10000")]
    public void A_number_read_off_is_a_plain_value_of_the_open_check(string text, string finding)
    {
        Assert.Equal(finding, Read.Line(text, "coil-secondary-resistance"));
        Assert.Null(Read.Single(text, "coil-secondary-resistance").Doubt);
    }

    [Theory]
    [InlineData("The ballast is two inches from the bulkhead.")]
    [InlineData("The coil is forty degrees to the touch.")]
    [InlineData("We gap plugs at point eight.")]
    [InlineData("Six times eleven is sixty six.")]
    public void Lengths_of_electrical_parts_habits_and_sums_are_no_findings(string text) => Assert.Empty(Read.Reader.Read(text));

    private static string Doubted(string text) => Read.Line(text).Replace(" ?", "", StringComparison.Ordinal);
}

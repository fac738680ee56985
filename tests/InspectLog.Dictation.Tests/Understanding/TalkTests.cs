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

    private static string Doubted(string text) => Read.Line(text).Replace(" ?", "", StringComparison.Ordinal);
}

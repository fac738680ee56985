namespace InspectLog.Dictation.Tests.Understanding;

/// <summary>Cylinders left out of "all", and lists of those meant.</summary>
public sealed class ExceptionsTests
{
    [Theory]
    [InlineData("All plugs dry apart from a little oil on two and six.", "plug-condition @2 oil fouled; plug-condition @6 oil fouled")]
    [InlineData("Plugs all good apart from a little oil on two and six.",
        "plug-condition @1 good; plug-condition @3 good; plug-condition @4 good; plug-condition @5 good; plug-condition @2 oil fouled; plug-condition @6 oil fouled")]
    [InlineData("Plug gaps point eight, except for one to five, which are at point nine.",
        "plug-gap @6 0.8; plug-gap @1 0.9; plug-gap @2 0.9; plug-gap @3 0.9; plug-gap @4 0.9; plug-gap @5 0.9")]
    [InlineData("All the plugs are at point eight, only four is at point nine.",
        "plug-gap @1 0.8; plug-gap @2 0.8; plug-gap @3 0.8; plug-gap @5 0.8; plug-gap @6 0.8; plug-gap @4 0.9")]
    [InlineData("Not counting number six, all leads read seven k.",
        "lead-resistance @1 7000; lead-resistance @2 7000; lead-resistance @3 7000; lead-resistance @4 7000; lead-resistance @5 7000")]
    public void What_is_left_out_may_be_said_in_many_ways(string text, string findings) => Assert.Equal(findings, Read.Line(text));

    [Theory]
    [InlineData("Cap tracked, four to six.", "cap-contacts @4 cracked; cap-contacts @5 cracked; cap-contacts @6 cracked")]
    [InlineData("The front three leads are chafed.", "lead-condition @1 chafed; lead-condition @2 chafed; lead-condition @3 chafed")]
    [InlineData("Leads two to four nine k each, five ten k.",
        "lead-resistance @2 9000; lead-resistance @3 9000; lead-resistance @4 9000; lead-resistance @5 10000")]
    [InlineData("Plug two is wet, likewise five, number three is fine.", "plug-condition @2 wet; plug-condition @5 wet; plug-condition @3 good")]
    [InlineData("Nothing on five or six, the rest spark.",
        "spark @5 no present; spark @6 no present; spark @1 present; spark @2 present; spark @3 present; spark @4 present")]
    [InlineData("Lead one, five eight. Two, six one.", "lead-resistance @1 5800; lead-resistance @2 6100")]
    public void Lists_and_what_is_said_of_them_are_kept_apart(string text, string findings) => Assert.Equal(findings, Read.Line(text));

    [Fact]
    public void Numbers_after_another_part_are_its_cylinders_and_no_values() =>
        Assert.Equal("coil-secondary-resistance 9000; cap-contacts @3 corroded; cap-contacts @6 corroded", Read.Line("Secondary nine k. Verdigris on towers three and six."));

    [Fact]
    public void Six_values_for_the_open_check_are_taken_in_order() =>
        Assert.Equal(
            "lead-resistance @1 5100; lead-resistance @2 6000; lead-resistance @3 5100; lead-resistance @4 6000; lead-resistance @5 6200; lead-resistance @6 7100",
            Read.Line("Five point one, six, five point one, six, six point two, seven point one.", "lead-resistance"));

    [Fact]
    public void Six_conditions_for_the_open_check_are_taken_in_order() =>
        Assert.Equal(
            "plug-condition @1 sooty; plug-condition @2 sooty; plug-condition @3 good; plug-condition @4 good; plug-condition @5 sooty; plug-condition @6 good",
            Read.Line("Black, black, tan, tan, black, tan.", "plug-condition"));
}

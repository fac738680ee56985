namespace InspectLog.Dictation.Tests.Understanding;

public sealed class PlacesTests
{
    [Theory]
    [InlineData("Lead two is chafed.", "lead-condition @2 chafed")]
    [InlineData("Number five lead is chafed.", "lead-condition @5 chafed")]
    [InlineData("#3 lead is chafed.", "lead-condition @3 chafed")]
    [InlineData("No. 3 lead is chafed.", "lead-condition @3 chafed")]
    [InlineData("Lead no 3 is chafed.", "lead-condition @3 chafed")]
    [InlineData("The fourth plug is wet.", "plug-condition @4 wet")]
    [InlineData("The lead on cylinder six is loose.", "lead-condition @6 loose")]
    [InlineData("Number two's wet on the plugs.", "plug-condition @2 wet")]
    public void A_cylinder_is_named_in_many_ways(string text, string findings) => Assert.Equal(findings, Read.Line(text));

    [Theory]
    [InlineData("Plugs one, three and five are worn.", "1 3 5")]
    [InlineData("Plugs 1, 3 and 5 are worn.", "1 3 5")]
    [InlineData("Plugs two to four are worn.", "2 3 4")]
    [InlineData("Plugs two through four are worn.", "2 3 4")]
    [InlineData("Plugs 2-4 are worn.", "2 3 4")]
    [InlineData("Plugs 1.2.3.4.5.6 are worn.", "1 2 3 4 5 6")]
    [InlineData("All six plugs are worn.", "1 2 3 4 5 6")]
    [InlineData("Every plug is worn.", "1 2 3 4 5 6")]
    [InlineData("The plugs are all worn.", "1 2 3 4 5 6")]
    [InlineData("All the plugs are worn except number two.", "1 3 4 5 6 2")]
    [InlineData("Both plugs three and four are worn.", "3 4")]
    public void Lists_and_ranges_give_one_finding_each(string text, string cylinders) =>
        Assert.Equal(cylinders, string.Join(' ', Read.Reader.Read(text).Select(finding => finding.Place!.Cylinder)));

    [Theory]
    [InlineData("Spark on every cylinder but two.",
        "spark @1 present; spark @3 present; spark @4 present; spark @5 present; spark @6 present; spark @2 no present")]
    [InlineData("All towers clean apart from four, burnt.",
        "cap-contacts @1 clean; cap-contacts @2 clean; cap-contacts @3 clean; cap-contacts @5 clean; cap-contacts @6 clean; cap-contacts @4 burnt")]
    [InlineData("Leads one to four good, the rest chafed.",
        "lead-condition @1 good; lead-condition @2 good; lead-condition @3 good; lead-condition @4 good; lead-condition @5 chafed; lead-condition @6 chafed")]
    [InlineData("Plug three is wet, same on five.", "plug-condition @3 wet; plug-condition @5 wet")]
    [InlineData("Cylinder two fires, three doesn't.", "spark @2 present; spark @3 no present")]
    public void Exceptions_rests_and_echoes_are_worked_out(string text, string findings) =>
        Assert.Equal(findings, Read.Line(text));

    [Theory]
    [InlineData("Plug gaps one to three: point eight, point nine, point eight.", "plug-gap @1 0.8; plug-gap @2 0.9; plug-gap @3 0.8")]
    [InlineData("Leads two and five are both six k.", "lead-resistance @2 6000; lead-resistance @5 6000")]
    [InlineData("Plug gaps point eight on one, point nine on two.", "plug-gap @1 0.8; plug-gap @2 0.9")]
    [InlineData("Lead four six k, seven k.", "lead-resistance @4 6000; lead-resistance @4 7000")]
    public void Values_go_to_their_cylinders_in_order(string text, string findings) => Assert.Equal(findings, Read.Line(text));

    [Fact]
    public void Too_few_values_for_the_cylinders_are_marked() =>
        Assert.All(Read.Reader.Read("Plug gaps one to six: point eight, point nine, point eight."), finding => Assert.NotNull(finding.Doubt));

    [Theory]
    [InlineData("Replaced the distributor cap.", "cap-contacts replaced")]
    [InlineData("The cap is clean.", "cap-contacts clean")]
    [InlineData("The cap is cracked between towers two and three, replaced it.",
        "cap-contacts @2 cracked; cap-contacts @3 cracked; cap-contacts replaced")]
    public void The_whole_part_has_no_cylinder(string text, string findings) => Assert.Equal(findings, Read.Line(text));

    [Theory]
    [InlineData("The lead is burnt.")]
    [InlineData("Plug gap point eight.")]
    [InlineData("The leads are burnt.")]
    public void A_cylinder_left_unsaid_is_marked(string text) =>
        Assert.All(Read.Reader.Read(text), finding => Assert.NotNull(finding.Doubt));

    [Theory]
    [InlineData("Lead to is cracked.", 2)]
    [InlineData("Lead for is cracked.", 4)]
    [InlineData("Lead won is cracked.", 1)]
    [InlineData("Lead to 8 k.", 2)]
    public void A_word_that_sounds_like_a_number_is_taken_for_it_and_marked(string text, int cylinder)
    {
        var finding = Read.Single(text);

        Assert.Equal(cylinder, finding.Place?.Cylinder);
        Assert.NotNull(finding.Doubt);
    }

    [Theory]
    [InlineData("Lead resistance on lead 1 reads 1 k.")]
    [InlineData("Lead resistance on lead one measures one k.")]
    public void One_before_a_verb_and_a_one_is_a_cylinder(string text) => Assert.Equal("lead-resistance @1 1000", Read.Line(text));
}

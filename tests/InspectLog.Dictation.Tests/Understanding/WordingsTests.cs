namespace InspectLog.Dictation.Tests.Understanding;

/// <summary>The same thing said in sentences of other build.</summary>
public sealed class WordingsTests
{
    [Theory]
    [InlineData("Replaced the cap and rotor.", "cap-contacts replaced; rotor-blade replaced")]
    [InlineData("Cleaned cap, rotor blade and plug two.", "cap-contacts cleaned; rotor-blade cleaned; plug-condition @2 cleaned")]
    [InlineData("I swapped plug six.", "plug-condition @6 replaced")]
    [InlineData("Got the corrosion off tower two.", "cap-contacts @2 cleaned")]
    [InlineData("Undid the wire from the coil.", "coil-circuit-resistance disconnected")]
    [InlineData("Leads two and three were swapped. Put them right.",
        "lead-routing @2 swapped; lead-routing @3 swapped; lead-routing @2 adjusted; lead-routing @3 adjusted")]
    [InlineData("Cap replaced, no, cap cleaned.", "cap-contacts cleaned")]
    [InlineData("Put a fresh set of leads on one and two.", "lead-condition @1 replaced; lead-condition @2 replaced")]
    public void What_was_done_goes_to_every_part_it_was_done_to(string text, string findings) => Assert.Equal(findings, Read.Line(text));

    [Theory]
    [InlineData("Gap on three is point eight.", "plug-gap @3 0.8")]
    [InlineData("Set the gaps on one and two to point eight.", "plug-gap @1 0.8; plug-gap @2 0.8; plug-gap @1 adjusted; plug-gap @2 adjusted")]
    [InlineData("Regapped number five to thirty-two thou.", "plug-gap @5 0.8128; plug-gap @5 adjusted")]
    [InlineData("Plug three's gap has opened up to one point one.", "plug-gap @3 1.1")]
    [InlineData("Clearance at the reluctor is point three.", "pickup-air-gap 0.3")]
    [InlineData("Advanced the timing by two degrees to ten.", "ignition-timing 10; ignition-timing adjusted")]
    [InlineData("Turned the distributor until it read ten degrees.", "ignition-timing 10; ignition-timing adjusted")]
    public void The_gap_of_a_place_is_a_plugs_and_a_change_tells_where_to(string text, string findings) => Assert.Equal(findings, Read.Line(text));

    [Theory]
    [InlineData("Air gap: point three goes but not point three five.", "pickup-air-gap 0.3|0.35")]
    [InlineData("Could get the point three feeler in but not the point three five.", "pickup-air-gap 0.3|0.35")]
    [InlineData("A ten thou blade passes at the pickup, a thirteen thou one jams.", "pickup-air-gap 0.254|0.3302")]
    public void What_a_gauge_does_is_said_in_many_ways(string text, string findings) =>
        Assert.Equal(findings, Read.Line(text, "pickup-air-gap"));

    [Theory]
    [InlineData("Except for five the leads are fine.", 5)]
    [InlineData("Apart from number two, all leads are fine.", 2)]
    public void An_exception_may_come_first(string text, int cylinder)
    {
        var findings = Read.Reader.Read(text);

        Assert.Equal(6, findings.Count);
        Assert.Equal(cylinder, Assert.Single(findings, finding => finding.Negated).Place!.Cylinder);
    }

    [Theory]
    [InlineData("Tower six is burnt and so is the rotor tip.", "cap-contacts @6 burnt; rotor-blade burnt")]
    [InlineData("Tower four is dirty and tower six too.", "cap-contacts @4 corroded; cap-contacts @6 corroded")]
    [InlineData("Cylinder one sparks. So do two and three.", "spark @1 present; spark @2 present; spark @3 present")]
    public void What_was_said_may_be_said_to_hold_elsewhere(string text, string findings) => Assert.Equal(findings, Read.Line(text));

    [Theory]
    [InlineData("What I'm reading on the secondary is nine k.", "coil-secondary-resistance 9000")]
    [InlineData("It says twelve point one on the meter.", "supply-voltage 12.1")]
    [InlineData("It fired up but died.", "engine-restart started")]
    [InlineData("Cap's back on and she's running.", "cap-contacts reconnected; engine-restart started")]
    public void What_only_looks_like_a_question_or_hearsay_is_a_finding(string text, string findings) =>
        Assert.Equal(findings, Read.Line(text, "supply-voltage"));

    [Theory]
    [InlineData("The lead in the pencil is broken.")]
    [InlineData("On the blue one the rotor was cracked.")]
    [InlineData("He's swapped the leads on his car twice.")]
    [InlineData("They changed the coil.")]
    [InlineData("The manual says ten k for the secondary.")]
    public void Other_things_and_other_people_are_no_findings(string text) => Assert.Empty(Read.Reader.Read(text));
}

namespace InspectLog.Dictation.Tests.Understanding;

public sealed class ConditionsTests
{
    [Theory]
    [InlineData("No corrosion on tower two.", "cap-contacts @2 no corroded")]
    [InlineData("Lead two isn't cracked.", "lead-condition @2 no cracked")]
    [InlineData("Lead two is neither cracked nor burnt.", "lead-condition @2 no cracked; lead-condition @2 no burnt")]
    [InlineData("Lead two is not cracked but chafed.", "lead-condition @2 no cracked; lead-condition @2 chafed")]
    [InlineData("Rotor blade free of corrosion.", "rotor-blade no corroded")]
    [InlineData("No cracks, burns or chafing on lead two.",
        "lead-condition @2 no cracked; lead-condition @2 no burnt; lead-condition @2 no chafed")]
    [InlineData("Spark missing on three.", "spark @3 no present")]
    [InlineData("No lead is loose.",
        "lead-condition @1 no loose; lead-condition @2 no loose; lead-condition @3 no loose; lead-condition @4 no loose; lead-condition @5 no loose; lead-condition @6 no loose")]
    public void A_negation_reaches_as_far_as_it_means(string text, string findings) => Assert.Equal(findings, Read.Line(text));

    [Theory]
    [InlineData("Plug two is fine.", "plug-condition @2 good")]
    [InlineData("Leads two and four are on the wrong towers.", "lead-routing @2 swapped; lead-routing @4 swapped")]
    [InlineData("Rotor contact pitted.", "rotor-top pitted")]
    [InlineData("Leads three and five are crossed over.", "lead-routing @3 swapped; lead-routing @5 swapped")]
    [InlineData("Cylinder two fires.", "spark @2 present")]
    [InlineData("She fires up.", "engine-restart started")]
    [InlineData("Lead six has no continuity, open circuit.", "lead-resistance @6 open circuit")]
    [InlineData("Spark on two is weak.", "spark @2 weak")]
    [InlineData("Spark plug two is fine.", "plug-condition @2 good")]
    [InlineData("Cap and rotor are clean.", "cap-contacts clean; rotor-blade clean")]
    [InlineData("Top contact of the rotor is worn.", "rotor-top worn")]
    public void Everyday_words_become_the_sheets_words(string text, string findings) => Assert.Equal(findings, Read.Line(text));

    [Theory]
    [InlineData("Pulled the lead off number six.", "lead-condition @6 disconnected")]
    [InlineData("Loose boot on lead three, pushed it back on.", "lead-condition @3 loose; lead-condition @3 reconnected")]
    [InlineData("Distributor cap is off.", "cap-contacts disconnected")]
    [InlineData("The cap's back on.", "cap-contacts reconnected")]
    [InlineData("I scraped tower one clean.", "cap-contacts @1 cleaned")]
    [InlineData("Gave plug two a clean.", "plug-condition @2 cleaned")]
    [InlineData("Rotor top is corroded, cleaned it.", "rotor-top corroded; rotor-top cleaned")]
    [InlineData("Fitted a new rotor.", "rotor-blade replaced")]
    [InlineData("Swapped lead two for a new one.", "lead-condition @2 replaced")]
    [InlineData("Cleaned and regapped plug three.", "plug-condition @3 cleaned; plug-gap @3 adjusted")]
    public void Actions_go_to_the_parts_main_check(string text, string findings) => Assert.Equal(findings, Read.Line(text));

    [Fact]
    public void Fault_without_a_name_is_not_good_and_marked()
    {
        var finding = Read.Single("Plug two is bad.");

        Assert.Equal(("good", true), (finding.Condition, finding.Negated));
        Assert.NotNull(finding.Doubt);
    }
}

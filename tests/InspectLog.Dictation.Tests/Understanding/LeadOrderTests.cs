namespace InspectLog.Dictation.Tests.Understanding;

/// <summary>What is said of the order of all leads is one finding of them together; what is said of each part is one finding
/// for each.</summary>
public sealed class LeadOrderTests
{
    [Theory]
    [InlineData("All leads are in the right order.", "lead-routing correct")]
    [InlineData("All six leads go to the right towers.", "lead-routing correct")]
    [InlineData("Every lead is on its right tower.", "lead-routing correct")]
    [InlineData("Every lead is where it should be.", "lead-routing correct")]
    [InlineData("None of the leads are swapped.", "lead-routing no swapped")]
    [InlineData("All the leads are in the wrong order.", "lead-routing swapped")]
    public void Order_of_all_leads_is_one_finding(string text, string findings)
    {
        Assert.Equal(findings, Read.Line(text));
        Assert.Null(Read.Single(text).Doubt);
    }

    [Theory]
    [InlineData("Lead three is on the right tower.", "lead-routing @3 correct")]
    [InlineData("All leads are in the right order bar five.",
        "lead-routing @1 correct; lead-routing @2 correct; lead-routing @3 correct; lead-routing @4 correct; lead-routing @6 correct; lead-routing @5 no correct")]
    [InlineData("Leads one to four are crossed, all the others are where they should be.",
        "lead-routing @1 swapped; lead-routing @2 swapped; lead-routing @3 swapped; lead-routing @4 swapped; lead-routing @5 correct; lead-routing @6 correct")]
    public void Order_of_some_leads_is_one_finding_for_each(string text, string findings) => Assert.Equal(findings, Read.Line(text));

    [Theory]
    [InlineData("All leads are fine.")]
    [InlineData("Spark on all six.")]
    [InlineData("No lead is cracked.")]
    public void How_each_part_is_stays_one_finding_for_each(string text) =>
        Assert.Equal([1, 2, 3, 4, 5, 6], Read.Reader.Read(text).Select(finding => finding.Place!.Cylinder));

    [Fact]
    public void Leads_in_order_are_all_those_pulled_off_after() =>
        Assert.Equal(6, Read.Reader.Read("All leads are in the right order, so I pulled them off.").Count(finding => finding.Action == "disconnected" && finding.Doubt is null));

    [Fact]
    public void Both_leads_swapped_without_saying_which_is_marked() => Assert.NotNull(Read.Single("Both leads are swapped.").Doubt);
}

namespace InspectLog.Dictation.Tests.Understanding;

/// <summary>An outcome waited for puts nothing in doubt that was done; an order and a condition do.</summary>
public sealed class OutcomesTests
{
    [Theory]
    [InlineData("Rotor top is corroded, cleaned it, see if it helps.")]
    [InlineData("Cleaned tower four to see if it helps.")]
    [InlineData("Replaced plug three, let's see whether that cures it.")]
    [InlineData("Regapped plug two, checking if it fires.")]
    [InlineData("I put a new rotor in, see if it helps.")]
    public void Outcome_waited_for_leaves_what_was_done_plain(string text)
    {
        var findings = Read.Reader.Read(text);

        Assert.Contains(findings, finding => finding.Action is not null);
        Assert.All(findings, finding => Assert.Null(finding.Doubt));
    }

    [Theory]
    [InlineData("Cleaned plug three if it's wet.")]
    [InlineData("Cleaned plug three and see if it helps.")]
    [InlineData("Put a new rotor in, see if it helps.")]
    [InlineData("Cleaned plug three, please, see if it helps.")]
    public void What_may_be_an_order_is_marked(string text) => Assert.All(Read.Reader.Read(text), finding => Assert.NotNull(finding.Doubt));

    [Theory]
    [InlineData("Spark test on two is weak.", "spark @2 weak")]
    [InlineData("Spark check, one fine, three weak.", "spark @1 present; spark @3 weak")]
    [InlineData("Spark testing, one fine, three weak.", "spark @1 present; spark @3 weak")]
    [InlineData("Resistance test, lead one six k.", "lead-resistance @1 6000")]
    [InlineData("Lead test, two open circuit.", "lead-resistance @2 open circuit")]
    public void Test_after_the_name_of_a_check_puts_nothing_in_doubt(string text, string findings)
    {
        Assert.Equal(findings, Read.Line(text));
        Assert.All(Read.Reader.Read(text), finding => Assert.Null(finding.Doubt));
    }

    [Fact]
    public void Test_before_another_noun_names_that_noun() => Assert.Empty(Read.Reader.Read("The lead test lamp is broken."));
}

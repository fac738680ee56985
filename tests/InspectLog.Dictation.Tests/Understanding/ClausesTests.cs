using CsCheck;

namespace InspectLog.Dictation.Tests.Understanding;

/// <summary>Whole clauses joined by "and" or a comma: nothing said in one reaches into the other.</summary>
public sealed class ClausesTests
{
    private static readonly string[] Statements =
    [
        "secondary nine point four k", "the supply is twelve point two volts", "lead two is chafed", "plug three is wet",
        "tower five is corroded", "the rotor blade is worn", "there are no cracks in the cap", "the engine starts",
        "timing is ten degrees", "lead six reads eight k", "cylinder four doesn't spark", "I replaced the cap",
    ];

    private static readonly string[] Ties = [" and ", ", ", ", and ", ", then ", " and then "];

    [Fact]
    public void Statements_of_different_checks_joined_say_what_they_say_alone()
    {
        Gen.Select(Gen.Int[0, Statements.Length - 1], Gen.Int[0, Statements.Length - 1], Gen.Int[0, Ties.Length - 1]).Sample((first, second, tie) =>
        {
            if (first != second)
            {
                Assert.Equal($"{Read.Line(Statements[first])}; {Read.Line(Statements[second])}", Read.Line(Statements[first] + Ties[tie] + Statements[second]));
            }
        });
    }

    [Theory]
    [InlineData("The rotor isn't cracked and cleaned the rotor top.", "rotor-blade no cracked; rotor-top cleaned")]
    [InlineData("Plug five has no cracks and intermittent spark at cylinder two.", "plug-condition @5 no cracked; spark @2 weak")]
    [InlineData("Removed the cap and leads one and two are mixed up.", "cap-contacts disconnected; lead-routing @1 swapped; lead-routing @2 swapped")]
    [InlineData("Secondary nine k, and in the pickup gap nine thou slides in and eleven thou sticks.", "coil-secondary-resistance 9000; pickup-air-gap 0.2286|0.2794")]
    public void A_clause_ends_the_negation_and_the_action_before_it(string text, string findings) => Assert.Equal(findings, Read.Line(text));

    [Theory]
    [InlineData("Cap and rotor are burnt.", "cap-contacts burnt; rotor-blade burnt")]
    [InlineData("Plug two is wet and plug three too.", "plug-condition @2 wet; plug-condition @3 wet")]
    [InlineData("Lead two is burnt, sorry, lead three is burnt.", "lead-condition @3 burnt")]
    [InlineData("Point two five goes in the pickup gap, the point three feeler doesn't.", "pickup-air-gap 0.25|0.3")]
    [InlineData("Lead two is chafed and burnt at the boot.", "lead-condition @2 chafed; lead-condition @2 burnt")]
    public void Parts_of_one_clause_stay_together(string text, string findings) => Assert.Equal(findings, Read.Line(text));
}

using CsCheck;

namespace InspectLog.Dictation.Tests.Understanding;

/// <summary>"Yes" and "no" for a cylinder, and what is said before the cylinder it is said of.</summary>
public sealed class AnswersTests
{
    private static readonly string[] Words = ["zero", "one", "two", "three", "four", "five", "six"];

    [Theory]
    [InlineData("Spark: yes on one, no on three.", "spark @1 present; spark @3 no present")]
    [InlineData("Spark yes on 1 and 2, no on 3.", "spark @1 present; spark @2 present; spark @3 no present")]
    [InlineData("Spark: no on three.", "spark @3 no present")]
    [InlineData("Spark on one, yes, on three, no.", "spark @1 present; spark @3 no present")]
    [InlineData("Spark: yes on the first two, no on the last two.", "spark @1 present; spark @2 present; spark @5 no present; spark @6 no present")]
    [InlineData("Spark test. Yes on one. No on three.", "spark @1 present; spark @3 no present")]
    [InlineData("Spark good on two and four, none on five.", "spark @2 present; spark @4 present; spark @5 no present")]
    [InlineData("Spark none on three, good on four.", "spark @3 no present; spark @4 present")]
    [InlineData("Corrosion on the towers: yes on two, no on three.", "cap-contacts @2 corroded; cap-contacts @3 no corroded")]
    [InlineData("Cracks in the leads: one yes, two no.", "lead-condition @1 cracked; lead-condition @2 no cracked")]
    public void Answer_is_of_its_cylinder(string text, string findings) => Assert.Equal(findings, Read.Line(text));

    [Theory]
    [InlineData("Spark on four, no, on three.", "spark @3 present")]
    [InlineData("Spark on four, no, three.", "spark @3 present")]
    [InlineData("Spark is weak on four, no, on five.", "spark @5 weak")]
    [InlineData("Yes, lead two is worn.", "lead-condition @2 chafed")]
    [InlineData("Yeah on two it's weak.", "spark @2 weak")]
    public void Word_that_corrects_or_opens_is_no_answer(string text, string findings) => Assert.Equal(findings, Read.Line(text));

    [Theory]
    [InlineData("Yes on one, no on three.", "plug-condition")]
    [InlineData("Yes on one, no on three.", "lead-resistance")]
    [InlineData("Yes on one, no on three.", null)]
    public void Answer_says_nothing_where_nothing_was_asked_for(string text, string? open) => Assert.Empty(Read.Reader.Read(text, open));

    [Theory]
    [InlineData("Plugs: dry on one, wet on two.", "plug-condition @2 wet")]
    [InlineData("Spark: strong on one, weak on two, none on three.", "spark @1 present; spark @2 weak; spark @3 no present")]
    [InlineData("Towers: clean on one, burnt on five.", "cap-contacts @1 clean; cap-contacts @5 burnt")]
    public void Condition_before_its_cylinder_is_not_said_of_the_one_before(string text, string findings) => Assert.Equal(findings, Read.Line(text));

    [Fact]
    public void Answers_in_either_order_say_the_same()
    {
        Gen.Select(Gen.Bool.Array[3, 6], Gen.Bool).Where(row => row.Item1.Contains(true)).Sample((row, written) =>
        {
            string Name(int cylinder) => written ? $"{cylinder}" : Words[cylinder];
            var before = string.Join(", ", row.Select((there, i) => $"{(there ? "yes" : "no")} on {Name(i + 1)}"));
            var after = string.Join(", ", row.Select((there, i) => $"{Name(i + 1)} {(there ? "yes" : "no")}"));
            var findings = string.Join("; ", row.Select((there, i) => $"spark @{i + 1} {(there ? "" : "no ")}present"));

            Assert.Equal(findings, Read.Line($"Spark: {before}."));
            Assert.Equal(findings, Read.Line($"Spark: {after}."));
        });
    }
}

using CsCheck;

namespace InspectLog.Dictation.Tests.Understanding;

/// <summary>Cylinders named together without naming each.</summary>
public sealed class GroupsTests
{
    private static readonly string[] Words = ["zero", "one", "two", "three", "four", "five", "six"];

    [Theory]
    [InlineData("The odd plugs are sooty.", "1 3 5")]
    [InlineData("Plugs: the even ones are sooty.", "2 4 6")]
    [InlineData("Plugs with odd numbers are sooty.", "1 3 5")]
    [InlineData("Even numbered plugs are sooty.", "2 4 6")]
    [InlineData("Plugs four onwards are sooty.", "4 5 6")]
    [InlineData("From three on the plugs are sooty.", "3 4 5 6")]
    [InlineData("All plugs from two to the last are sooty.", "2 3 4 5 6")]
    [InlineData("Everything after three is sooty on the plugs.", "4 5 6")]
    [InlineData("Plugs below three are sooty.", "1 2")]
    [InlineData("Plugs up to 3 are sooty.", "1 2 3")]
    [InlineData("The last 2 plugs are sooty.", "5 6")]
    [InlineData("The second, fourth and sixth plugs are sooty.", "2 4 6")]
    public void Cylinders_of_a_group_are_named_without_doubt(string text, string cylinders)
    {
        var findings = Read.Reader.Read(text);

        Assert.Equal(cylinders, string.Join(' ', findings.Select(finding => finding.Place!.Cylinder)));
        Assert.All(findings, finding => Assert.Null(finding.Doubt));
    }

    [Theory]
    [InlineData("The front three plugs are sooty.")]
    [InlineData("The rear two plugs are sooty.")]
    [InlineData("Every second plug is sooty.")]
    [InlineData("Odd plugs are sooty.")]
    [InlineData("The last three plugs I did were sooty.")]
    [InlineData("Plug gap on the last three point nine.")]
    public void Group_that_may_be_other_cylinders_is_marked(string text)
    {
        var findings = Read.Reader.Read(text);

        Assert.NotEmpty(findings);
        Assert.All(findings, finding => Assert.NotNull(finding.Doubt));
    }

    [Theory]
    [InlineData("The odd plug is sooty.", "")]
    [InlineData("A couple of odd plugs are sooty.", "")]
    [InlineData("Odd plugs fitted here, two makes.", "")]
    [InlineData("An odd number of plugs are sooty.", "")]
    [InlineData("The odds are the plugs are sooty.", "")]
    [InlineData("That's odd, plug three is sooty.", "plug-condition @3 sooty")]
    [InlineData("Even plug three is sooty.", "plug-condition @3 sooty")]
    [InlineData("The first three tries were no good.", "")]
    [InlineData("Lead two is chafed from the boot up.", "lead-condition @2 chafed")]
    public void Words_of_a_group_may_say_something_else(string text, string findings) => Assert.Equal(findings, Read.Line(text));

    [Fact]
    public void Cylinder_left_out_of_a_group_is_not_of_it() =>
        Assert.Equal("plug-condition @1 wet; plug-condition @5 wet; plug-condition @3 no wet", Read.Line("All the odd plugs except three are wet."));

    [Fact]
    public void First_and_last_cylinders_are_counted_from_either_end_whatever_the_number()
    {
        Gen.Int[2, 5].Sample(count =>
        {
            Assert.Equal(Range(1, count), Cylinders($"The first {Words[count]} towers are burnt."));
            Assert.Equal(Range(7 - count, 6), Cylinders($"The last {count} towers are burnt."));
        });
    }

    [Fact]
    public void Up_to_and_after_a_cylinder_leave_none_out()
    {
        Gen.Int[1, 5].Sample(cylinder =>
        {
            Assert.Equal(Range(1, cylinder), Cylinders($"Towers up to {Words[cylinder]} are burnt."));
            Assert.Equal(Range(cylinder + 1, 6), Cylinders($"Towers after {cylinder} are burnt."));
            Assert.Equal(Range(cylinder, 6), Cylinders($"From {Words[cylinder]} onwards the towers are burnt."));
        });
    }

    private static IEnumerable<int> Range(int first, int last) => Enumerable.Range(first, last - first + 1);

    private static IEnumerable<int> Cylinders(string text) => Read.Reader.Read(text).Select(finding => finding.Place!.Cylinder);
}

namespace InspectLog.Dictation.Tests.Understanding;

public sealed class NonFindingsTests
{
    [Theory]
    [InlineData("Is lead two burnt?")]
    [InlineData("Is the secondary open")]
    [InlineData("What did the secondary read?")]
    public void A_question_is_no_finding(string text) => Assert.Empty(Read.Reader.Read(text));

    [Theory]
    [InlineData("I'll replace lead two.")]
    [InlineData("Lead two needs replacing.")]
    [InlineData("Replace the rotor if it's burnt.")]
    [InlineData("I want to set it to point three, point three five at most.")]
    [InlineData("Next I want to look at the cap.")]
    [InlineData("New leads would be nice.")]
    [InlineData("Check the air gap.")]
    public void A_plan_a_wish_or_an_order_is_no_finding(string text) => Assert.Empty(Read.Reader.Read(text));

    [Theory]
    [InlineData("The limit for the secondary is thirteen k.")]
    [InlineData("It should be point three millimetres.")]
    [InlineData("A good coil reads about ten k.")]
    [InlineData("We set the same gap on the last car.")]
    [InlineData("Last week the spark was weak.")]
    [InlineData("He said the timing was ten degrees.")]
    [InlineData("I haven't measured the ballast yet.")]
    [InlineData("Spec for the coil secondary is nine to thirteen k.")]
    [InlineData("For example, twelve point four volts on the supply.")]
    [InlineData("I once saw a rotor burnt right through.")]
    [InlineData("The replacement rotor hasn't come.")]
    public void Limits_other_cars_other_times_and_hearsay_are_no_findings(string text) => Assert.Empty(Read.Reader.Read(text));

    [Theory]
    [InlineData("It's three o'clock already.")]
    [InlineData("She has done eighty four thousand miles.")]
    [InlineData("The meter is on the twenty k range.")]
    [InlineData("That'll be forty pounds.")]
    [InlineData("The radiator cap is cracked.")]
    [InlineData("The brackets are cracked.")]
    [InlineData("Two of the bolts are rusty.")]
    [InlineData("Three screws are corroded.")]
    [InlineData("The cap on the pen is cracked.")]
    [InlineData("Paint code four four two.")]
    [InlineData("The bolts on the mounting are rusty.")]
    [InlineData("He's a good lead guitarist.")]
    [InlineData("It's eight degrees in here.")]
    public void Other_things_and_other_units_are_no_findings(string text) => Assert.Empty(Read.Reader.Read(text));

    [Theory]
    [InlineData("Lead two is burnt, I'll replace it.", "lead-condition @2 burnt")]
    [InlineData("Lead two is burnt and needs replacing.", "lead-condition @2 burnt")]
    [InlineData("Let me check lead five. Nine point one k.", "lead-resistance @5 9100")]
    [InlineData("It should be point three but the air gap is point five.", "pickup-air-gap 0.5")]
    [InlineData("Air gap zero point four, right at the limit.", "pickup-air-gap 0.4")]
    [InlineData("Is lead five open? No, it reads nine k.", "lead-resistance @5 9000")]
    public void What_is_found_beside_them_still_counts(string text, string findings) => Assert.Equal(findings, Read.Line(text));
}

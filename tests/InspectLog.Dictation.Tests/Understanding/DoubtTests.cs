using InspectLog.Dictation.Hearing;
using InspectLog.Dictation.Understanding;
using InspectLog.Dictation.Understanding.Doubting;

namespace InspectLog.Dictation.Tests.Understanding;

public sealed class DoubtTests
{
    [Theory]
    [InlineData("Secondary 94 k", "unlikely")]
    [InlineData("Secondary 9.4 volts", "does not fit")]
    [InlineData("Secondary just under ten k", "bound")]
    [InlineData("Secondary between nine and ten k", "range")]
    [InlineData("I think lead two is cracked", "doubt")]
    [InlineData("Gap is point nine", "may be")]
    [InlineData("Twelve point four volts", "no check was named")]
    [InlineData("Spark is weak.", "no cylinder was named")]
    [InlineData("There is any spark on four.", "without a 'no'")]
    [InlineData("Air gap is 5.51.", "no unit was said: thou or mm")]
    [InlineData("Plug two gap 1 10.", "written apart")]
    [InlineData("Replaced the cap, please.", "to be done")]
    [InlineData("Replaced the rotor if it's burnt.", "to be done")]
    public void A_doubt_says_why(string text, string word)
    {
        var findings = Read.Reader.Read(text);

        Assert.NotEmpty(findings);
        Assert.All(findings, finding => Assert.Contains(word, finding.Doubt ?? "", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("Secondary nine point four")]
    [InlineData("Air gap point three")]
    [InlineData("Lead one six point four k")]
    [InlineData("Twelve degrees before top dead centre")]
    [InlineData("Lead two is burnt")]
    public void What_is_plain_carries_no_doubt(string text) => Assert.Null(Read.Single(text).Doubt);

    [Fact]
    public void A_number_heard_with_a_low_probability_is_marked()
    {
        var finding = Assert.Single(Read.Reader.Read(Heard("Secondary 9.4 k", 0.9, 0.3, 0.9)));

        Assert.Equal(9400, finding.Value);
        Assert.Equal("'9.4' was not heard clearly", finding.Doubt);
    }

    [Theory]
    [InlineData(UnclearWords.Unclear, 0.9)]
    [InlineData(0.9, UnclearWords.UnclearNumber)]
    public void A_name_or_a_number_heard_with_a_fair_probability_is_not(double name, double number) =>
        Assert.Null(Assert.Single(Read.Reader.Read(Heard("Secondary 9.4 k", name, number, 0.9))).Doubt);

    [Theory]
    [InlineData(0.29, 0.9, "'Lead' was not heard clearly")]
    [InlineData(0.9, 0.29, "'cracked' was not heard clearly")]
    [InlineData(0.1, 0.1, "'Lead' and 'cracked' were not heard clearly")]
    public void A_name_or_condition_heard_with_a_very_low_probability_is_marked(double name, double condition, string doubt) =>
        Assert.Equal(doubt, Assert.Single(Read.Reader.Read(Heard("Lead 2 cracked", name, 0.9, condition))).Doubt);

    [Fact]
    public void Only_the_finding_with_the_unclear_number_is_marked()
    {
        var findings = Read.Reader.Read(Heard("Lead 2 burnt. Lead 3 burnt.", 0.9, 0.9, 0.9, 0.9, 0.2, 0.9));

        Assert.Collection(findings, two => Assert.Null(two.Doubt), three => Assert.NotNull(three.Doubt));
    }

    [Theory]
    [InlineData("Lead to is cracked.")]
    [InlineData("Lead for is cracked.")]
    [InlineData("Lead won is cracked.")]
    [InlineData("Supply is eleven point to.")]
    public void A_word_that_sounds_like_a_number_beside_one_is_marked(string text) =>
        Assert.NotNull(Read.Single(text).Doubt);

    // A word of the sheet misheard as another English word, beside a noun that means a condition by itself.
    [Theory]
    [InlineData("Week spark on cylinder six", "'week' was not understood")]
    [InlineData("Spark is thing on number three", "'thing' was not understood")]
    [InlineData("No wear on the rotor type", "'type' was not understood")]
    [InlineData("Leads when and two are good, the rest are cracked", "not understood")]
    [InlineData("Spark is good on run and two", "belongs")]
    [InlineData("Number run, spark is good", "belongs")]
    [InlineData("Lead five reads ten and a have k", "'k' stands without a number")]
    [InlineData("Secondary nine k. No, tan k", "'k' stands without a number")]
    [InlineData("Too fires, spark on three", "'Too' stands where a number belongs")]
    [InlineData("Clean plug five and put it back", "may be what was done")]
    [InlineData("Rotor is cleaned", "may be what was done")]
    [InlineData("Insulation cracked lead six", "may be where it is")]
    [InlineData("Air gap thirty thou", "30 sounds like 13")]
    public void A_word_not_understood_beside_a_finding_is_marked(string text, string doubt)
    {
        var findings = Read.Reader.Read(text);

        Assert.NotEmpty(findings);
        Assert.Contains(findings, finding => finding.Doubt?.Contains(doubt, StringComparison.OrdinalIgnoreCase) ?? false);
    }

    // A word that puts a finding in doubt for several reasons is named once; neighbours are named together.
    [Theory]
    [InlineData("Gaps one to free are point eight on the plugs.", "'free' stands where a number belongs")]
    [InlineData("Air gap between point two five and point free.", "said as a range; 'point free' stands where a number belongs")]
    [InlineData("Cap and rho der are clean.", "'rho der' was not understood")]
    public void A_word_not_understood_is_spoken_of_once(string text, string doubt)
    {
        var findings = Read.Reader.Read(text);

        Assert.NotEmpty(findings);
        Assert.All(findings, finding => Assert.Equal(doubt, finding.Doubt));
    }

    // By the window around a clause of a long text, what was misheard is found as it is in a short one.
    [Fact]
    public void A_misheard_phrase_is_found_in_a_long_text()
    {
        var before = string.Concat(Enumerable.Repeat("Lead two is cracked. Plug three is sooty. ", 12));
        var after = string.Concat(Enumerable.Repeat(" Tower one is clean.", 12));

        var misheard = Read.Reader.Read($"{before}Weeks park on three.{after}").Where(finding => finding.Check == "spark").ToList();

        Assert.Contains("'weeks park' was taken for 'weak spark'", Assert.Single(misheard).Doubt, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Supply is 12 point 4 bolts", 12.4)]
    [InlineData("Coil circuit 1.7 homes", 1.7)]
    [InlineData("Plug gap on plug three 35 though", 0.889)]
    [InlineData("Secondary 9 point for K", 9400)]
    public void A_word_that_sounds_like_a_unit_or_number_is_taken_for_it_and_marked(string text, double value)
    {
        var finding = Read.Single(text);

        Assert.Equal(value, finding.Value!.Value, 1e-9);
        Assert.Contains("was taken", finding.Doubt, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("No spark on for.", 4)]
    [InlineData("Spark on number won is fine", 1)]
    public void A_word_that_sounds_like_a_number_where_a_cylinder_belongs_is_taken_for_it_and_marked(string text, int cylinder)
    {
        var finding = Read.Single(text);

        Assert.Equal(cylinder, finding.Place?.Cylinder);
        Assert.Contains("was taken as", finding.Doubt, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Lead two has a burn on it near the manifold")]
    [InlineData("Volts at the ballast, eleven point four")]
    [InlineData("Spark on three, she sparks nicely")]
    [InlineData("Secondary ten point four, not ten point one, k")]
    [InlineData("Air gap fourteen thou")]
    public void Everyday_words_beside_a_finding_raise_no_doubt(string text) =>
        Assert.All(Read.Reader.Read(text), finding => Assert.Null(finding.Doubt));

    private static Transcript Heard(string text, params double[] probabilities)
    {
        var at = 0;
        var words = new List<HeardWord>();
        foreach (var (word, probability) in text.Split(' ').Zip(probabilities))
        {
            words.Add(new(word, words.Count, words.Count + 1, probability, at));
            at += word.Length + 1;
        }

        return new(text, words, SpeechFound: true, TimeSpan.FromSeconds(words.Count));
    }
}

using CsCheck;
using InspectLog.Dictation.Understanding;

namespace InspectLog.Dictation.Tests.Understanding;

/// <summary>What a speech model misheard is found again by its sound, and always marked.</summary>
public sealed class MishearingTests
{
    // "Loose", but words of the sheet that were added since sound nearer.
    [Fact]
    public void Word_near_to_several_conditions_is_marked_with_another_of_them()
    {
        var finding = Read.Single("List boot on 3.");

        Assert.Equal(("lead-condition", 3), (finding.Check, finding.Place!.Cylinder));
        Assert.Contains("sounds as near", finding.Doubt!, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Weeks park on three.", "spark @3 weak")]
    [InlineData("Capture three is corroded.", "cap-contacts @3 corroded")]
    [InlineData("Lee 2 is cracked.", "lead-condition @2 cracked")]
    [InlineData("Lee 2, 8 k.", "lead-resistance @2 8000")]
    [InlineData("Let two is burned.", "lead-condition @2 burnt")]
    [InlineData("Second airy nine point four k.", "coil-secondary-resistance 9400")]
    [InlineData("Lead 4 is bunt.", "lead-condition @4 burnt")]
    [InlineData("Air cap point three.", "pickup-air-gap 0.3")]
    [InlineData("Plug three is sudy.", "plug-condition @3 sooty")]
    [InlineData("Number 2 laid is cracked.", "lead-condition @2 cracked")]
    public void A_misheard_phrase_is_found_by_its_sound_and_marked(string text, string findings)
    {
        Assert.Equal(findings, Read.Line(text));
        Assert.Contains("was taken for", Read.Single(text).Doubt, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Coil secondary ten point sri k.", "coil-secondary-resistance 10300")]
    [InlineData("Coil secondary nie point four k.", "coil-secondary-resistance 9400")]
    [InlineData("Supply is eleven point for.", "supply-voltage 11.4")]
    [InlineData("Spark is good on sri.", "spark @3 present")]
    public void A_misheard_number_beside_others_is_found_and_marked(string text, string findings)
    {
        Assert.Equal(findings, Read.Line(text));
        Assert.NotNull(Read.Single(text).Doubt);
    }

    [Fact]
    public void The_doubt_says_what_was_heard_and_what_it_was_taken_for()
    {
        var doubt = Read.Single("Weeks park on three.").Doubt!;

        Assert.Contains("'weeks park'", doubt, StringComparison.Ordinal);
        Assert.Contains("'weak spark'", doubt, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_two_phrases_sound_alike_the_doubt_names_both() =>
        Assert.Contains("sounds as near", Read.Single("Let two is burned.").Doubt, StringComparison.Ordinal);

    [Theory]
    [InlineData("Lead two is burnt by the crank.", "lead-condition @2 burnt")]
    [InlineData("New cap fitted.", "cap-contacts replaced")]
    [InlineData("Number six has a nice fat spark.", "spark @6 present")]
    public void What_is_plain_is_left_as_it_is(string text, string findings)
    {
        Assert.Equal(findings, Read.Line(text));
        Assert.Null(Read.Single(text).Doubt);
    }

    [Theory]
    [InlineData("I've got five left.")]
    [InlineData("The list is on the bench.")]
    [InlineData("Lee said he would come at two.")]
    [InlineData("Read it to me when you're ready.")]
    [InlineData("I like the weather in May.")]
    [InlineData("They tried and died.")]
    [InlineData("Bay two is clean.")]
    [InlineData("The best boot is on the shelf.")]
    [InlineData("He lost three of them.")]
    [InlineData("Hold it up to the light.")]
    public void Ordinary_talk_stays_talk(string text) => Assert.Empty(Read.Reader.Read(text));

    // Whatever word is put in the place of one of a plain finding's: what comes of it is the same, nothing, or marked.
    [Fact]
    public void A_word_exchanged_by_sound_never_gives_an_unmarked_finding()
    {
        string[] plain = ["lead two is cracked", "plug three is sooty", "tower four is corroded", "rotor blade is pitted"];
        string[] words = ["led", "leak", "let", "read", "plum", "bluff", "power", "tire", "trick", "city", "suited", "pity", "fitted", "carotid"];
        Gen.Select(Gen.OneOf(plain), Gen.OneOf(words), Gen.Int[0, 3]).Sample((text, word, at) =>
        {
            var said = text.Split(' ');
            said[Math.Min(at, said.Length - 1)] = word;
            var expected = Read.Reader.Read(text).Select(Content).ToHashSet();
            Assert.All(
                Read.Reader.Read(string.Join(' ', said)),
                finding => Assert.True(finding.Doubt is not null || finding.Place is null || expected.Contains(Content(finding)), string.Join(' ', said)));
        }, iter: 300);
    }

    private static (string, int?, string?, string?) Content(Finding finding) =>
        (finding.Check, finding.Place?.Cylinder, finding.Condition, finding.Action);
}

using CsCheck;
using InspectLog.Dictation.Control;
using InspectLog.Dictation.Hearing;
using InspectLog.Doubts;

namespace InspectLog.Dictation.Tests.Control;

/// <summary>Which utterances are commands, which are asked for again, and which are none.</summary>
public sealed class ControlReaderTests
{
    [Theory]
    [InlineData("Confirm that.", ControlWord.Confirm)]
    [InlineData("confirm the last", ControlWord.Confirm)]
    [InlineData(" CONFIRM,  it! ", ControlWord.Confirm)]
    [InlineData("Drop that.", ControlWord.Drop)]
    [InlineData("drop the last one", ControlWord.Drop)]
    [InlineData("Take that back.", ControlWord.TakeBack)]
    [InlineData("Next check", ControlWord.NextCheck)]
    [InlineData("Go to the next check.", ControlWord.NextCheck)]
    [InlineData("Repeat that.", ControlWord.Repeat)]
    [InlineData("What was that?", ControlWord.Repeat)]
    [InlineData("Stop listening.", ControlWord.Stop)]
    public void Whole_phrase_is_a_command_however_it_is_written(string text, ControlWord word) =>
        Assert.Equal(new HeardControl(word, null), ControlReader.Read(Heard(text)));

    [Theory]
    [InlineData("The lead was confirmed.")]
    [InlineData("Confirm that lead two is burnt.")]
    [InlineData("Drop that lead on two.")]
    [InlineData("Volt drop 0.2.")]
    [InlineData("Confirm 9.4 k.")]
    [InlineData("Next check the coil.")]
    [InlineData("Coil secondary 9.4 k.")]
    [InlineData("Confirm")]
    [InlineData("We're on the last one now.")]
    [InlineData("Turn the light on.")]
    [InlineData("Stop there.")]
    [InlineData("Try again.")]
    [InlineData("")]
    [InlineData(" . ")]
    public void Anything_else_is_none(string text) => Assert.Null(ControlReader.Read(Heard(text)));

    /// <summary>Heard so by the shipped model, in noise or of an unseen voice.</summary>
    [Theory]
    [InlineData("Confirmed that.", ControlWord.Confirm)]
    [InlineData("Confirmed it.", ControlWord.Confirm)]
    [InlineData("Drop the lust.", ControlWord.Drop)]
    [InlineData("What is that?", ControlWord.Repeat)]
    [InlineData("Save that again.", ControlWord.Repeat)]
    [InlineData("Keep that back.", ControlWord.TakeBack)]
    [InlineData("Necks checked.", ControlWord.NextCheck)]
    [InlineData("Next shaft.", ControlWord.NextCheck)]
    [InlineData("Rock that.", ControlWord.Drop)]
    [InlineData("Confirmed gap.", ControlWord.Confirm)]
    [InlineData("It's hot listening.", ControlWord.Stop)]
    public void Mishearing_is_asked_for_again_and_says_what_was_heard(string text, ControlWord word)
    {
        var heard = ControlReader.Read(Heard(text))!;

        Assert.Equal(word, heard.Word);
        Assert.Equal(new CommandHeardAs(text), heard.Doubt);
    }

    [Theory]
    [InlineData(0.29, true)]
    [InlineData(0.31, false)]
    public void Faint_command_is_asked_for_again(double probability, bool asked) =>
        Assert.Equal(asked, ControlReader.Read(Heard("Confirm that.", probability))!.Doubt is CommandFaint);

    [Fact]
    public void Command_without_word_probabilities_is_asked_for_again() =>
        Assert.NotNull(ControlReader.Read(new Transcript("Drop that.", [], true, TimeSpan.FromSeconds(1)))!.Doubt);

    [Fact]
    public void Phrase_that_lost_a_letter_is_asked_about_as_the_same_command()
    {
        foreach (var word in Enum.GetValues<ControlWord>())
        {
            var text = ControlPhrases.Of(word);
            Assert.Equal(word, ControlReader.Read(Heard(text[1..]))!.Word);
            Assert.Equal(word, ControlReader.Read(Heard(text[..^1]))!.Word);
        }
    }

    [Fact]
    public void Any_text_is_read_and_only_a_whole_phrase_is_obeyed() =>
        Gen.String.Sample(text =>
        {
            var heard = ControlReader.Read(Heard(text));
            var letters = string.Join(' ', text.ToLowerInvariant().Split([.. text.Where(c => !char.IsLetter(c))], StringSplitOptions.RemoveEmptyEntries));
            return heard is not { Doubt: null } || letters == ControlPhrases.Of(heard.Word);
        });

    private static Transcript Heard(string text, double probability = 0.8) => new(
        text, [.. text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select((word, i) => new HeardWord(word, i, i + 1, probability, 0))], true, TimeSpan.FromSeconds(1));
}

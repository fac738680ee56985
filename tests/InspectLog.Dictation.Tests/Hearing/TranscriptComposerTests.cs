using InspectLog.Dictation.Hearing;

namespace InspectLog.Dictation.Tests.Hearing;

public sealed class TranscriptComposerTests
{
    [Fact]
    public void Tokens_are_joined_to_words_with_the_lowest_probability()
    {
        var transcript = Compose("Secondary 9.4 kΩ.", (" Second", 0.9), ("ary", 0.8), (" 9", 0.9), (".", 0.9), ("4", 0.5), (" k", 0.9), ("\uFFFD", 0.7), ("\uFFFD", 0.6), (".", 1));
        Assert.Equal(["Secondary", "9.4", "kΩ."], transcript.Words.Select(word => word.Text));
        Assert.Equal([0.8, 0.5, 0.6], transcript.Words.Select(word => Math.Round(word.Probability, 6)));
        Assert.Equal("Secondary 9.4 kΩ.", transcript.Text);
    }

    [Fact]
    public void Positions_point_into_the_text()
    {
        var transcript = Compose("Lead 3 burnt.", (" Lead", 1), (" 3", 1), (" burnt", 1), (".", 1));
        Assert.All(transcript.Words, word => Assert.Equal(word.Text, transcript.Text.Substring(word.At, word.Text.Length)));
    }

    [Fact]
    public void Words_that_do_not_match_the_tokens_get_the_times_and_doubt_of_the_whole_clip()
    {
        var transcript = Compose("Lead 3 burnt", (" Lead 3", 0.9), (" burnt", 0.3));
        Assert.Equal([0.3, 0.3, 0.3], transcript.Words.Select(word => Math.Round(word.Probability, 6)));
    }

    [Fact]
    public void Times_never_run_backwards_or_over_the_end()
    {
        var clip = new SpeechClip([new(0, 16_000)]);
        var composer = new TranscriptComposer(TimeSpan.FromSeconds(1));
        composer.Add(clip, new DecodedClip("a b c", [new(" a", 0.5, 0.6, 0), new(" b", 0.2, 0.3, 0), new(" c", 0.9, 7, 0)]));
        var words = composer.Build().Words;
        Assert.Equal([0.5, 0.5, 0.9], words.Select(word => word.Start));
        Assert.Equal([0.6, 0.5, 1.0], words.Select(word => word.End));
    }

    [Theory]
    [InlineData("[Music]", "")]
    [InlineData("(wind blowing)", "")]
    [InlineData("[ Silence ]", "")]
    [InlineData("*sighs* Lead 3 burnt.", "Lead 3 burnt.")]
    [InlineData("Lead 3 burnt. (engine revving)", "Lead 3 burnt.")]
    [InlineData("♪ ♪", "")]
    [InlineData("...", "")]
    [InlineData("Lead (number 3) burnt.", "Lead (number 3) burnt.")]
    [InlineData("Lead ( burnt", "Lead burnt")]
    public void Remarks_about_sounds_are_dropped_and_are_no_speech(string written, string kept)
    {
        var transcript = Compose(written, [.. written.Split(' ').Select(word => (" " + word, 0.9))]);
        Assert.Equal(kept, transcript.Text);
        Assert.Equal(kept.Length > 0, transcript.SpeechFound);
    }

    private static Transcript Compose(string text, params (string Text, double Probability)[] tokens)
    {
        var pieces = tokens.Select((token, i) => new TextPiece(token.Text, i * 0.1, (i + 1) * 0.1, Math.Log(token.Probability))).ToList();
        var composer = new TranscriptComposer(TimeSpan.FromSeconds(5));
        composer.Add(new SpeechClip([new(0, 5 * 16_000)]), new DecodedClip(text, pieces));
        return composer.Build();
    }
}

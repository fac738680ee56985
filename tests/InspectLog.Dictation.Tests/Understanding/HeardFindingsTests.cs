using InspectLog.Checks;
using InspectLog.Dictation.Hearing;
using InspectLog.Dictation.Understanding;

namespace InspectLog.Dictation.Tests.Understanding;

public sealed class HeardFindingsTests
{
    private static readonly FindingReader Reader = new(BuiltInSheets.Find(BuiltInSheets.IgnitionBreakerless6)!);

    [Fact]
    public void Figure_heard_unclearly_is_doubted_in_words_and_others_are_not()
    {
        var findings = Reader.Read(Heard(("Secondary", 0.9), ("9.4", 0.4), ("k.", 0.9), ("Plug", 0.9), ("2", 0.9), ("is", 0.3), ("wet.", 0.9)), null);
        Assert.Equal(["\"9.4\" was heard unclearly", null], findings.Select(finding => finding.Doubt));
    }

    [Fact]
    public void Place_heard_unclearly_is_doubted() => Assert.Equal(
        "\"2\" was heard unclearly",
        Assert.Single(Reader.Read(Heard(("Plug", 0.9), ("2", 0.59), ("is", 0.9), ("wet.", 0.9)), null)).Doubt);

    [Fact]
    public void Figures_heard_clearly_are_read_as_the_text_is()
    {
        var heard = Heard(("Secondary", 0.1), ("9.4", HeardFindings.ClearFigure), ("k.", 0.1));
        Assert.Equal(Reader.Read(heard.Text), Reader.Read(heard, null));
    }

    private static Transcript Heard(params (string Text, double Probability)[] words)
    {
        var at = 0;
        var heard = new List<HeardWord>();
        foreach (var (text, probability) in words)
        {
            heard.Add(new HeardWord(text, 0, 0, probability, at));
            at += text.Length + 1;
        }

        return new Transcript(string.Join(' ', words.Select(word => word.Text)), heard, true, TimeSpan.FromSeconds(3));
    }
}

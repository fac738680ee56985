using CsCheck;
using InspectLog.App.Ui;

namespace InspectLog.App.Tests.Ui;

public sealed class MarkedTextTests
{
    [Fact]
    public void Pieces_mark_the_spans_and_keep_the_rest()
    {
        var pieces = MarkedText.Pieces("coil 0.8 ohms", [(5, 8)]).ToList();

        Assert.Equal([new TextPiece("coil ", false), new("0.8", true), new(" ohms", false)], pieces);
    }

    [Fact]
    public void Pieces_together_are_always_the_text()
    {
        var spans = Gen.Select(Gen.Int[-5, 30], Gen.Int[-5, 30]).List[0, 6];
        Gen.Select(Gen.String[Gen.Char.AlphaNumeric, 0, 20], spans).Sample((text, marked) =>
            Assert.Equal(text, string.Concat(MarkedText.Pieces(text, marked).Select(piece => piece.Text))));
    }

    [Fact]
    public void Overlapping_spans_are_joined_without_repeating_text()
    {
        var pieces = MarkedText.Pieces("abcdef", [(1, 4), (2, 6)]).ToList();

        Assert.Equal([new TextPiece("a", false), new("bcd", true), new("ef", true)], pieces);
    }
}

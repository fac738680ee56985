using InspectLog.App.Bench.Then;
using InspectLog.Photos.Alignment;

namespace InspectLog.App.Tests.Ui;

/// <summary>How the move of an earlier photo is told.</summary>
public sealed class OverDrawingTests
{
    [Theory]
    [InlineData(0, 1, 0, 0, "not moved at all")]
    [InlineData(1.24, 1, 0, 0, "turned by 1.2° to the right")]
    [InlineData(-3, 0.956, 0, 0, "turned by 3.0° to the left and made 4 % smaller")]
    [InlineData(2, 1.1, 0.03, -0.04, "turned by 2.0° to the right, made 10 % larger and shifted by 5 % of the width")]
    public void Move_in_words(double turn, double scale, double right, double down, string words) =>
        Assert.Equal(words, new OverDrawing(null!, null!, new ViewTransform(turn, scale, right, down, 0.9)).Words);
}

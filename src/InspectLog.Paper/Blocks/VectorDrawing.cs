namespace InspectLog.Paper.Blocks;

/// <summary>A drawing of lines, areas and labels.</summary>
/// <param name="Width">Width in its own measure.</param>
/// <param name="Height">Height in its own measure.</param>
/// <param name="Shapes">What is drawn, the lowest first.</param>
public sealed record VectorDrawing(double Width, double Height, IReadOnlyList<Shape> Shapes);

/// <summary>A part of a drawing.</summary>
public abstract record Shape
{
    /// <summary>Lines and areas.</summary>
    /// <param name="Steps">How the pen goes.</param>
    public sealed record Outline(IReadOnlyList<Step> Steps) : Shape
    {
        /// <summary>What the areas are filled with; null for nothing.</summary>
        public Ink? Fill { get; init; }

        /// <summary>Colour of the lines; null for none.</summary>
        public Ink? Stroke { get; init; }

        /// <summary>Breadth of the lines in the drawing's measure.</summary>
        public double Breadth { get; init; } = 1;
    }

    /// <summary>A text.</summary>
    /// <param name="X">Where it stands, by its anchor.</param>
    /// <param name="Baseline">Where its letters stand.</param>
    /// <param name="Anchor">Whether it starts, is in the middle or ends there.</param>
    /// <param name="Words">The text.</param>
    /// <param name="Size">Size of its letters in the drawing's measure.</param>
    /// <param name="Ink">Its colour.</param>
    public sealed record Label(double X, double Baseline, TextAnchor Anchor, string Words, double Size, Ink Ink) : Shape;
}

/// <summary>Which part of a label stands at its place.</summary>
public enum TextAnchor
{
    /// <summary>Its left end.</summary>
    Start,

    /// <summary>Its middle.</summary>
    Middle,

    /// <summary>Its right end.</summary>
    End,
}

/// <summary>A point of a drawing.</summary>
/// <param name="X">To the right.</param>
/// <param name="Y">Downwards.</param>
public readonly record struct Spot(double X, double Y);

/// <summary>A step of the pen.</summary>
public abstract record Step
{
    /// <summary>Lifts the pen.</summary>
    /// <param name="To">Where to.</param>
    public sealed record Move(Spot To) : Step;

    /// <summary>A straight line.</summary>
    /// <param name="To">Where to.</param>
    public sealed record Line(Spot To) : Step;

    /// <summary>A cubic Bézier curve.</summary>
    /// <param name="First">Its first control point.</param>
    /// <param name="Second">Its second one.</param>
    /// <param name="To">Where to.</param>
    public sealed record Curve(Spot First, Spot Second, Spot To) : Step;

    /// <summary>Back to where the pen was put down.</summary>
    public sealed record Close : Step;
}

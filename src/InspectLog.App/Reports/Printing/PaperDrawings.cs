using System.Globalization;
using AngleSharp.Dom;
using InspectLog.Paper.Blocks;

namespace InspectLog.App.Reports.Printing;

/// <summary>Takes over the drawings of a report, line by line: what <c>strip.css</c> says of their classes, for print. Pure.
/// </summary>
internal static class PaperDrawings
{
    private static readonly Ink White = Ink.Of(0xFFFFFF);
    private static readonly Ink Span = Ink.Of(0x2F6B52);
    private static readonly Ink Outside = Ink.Of(0x9C3B20);
    private static readonly Ink Accent = Ink.Of(0x174F86);
    private static readonly Ink Bell = Ink.Of(0xD3DCE4);
    private static readonly Ink Edge = Ink.Of(0x7D868C);

    /// <summary>Where a dark edge about light words is drawn, in the measure of marks.</summary>
    private static readonly IReadOnlyList<Spot> Edges = [new(-3, 0), new(3, 0), new(0, -3), new(0, 3), new(-2, -2), new(2, -2), new(-2, 2), new(2, 2)];

    /// <summary>How the parts of drawings are drawn, by their class.</summary>
    private static readonly IReadOnlyDictionary<string, Shape.Outline> Pens = new Dictionary<string, Shape.Outline>
    {
        ["axis"] = new([]) { Stroke = Edge, Breadth = 1.5 },
        ["span"] = new([]) { Fill = Span },
        ["limit"] = new([]) { Stroke = Span, Breadth = 2 },
        ["onward"] = new([]) { Stroke = Span, Breadth = 2 },
        ["notch"] = new([]) { Fill = White, Stroke = Span, Breadth = 1.5 },
        ["inside"] = new([]) { Fill = Bell, Stroke = Accent, Breadth = 1.5 },
        ["outside"] = new([]) { Stroke = Outside, Breadth = 1.5 },
        ["hatch"] = new([]) { Stroke = Outside, Breadth = 1.2 },
        ["drop"] = new([]) { Stroke = Ink.Black, Breadth = 3 },
        ["beyond"] = new([]) { Fill = Ink.Black },
        ["before"] = new([]) { Stroke = PaperLooks.Soft, Breadth = 1.5 },
        ["qr-ground"] = new([]) { Fill = White },
        ["qr-dots"] = new([]) { Fill = Ink.Black },
    };

    /// <summary>A drawing that stands by itself.</summary>
    public static VectorDrawing Of(IElement svg) =>
        Of(svg, shape => Pens.GetValueOrDefault(shape.ClassName ?? "") ?? new([]) { Fill = Accent });

    /// <summary>The mark before a decision.</summary>
    public static VectorDrawing MarkOf(IElement svg)
    {
        var ink = PaperLooks.MarkOf(svg);
        return Of(svg, shape => new([]) { Stroke = ink, Breadth = 2, Fill = shape.ClassList.Contains("full") ? ink : null });
    }

    /// <summary>What is marked over a photo: lines in their own colours, and words that are seen on every ground.</summary>
    public static VectorDrawing MarksOf(IElement svg) => Of(svg, svg.QuerySelectorAll("path, text").SelectMany(MarkShapes));

    private static IEnumerable<Shape?> MarkShapes(IElement shape) => shape.LocalName == "text"
        ? [.. Edges.Select(by => LabelOf(shape, by, Ink.Of(0x111111))), LabelOf(shape, new(0, 0), White)]
        : [ShapeOf(shape, line => new([]) { Stroke = ColourOf(line.GetAttribute("stroke")!), Breadth = Of(line, "stroke-width") })];

    private static Shape.Label LabelOf(IElement text, Spot by, Ink ink) =>
        new(Of(text, "x") + by.X, Of(text, "y") + by.Y, AnchorOf(text), text.TextContent, Of(text.ParentElement!, "font-size"), ink);

    // Three figures, as the marks have them.
    private static Ink ColourOf(string colour) => Ink.Of(int.Parse(string.Concat(colour.Skip(1).SelectMany(digit => new[] { digit, digit })), NumberStyles.HexNumber, CultureInfo.InvariantCulture));

    private static VectorDrawing Of(IElement svg, Func<IElement, Shape.Outline> penOf) => Of(svg, svg.Children.Select(shape => ShapeOf(shape, penOf)));

    private static VectorDrawing Of(IElement svg, IEnumerable<Shape?> shapes)
    {
        double[] box = [.. svg.GetAttribute("viewBox")!.Split(' ').Select(Number)];
        return new(box[2], box[3], [.. shapes.OfType<Shape>()]);
    }

    private static Shape? ShapeOf(IElement shape, Func<IElement, Shape.Outline> penOf) => shape.LocalName switch
    {
        "path" => penOf(shape) with { Steps = PathReader.Read(shape.GetAttribute("d") ?? "") },
        "rect" => penOf(shape) with { Steps = Rectangle(Of(shape, "x"), Of(shape, "y"), Of(shape, "width"), Of(shape, "height")) },
        "circle" => penOf(shape) with { Steps = Circle(Of(shape, "cx"), Of(shape, "cy"), Of(shape, "r")) },
        "text" => new Shape.Label(Of(shape, "x"), Of(shape, "y"), AnchorOf(shape), shape.TextContent, 14, PaperLooks.Soft),
        _ => null,
    };

    private static TextAnchor AnchorOf(IElement text) => text.GetAttribute("text-anchor") switch
    {
        "middle" => TextAnchor.Middle,
        "end" => TextAnchor.End,
        _ => TextAnchor.Start,
    };

    private static IReadOnlyList<Step> Rectangle(double x, double y, double width, double height) =>
    [
        new Step.Move(new(x, y)), new Step.Line(new(x + width, y)), new Step.Line(new(x + width, y + height)),
        new Step.Line(new(x, y + height)), new Step.Close(),
    ];

    private static IReadOnlyList<Step> Circle(double x, double y, double radius) => PathReader.Read(
        string.Create(CultureInfo.InvariantCulture, $"M{x - radius:0.###} {y:0.###}a{radius:0.###} {radius:0.###} 0 1 1 {2 * radius:0.###} 0a{radius:0.###} {radius:0.###} 0 1 1 {-2 * radius:0.###} 0z"));

    private static double Of(IElement shape, string attribute) => Number(shape.GetAttribute(attribute) ?? "0");

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}

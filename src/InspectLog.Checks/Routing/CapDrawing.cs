using System.Globalization;
using System.Xml.Linq;

namespace InspectLog.Checks.Routing;

/// <summary>A distributor cap seen from above, ready to be drawn, with the same facts as text.</summary>
/// <param name="Towers">The towers, clockwise from the top.</param>
/// <param name="Facts">The drawing in sentences, one for each tower, one where all leads are moved round alike, and one for each swap.</param>
/// <param name="Turn">Which way the rotor turns.</param>
public sealed record CapDrawing(IReadOnlyList<DrawnTower> Towers, IReadOnlyList<string> Facts, RotorTurn Turn)
{
    // Measures of the drawing. The text is as high as the page's own when it is drawn 240 pixels wide.
    private const int TowersFromMiddle = 86;
    private const int NumbersFromMiddle = 54;
    private const int TextHeight = 14;

    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    /// <summary>The drawing of a routing. Tower 1 is drawn at the top.</summary>
    public static CapDrawing Of(LeadRouting routing) => new(
        [.. Enumerable.Range(1, routing.Layout.Cylinders).Select(tower => Tower(routing, tower))],
        [.. Enumerable.Range(1, routing.Layout.Cylinders).Select(tower => Fact(routing, tower)),
            .. AllMoved(routing),
            .. routing.Swaps.Select(swap => $"Swap the leads on towers {swap.First} and {swap.Second}.")],
        routing.Layout.Turn);

    /// <summary>The drawing as an SVG element, 240 units square: in each tower the cylinder of its lead, towards the
    /// middle the number of the tower. Colours come from the page by class names: <c>cap</c>, <c>tower</c>,
    /// <c>tower wrong</c>, <c>ring</c>, <c>lead</c>, <c>number</c>, <c>turn</c>. A wrong tower also has a second ring
    /// and a cross sign, so that nothing is told by colour alone.</summary>
    public string ToSvg()
    {
        var wrong = Towers.Count(tower => tower.Wrong);
        var name = $"Distributor cap from above, rotor turning {Turn.ToString().ToLowerInvariant()}, "
            + (wrong == 0 ? "all leads right" : $"{wrong} of {Towers.Count} leads wrong");
        return new XElement(Svg + "svg",
            new XAttribute("viewBox", "-120 -120 240 240"),
            new XAttribute("role", "img"),
            new XAttribute("class", "cap-drawing"),
            new XElement(Svg + "title", name),
            new XElement(Svg + "desc", string.Join(' ', Facts)),
            Circle("cap", 0, 0, 112),
            TurnArrow(),
            Towers.Select(Draw)).ToString(SaveOptions.DisableFormatting);
    }

    private static DrawnTower Tower(LeadRouting routing, int tower)
    {
        var clockwiseFromTop = 2 * Math.PI * (tower - 1) / routing.Layout.Cylinders;
        return new DrawnTower(
            tower,
            Math.Sin(clockwiseFromTop),
            -Math.Cos(clockwiseFromTop),
            routing.Layout.CylinderOfTower[tower - 1],
            routing.Found[tower - 1]);
    }

    private static string Fact(LeadRouting routing, int tower)
    {
        var effect = routing.Effects.FirstOrDefault(effect => effect.Tower == tower);
        var start = $"Tower {tower} has the lead of cylinder {routing.Found[tower - 1]}";
        return effect is null ? $"{start}: right." : $"{start}: wrong, {effect.Text}.";
    }

    private static IEnumerable<string> AllMoved(LeadRouting routing)
    {
        if (routing.AllMovedBy is { } by)
        {
            yield return $"Every lead is {by} {(by == 1 ? "tower" : "towers")} further clockwise than it belongs. Before moving "
                + $"any, make sure that tower {routing.Layout.FirstTower} serves cylinder {routing.Layout.FiringOrder[0]}.";
        }
    }

    private static XElement Draw(DrawnTower tower)
    {
        var (x, y) = (TowersFromMiddle * tower.X, TowersFromMiddle * tower.Y);
        return new XElement(Svg + "g",
            new XAttribute("class", tower.Wrong ? "tower wrong" : "tower"),
            Circle(null, x, y, 16),
            tower.Wrong ? Circle("ring", x, y, 20) : null,
            Text("lead", x, y, tower.Wrong ? $"{tower.FoundCylinder}✕" : $"{tower.FoundCylinder}"),
            Text("number", NumbersFromMiddle * tower.X, NumbersFromMiddle * tower.Y, $"{tower.Tower}"));
    }

    private XElement TurnArrow()
    {
        var (sweep, tip) = Turn == RotorTurn.Clockwise ? (1, 1) : (0, -1);
        return new XElement(Svg + "path",
            new XAttribute("class", "turn"),
            new XAttribute("fill", "none"),
            new XAttribute("d",
                $"M {-tip * 24} 18 A 30 30 0 1 {sweep} {tip * 24} 18 m {tip * 8} -4 l {-tip * 8} 4 l {tip} -9"));
    }

    private static XElement Text(string name, double x, double middle, string text) =>
        new(Svg + "text",
            new XAttribute("class", name),
            new XAttribute("x", Number(x)),
            new XAttribute("y", Number(middle + (TextHeight / 3.0))),
            new XAttribute("font-size", TextHeight),
            new XAttribute("text-anchor", "middle"),
            text);

    private static XElement Circle(string? name, double x, double y, double radius) =>
        new(Svg + "circle",
            name is null ? null : new XAttribute("class", name),
            new XAttribute("cx", Number(x)),
            new XAttribute("cy", Number(y)),
            new XAttribute("r", Number(radius)));

    private static string Number(double value) => Math.Round(value, 2).ToString("0.##", CultureInfo.InvariantCulture);
}

/// <summary>A tower in the drawing.</summary>
/// <param name="Tower">Its number.</param>
/// <param name="X">From the middle to the right, the ring of towers having radius 1.</param>
/// <param name="Y">From the middle downwards, the ring of towers having radius 1.</param>
/// <param name="TurnOf">The cylinder whose turn it is there.</param>
/// <param name="FoundCylinder">The cylinder of the lead found there.</param>
public sealed record DrawnTower(int Tower, double X, double Y, int TurnOf, int FoundCylinder)
{
    /// <summary>Whether the lead belongs elsewhere.</summary>
    public bool Wrong => TurnOf != FoundCylinder;
}

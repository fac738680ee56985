using System.Xml.Linq;
using InspectLog.Checks.Routing;

namespace InspectLog.Checks.Tests.Routing;

public class CapDrawingTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    [Fact]
    public void Towers_stand_clockwise_from_the_top()
    {
        var towers = Drawing(RotorTurn.Anticlockwise, 1, 4, 3, 2).Towers;

        (int, int)[] places = [(0, -1), (1, 0), (0, 1), (-1, 0)];
        Assert.Equal(places, towers.Select(tower => ((int)Math.Round(tower.X), (int)Math.Round(tower.Y))));
    }

    [Fact]
    public void Facts_say_what_the_drawing_shows() =>
        Assert.Equal(
            [
                "Tower 1 has the lead of cylinder 1: right.",
                "Tower 2 has the lead of cylinder 4: wrong, fires cylinder 4 on cylinder 3's turn.",
                "Tower 3 has the lead of cylinder 3: wrong, fires cylinder 3 on cylinder 4's turn.",
                "Tower 4 has the lead of cylinder 2: right.",
                "Swap the leads on towers 2 and 3.",
            ],
            Drawing(RotorTurn.Clockwise, 1, 4, 3, 2).Facts);

    [Fact]
    public void Svg_has_a_name_and_marks_wrong_towers_by_shape_and_sign()
    {
        var svg = XElement.Parse(Drawing(RotorTurn.Clockwise, 1, 4, 3, 2).ToSvg());

        Assert.Equal(
            "Distributor cap from above, rotor turning clockwise, 2 of 4 leads wrong",
            svg.Element(Svg + "title")!.Value);
        Assert.Contains("Swap the leads on towers 2", svg.Element(Svg + "desc")!.Value, StringComparison.Ordinal);
        var towers = svg.Elements(Svg + "g").ToList();
        Assert.Equal(
            ["1 1", "4✕ 2", "3✕ 3", "2 4"],
            towers.Select(tower => string.Join(' ', tower.Elements(Svg + "text").Select(text => text.Value))));
        Assert.Equal([1, 2, 2, 1], towers.Select(tower => tower.Elements(Svg + "circle").Count()));
    }

    [Fact]
    public void Svg_of_leads_as_they_belong_says_so() =>
        Assert.EndsWith(
            "all leads right",
            XElement.Parse(Drawing(RotorTurn.Anticlockwise, 1, 2, 4, 3).ToSvg()).Element(Svg + "title")!.Value,
            StringComparison.Ordinal);

    // The page's content policy allows no style attributes and no scripts.
    [Fact]
    public void Svg_carries_no_style_and_no_script()
    {
        var svg = XElement.Parse(Drawing(RotorTurn.Clockwise, 1, 4, 3, 2).ToSvg());

        Assert.DoesNotContain(svg.DescendantsAndSelf().Attributes(), attribute =>
            attribute.Name == "style" || attribute.Name.LocalName.StartsWith("on", StringComparison.Ordinal));
        Assert.Empty(svg.Descendants(Svg + "script"));
    }

    private static CapDrawing Drawing(RotorTurn turn, params int[] found) =>
        CapDrawing.Of(LeadRouting.Of(CapLayout.Of([1, 3, 4, 2], turn, 1), found));
}

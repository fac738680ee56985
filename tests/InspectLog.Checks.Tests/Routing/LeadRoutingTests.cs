using InspectLog.Checks.Routing;

namespace InspectLog.Checks.Tests.Routing;

public class LeadRoutingTests
{
    // Firing order of an inline six: g-wonlinetextbooks.com/auto-engine-repair-2021/136.
    private static readonly int[] InlineSix = [1, 5, 3, 6, 2, 4];

    // The worked case of the verb's description: the leads of cylinders 2 and 4 are exchanged.
    [Fact]
    public void Two_exchanged_leads_need_one_swap()
    {
        var routing = LeadRouting.Of(CapLayout.Of(InlineSix, RotorTurn.Clockwise, 1), [1, 5, 3, 6, 4, 2]);

        Assert.Equal([5, 6], routing.Wrong);
        Assert.Equal([new TowerSwap(5, 6)], routing.Swaps);
        Assert.Equal(
            ["fires cylinder 4 on cylinder 2's turn", "fires cylinder 2 on cylinder 4's turn"],
            routing.Effects.Select(effect => effect.Text));
    }

    [Fact]
    public void Leads_as_they_belong_need_nothing()
    {
        var routing = LeadRouting.Of(CapLayout.Of(InlineSix, RotorTurn.Clockwise, 1), InlineSix);

        Assert.Empty(routing.Wrong);
        Assert.Empty(routing.Swaps);
        Assert.Empty(routing.Effects);
    }

    // By hand: anticlockwise from tower 2, the order 1-5-3-6-2-4 falls on towers 2, 1, 6, 5, 4, 3.
    [Fact]
    public void Anticlockwise_layout_counts_towers_down_from_the_first()
    {
        var layout = CapLayout.Of(InlineSix, RotorTurn.Anticlockwise, 2);

        Assert.Equal([5, 1, 4, 2, 6, 3], layout.CylinderOfTower);
    }

    [Fact]
    public void Clockwise_layout_counts_towers_up_from_the_first() =>
        Assert.Equal([6, 2, 4, 1, 5, 3], CapLayout.Of(InlineSix, RotorTurn.Clockwise, 4).CylinderOfTower);

    // By hand: the order 1-5-3-6-2-4 moved on by one and by five towers; two leads exchanged are no such move.
    [Theory]
    [InlineData(new[] { 4, 1, 5, 3, 6, 2 }, 1, "Every lead is 1 tower further clockwise than it belongs.")]
    [InlineData(new[] { 5, 3, 6, 2, 4, 1 }, 5, "Every lead is 5 towers further clockwise than it belongs.")]
    [InlineData(new[] { 1, 5, 3, 6, 4, 2 }, null, null)]
    [InlineData(new[] { 1, 5, 3, 6, 2, 4 }, null, null)]
    public void Leads_all_moved_round_alike_are_told(int[] found, int? by, string? says)
    {
        var routing = LeadRouting.Of(CapLayout.Of(InlineSix, RotorTurn.Clockwise, 1), found);

        Assert.Equal(by, routing.AllMovedBy);
        var told = CapDrawing.Of(routing).Facts.Where(fact => fact.StartsWith("Every lead", StringComparison.Ordinal)).ToList();
        Assert.Equal(says is null ? 0 : 1, told.Count);
        Assert.All(told, fact => Assert.StartsWith(says!, fact, StringComparison.Ordinal));
        Assert.All(told, fact => Assert.EndsWith("make sure that tower 1 serves cylinder 1.", fact, StringComparison.Ordinal));
    }

    // By hand: a ring of three wrong leads takes two swaps, done in order.
    [Fact]
    public void Ring_of_three_takes_two_swaps()
    {
        var routing = LeadRouting.Of(CapLayout.Of(InlineSix, RotorTurn.Clockwise, 1), [5, 3, 1, 6, 2, 4]);

        Assert.Equal([1, 2, 3], routing.Wrong);
        Assert.Equal([new TowerSwap(1, 3), new TowerSwap(2, 3)], routing.Swaps);
    }

    // By hand: with 1-5-3-6-2-4 and 120 degrees between sparks, cylinder 4 fires last and cylinder 2 before it.
    [Theory]
    [InlineData(new[] { 1, 5, 3, 6, 4, 2 }, 5, 4, 600, "compression stroke")] // 4 on 2's turn: one place early
    [InlineData(new[] { 1, 5, 3, 6, 4, 2 }, 6, 2, 120, "Late in its power stroke")]
    [InlineData(new[] { 3, 5, 1, 6, 2, 4 }, 3, 1, 240, "exhaust stroke: no power, and")]
    [InlineData(new[] { 3, 5, 1, 6, 2, 4 }, 1, 3, 480, "inlet stroke")]
    [InlineData(new[] { 6, 5, 3, 1, 2, 4 }, 1, 6, 360, "end of its exhaust stroke")] // companions, one turn apart
    public void Effect_says_the_stroke_the_spark_falls_in(int[] found, int tower, int fires, double late, string says)
    {
        var routing = LeadRouting.Of(CapLayout.Of(InlineSix, RotorTurn.Clockwise, 1), found);

        var effect = routing.Effects.Single(effect => effect.Tower == tower);
        Assert.Equal((fires, late), (effect.Fires, effect.DegreesLate));
        Assert.Contains(says, effect.Consequence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(new[] { 1, 5, 3, 6, 2 }, "named for 5 towers")]
    [InlineData(new[] { 1, 5, 3, 6, 2, 7 }, "Tower 6 cannot have the lead of cylinder 7")]
    [InlineData(new[] { 0, 5, 3, 6, 2, 4 }, "Tower 1 cannot have the lead of cylinder 0")]
    [InlineData(new[] { 1, 5, 3, 6, 5, 4 }, "Cylinder 5 is named for towers 2 and 5")]
    public void Leads_that_are_not_each_cylinder_once_are_refused(int[] found, string says) =>
        Assert.Contains(
            says,
            Assert.Throws<ArgumentException>(
                () => LeadRouting.Of(CapLayout.Of(InlineSix, RotorTurn.Clockwise, 1), found)).Message,
            StringComparison.Ordinal);
}

using InspectLog.Checks.Routing;

namespace InspectLog.Checks.Tests.Routing;

public class FiringOrderTests
{
    // Inline six and V6: g-wonlinetextbooks.com/auto-engine-repair-2021/136. V8s: the same and fordfe.info/FiringOrder.
    // Inline and flat four: common practice, no source. Companions fire one turn of the crankshaft apart.
    [Theory]
    [InlineData("1-3-4-2", "1-4 3-2")]
    [InlineData("1-4-3-2", "1-3 4-2")]
    [InlineData("1-5-3-6-2-4", "1-6 5-2 3-4")]
    [InlineData("1-6-5-4-3-2", "1-4 6-3 5-2")]
    [InlineData("1-8-4-3-6-5-7-2", "1-6 8-5 4-7 3-2")]
    [InlineData("1-5-4-2-6-3-7-8", "1-6 5-3 4-7 2-8")]
    [InlineData("1-3-7-2-6-5-4-8", "1-6 3-5 7-4 2-8")]
    public void Published_order_makes_a_layout_with_its_companions(string order, string companions)
    {
        var firing = CapLayout.Of(FiringOrder.Parse(order), RotorTurn.Clockwise, 1).FiringOrder;

        var half = firing.Count / 2;
        var pairs = Enumerable.Range(0, half).Select(place => $"{firing[place]}-{firing[place + half]}");
        Assert.Equal(companions, string.Join(' ', pairs));
    }

    [Theory]
    [InlineData("1-5-3-6-2-4")]
    [InlineData("1,5,3,6,2,4")]
    [InlineData(" 1 5 3 6 2 4 ")]
    [InlineData("1 - 5 - 3 - 6 - 2 - 4")]
    [InlineData("1–5–3–6–2–4")]
    [InlineData("153624")]
    public void Order_is_read_as_people_write_it(string text) =>
        Assert.Equal([1, 5, 3, 6, 2, 4], FiringOrder.Parse(text));

    [Fact]
    public void Order_of_twelve_is_read_and_laid_out()
    {
        var order = FiringOrder.Parse("1-7-5-11-3-9-6-12-2-8-4-10");

        Assert.Equal(order, CapLayout.Of(order, RotorTurn.Clockwise, 1).CylinderOfTower);
    }

    [Theory]
    [InlineData("1/6-5/2-3/4")]
    [InlineData("1+4, 2+3")]
    [InlineData("1&4 3&2")]
    public void Cylinders_in_pairs_are_refused_as_wasted_spark(string text) =>
        Assert.Contains(
            "wasted spark",
            Assert.Throws<ArgumentException>(() => FiringOrder.Parse(text)).Message,
            StringComparison.Ordinal);

    [Theory]
    [InlineData("1-2-3-1-2-3")]
    [InlineData("1-3-1-3")]
    public void Round_written_twice_over_is_refused_as_wasted_spark(string text) =>
        Assert.Contains("wasted spark", Refusal(FiringOrder.Parse(text), 1), StringComparison.Ordinal);

    [Theory]
    [InlineData("", "Name the cylinders in order")]
    [InlineData("one-two", "'one' is not a cylinder number")]
    [InlineData("1-0-3", "'0' is not a cylinder number")]
    [InlineData("1-5-3-6-2-99999999999", "'99999999999' is not a cylinder number")]
    public void Text_that_is_no_list_of_cylinders_is_refused(string text, string says) =>
        Assert.Contains(
            says, Assert.Throws<ArgumentException>(() => FiringOrder.Parse(text)).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("1-2", 1, "names 2 cylinders. There are layouts for 3, 4, 5, 6, 8 and 12")]
    [InlineData("1-2-3-4-5-6-7", 1, "names 7 cylinders")]
    [InlineData("1-3-4-4", 1, "cylinder 2 is missing")]
    [InlineData("1-3-1-2", 1, "cylinder 1 stands there 2 times")]
    [InlineData("1-3-4-5", 1, "cylinder 2 is missing")]
    [InlineData("1-3-4-2", 0, "no tower 0")]
    [InlineData("1-3-4-2", 5, "no tower 5; the cap has towers 1 to 4")]
    public void Layout_that_makes_no_sense_is_refused(string order, int firstTower, string says) =>
        Assert.Contains(says, Refusal(FiringOrder.Parse(order), firstTower), StringComparison.Ordinal);

    private static string Refusal(IReadOnlyList<int> order, int firstTower) =>
        Assert.Throws<ArgumentException>(() => CapLayout.Of(order, RotorTurn.Clockwise, firstTower)).Message;
}

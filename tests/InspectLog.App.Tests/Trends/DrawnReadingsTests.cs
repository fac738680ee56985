using InspectLog.App.Trends;

namespace InspectLog.App.Tests.Trends;

/// <summary>What of a long series is drawn.</summary>
public sealed class DrawnReadingsTests
{
    [Fact]
    public void Few_readings_are_all_drawn()
    {
        var readings = Readings(1, 2, 3, 4);

        Assert.Same(readings, DrawnReadings.Of(readings, 4));
    }

    [Theory]
    [InlineData(25, 24)]
    [InlineData(201, 200)]
    [InlineData(1000, 200)]
    [InlineData(1000, 25)]
    public void Of_many_readings_at_most_so_many_are_drawn_in_order_with_both_ends_and_whatever_stands_out(int count, int most)
    {
        var values = Enumerable.Range(0, count).Select(at => at == count / 3 ? 99.0 : at == count / 2 ? -99.0 : at % 7).ToArray();
        var readings = Readings(values);

        var drawn = DrawnReadings.Of(readings, most);

        Assert.InRange(drawn.Count, most / 2, most);
        Assert.Same(readings[0], drawn[0]);
        Assert.Same(readings[^1], drawn[^1]);
        Assert.Equal([99.0, -99.0], drawn.Select(one => one.Value).Where(value => Math.Abs(value) == 99));
        Assert.Equal(drawn.Select(one => readings.IndexOf(one)).Order(), drawn.Select(one => readings.IndexOf(one)));
        Assert.Equal(drawn.Count, drawn.Distinct(ReferenceEqualityComparer.Instance).Count());
    }

    private static List<TrendReading> Readings(params double[] values) =>
        [.. values.Select((value, at) => new TrendReading(null!, null!, value, at, IsOfAnEarlierPart: false))];
}

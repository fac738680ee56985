namespace InspectLog.Measuring.Tests;

/// <summary>Which numbers can be worked with.</summary>
public sealed class WorkableTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(Workable.Largest)]
    [InlineData(-Workable.Largest)]
    public void Number_up_to_the_largest_to_either_side_is_taken(double number) => Assert.True(Workable.Is(number));

    [Theory]
    [InlineData(1.1e15)]
    [InlineData(-1.1e15)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    [InlineData(double.NaN)]
    public void Number_beyond_it_is_not(double number) => Assert.False(Workable.Is(number));
}

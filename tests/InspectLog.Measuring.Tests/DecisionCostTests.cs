namespace InspectLog.Measuring.Tests;

public class DecisionCostTests
{
    public static TheoryData<string, Reading, int> Readings => new()
    {
        { "single", Some.Reading([0.72], 0.8, 3, 0.01), 2 },
        { "repeats", Some.Reading([0.72, 0.70, 0.73], 0.8, 3, 0.01), 3 },
        { "bracket", new Bracket(1.9, 2.1), 1 },
        {
            "whole budget",
            Some.Reading([2.15, 2.13, 2.16], 0.8, 3, 0.01) with
            {
                Leads = new([0.21, 0.20], new(0.8, 3), 0.01, true),
                Allowances = [new(AllowanceSource.Operator, 0.01)],
                Winding = new(35, 20, 5),
            },
            8
        },
    };

    [Theory]
    [MemberData(nameof(Readings))]
    public void Decision_allocates_nothing_but_its_result(string name, Reading reading, int contributions)
    {
        var limits = Limits.Of(0.6, 2.0);
        var result = ConformityRule.Decide(reading, limits);
        Assert.Equal(contributions, result.Contributions.Count);

        Assert.True(
            Allocated(() => result with { Contributions = new Contribution[contributions] })
                >= Allocated(() => ConformityRule.Decide(reading, limits)),
            name);
    }

    // The least of several tries: the runtime itself may allocate while code is compiled.
    private static long Allocated(Func<Conformity> make)
    {
        var least = long.MaxValue;
        for (var i = 0; i < 20; i++)
        {
            var before = GC.GetAllocatedBytesForCurrentThread();
            var made = make();
            least = Math.Min(least, GC.GetAllocatedBytesForCurrentThread() - before);
            GC.KeepAlive(made);
        }

        return least;
    }
}

using CsCheck;
using InspectLog.Checks.Routing;

namespace InspectLog.Checks.Tests.Routing;

public class LeadRoutingProperties
{
    [Fact]
    public void Every_order_of_six_leads_is_repaired_with_the_fewest_swaps_there_are()
    {
        var layout = CapLayout.Of([1, 5, 3, 6, 2, 4], RotorTurn.Anticlockwise, 3);
        var fewest = FewestSwaps([.. layout.CylinderOfTower]);

        Assert.Equal(720, fewest.Count);
        Assert.All(fewest, order =>
        {
            var routing = LeadRouting.Of(layout, [.. order.Key.Select(digit => digit - '0')]);
            Assert.Equal(layout.CylinderOfTower, Repaired(routing));
            Assert.Equal(order.Value, routing.Swaps.Count);
        });
    }

    [Theory]
    [InlineData(8)]
    [InlineData(12)]
    public void Random_orders_of_more_leads_are_repaired(int cylinders) =>
        Gen.Select(
            Gen.Shuffle(Enumerable.Range(1, cylinders).ToArray()),
            Gen.Shuffle(Enumerable.Range(1, cylinders).ToArray()),
            Gen.Int[1, cylinders],
            Gen.Bool)
            .Sample((order, found, firstTower, clockwise) =>
            {
                var layout = CapLayout.Of(order, clockwise ? RotorTurn.Clockwise : RotorTurn.Anticlockwise, firstTower);
                var routing = LeadRouting.Of(layout, found);
                // Theory: as many swaps as there are wrong leads, less one for each ring they form.
                return Repaired(routing).SequenceEqual(layout.CylinderOfTower)
                    && routing.Swaps.Count == routing.Wrong.Count - Rings(layout, found)
                    && routing.Swaps.All(swap => swap.First < swap.Second)
                    && routing.Effects.Select(effect => effect.Tower).SequenceEqual(routing.Wrong)
                    && routing.Effects.All(effect => effect.DegreesLate is > 0 and < 720);
            });

    private static int[] Repaired(LeadRouting routing)
    {
        var leads = routing.Found.ToArray();
        foreach (var swap in routing.Swaps)
        {
            (leads[swap.First - 1], leads[swap.Second - 1]) = (leads[swap.Second - 1], leads[swap.First - 1]);
        }

        return leads;
    }

    /// <summary>Brute force: the fewest swaps to every order that can be reached, breadth first.</summary>
    private static Dictionary<string, int> FewestSwaps(int[] right)
    {
        var start = string.Concat(right);
        var fewest = new Dictionary<string, int> { [start] = 0 };
        var queue = new Queue<string>([start]);
        while (queue.TryDequeue(out var order))
        {
            foreach (var next in OneSwapFrom(order))
            {
                if (fewest.TryAdd(next, fewest[order] + 1))
                {
                    queue.Enqueue(next);
                }
            }
        }

        return fewest;
    }

    private static IEnumerable<string> OneSwapFrom(string order)
    {
        for (var first = 0; first < order.Length; first++)
        {
            for (var second = first + 1; second < order.Length; second++)
            {
                var next = order.ToCharArray();
                (next[first], next[second]) = (next[second], next[first]);
                yield return new string(next);
            }
        }
    }

    private static int Rings(CapLayout layout, int[] found)
    {
        var belongs = layout.CylinderOfTower.ToList();
        var seen = new HashSet<int>();
        var rings = 0;
        for (var start = 0; start < found.Length; start++)
        {
            var length = 0;
            for (var tower = start; seen.Add(tower); tower = belongs.IndexOf(found[tower]))
            {
                length++;
            }

            rings += length > 1 ? 1 : 0;
        }

        return rings;
    }
}

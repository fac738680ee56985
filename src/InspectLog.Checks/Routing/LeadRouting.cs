namespace InspectLog.Checks.Routing;

/// <summary>The leads of a distributor cap as found, against where they belong.</summary>
/// <param name="Layout">Where they belong.</param>
/// <param name="Found">The cylinder of the lead on tower 1, 2, …</param>
/// <param name="Wrong">Towers with the wrong lead, in ascending order; empty when all are right.</param>
/// <param name="Swaps">The smallest set of swaps that puts all right, to be done in this order: exchange the leads on
/// the two towers of each.</param>
/// <param name="Effects">What each wrong tower makes the engine do, in the order of <paramref name="Wrong"/>.</param>
public sealed record LeadRouting(
    CapLayout Layout,
    IReadOnlyList<int> Found,
    IReadOnlyList<int> Wrong,
    IReadOnlyList<TowerSwap> Swaps,
    IReadOnlyList<RoutingEffect> Effects)
{
    /// <summary>By how many towers every lead is moved on clockwise from where it belongs, 1 or more; null where not all
    /// are moved alike. Then it may be the distributor, or the first tower, that is wrong.</summary>
    public int? AllMovedBy { get; } = Enumerable.Range(1, Layout.Cylinders - 1)
        .Where(by => Enumerable.Range(0, Layout.Cylinders)
            .All(tower => Found[(tower + by) % Layout.Cylinders] == Layout.CylinderOfTower[tower]))
        .Cast<int?>().FirstOrDefault();

    /// <summary>Compares leads as found with a layout.</summary>
    /// <param name="layout">Where the leads belong.</param>
    /// <param name="found">The cylinder of the lead on tower 1, 2, …: each cylinder once.</param>
    /// <exception cref="ArgumentException">The leads found do not name each cylinder once. The message is written for
    /// the person who typed them.</exception>
    public static LeadRouting Of(CapLayout layout, IReadOnlyList<int> found)
    {
        RefuseUnlessEachOnce(layout, found);
        var wrong = Enumerable.Range(1, layout.Cylinders)
            .Where(tower => found[tower - 1] != layout.CylinderOfTower[tower - 1]).ToList();
        return new LeadRouting(
            layout,
            [.. found],
            wrong,
            SmallestRepair(layout, found),
            [.. wrong.Select(tower => RoutingEffect.Of(layout, tower, found[tower - 1]))]);
    }

    // Each swap puts one lead where it belongs, and the last of a ring of wrong leads puts two. A ring of n leads
    // cannot be undone in fewer than n − 1 swaps, since one swap can at most split one ring into two.
    private static List<TowerSwap> SmallestRepair(CapLayout layout, IReadOnlyList<int> found)
    {
        var leads = found.ToArray();
        var swaps = new List<TowerSwap>();
        for (var tower = 0; tower < leads.Length; tower++)
        {
            var belongs = layout.CylinderOfTower[tower];
            if (leads[tower] == belongs)
            {
                continue;
            }

            var other = Array.IndexOf(leads, belongs);
            (leads[tower], leads[other]) = (leads[other], leads[tower]);
            swaps.Add(new TowerSwap(tower + 1, other + 1));
        }

        return swaps;
    }

    private static void RefuseUnlessEachOnce(CapLayout layout, IReadOnlyList<int> found)
    {
        var count = layout.Cylinders;
        if (found.Count != count)
        {
            throw new ArgumentException(
                $"The firing order has {count} cylinders, but leads are named for {found.Count} towers. "
                + $"Name the cylinder of the lead on each of the {count} towers, clockwise from tower 1.");
        }

        for (var tower = 1; tower <= count; tower++)
        {
            var cylinder = found[tower - 1];
            if (cylinder < 1 || cylinder > count)
            {
                throw new ArgumentException(
                    $"Tower {tower} cannot have the lead of cylinder {cylinder}; there are cylinders 1 to {count}.");
            }

            var first = found.TakeWhile(other => other != cylinder).Count() + 1;
            if (first != tower)
            {
                throw new ArgumentException(
                    $"Cylinder {cylinder} is named for towers {first} and {tower}, but has one lead. "
                    + "Follow both leads to their plugs.");
            }
        }
    }
}

/// <summary>Two towers whose leads are to be exchanged.</summary>
/// <param name="First">The lower tower number.</param>
/// <param name="Second">The higher tower number.</param>
public sealed record TowerSwap(int First, int Second);

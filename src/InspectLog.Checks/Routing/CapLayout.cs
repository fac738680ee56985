namespace InspectLog.Checks.Routing;

/// <summary>How the towers of a distributor cap are meant to serve the cylinders. Towers are numbered from 1,
/// clockwise seen from above; the first tower serves the first cylinder of the firing order, the next one in the
/// rotor's direction the next.</summary>
public sealed record CapLayout
{
    private CapLayout(IReadOnlyList<int> firingOrder, RotorTurn turn, int firstTower)
    {
        (FiringOrder, Turn, FirstTower) = (firingOrder, turn, firstTower);
        var cylinders = new int[firingOrder.Count];
        for (var place = 0; place < cylinders.Length; place++)
        {
            cylinders[TowerAt(place) - 1] = firingOrder[place];
        }

        CylinderOfTower = cylinders;
    }

    /// <summary>Cylinder numbers in the order they fire.</summary>
    public IReadOnlyList<int> FiringOrder { get; }

    /// <summary>Which way the rotor turns.</summary>
    public RotorTurn Turn { get; }

    /// <summary>The tower that serves the first cylinder of the firing order.</summary>
    public int FirstTower { get; }

    /// <summary>Number of cylinders, and of towers.</summary>
    public int Cylinders => FiringOrder.Count;

    /// <summary>The cylinder whose turn it is at tower 1, 2, …</summary>
    public IReadOnlyList<int> CylinderOfTower { get; }

    /// <summary>A layout.</summary>
    /// <param name="firingOrder">Each cylinder once, in the order they fire; 3, 4, 5, 6, 8 or 12 of them.</param>
    /// <param name="turn">Which way the rotor turns.</param>
    /// <param name="firstTower">The tower that serves the first cylinder of the firing order, from 1.</param>
    /// <exception cref="ArgumentException">The firing order or the tower makes no sense. The message is written for
    /// the person who typed them.</exception>
    public static CapLayout Of(IReadOnlyList<int> firingOrder, RotorTurn turn, int firstTower)
    {
        var count = firingOrder.Count;
        RefuseRepeatedRound(firingOrder);
        if (!Routing.FiringOrder.CylinderCounts.Contains(count))
        {
            throw new ArgumentException(
                $"The firing order names {count} cylinders. There are layouts for 3, 4, 5, 6, 8 and 12.");
        }

        for (var cylinder = 1; cylinder <= count; cylinder++)
        {
            var times = firingOrder.Count(named => named == cylinder);
            if (times != 1)
            {
                throw new ArgumentException(
                    $"The firing order of {count} cylinders must name each from 1 to {count} once, "
                    + $"but cylinder {cylinder} {(times == 0 ? "is missing" : $"stands there {times} times")}.");
            }
        }

        return firstTower >= 1 && firstTower <= count
            ? new CapLayout([.. firingOrder], turn, firstTower)
            : throw new ArgumentException($"There is no tower {firstTower}; the cap has towers 1 to {count}.");
    }

    /// <summary>The tower whose turn comes at a place of the firing order.</summary>
    /// <param name="place">Place in the firing order, from 0.</param>
    internal int TowerAt(int place)
    {
        var steps = Turn == RotorTurn.Clockwise ? place : Cylinders - place;
        return (FirstTower - 1 + steps) % Cylinders + 1;
    }

    // One turn of the crankshaft written twice over, 1-2-3-1-2-3, is how some people write a wasted-spark engine.
    private static void RefuseRepeatedRound(IReadOnlyList<int> firingOrder)
    {
        var half = firingOrder.Count / 2;
        if (half > 1 && firingOrder.Count % 2 == 0 && firingOrder.Take(half).SequenceEqual(firingOrder.Skip(half)))
        {
            throw new ArgumentException(Routing.FiringOrder.WastedSpark);
        }
    }
}

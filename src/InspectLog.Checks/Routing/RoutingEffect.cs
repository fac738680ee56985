namespace InspectLog.Checks.Routing;

/// <summary>What a lead on the wrong tower makes the engine do.</summary>
/// <param name="Tower">The tower.</param>
/// <param name="Fires">The cylinder that gets the spark.</param>
/// <param name="TurnOf">The cylinder whose turn it is.</param>
/// <param name="DegreesLate">How long after its own firing point the cylinder gets the spark, in degrees of the
/// crankshaft, above 0 and below 720.</param>
public sealed record RoutingEffect(int Tower, int Fires, int TurnOf, double DegreesLate)
{
    private const double TwoTurns = 720;

    /// <summary>In a few words: "fires cylinder 4 on cylinder 2's turn".</summary>
    public string Text => $"fires cylinder {Fires} on cylinder {TurnOf}'s turn";

    /// <summary>What that does in the cylinder, by the stroke of a four-stroke engine it falls in.</summary>
    public string Consequence => DegreesLate switch
    {
        < 180 => "Late in its power stroke: weak, with a hot exhaust.",
        < 360 => "In its exhaust stroke: no power, and unburnt mixture can light in the exhaust.",
        360 => "At the end of its exhaust stroke: no power from this spark.",
        < 540 => "In its inlet stroke: flame can come back through the carburettor.",
        _ => "In its compression stroke, far too early: it knocks, and kicks against the starter.",
    };

    /// <summary>The effect of one wrong lead. Cylinders are taken to fire at even intervals.</summary>
    internal static RoutingEffect Of(CapLayout layout, int tower, int fires)
    {
        var turnOf = layout.CylinderOfTower[tower - 1];
        var placesLate = Place(layout, turnOf) - Place(layout, fires) + layout.Cylinders;
        return new RoutingEffect(
            tower, fires, turnOf, placesLate % layout.Cylinders * TwoTurns / layout.Cylinders);
    }

    private static int Place(CapLayout layout, int cylinder) =>
        layout.FiringOrder.TakeWhile(other => other != cylinder).Count();
}

namespace InspectLog.Checks.Derived;

/// <summary>An angle of the crankshaft and the time it takes at an engine speed: time = angle ÷ (6 × rpm) seconds.
/// Before top dead centre is positive.</summary>
/// <param name="Degrees">Degrees of the crankshaft.</param>
/// <param name="Rpm">Engine speed in rpm.</param>
/// <param name="Time">Time in s, with the sign of the angle.</param>
/// <param name="Steps">The working.</param>
public sealed record Advance(double Degrees, double Rpm, double Time, IReadOnlyList<Step> Steps)
{
    // One turn is 360 degrees and takes 60 / rpm seconds.
    private const double DegreesPerSecondAndRpm = 6;

    /// <summary>The same angle in degrees of the distributor, which turns half as fast as the crankshaft.</summary>
    public double DistributorDegrees => Degrees / 2;

    /// <summary>The time an angle takes.</summary>
    /// <param name="degrees">Degrees of the crankshaft.</param>
    /// <param name="rpm">Engine speed in rpm, above 0.</param>
    /// <exception cref="ArgumentException">A number is out of range.</exception>
    public static Advance FromDegrees(double degrees, double rpm)
    {
        Sensible.UnlessFinite(degrees, "The angle in degrees");
        Sensible.UnlessAboveZero(rpm, "The engine speed in rpm");
        var time = degrees / (DegreesPerSecondAndRpm * rpm);
        return new Advance(degrees, rpm, time,
        [
            new("angle ÷ (6 × engine speed in rpm)", [Angle(degrees), Speed(rpm)], InMilliseconds(time)),
            HalfAngle(degrees),
        ]);
    }

    /// <summary>The angle the crankshaft turns in a time.</summary>
    /// <param name="time">Time in s.</param>
    /// <param name="rpm">Engine speed in rpm, above 0.</param>
    /// <exception cref="ArgumentException">A number is out of range.</exception>
    public static Advance FromTime(double time, double rpm)
    {
        Sensible.UnlessFinite(time, "The time in s");
        Sensible.UnlessAboveZero(rpm, "The engine speed in rpm");
        var degrees = time * DegreesPerSecondAndRpm * rpm;
        return new Advance(degrees, rpm, time,
        [
            new("time × 6 × engine speed in rpm", [InMilliseconds(time), Speed(rpm)], Angle(degrees)),
            HalfAngle(degrees),
        ]);
    }

    private static Step HalfAngle(double degrees) =>
        new("crankshaft angle ÷ 2", [Angle(degrees)], new("Distributor angle", degrees / 2, "°"));

    private static Figure Angle(double degrees) => new("Crankshaft angle", degrees, "°");

    private static Figure Speed(double rpm) => new("Engine speed", rpm, "rpm");

    private static Figure InMilliseconds(double time) => new("Time", 1000 * time, "ms");
}

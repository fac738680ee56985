namespace InspectLog.Checks.Derived;

/// <summary>Dwell of a four-stroke engine with one distributor: the part of each spark's share of a distributor turn
/// for which the coil is switched on, as an angle, as a duty and as a time.</summary>
/// <param name="Cylinders">Number of cylinders.</param>
/// <param name="Rpm">Engine speed in revolutions of the crankshaft a minute.</param>
/// <param name="Angle">Dwell in degrees of the distributor.</param>
/// <param name="Duty">Dwell as a fraction of the time between sparks, 0 to 1.</param>
/// <param name="ChargeTime">Dwell in s.</param>
/// <param name="SparkInterval">Time between sparks in s.</param>
/// <param name="Steps">The working.</param>
public sealed record Dwell(
    int Cylinders,
    double Rpm,
    double Angle,
    double Duty,
    double ChargeTime,
    double SparkInterval,
    IReadOnlyList<Step> Steps)
{
    // The crankshaft turns twice for each round of sparks, so a round takes 2 · 60 / rpm seconds.
    private const double SecondsTimesRpm = 120;

    /// <summary>The share of a distributor turn that each cylinder has, in degrees.</summary>
    public double Sector => 360.0 / Cylinders;

    /// <summary>Sparks of the whole engine in a second.</summary>
    public double SparksPerSecond => 1 / SparkInterval;

    /// <summary>Dwell from a dwell meter's angle.</summary>
    /// <param name="cylinders">Number of cylinders, 1 to 16.</param>
    /// <param name="rpm">Engine speed in rpm, above 0.</param>
    /// <param name="angle">Dwell in degrees of the distributor, above 0 and below the sector of one cylinder.</param>
    /// <exception cref="ArgumentException">A number is out of range.</exception>
    public static Dwell FromAngle(int cylinders, double rpm, double angle)
    {
        var interval = Interval(cylinders, rpm);
        Sensible.UnlessAboveZero(angle, "The dwell angle in degrees");
        var duty = DutyBelowOne(angle * cylinders / 360);
        return new Dwell(cylinders, rpm, angle, duty, duty * interval.Seconds, interval.Seconds,
        [
            DutyOfAngle(cylinders, angle, duty),
            interval.Step,
            TimeOfDuty(duty, interval.Seconds),
        ]);
    }

    /// <summary>Dwell from a duty.</summary>
    /// <param name="cylinders">Number of cylinders, 1 to 16.</param>
    /// <param name="rpm">Engine speed in rpm, above 0.</param>
    /// <param name="duty">Fraction of the time between sparks, above 0 and below 1.</param>
    /// <exception cref="ArgumentException">A number is out of range.</exception>
    public static Dwell FromDuty(int cylinders, double rpm, double duty)
    {
        var interval = Interval(cylinders, rpm);
        Sensible.UnlessAboveZero(duty, "The duty");
        var angle = DutyBelowOne(duty) * 360 / cylinders;
        return new Dwell(cylinders, rpm, angle, duty, duty * interval.Seconds, interval.Seconds,
        [
            AngleOfDuty(cylinders, duty, angle),
            interval.Step,
            TimeOfDuty(duty, interval.Seconds),
        ]);
    }

    /// <summary>Dwell from the time the coil is on.</summary>
    /// <param name="cylinders">Number of cylinders, 1 to 16.</param>
    /// <param name="rpm">Engine speed in rpm, above 0.</param>
    /// <param name="chargeTime">Dwell in s, above 0 and below the time between sparks.</param>
    /// <exception cref="ArgumentException">A number is out of range.</exception>
    public static Dwell FromTime(int cylinders, double rpm, double chargeTime)
    {
        var interval = Interval(cylinders, rpm);
        Sensible.UnlessAboveZero(chargeTime, "The time the coil is on, in s,");
        var duty = DutyBelowOne(chargeTime / interval.Seconds);
        var angle = duty * 360 / cylinders;
        return new Dwell(cylinders, rpm, angle, duty, chargeTime, interval.Seconds,
        [
            interval.Step,
            new(
                "time on ÷ time between sparks",
                [Milliseconds("Time on", chargeTime), interval.Step.Result],
                Percent(duty)),
            AngleOfDuty(cylinders, duty, angle),
        ]);
    }

    /// <summary>Dwell from two times read off an oscilloscope.</summary>
    /// <param name="cylinders">Number of cylinders, 1 to 16.</param>
    /// <param name="chargeTime">Time the coil is on in s, above 0 and below the interval.</param>
    /// <param name="sparkInterval">Time between sparks in s, above 0.</param>
    /// <exception cref="ArgumentException">A number is out of range.</exception>
    public static Dwell FromTimes(int cylinders, double chargeTime, double sparkInterval)
    {
        Sensible.UnlessWithin(cylinders, 1, 16, "The number of cylinders");
        Sensible.UnlessAboveZero(sparkInterval, "The time between sparks in s");
        return FromTime(cylinders, SecondsTimesRpm / (cylinders * sparkInterval), chargeTime);
    }

    private static (double Seconds, Step Step) Interval(int cylinders, double rpm)
    {
        Sensible.UnlessWithin(cylinders, 1, 16, "The number of cylinders");
        Sensible.UnlessAboveZero(rpm, "The engine speed in rpm");
        var seconds = SecondsTimesRpm / (rpm * cylinders);
        return (seconds, new Step(
            "120 s ÷ (engine speed in rpm × cylinders)",
            [new("Engine speed", rpm, "rpm"), new("Cylinders", cylinders, "")],
            Milliseconds("Time between sparks", seconds)));
    }

    private static double DutyBelowOne(double duty) => duty < 1
        ? duty
        : throw new ArgumentException(
            "The coil would never be switched off. The dwell must be less than a cylinder's share.");

    private static Step DutyOfAngle(int cylinders, double angle, double duty) =>
        new(
            "dwell angle × cylinders ÷ 360°",
            [new("Dwell angle", angle, "°"), new("Cylinders", cylinders, "")],
            Percent(duty));

    private static Step AngleOfDuty(int cylinders, double duty, double angle) =>
        new(
            "duty × 360° ÷ cylinders",
            [Percent(duty), new("Cylinders", cylinders, "")],
            new("Dwell angle", angle, "°"));

    private static Step TimeOfDuty(double duty, double interval) =>
        new("duty × time between sparks", [Percent(duty), Milliseconds("Time between sparks", interval)],
            Milliseconds("Time on", duty * interval));

    private static Figure Percent(double duty) => new("Duty", 100 * duty, "%");

    private static Figure Milliseconds(string name, double seconds) => new(name, 1000 * seconds, "ms");
}

using InspectLog.Measuring;

namespace InspectLog.App.Commands;

/// <summary>Refuses numbers that cannot have been read off the instrument described. Every number is in the unit of the
/// command line.</summary>
internal static class DisplayedNumbers
{
    public static void Refuse(double[] values, double[] leads, double resolution, double? range, Unit unit)
    {
        RefuseBelowZero([.. values, .. leads], unit);
        if (!(resolution > 0))
        {
            return; // Said by the estimate in its own words.
        }

        var step = unit.DifferenceToBase(resolution);
        MeterRange[] ranges = range is { } full ? [new(MeterRange.NameOf(unit.ToBase(full), unit), unit.ToBase(full), new(0, 0), step)] : [];
        var meter = new Instrument("given", "given", unit.Kind, new(0, 0), step) { Ranges = ranges };
        Refuse(meter, values, unit, "");
        foreach (var lead in leads)
            Refuse(meter, [lead], unit, "Test leads: ");
    }

    private static void Refuse(Instrument meter, double[] values, Unit unit, string what)
    {
        switch (Shown.By(meter, InUnit(values, unit)))
        {
            case Shown.Never { IsBeyondRange: true } never:
                throw CommandException.BadInput($"{what}{never.Problem} A meter shows an overload there. Use a larger range.");
            case Shown.Never never:
                throw CommandException.BadInput(what + never.Problem);
            case Shown.BetweenSteps between:
                throw CommandException.BadInput(what + between.Question);
        }
    }

    /// <summary>Refuses a value below zero of a kind that has none.</summary>
    public static void RefuseBelowZero(double[] values, Unit unit)
    {
        // A meter of no steps and no range shows anything that there is.
        var any = new Instrument("any", "any", unit.Kind, new(0, 0), 1);
        if (Shown.By(any, InUnit(values, unit), judgeSteps: false) is Shown.Never never)
        {
            throw CommandException.BadInput(never.Problem);
        }
    }

    private static List<TypedNumber.Certain> InUnit(double[] values, Unit unit) =>
        [.. values.Select(value => new TypedNumber.Certain(unit.ToBase(value), unit))];
}

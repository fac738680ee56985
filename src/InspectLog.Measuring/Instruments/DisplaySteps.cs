namespace InspectLog.Measuring;

/// <summary>Whether values are steps of a display.</summary>
internal static class DisplaySteps
{
    // How far from a whole number of steps a value may be by its own binary rounding, in steps.
    private const double Slack = 1e-6;

    // Beyond so many steps a double no longer tells them apart well enough.
    private const double MostSteps = 1e9;

    /// <summary>The values that lie between steps; null where none does.</summary>
    internal static Shown? Between(Instrument instrument, IReadOnlyList<TypedNumber.Certain> values)
    {
        var step = instrument.OnRangeFor(values.Select(value => value.BaseValue)).Resolution;
        var odd = values.Where(value => LiesBetween(value, step)).ToList();
        if (odd.Count == 0)
        {
            return null;
        }

        var meter = Kinds.IsElectrical(instrument.Kind) ? "Your meter" : "Your instrument";
        var what = $"{meter} shows steps of {Printed.Difference(step, odd[0].Unit)}";
        if (odd.Count > 1)
        {
            var all = string.Join(" and ", odd.Select(value => Printed.Value(value.BaseValue, value.Unit)));
            return new Shown.BetweenSteps($"{what}, not {all}. Type what it showed.", []);
        }

        var (below, above) = Neighbours(odd[0], step);
        return new Shown.BetweenSteps(
            $"{what}, not {Text(odd[0])}: was it {OnDisplay(below)} or {OnDisplay(above)}?",
            [With(values, odd[0], below), With(values, odd[0], above)]);

        string OnDisplay(TypedNumber.Certain value) => Printed.OnDisplay(value.BaseValue, step, value.Unit);
    }

    /// <summary>A value given in a unit in which the step is no step of a display was converted, or read off another
    /// scale; nothing can be said of it then.</summary>
    private static bool LiesBetween(TypedNumber.Certain value, double step)
    {
        if (!IsStepOfDisplay(value.Unit.DifferenceFromBase(step)))
        {
            return false;
        }

        var steps = StepsOf(value, step);
        return Math.Abs(steps) < MostSteps && Math.Abs(steps - Math.Round(steps)) > Slack;
    }

    /// <summary>Displays count in ones, twos or fives of some place, and dials in quarters too.</summary>
    private static bool IsStepOfDisplay(double step)
    {
        if (!(step > 0 && double.IsFinite(step)))
        {
            return false;
        }

        var figure = step / Math.Pow(10, Math.Floor(Math.Log10(step)));
        return new[] { 1, 2, 2.5, 5, 10 }.Any(known => Math.Abs(figure - known) < Slack);
    }

    private static double StepsOf(TypedNumber.Certain value, double step) =>
        value.Unit.FromBase(value.BaseValue) / value.Unit.DifferenceFromBase(step);

    private static (TypedNumber.Certain Below, TypedNumber.Certain Above) Neighbours(TypedNumber.Certain value, double step)
    {
        var below = Math.Floor(StepsOf(value, step));
        return (At(below), At(below + 1));

        TypedNumber.Certain At(double steps) => value with { BaseValue = value.Unit.ToBase(Plain(steps * value.Unit.DifferenceFromBase(step))) + 0 };
    }

    // 7 steps of 0.1 are 0.7, and not 0.7000000000000001.
    private static double Plain(double number) => Math.Abs(number) < 1e12 ? (double)Math.Round((decimal)number, 12) : number;

    private static double[] With(IReadOnlyList<TypedNumber.Certain> values, TypedNumber.Certain odd, TypedNumber.Certain instead) =>
        [.. values.Select(value => ReferenceEquals(value, odd) ? instead.BaseValue : value.BaseValue)];

    private static string Text(TypedNumber.Certain value) => Printed.Value(value.BaseValue, value.Unit);
}

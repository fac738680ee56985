namespace InspectLog.App.Ui.Drawings;

/// <summary>Chooses the span of values a reading strip shows.</summary>
internal static class StripScale
{
    /// <summary>Share of the span left free at either end.</summary>
    private const double Margin = 0.14;

    /// <summary>A reading further from the limits than this many times their span is drawn at the edge with an arrow,
    /// or the limits would shrink to a dot.</summary>
    private const double FarAway = 3;

    /// <summary>The scale for a strip drawn from <paramref name="left"/> to <paramref name="right"/>.</summary>
    public static Scale For(StripFacts facts, double left, double right)
    {
        var core = Core(facts);
        var (from, to) = (Scale.Bounded(core.From), Scale.Bounded(core.To));
        foreach (var value in Companions(facts).Select(Scale.Bounded).Where(value => !IsFarAway(value, from, to)).ToList())
        {
            from = Math.Min(from, value);
            to = Math.Max(to, value);
        }

        var width = to - from;
        if (!(width > 0))
        {
            width = Math.Max(Math.Abs(from), 1);
        }

        return new Scale(from - (width * Margin), to + (width * Margin), left, right);
    }

    /// <summary>What the drawing is about: the limits; or the reading where there are none.</summary>
    private static (double From, double To) Core(StripFacts facts) => facts switch
    {
        { Lower: { } lower, Upper: { } upper } => (lower, upper),
        { Lower: { } lower } => (lower, lower + RoomBeside(lower, facts)),
        { Upper: { } upper } => (upper - RoomBeside(upper, facts), upper),
        { Reading: { } reading } => (reading.From, reading.To),
        { Nominal: { } nominal } => (nominal, nominal),
        _ => (0, 0),
    };

    /// <summary>Room for the open side of a lone limit.</summary>
    private static double RoomBeside(double limit, StripFacts facts)
    {
        var spread = facts.Reading is { } reading ? reading.To - reading.From : 0;
        return Math.Max(Math.Abs(limit) / 2, spread) is var room && room > 0 ? room : 1;
    }

    private static IEnumerable<double> Companions(StripFacts facts)
    {
        if (facts.Reading is { } reading)
        {
            yield return reading.From;
            yield return reading.To;
        }

        if (facts.Nominal is { } nominal)
        {
            yield return nominal;
        }

        if (facts.Previous is { } previous)
        {
            yield return previous;
        }
    }

    private static bool IsFarAway(double value, double from, double to) =>
        to > from && (value < from - (FarAway * (to - from)) || value > to + (FarAway * (to - from)));
}

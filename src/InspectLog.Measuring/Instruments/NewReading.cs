namespace InspectLog.Measuring;

/// <summary>What a new reading must hold to beyond what its arithmetic needs. Readings that journals hold already are shown
/// as they are.</summary>
public static class NewReading
{
    /// <summary>The estimate behind a reading that is being taken.</summary>
    /// <remarks>What is left after the test leads are subtracted may come out below zero by no more than its expanded
    /// uncertainty: that is 0 as well as the meter can tell, and the value is kept as it came out, since setting it to 0
    /// would bias means and trends.</remarks>
    /// <param name="reading">The reading.</param>
    /// <param name="evaluation">How it is evaluated; null for as usual.</param>
    /// <exception cref="ArgumentException">The reading cannot be used; the message says why, for the person who entered
    /// it.</exception>
    public static Estimate Estimate(Reading reading, Evaluation? evaluation = null)
    {
        var estimate = Measuring.Estimate.Of(reading, evaluation);
        switch (reading)
        {
            case DisplayedReading displayed:
                Refuse.BelowLeads(displayed, estimate);
                break;
            case Bracket bracket:
                Refuse.GaugesBelowZero(bracket.Goes);
                break;
        }

        if (!Workable.Is(estimate.Value) || !Workable.Is(estimate.ExpandedUncertainty))
        {
            throw new ArgumentException(Workable.Problem);
        }

        return estimate;
    }

    /// <summary>Whether a value came out below zero where nothing is below zero, by no more than its uncertainty.</summary>
    /// <param name="kind">What was measured.</param>
    /// <param name="value">The best estimate, base unit.</param>
    public static bool IsAsGoodAsZero(QuantityKind kind, double value) => value < 0 && !Kinds.MayBeNegative(kind);
}

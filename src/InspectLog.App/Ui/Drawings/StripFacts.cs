using InspectLog.Measuring;

namespace InspectLog.App.Ui.Drawings;

/// <summary>What a reading strip shows, all values in the display unit.</summary>
/// <param name="Lower">Lower limit; null where there is none.</param>
/// <param name="Upper">Upper limit; null where there is none.</param>
/// <param name="Nominal">Target value; null where there is none.</param>
/// <param name="Reading">The reading; null before one is taken.</param>
/// <param name="Previous">The value of an earlier inspection; null where there is none.</param>
/// <param name="Unit">Symbol of the display unit.</param>
public sealed record StripFacts(
    double? Lower, double? Upper, double? Nominal, StripReading? Reading, double? Previous, string Unit)
{
    /// <summary>Whether a value lies within the limits, ends included.</summary>
    public bool Allows(double value) => !(value < Lower) && !(value > Upper);
}

/// <summary>A reading as a strip shows it.</summary>
public abstract record StripReading
{
    private StripReading()
    {
    }

    // Lower than the top of a bell, which holds as much in less width.
    private const double BoxHeight = 0.62;

    /// <summary>The best estimate.</summary>
    public abstract double Value { get; }

    /// <summary>Lowest value the drawing gives room to.</summary>
    public abstract double From { get; }

    /// <summary>Highest value the drawing gives room to.</summary>
    public abstract double To { get; }

    /// <summary>Height of the drawing at a value, 0 to 1.</summary>
    public abstract double HeightAt(double value);

    /// <summary>Values at which the drawing bends, from left to right, both ends counted.</summary>
    public abstract IEnumerable<double> Places { get; }

    /// <summary>A value with what is known of it, drawn in its shape: a bell, a box with soft shoulders, or anything
    /// between.</summary>
    /// <param name="Middle">The value.</param>
    /// <param name="Shape">How likely the values about it are; null for none, and then it is a line alone.</param>
    public sealed record Known(double Middle, DensityCurve? Shape) : StripReading
    {
        /// <inheritdoc/>
        public override double Value => Middle;

        /// <inheritdoc/>
        public override double From => Middle - (Shape?.HalfWidth ?? 0);

        /// <inheritdoc/>
        public override double To => Middle + (Shape?.HalfWidth ?? 0);

        /// <inheritdoc/>
        public override double HeightAt(double value) => Shape?.HeightAt(value - Middle) ?? 0;

        /// <inheritdoc/>
        public override IEnumerable<double> Places => Shape is null
            ? [Middle]
            : Enumerable.Range(1 - Shape.Heights.Count, (2 * Shape.Heights.Count) - 1)
                .Select(at => Middle + (Shape.HalfWidth * at / (Shape.Heights.Count - 1)));
    }

    /// <summary>A value between two gauges, drawn as a box.</summary>
    /// <param name="Goes">The largest gauge that goes.</param>
    /// <param name="Stops">The smallest that does not.</param>
    public sealed record Box(double Goes, double Stops) : StripReading
    {
        /// <inheritdoc/>
        public override double Value => (Goes / 2) + (Stops / 2);

        /// <inheritdoc/>
        public override double From => Goes;

        /// <inheritdoc/>
        public override double To => Stops;

        /// <inheritdoc/>
        public override double HeightAt(double value) => BoxHeight;

        /// <inheritdoc/>
        public override IEnumerable<double> Places => [Goes, Stops];
    }
}

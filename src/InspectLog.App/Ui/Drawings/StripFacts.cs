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

    /// <summary>The best estimate.</summary>
    public abstract double Value { get; }

    /// <summary>Lowest value the drawing gives room to.</summary>
    public abstract double From { get; }

    /// <summary>Highest value the drawing gives room to.</summary>
    public abstract double To { get; }

    /// <summary>A displayed value with its standard uncertainty, drawn as a bell.</summary>
    /// <param name="Middle">The value.</param>
    /// <param name="StandardUncertainty">Standard uncertainty, 0 or more.</param>
    public sealed record Bell(double Middle, double StandardUncertainty) : StripReading
    {
        /// <summary>How many standard uncertainties either side are drawn. Beyond, a bell is under half a pixel
        /// high.</summary>
        public const double Reach = 3.2;

        /// <inheritdoc/>
        public override double Value => Middle;

        /// <inheritdoc/>
        public override double From => Middle - (Reach * StandardUncertainty);

        /// <inheritdoc/>
        public override double To => Middle + (Reach * StandardUncertainty);

        /// <summary>Height of the bell at a value, 0 to 1.</summary>
        public double HeightAt(double value)
        {
            var z = (value - Middle) / StandardUncertainty;
            return Math.Exp(-z * z / 2);
        }
    }

    /// <summary>A value between two gauges, drawn as a box.</summary>
    /// <param name="Goes">The largest gauge that goes.</param>
    /// <param name="Stops">The smallest that does not.</param>
    public sealed record Box(double Goes, double Stops) : StripReading
    {
        /// <inheritdoc/>
        public override double Value => (Goes + Stops) / 2;

        /// <inheritdoc/>
        public override double From => Goes;

        /// <inheritdoc/>
        public override double To => Stops;
    }
}

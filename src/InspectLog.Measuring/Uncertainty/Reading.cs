namespace InspectLog.Measuring;

/// <summary>What was read off: either displayed values or a bracket between two gauges. All values are in the base
/// unit of the quantity measured.</summary>
public abstract record Reading;

/// <summary>One displayed value, or several repeats of it.</summary>
/// <param name="Values">The values as read, at least one, in the order taken.</param>
/// <param name="Accuracy">Accuracy of the instrument that showed them, on the range in use.</param>
/// <param name="Resolution">Smallest displayed step, above 0.</param>
public sealed record DisplayedReading(IReadOnlyList<double> Values, Accuracy Accuracy, double Resolution) : Reading
{
    /// <summary>The test leads' own resistance, to be subtracted; null where the meter was nulled or it does not
    /// matter.</summary>
    public TestLeads? Leads { get; init; }

    /// <summary>What is added to the values by the instrument's certificate, less what it adds to the test leads, base unit;
    /// null for nothing.</summary>
    public double? Correction { get; init => field = value is 0 ? null : value; }

    /// <summary>The temperature of the air about the instrument, °C; null where it is not known. The accuracy is the one that
    /// holds at it.</summary>
    public double? Ambient { get; init; }

    /// <summary>How far repeats of this reading scatter, from earlier ones; null where nothing says.</summary>
    public KnownScatter? Scatter { get; init; }

    /// <summary>What else may have moved the reading; null for nothing.</summary>
    public IReadOnlyList<Allowance>? Allowances { get; init; }

    /// <summary>The temperature a copper winding was measured at and is referred to; null where the value is taken as it
    /// is.</summary>
    public WindingTemperature? Winding { get; init; }
}

/// <summary>The resistance of the test leads, read with their tips together, and subtracted from the reading.</summary>
/// <param name="Values">The values as read, at least one.</param>
/// <param name="Accuracy">Accuracy of the instrument that showed them.</param>
/// <param name="Resolution">Smallest displayed step, above 0.</param>
/// <param name="SameInstrument">Whether the instrument and range were those of the reading. Its error in percent of the
/// reading is then the same share of both (correlation 1, JCGM 100:2008, 5.2.2), so only that of the difference is left.
/// Its counts are taken as independent, since makers state them for readings with the leads nulled as well.</param>
public sealed record TestLeads(IReadOnlyList<double> Values, Accuracy Accuracy, double Resolution, bool SameInstrument);

/// <summary>A value known only to lie between the largest gauge that goes and the smallest that does not.</summary>
/// <param name="Goes">The largest gauge that goes.</param>
/// <param name="Stops">The smallest gauge that does not; above <paramref name="Goes"/>.</param>
public sealed record Bracket(double Goes, double Stops) : Reading
{
    /// <summary>Standard uncertainty of the bracket's place from the gauges' own sizes, 0 or more; null where they are
    /// taken as exact. <see cref="FeelerBlades"/> works it out from blade tolerances.</summary>
    public double? GaugeUncertainty { get; init; }

    /// <summary>The tolerances of the blades that are in one of the two stacks alone, added up, base unit: a bracket no
    /// wider than that cannot be told from none. Null where the gauges are taken as exact, or where nothing is known.
    /// </summary>
    public double? Tolerances { get; init; }
}

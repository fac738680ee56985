namespace InspectLog.Measuring;

/// <summary>Refuses inputs no decision can be made from, in words for the person who entered them.</summary>
internal static class Refuse
{
    internal static void BadInstrument(Accuracy accuracy, double resolution)
    {
        ArgumentNullException.ThrowIfNull(accuracy);
        if (!(accuracy.PercentOfReading >= 0 && double.IsFinite(accuracy.PercentOfReading))
            || !(accuracy.Counts >= 0 && double.IsFinite(accuracy.Counts)))
        {
            throw new ArgumentException("An accuracy must be 0 or more, in percent of the reading and in counts.");
        }

        if (!(accuracy.PercentOfRange is null or >= 0 && double.IsFinite(accuracy.PercentOfRange ?? 0))
            || !(accuracy.Fixed is null or >= 0 && double.IsFinite(accuracy.Fixed ?? 0)))
        {
            throw new ArgumentException("An accuracy must be 0 or more, in percent of the range and in its fixed size.");
        }

        if (!(resolution > 0 && double.IsFinite(resolution)))
        {
            throw new ArgumentException("The resolution must be above 0: it is the smallest step the display shows.");
        }
    }

    /// <summary>A part that reads less than the test leads alone. By less than the uncertainty of the difference it may be
    /// no resistance at all; by more, one of the two is wrong.</summary>
    internal static void BelowLeads(DisplayedReading reading, in Estimate estimate)
    {
        if (reading.Leads is not null && estimate.Value < -estimate.ExpandedUncertainty)
        {
            throw new ArgumentException(
                "The test leads read more than the part with them, by more than both readings can be off. Check both values.");
        }
    }

    /// <summary>Sizes of gauges that there are not. 0 stands for no gauge at all: not even the smallest goes.</summary>
    internal static void GaugesBelowZero(params IEnumerable<double> sizes)
    {
        if (sizes.Any(size => size < 0))
        {
            throw new ArgumentException("The size of a gauge cannot be below zero.");
        }
    }

    internal static void BadAllowance(Allowance allowance)
    {
        if (!(allowance.HalfWidth >= 0 && double.IsFinite(allowance.HalfWidth)))
        {
            throw new ArgumentException("An allowance must be 0 or more.");
        }
    }

    internal static void BadScatter(KnownScatter scatter)
    {
        if (!(scatter.StandardDeviation >= 0 && double.IsFinite(scatter.StandardDeviation))
            || !(scatter.DegreesOfFreedom is null or >= 1))
        {
            throw new ArgumentException("A known scatter is 0 or more, with 1 degree of freedom or more.");
        }
    }

    internal static void BadEstimate(double value, double standardUncertainty, double degreesOfFreedom)
    {
        if (!double.IsFinite(value))
        {
            throw new ArgumentException("A value must be a finite number.");
        }

        if (!(standardUncertainty >= 0 && double.IsFinite(standardUncertainty)))
        {
            throw new ArgumentException("A standard uncertainty must be 0 or more.");
        }

        if (!(degreesOfFreedom >= 1))
        {
            throw new ArgumentException("There must be 1 degree of freedom or more.");
        }
    }

    internal static void BadBracket(Bracket bracket)
    {
        if (!double.IsFinite(bracket.Goes) || !double.IsFinite(bracket.Stops))
        {
            throw new ArgumentException("A gauge size must be a finite number.");
        }

        if (bracket.Stops <= bracket.Goes)
        {
            throw new ArgumentException("The gauge that stops must be larger than the gauge that goes.");
        }

        if (!(bracket.GaugeUncertainty is null or >= 0 && double.IsFinite(bracket.GaugeUncertainty ?? 0)))
        {
            throw new ArgumentException("The uncertainty of the gauges must be 0 or more.");
        }

        if (!double.IsFinite(bracket.Stops - bracket.Goes))
        {
            throw new ArgumentException("The gauge sizes are too large to work with.");
        }
    }
}

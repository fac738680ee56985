namespace InspectLog.Measuring;

/// <summary>What a score says (ISO/IEC 17043, ISO 13528).</summary>
public enum ScoreVerdict
{
    /// <summary>Up to 2 in size.</summary>
    Satisfactory,

    /// <summary>Above 2 and below 3 in size.</summary>
    Questionable,

    /// <summary>3 or more in size.</summary>
    Unsatisfactory,
}

/// <summary>Whether two readings of the same thing agree within their uncertainties.</summary>
public static class Agreement
{
    /// <summary>The E_n number (ISO/IEC 17043, ISO 13528): the difference over the root sum of squares of the expanded
    /// uncertainties. Readings agree where it lies within ±1.</summary>
    /// <param name="value">A value.</param>
    /// <param name="expanded">Its expanded uncertainty, 0 or more.</param>
    /// <param name="reference">The value it is compared with, such as that of the last inspection.</param>
    /// <param name="referenceExpanded">The expanded uncertainty of that, 0 or more; not both 0.</param>
    public static double En(double value, double expanded, double reference, double referenceExpanded) =>
        (value - reference) / double.Hypot(expanded, referenceExpanded);

    /// <summary>The E_n number of two readings of the same thing. Where one instrument took both, its error in percent is the
    /// same share of both (JCGM 100:2008, 5.2.2), so only that of their difference counts.</summary>
    /// <param name="reading">A reading.</param>
    /// <param name="reference">The one it is compared with.</param>
    /// <param name="sameInstrument">Whether one instrument took both.</param>
    /// <returns>Null where there is no uncertainty to compare with.</returns>
    /// <exception cref="ArgumentException">A reading cannot be used; the message says why.</exception>
    public static double? En(Reading reading, Reading reference, bool sameInstrument)
    {
        var common = sameInstrument && reading is DisplayedReading displayed ? displayed.Accuracy.PercentOfReading / 100 : 0;
        var (one, other) = sameInstrument
            ? (Estimate.Of(WithoutGain(reading)), Estimate.Of(WithoutGain(reference)))
            : (Estimate.Of(reading), Estimate.Of(reference));
        var gain = Coverage.Probability * common * (one.Value - other.Value);
        var number = En(one.Value, double.Hypot(one.ExpandedUncertainty, gain), other.Value, other.ExpandedUncertainty);
        return double.IsFinite(number) ? number : null;
    }

    private static Reading WithoutGain(Reading reading) => reading is DisplayedReading displayed
        ? displayed with { Accuracy = displayed.Accuracy with { PercentOfReading = 0 } }
        : reading;

    /// <summary>The z score: the difference from an assigned value in standard deviations of what is expected.</summary>
    /// <param name="value">A value.</param>
    /// <param name="assigned">The value it should have.</param>
    /// <param name="standardDeviation">The standard deviation expected, above 0.</param>
    public static double Z(double value, double assigned, double standardDeviation) =>
        (value - assigned) / standardDeviation;

    /// <summary>The ζ score: as <see cref="En(double, double, double, double)"/>, but with standard uncertainties.</summary>
    /// <param name="value">A value.</param>
    /// <param name="standard">Its standard uncertainty, 0 or more.</param>
    /// <param name="reference">The value it is compared with.</param>
    /// <param name="referenceStandard">The standard uncertainty of that, 0 or more; not both 0.</param>
    public static double Zeta(double value, double standard, double reference, double referenceStandard) =>
        En(value, standard, reference, referenceStandard);

    /// <summary>What a z or ζ score says.</summary>
    public static ScoreVerdict Judge(double score) => Math.Abs(score) switch
    {
        <= 2 => ScoreVerdict.Satisfactory,
        < 3 => ScoreVerdict.Questionable,
        _ => ScoreVerdict.Unsatisfactory,
    };

    /// <summary>The correlation coefficient of two samples taken in pairs, −1 to 1 (JCGM 100:2008, 5.2.3). It is that of
    /// their means, too.</summary>
    /// <exception cref="ArgumentException">There are fewer than two pairs, or one side does not vary.</exception>
    public static double Correlation(IReadOnlyList<double> one, IReadOnlyList<double> other)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        if (one.Count != other.Count || one.Count < 2)
        {
            throw new ArgumentException("A correlation needs two pairs of readings or more.");
        }

        var (a, b) = (Sample.Of(one), Sample.Of(other));
        var products = one.Zip(other, (x, y) => a.Deviation(x) * b.Deviation(y)).Sum();
        var r = products / (one.Count - 1) / (a.StandardDeviation * b.StandardDeviation);
        return double.IsFinite(r) ? r : throw new ArgumentException("Readings that do not vary have no correlation.");
    }
}

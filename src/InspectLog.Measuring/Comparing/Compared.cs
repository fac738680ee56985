namespace InspectLog.Measuring;

/// <summary>Figures worked out from a reading and that of another check, with the uncertainty they inherit from both
/// (JCGM 100:2008, 5.1 and 5.2).</summary>
public static class Compared
{
    /// <summary>The figure, in the base unit of the kind; of a proportion, in that for each base unit of the other's kind.
    /// </summary>
    /// <remarks>Where one instrument took both on one range, its error in percent is the same share of both readings: it is
    /// one input that scales both (F.1.2.3 and 5.2.2; the clause numbers from memory), of
    /// which a difference keeps its own share and a proportion nothing. Counts and display steps are each reading's own.
    /// Readings that are corrected for test leads or for temperature, and gauges, are taken as independent altogether, which
    /// can only make the uncertainty of a difference or proportion larger.</remarks>
    /// <param name="form">How the two are put together.</param>
    /// <param name="reading">The reading.</param>
    /// <param name="other">The reading of the other check.</param>
    /// <param name="sameInstrument">Whether one instrument took both.</param>
    /// <param name="evaluation">How the expanded uncertainty is found; null for the usual way.</param>
    /// <exception cref="ArgumentException">A reading cannot be used, or the two give no figure; the message says why, for
    /// the person who entered them.</exception>
    public static Estimate Of(
        ComparisonForm form, Reading reading, Reading other, bool sameInstrument, Evaluation? evaluation = null)
    {
        var gain = sameInstrument ? CommonGain(reading, other) : null;
        var (here, there) = (Estimate.Of(reading), Estimate.Of(other));
        var ownHere = Own(reading, here, gain is not null, "this reading");
        var ownThere = Own(other, there, gain is not null, "the other reading");
        var common = Even("accuracy in percent, common to both readings", Budget.Rectangular(gain ?? 0));
        var figure = Derived.Of(Model, [common, .. ownHere, .. ownThere], evaluation: evaluation ?? Evaluation.Default);
        return figure with { Contributions = [.. figure.Contributions.Where(one => one.StandardUncertainty > 0)] };

        double Model(double[] off)
        {
            var scale = 1 + off[0];
            var one = scale * (here.Value + off.Skip(1).Take(ownHere.Count).Sum());
            var two = scale * (there.Value + off.Skip(1 + ownHere.Count).Sum());
            return form == ComparisonForm.Proportion ? one / two : two - one;
        }
    }

    /// <summary>The share by which one instrument may read both too high or too low; null where its error in percent
    /// cannot be told from the rest, or was not the same.</summary>
    private static double? CommonGain(Reading reading, Reading other) =>
        reading is DisplayedReading { Leads: null, Winding: null } one
        && other is DisplayedReading { Leads: null, Winding: null } two
        && (one.Accuracy, one.Resolution) == (two.Accuracy, two.Resolution)
            ? one.Accuracy.PercentOfReading / 100
            : null;

    /// <summary>What may put a reading off by itself, each as an input about 0. Without the error in percent its counts are
    /// what is left of the instrument's accuracy.</summary>
    private static IReadOnlyList<Input> Own(Reading reading, in Estimate estimate, bool gainIsCommon, string whose) =>
    [
        .. estimate.Contributions.Select(part => gainIsCommon && part.Name == ContributionNames.Accuracy
            ? Even($"counts of {whose}", Counts((DisplayedReading)reading))
            : new Input($"{part.Name} of {whose}", 0, part.StandardUncertainty, part.DegreesOfFreedom) { Shape = part.Shape }),
    ];

    private static Input Even(string name, double standardUncertainty) =>
        new(name, 0, standardUncertainty) { Shape = ContributionShape.Even };

    private static double Counts(DisplayedReading reading) =>
        Budget.Rectangular(reading.Accuracy.HalfWidth(0, reading.Resolution));
}

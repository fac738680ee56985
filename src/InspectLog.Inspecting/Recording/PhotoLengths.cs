using InspectLog.Checks;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Inspecting.Words;
using InspectLog.Measuring;

namespace InspectLog.Inspecting.Recording;

/// <summary>Lengths measured in photos, and readings made of them. Pure.</summary>
public static class PhotoLengths
{
    // A length is kept to a nanometre, a thousandth of what could ever be told in a photo.
    private const int Decimals = 6;

    private static readonly double Step = Math.Pow(10, -Decimals);

    /// <summary>Measures a length.</summary>
    /// <param name="ends">Its two ends.</param>
    /// <param name="reference">Two ends of a known length, or four corners of a known rectangle.</param>
    /// <param name="lengths">The known lengths, mm: one or two.</param>
    /// <param name="tolerance">How far each may be off, mm.</param>
    /// <param name="size">Size of the copy the points were picked in, pixels.</param>
    /// <param name="pick">Standard uncertainty of a pick, pixels of that copy.</param>
    /// <exception cref="ArgumentException">It cannot be measured so; the message says why, for the person who picked.</exception>
    public static PhotoMeasurement Measure(
        IReadOnlyList<MarkPoint> ends, IReadOnlyList<MarkPoint> reference, IReadOnlyList<double> lengths, double tolerance, (int Width, int Height) size, double pick)
    {
        PicturePoint[] picked = [.. reference.Concat(ends).Select(point => new PicturePoint(point.X * size.Width, point.Y * size.Height))];
        PictureReference known = (reference.Count, lengths.Count) switch
        {
            (2, 1) => new KnownLength(picked[0], picked[1], lengths[0], tolerance),
            (4, 2) => new KnownRectangle(picked[..4], lengths[0], lengths[1], tolerance),
            _ => throw new ArgumentException("Pick the two ends of a known length, or the four corners of a rectangle of two known sides."),
        };
        var estimate = PictureLength.Of(known, picked[^2], picked[^1], pick);
        return new(
            reference, lengths, tolerance, size.Width, size.Height, pick, Math.Round(estimate.Value, Decimals), Math.Round(estimate.ExpandedUncertainty, Decimals));
    }

    /// <summary>The reading of a check that a length measured in a photo is: decided by the rule of the inspection as any other, its
    /// uncertainty taken over whole.</summary>
    /// <param name="scene">The inspection.</param>
    /// <param name="check">A check that measures a length.</param>
    /// <param name="cylinder">The place.</param>
    /// <param name="measured">What was measured.</param>
    /// <param name="asGiven">Where it comes from, in words.</param>
    /// <exception cref="ArgumentException">It is no reading of that check; the message says why.</exception>
    public static ReadingDecided Reading(BenchScene scene, Check check, int? cylinder, PhotoMeasurement measured, string asGiven)
    {
        if (check.Measurand is not { Kind: QuantityKind.Length } measurand)
        {
            throw new ArgumentException("Choose a check that measures a length.");
        }

        var reading = new DisplayedReading([measured.Value], new(0, 0), Step)
        {
            Allowances = [new(AllowanceSource.Method, measured.ExpandedUncertainty, AllowanceShape.TwoStandardDeviations)],
        };
        var estimate = NewReading.Estimate(reading, scene.Sheet.Evaluation);
        var limits = LimitsFor.Check(check, scene.Sheet.Rule);
        return new(
            scene.Inspection.Number, check.Id, cylinder, reading, asGiven, null, limits,
            limits is null ? null : ConformityRule.Decide(estimate, Limits.Of(limits.Lower, limits.Upper), scene.Sheet.Rule), []);
    }

    /// <summary>What a reading is given as: "6.00 mm ± 0.15 mm, measured in a photo".</summary>
    public static string AsGiven(PhotoMeasurement measured) => $"{MarkWords.Length(measured)}, measured in a photo";

}

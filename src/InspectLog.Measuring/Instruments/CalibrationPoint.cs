namespace InspectLog.Measuring;

/// <summary>A point of a calibration certificate.</summary>
/// <param name="Reading">What the instrument reads, base unit.</param>
/// <param name="Correction">What is added to that to have the true value, base unit.</param>
public sealed record CalibrationPoint(double Reading, double Correction)
{
    /// <summary>The correction at a reading: between two points along the straight line through them; beyond the first and the
    /// last nothing is known, and null is given.</summary>
    /// <param name="points">The points, by rising readings.</param>
    /// <param name="reading">The reading, base unit.</param>
    public static double? At(IReadOnlyList<CalibrationPoint> points, double reading)
    {
        ArgumentNullException.ThrowIfNull(points);
        for (var i = 0; i < points.Count; i++)
        {
            if (points[i].Reading == reading)
            {
                return points[i].Correction;
            }

            if (i > 0 && points[i - 1].Reading < reading && reading < points[i].Reading)
            {
                var (from, to) = (points[i - 1], points[i]);
                return double.Lerp(from.Correction, to.Correction, (reading - from.Reading) / (to.Reading - from.Reading));
            }
        }

        return null;
    }
}

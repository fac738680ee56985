using InspectLog.Photos.Judging;

namespace InspectLog.Photos.Likeness;

/// <summary>Where two looks that lie over each other differ most. Saving again and making smaller change a picture a little
/// everywhere, and most beside its edges; wear and numbers change it much in one place.</summary>
internal static class LookDifference
{
    /// <summary>What the same place of two copies may differ by, on a scale of 255, where it is even.</summary>
    private const float Even = 3.5f;

    /// <summary>What it may differ by more, in parts of the contrast around it.</summary>
    private const float Beside = 0.175f;

    /// <summary>The largest difference, in parts of what copies may differ by. Looks at three by three values at a time.</summary>
    /// <param name="first">The look that stays.</param>
    /// <param name="other">The look that is laid over.</param>
    /// <param name="fit">How.</param>
    public static double Largest(LumaPlane first, LumaPlane other, CropFit fit)
    {
        var laid = fit.Lay(other);
        var left = new LumaPlane(first.Width, first.Height, new float[first.Values.Length]);
        for (var at = 0; at < left.Values.Length; at++)
        {
            left.Values[at] = (float)fit.Left(first.Values[at], laid.Values[at]);
            laid.Values[at] = (float)((fit.Gain * laid.Values[at]) + fit.Offset);
        }

        var largest = 0f;
        for (var row = 1; row < first.Height - 1; row++)
            for (var column = 1; column < first.Width - 1; column++)
            {
                // What the other does not reach is NaN, which is larger than nothing.
                var difference = MathF.Abs(Smoothed(left, row, column))
                    / (Even + (Beside * MathF.Max(Contrast(first, row, column), Contrast(laid, row, column))));
                if (difference > largest)
                    largest = difference;
            }

        return largest;
    }

    private static float Smoothed(LumaPlane plane, int row, int column)
    {
        var sum = 0f;
        for (var down = -1; down <= 1; down++)
        {
            var line = plane.Row(row + down).Slice(column - 1, 3);
            sum += (2 - Math.Abs(down)) * (line[0] + (2 * line[1]) + line[2]);
        }

        return sum / 16;
    }

    private static float Contrast(LumaPlane plane, int row, int column)
    {
        var (least, most) = (float.MaxValue, float.MinValue);
        for (var down = -1; down <= 1; down++)
        {
            foreach (var value in plane.Row(row + down).Slice(column - 1, 3))
                (least, most) = (MathF.Min(least, value), MathF.Max(most, value));
        }

        return most - least;
    }
}

using InspectLog.Photos.Developing;

namespace InspectLog.Photos.Judging;

/// <summary>Whether the middle of a picture, where what matters is, is too dark or too bright to show anything.</summary>
internal static class PictureLight
{
    private const int Levels = 256;

    /// <summary>The middle: two thirds of the width and of the height.</summary>
    private const int Margin = 6;

    /// <summary>Too dark: nine tenths of the middle are darker.</summary>
    private const int Dark = 48;

    private const double DarkShare = 0.9;

    /// <summary>White with nothing in it.</summary>
    private const int Burnt = 252;

    private const double BurntShare = 0.4;

    /// <summary>What is wrong with the light; null where nothing is.</summary>
    public static LightFault? Of(LumaPlane luma)
    {
        Span<int> counts = stackalloc int[Levels];
        counts.Clear();
        var (left, right) = (luma.Width / Margin, luma.Width - (luma.Width / Margin));
        for (var row = luma.Height / Margin; row < luma.Height - (luma.Height / Margin); row++)
        {
            foreach (var value in luma.Row(row)[left..right])
                counts[Math.Clamp((int)value, 0, Levels - 1)]++;
        }

        var all = Sum(counts);
        return Sum(counts[..Dark]) > DarkShare * all ? LightFault.Dark
            : Sum(counts[Burnt..]) > BurntShare * all ? LightFault.Bright
            : null;
    }

    private static int Sum(ReadOnlySpan<int> counts)
    {
        var sum = 0;
        foreach (var count in counts)
            sum += count;
        return sum;
    }
}

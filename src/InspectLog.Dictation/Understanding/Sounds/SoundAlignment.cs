namespace InspectLog.Dictation.Understanding.Sounds;

/// <summary>How far apart two runs of sounds are: the cheapest way to turn one into the other.</summary>
internal static class SoundAlignment
{
    private const int Longest = 64;

    /// <summary>The cost per sound of the longer run, 0 where they are the same; null where it is above a bound.</summary>
    /// <param name="heard">The sounds heard.</param>
    /// <param name="meant">The sounds they may stand for.</param>
    /// <param name="most">The largest cost per sound of interest.</param>
    public static double? Distance(ReadOnlySpan<Phone> heard, ReadOnlySpan<Phone> meant, double most)
    {
        var longer = Math.Max(heard.Length, meant.Length);
        if (longer == 0 || longer >= Longest)
        {
            return null;
        }

        var bound = most * longer + 1e-9;
        Span<double> above = stackalloc double[Longest];
        Span<double> row = stackalloc double[Longest];
        above[0] = 0;
        for (var j = 0; j < meant.Length; j++)
        {
            above[j + 1] = above[j] + PhoneCosts.Loss(meant[j]);
        }

        foreach (var sound in heard)
        {
            row[0] = above[0] + PhoneCosts.Loss(sound);
            var least = row[0];
            for (var j = 0; j < meant.Length; j++)
            {
                var cost = Math.Min(above[j] + PhoneCosts.Of(sound, meant[j]),
                    Math.Min(above[j + 1] + PhoneCosts.Loss(sound), row[j] + PhoneCosts.Loss(meant[j])));
                row[j + 1] = cost;
                least = Math.Min(least, cost);
            }

            if (least > bound)
            {
                return null;
            }

            row[..(meant.Length + 1)].CopyTo(above);
        }

        return above[meant.Length] <= bound ? above[meant.Length] / longer : null;
    }
}

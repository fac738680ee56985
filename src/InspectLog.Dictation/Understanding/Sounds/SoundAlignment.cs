namespace InspectLog.Dictation.Understanding.Sounds;

/// <summary>How far apart two runs of sounds are: the cheapest way to turn one into the other.</summary>
internal static class SoundAlignment
{
    private const int Longest = 64;
    private const double Rounding = 1e-9;

    /// <summary>The cost per sound of the longer run, 0 where they are the same; null where it is above a bound, or where
    /// a run is longer than any phrase.</summary>
    /// <param name="heard">The sounds heard.</param>
    /// <param name="meant">The sounds they may stand for.</param>
    /// <param name="most">The largest cost per sound of interest.</param>
    public static double? Distance(ReadOnlySpan<Phone> heard, ReadOnlySpan<Phone> meant, double most)
    {
        var longer = Math.Max(heard.Length, meant.Length);
        if (longer is 0 or >= Longest)
        {
            return null;
        }

        var bound = most * longer + Rounding;
        return Cost(heard, meant, bound) is var cost && cost <= bound ? cost / longer : null;
    }

    // The row of the alignment table for each sound heard, in place of the row before. Only as many sounds as the bound
    // pays for can be lost or put in, so that nothing farther from the diagonal than that is looked at.
    private static double Cost(ReadOnlySpan<Phone> heard, ReadOnlySpan<Phone> meant, double bound)
    {
        var reach = (int)(bound / PhoneCosts.LeastLoss);
        Span<double> row = stackalloc double[Longest];
        row[0] = 0;
        for (var j = 1; j <= meant.Length; j++)
        {
            row[j] = j <= reach ? row[j - 1] + PhoneCosts.Loss(meant[j - 1]) : double.PositiveInfinity;
        }

        for (var i = 1; i <= heard.Length; i++)
        {
            if (NextRow(row, heard[i - 1], meant, i - reach, i + reach) > bound)
            {
                return double.PositiveInfinity;
            }
        }

        return row[meant.Length];
    }

    // Fills the row from one column to another and gives its least cost.
    private static double NextRow(Span<double> row, Phone sound, ReadOnlySpan<Phone> meant, int from, int to)
    {
        var loss = PhoneCosts.Loss(sound);
        var costs = PhoneCosts.Of(sound);
        var first = Math.Max(1, from);
        var diagonal = row[first - 1];
        row[first - 1] = from <= 0 ? diagonal + loss : double.PositiveInfinity;
        var least = row[first - 1];
        for (var j = first; j <= Math.Min(meant.Length, to); j++)
        {
            var cost = Math.Min(diagonal + costs[(int)meant[j - 1]], Math.Min(row[j] + loss, row[j - 1] + PhoneCosts.Loss(meant[j - 1])));
            diagonal = row[j];
            row[j] = cost;
            least = Math.Min(least, cost);
        }

        return least;
    }
}

using InspectLog.Photos.Judging;

namespace InspectLog.Photos.Likeness;

/// <summary>Signs of the 64 lowest terms of a picture's cosine transform but the mean: what it looks like from afar. A copy
/// that is brighter, smaller or cropped a little has most of them in common with it.</summary>
internal static class CoarseSigns
{
    private const int Terms = 64;
    private const int Edge = 32;
    private const int Highest = 11;

    /// <summary>Terms below it come of saving and rounding: about a thirtieth of a step of brightness.</summary>
    private const double Noise = 30;

    private static readonly double[] Waves =
        [.. from term in Enumerable.Range(0, Highest) from at in Enumerable.Range(0, Edge) select Math.Cos(Math.PI * term * (at + 0.5) / Edge)];

    /// <summary>The signs, the lowest term in the lowest bit.</summary>
    /// <param name="look">A square whose edge is a multiple of 32.</param>
    public static ulong Of(LumaPlane look)
    {
        var small = Means(look);
        var across = new double[Highest * Edge];
        for (var term = 0; term < Highest; term++)
            for (var row = 0; row < Edge; row++)
                for (var column = 0; column < Edge; column++)
                    across[(term * Edge) + row] += small[(row * Edge) + column] * Wave(term, column);

        var signs = 0UL;
        for (var at = 0; at < Terms; at++)
        {
            var (right, down) = TermAt(at + 1);
            var sum = 0.0;
            for (var row = 0; row < Edge; row++)
                sum += across[(right * Edge) + row] * Wave(down, row);
            if (sum > Noise)
                signs |= 1UL << at;
        }

        return signs;
    }

    private static double Wave(int term, int at) => Waves[(term * Edge) + at];

    /// <summary>The terms in order of how fine they are: (0,0), (1,0), (0,1), (2,0) and so on.</summary>
    private static (int Right, int Down) TermAt(int number)
    {
        var diagonal = 0;
        while (number > diagonal)
            number -= ++diagonal;
        return (diagonal - number, number);
    }

    private static float[] Means(LumaPlane look)
    {
        var step = look.Width / Edge;
        var means = new float[Edge * Edge];
        for (var row = 0; row < look.Height; row++)
            for (var column = 0; column < look.Width; column++)
                means[(row / step * Edge) + (column / step)] += look.Values[(row * look.Width) + column] / (step * step);
        return means;
    }
}

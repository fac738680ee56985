namespace InspectLog.Photos.Judging;

/// <summary>How sharp the edges of a picture are, in tiles and by the direction they run in. An edge that was a step before the
/// lens blurred it, seen through two smoothings, is steeper through the finer one by a factor that depends on its blur alone,
/// not on its contrast: 2 where it is as sharp as can be, near 1 where it is blurred (the re-blur ratio of Zhuo and Sim,
/// "Defocus map estimation from a single image", Pattern Recognition 44, 2011).</summary>
internal sealed class EdgeTiles
{
    /// <summary>Edge of a tile, pixels.</summary>
    public const int Tile = 48;

    /// <summary>Directions told apart: motion blurs the edges across it and leaves those along it.</summary>
    public const int Directions = 4;

    private const int Bins = 50;

    /// <summary>No step is steeper: what is, are lines and patterns so fine that the coarser smoothing takes them away, which
    /// they are in a blurred picture too.</summary>
    private const float MostRatio = 2.15f;
    private const float LeastRatio = 1f;
    private const float StrongestCounted = 24;
    private const float WeakestEdge = 3f;

    /// <summary>Edges are so many times as steep as grain usually is: grain itself is as sharp as can be in any picture.
    /// </summary>
    private const float EdgeToGrain = 6;
    private const int FewestPixels = 10;
    private const double Share = 0.65;

    private readonly float[] _weights;
    private readonly int[] _pixels;

    private EdgeTiles(int across, int down)
    {
        (Across, Down) = (across, down);
        _weights = new float[across * down * Directions * Bins];
        _pixels = new int[across * down * Directions];
    }

    public int Across { get; }

    public int Down { get; }

    /// <summary>Measures a picture.</summary>
    /// <param name="luma">Its brightness.</param>
    public static EdgeTiles Of(LumaPlane luma)
    {
        var tiles = new EdgeTiles(Math.Max(1, luma.Width / Tile), Math.Max(1, luma.Height / Tile));
        if (luma.Width < 8 || luma.Height < 8)
            return tiles;

        var fine = Smoothing.Of(luma, 1);
        var coarse = Smoothing.Of(fine, 2);
        var steepness = Steepness.Of(fine);
        var least = Math.Max(WeakestEdge, EdgeToGrain * steepness.OfGrain());
        for (var row = 3; row < luma.Height - 3; row++)
            tiles.TakeRow(row, luma, steepness, coarse, least);
        return tiles;
    }

    /// <summary>How sharp the edges of a tile are that run in a direction: the ratio that the sharper third of them exceeds;
    /// null where there are too few.</summary>
    public double? Sharpness(int tile, int direction)
    {
        var group = (tile * Directions) + direction;
        if (_pixels[group] < FewestPixels)
            return null;

        var bins = _weights.AsSpan(group * Bins, Bins);
        var sum = 0.0;
        foreach (var weight in bins)
            sum += weight;
        var below = 0.0;
        for (var bin = 0; bin < Bins; bin++)
        {
            if (below + bins[bin] >= Share * sum)
                return LeastRatio + ((MostRatio - LeastRatio) * (bin + ((Share * sum) - below) / bins[bin]) / Bins);
            below += bins[bin];
        }

        return MostRatio;
    }

    private void TakeRow(int row, LumaPlane luma, Steepness steepness, LumaPlane coarse, float least)
    {
        var tileRow = Math.Min(row / Tile, Down - 1) * Across;
        for (var column = 3; column < luma.Width - 3; column++)
        {
            var at = (row * luma.Width) + column;
            if (steepness.At(at) is var steep && steep >= least && steepness.RidgeDirection(at) is { } direction)
            {
                var ratio = steep / Math.Max(Steepness.Of(coarse, at), 0.01f);
                if (ratio < MostRatio)
                    Take(tileRow + Math.Min(column / Tile, Across - 1), direction, ratio, Math.Min(steep, StrongestCounted));
            }
        }
    }

    private void Take(int tile, int direction, float ratio, float weight)
    {
        var bin = (int)((Math.Clamp(ratio, LeastRatio, MostRatio) - LeastRatio) / (MostRatio - LeastRatio) * Bins);
        var group = (tile * Directions) + direction;
        _weights[(group * Bins) + Math.Min(bin, Bins - 1)] += weight;
        _pixels[group]++;
    }
}

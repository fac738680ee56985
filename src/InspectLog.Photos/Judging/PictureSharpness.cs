using InspectLog.Photos.Developing;

namespace InspectLog.Photos.Judging;

/// <summary>How sharp the sharpest part of a picture is: what was focused on, not the ground behind it.</summary>
internal static class PictureSharpness
{
    /// <summary>Less is blurred. Chosen on drawn pictures whose sharp ones lie above 1.8 and whose plainly blurred ones below
    /// 1.7; those between are a little soft, and nobody is asked about them.</summary>
    private const double Blurred = 1.75;

    /// <summary>Where the directions differ by so much, the camera or the thing moved: a lens out of focus blurs all of them
    /// alike.</summary>
    private const double Uneven = 0.3;

    /// <summary>So much of the edges of a direction, by weight, counts: the sharpest.</summary>
    private const double Counted = 0.2;

    /// <summary>Weight of a tile at the border; in the middle it is 1.</summary>
    private const double Border = 0.6;

    /// <summary>A direction with edges in fewer tiles says nothing.</summary>
    private const int FewestTiles = 3;

    /// <summary>Judges a picture. Each direction of edges has the same say: motion leaves those along it sharp, and only them.
    /// Null for a picture with too few edges to tell.</summary>
    public static PhotoSharpness? Of(LumaPlane luma)
    {
        var tiles = EdgeTiles.Of(luma);
        var directions = Enumerable.Range(0, EdgeTiles.Directions).Select(direction => OfDirection(tiles, direction)).OfType<double>().ToList();
        if (directions.Count == 0)
            return null;

        var sharpness = directions.Average();
        return new(
            sharpness,
            sharpness >= Blurred ? null : directions.Max() - directions.Min() > Uneven ? BlurCause.Motion : BlurCause.Focus);
    }

    private static double? OfDirection(EdgeTiles tiles, int direction)
    {
        var sharp = Enumerable.Range(0, tiles.Across * tiles.Down)
            .Select(tile => (Sharpness: tiles.Sharpness(tile, direction), Weight: Place(tiles, tile)))
            .Where(tile => tile.Sharpness is not null)
            .Select(tile => (tile.Sharpness!.Value, tile.Weight))
            .ToList();
        return sharp.Count < FewestTiles ? null : MeanOfSharpest(sharp);
    }

    private static double Place(EdgeTiles tiles, int tile)
    {
        var (row, column) = Math.DivRem(tile, tiles.Across);
        var x = Math.Abs(((column + 0.5) / tiles.Across) - 0.5) * 2;
        var y = Math.Abs(((row + 0.5) / tiles.Down) - 0.5) * 2;
        return 1 - ((1 - Border) * Math.Max(x, y));
    }

    private static double MeanOfSharpest(List<(double Sharpness, double Weight)> tiles)
    {
        var left = Counted * tiles.Sum(tile => tile.Weight);
        var (sum, counted) = (0.0, 0.0);
        foreach (var (sharpness, weight) in tiles.OrderByDescending(tile => tile.Sharpness))
        {
            var taken = Math.Min(weight, left - counted);
            (sum, counted) = (sum + (sharpness * taken), counted + taken);
            if (counted >= left)
                break;
        }

        return sum / counted;
    }
}

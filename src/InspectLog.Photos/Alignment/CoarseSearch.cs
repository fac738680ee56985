using InspectLog.Photos.Judging;

namespace InspectLog.Photos.Alignment;

/// <summary>Tries turns, scales and shifts one by one on small pictures.</summary>
internal static class CoarseSearch
{
    private const double MostTurn = 12 * Math.PI / 180;
    private const double TurnStep = 3 * Math.PI / 180;
    private const double ScaleStep = 1.05;
    private const int ScaleSteps = 4;
    private const double MostShift = 0.2;
    private const int ShiftStep = 2;

    /// <summary>So much of the pixels tried has to be in both.</summary>
    private const double LeastCovered = 0.4;

    /// <summary>The best of each turn and scale, the best of all first.</summary>
    /// <param name="later">The later picture, evened out and smoothed.</param>
    /// <param name="earlier">The earlier one.</param>
    public static IEnumerable<Similarity> Best(LumaPlane later, LumaPlane earlier)
    {
        var found = new List<(double Fit, Similarity Way)>();
        for (var turn = -MostTurn; turn < MostTurn + (TurnStep / 2); turn += TurnStep)
            for (var scale = -ScaleSteps; scale <= ScaleSteps; scale++)
                found.Add(BestShift(later, earlier, Math.Pow(ScaleStep, scale), turn));
        return found.OrderByDescending(one => one.Fit).Select(one => one.Way);
    }

    private static (double Fit, Similarity Way) BestShift(LumaPlane later, LumaPlane earlier, double scale, double turn)
    {
        var turned = Similarity.Of(scale, turn, 0, 0);
        var places = new List<(int X, int Y, float Value)>();
        for (var row = 0; row < later.Height; row += 2)
            for (var column = 0; column < later.Width; column += 2)
            {
                var (x, y) = turned.Map(column - ((later.Width - 1) / 2.0), row - ((later.Height - 1) / 2.0));
                places.Add(((int)Math.Round(x + ((earlier.Width - 1) / 2.0)), (int)Math.Round(y + ((earlier.Height - 1) / 2.0)), later.Values[(row * later.Width) + column]));
            }

        var (best, bestX, bestY) = (double.NegativeInfinity, 0, 0);
        var (mostX, mostY) = ((int)(MostShift * earlier.Width), (int)(MostShift * earlier.Height));
        for (var y = -mostY; y <= mostY; y += ShiftStep)
            for (var x = -mostX; x <= mostX; x += ShiftStep)
                if (Fit(places, earlier, x, y) is var fit && fit > best)
                    (best, bestX, bestY) = (fit, x, y);
        return (best, turned with { ShiftX = bestX, ShiftY = bestY });
    }

    private static double Fit(List<(int X, int Y, float Value)> places, LumaPlane earlier, int shiftX, int shiftY)
    {
        var (both, ofLater, ofEarlier, count) = (0f, 1e-6f, 1e-6f, 0);
        foreach (var (placeX, placeY, a) in places)
        {
            var (x, y) = (placeX + shiftX, placeY + shiftY);
            if ((uint)x >= (uint)earlier.Width || (uint)y >= (uint)earlier.Height)
                continue;
            var b = earlier.Values[(y * earlier.Width) + x];
            both += a * b;
            ofLater += a * a;
            ofEarlier += b * b;
            count++;
        }

        return count < LeastCovered * places.Count ? double.NegativeInfinity : both / Math.Sqrt(ofLater * ofEarlier);
    }
}

using InspectLog.Photos.Judging;
using InspectLog.Photos.Likeness;

namespace InspectLog.Photos.Alignment;

/// <summary>Where each place of the later picture is in the earlier one: turned, scaled and shifted. Places are pixels from the
/// middle of each.</summary>
/// <param name="Along">Scale times the cosine of the turn.</param>
/// <param name="Across">Scale times its sine.</param>
/// <param name="ShiftX">Shift to the right, pixels.</param>
/// <param name="ShiftY">Shift down, pixels.</param>
internal sealed record Similarity(double Along, double Across, double ShiftX, double ShiftY)
{
    /// <summary>Deviations by which the same place may well differ.</summary>
    private const double Usual = 0.7;

    /// <summary>One of given scale and turn in radians.</summary>
    public static Similarity Of(double scale, double turn, double shiftX, double shiftY) =>
        new(scale * Math.Cos(turn), scale * Math.Sin(turn), shiftX, shiftY);

    public double Scale => Math.Sqrt((Along * Along) + (Across * Across));

    /// <summary>Radians.</summary>
    public double Turn => Math.Atan2(Across, Along);

    /// <summary>The same among twice as many pixels.</summary>
    public Similarity Doubled => this with { ShiftX = 2 * ShiftX, ShiftY = 2 * ShiftY };

    /// <summary>From the earlier picture to the later one.</summary>
    public Similarity Inverse
    {
        get
        {
            var square = Scale * Scale;
            var (along, across) = (Along / square, -Across / square);
            return new(along, across, -((along * ShiftX) - (across * ShiftY)), -((across * ShiftX) + (along * ShiftY)));
        }
    }

    /// <summary>Where a place is.</summary>
    public (double X, double Y) Map(double x, double y) => ((Along * x) - (Across * y) + ShiftX, (Across * x) + (Along * y) + ShiftY);

    /// <summary>Improves it by least squares (Gauss and Newton; what differs much, as wear does, counts less).</summary>
    /// <param name="later">The later picture, evened out.</param>
    /// <param name="earlier">The earlier one.</param>
    /// <param name="steps">How many steps.</param>
    /// <param name="stride">Takes each so manieth pixel of each so manieth row.</param>
    public Similarity? Improved(LumaPlane later, LumaPlane earlier, int steps, int stride)
    {
        var better = this;
        for (var step = 0; step < steps; step++)
        {
            if (better.Step(later, earlier, stride) is not { } next)
                return null;
            better = next;
        }

        return better;
    }

    /// <summary>How much both have in common where they overlap: the correlation, and which part of the later picture the earlier
    /// one covers.</summary>
    public (double Correlation, double Covered) Fit(LumaPlane later, LumaPlane earlier, int stride)
    {
        var (both, ofLater, ofEarlier, count, all) = (0.0, 1e-9, 1e-9, 0, 0);
        for (var row = 0; row < later.Height; row += stride)
            for (var column = 0; column < later.Width; column += stride)
            {
                all++;
                var (x, y) = Place(later, earlier, column, row);
                if (!Sampling.Has(earlier, x, y))
                    continue;
                var (a, b) = (later.Values[(row * later.Width) + column], Sampling.Linear(earlier, x, y).Value);
                (both, ofLater, ofEarlier, count) = (both + (a * b), ofLater + (a * a), ofEarlier + (b * b), count + 1);
            }

        return (both / Math.Sqrt(ofLater * ofEarlier), (double)count / all);
    }

    private Similarity? Step(LumaPlane later, LumaPlane earlier, int stride)
    {
        const int unknowns = 4;
        var normal = new double[unknowns, unknowns + 1];
        Span<double> slope = stackalloc double[unknowns];
        var (middleX, middleY) = ((later.Width - 1) / 2.0, (later.Height - 1) / 2.0);
        for (var row = 0; row < later.Height; row += stride)
            for (var column = 0; column < later.Width; column += stride)
            {
                var (x, y) = Place(later, earlier, column, row);
                if (!Sampling.Has(earlier, x, y))
                    continue;
                var (value, alongX, alongY) = Sampling.Linear(earlier, x, y);
                var left = later.Values[(row * later.Width) + column] - value;
                var weight = 1 / (1 + (left * left / (Usual * Usual)));
                var (right, down) = (column - middleX, row - middleY);
                (slope[0], slope[1]) = ((alongX * right) + (alongY * down), (alongY * right) - (alongX * down));
                (slope[2], slope[3]) = (alongX, alongY);
                for (var i = 0; i < unknowns; i++)
                {
                    var weighed = weight * slope[i];
                    for (var j = i; j < unknowns; j++)
                        normal[i, j] += weighed * slope[j];
                    normal[i, unknowns] += weighed * left;
                }
            }

        return LinearEquations.Solve(normal) is { } by ? new(Along + by[0], Across + by[1], ShiftX + by[2], ShiftY + by[3]) : null;
    }

    private (double X, double Y) Place(LumaPlane later, LumaPlane earlier, int column, int row)
    {
        var (x, y) = Map(column - ((later.Width - 1) / 2.0), row - ((later.Height - 1) / 2.0));
        return (x + ((earlier.Width - 1) / 2.0), y + ((earlier.Height - 1) / 2.0));
    }
}

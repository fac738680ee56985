namespace InspectLog.Paper.Blocks;

/// <summary>Arcs of ellipses as curves, by the implementation notes of W3C SVG 1.1, F.6. Pure.</summary>
internal static class Arc
{
    /// <summary>The curves of an arc.</summary>
    /// <param name="from">Where it begins.</param>
    /// <param name="to">Where it ends.</param>
    /// <param name="radiusX">Half of the ellipse's width.</param>
    /// <param name="radiusY">Half of its height.</param>
    /// <param name="turn">How it is turned, degrees.</param>
    /// <param name="isLarge">Whether it is the longer way round.</param>
    /// <param name="isClockwise">Whether it goes clockwise, as seen with y downwards.</param>
    public static IEnumerable<Step> Of(
        Spot from, Spot to, double radiusX, double radiusY, double turn, bool isLarge, bool isClockwise)
    {
        if (from == to || radiusX == 0 || radiusY == 0)
        {
            return [new Step.Line(to)];
        }

        var (sin, cos) = Math.SinCos(turn * Math.PI / 180);
        var half = new Spot((cos * (from.X - to.X) + sin * (from.Y - to.Y)) / 2, (cos * (from.Y - to.Y) - sin * (from.X - to.X)) / 2);
        var stretch = Math.Max(1, Math.Sqrt(half.X * half.X / (radiusX * radiusX) + half.Y * half.Y / (radiusY * radiusY)));
        var (rx, ry) = (Math.Abs(radiusX) * stretch, Math.Abs(radiusY) * stretch);
        var across = rx * rx * half.Y * half.Y + ry * ry * half.X * half.X;
        var factor = Math.Sqrt(Math.Max(0, (rx * rx * ry * ry - across) / across)) * (isLarge == isClockwise ? -1 : 1);
        var inner = new Spot(factor * rx * half.Y / ry, -factor * ry * half.X / rx);
        var centre = new Spot(
            cos * inner.X - sin * inner.Y + (from.X + to.X) / 2, sin * inner.X + cos * inner.Y + (from.Y + to.Y) / 2);
        var start = Math.Atan2((half.Y - inner.Y) / ry, (half.X - inner.X) / rx);
        var sweep = Math.Atan2((-half.Y - inner.Y) / ry, (-half.X - inner.X) / rx) - start;
        sweep += isClockwise && sweep < 0 ? 2 * Math.PI : !isClockwise && sweep > 0 ? -2 * Math.PI : 0;
        return Curves(angle => new(
            centre.X + cos * rx * Math.Cos(angle) - sin * ry * Math.Sin(angle),
            centre.Y + sin * rx * Math.Cos(angle) + cos * ry * Math.Sin(angle)), start, sweep);
    }

    // A curve of at most a quarter is within 0.03 % of the ellipse; its control points lie on the tangents.
    private static IEnumerable<Step> Curves(Func<double, Spot> at, double start, double sweep)
    {
        var count = (int)Math.Ceiling(Math.Abs(sweep) / (Math.PI / 2) - 1e-9);
        var step = sweep / count;
        var reach = 4.0 / 3 * Math.Tan(step / 4);
        for (var one = 0; one < count; one++)
        {
            var (a, b) = (start + one * step, start + (one + 1) * step);
            var (from, to) = (at(a), at(b));
            var centre = new Spot((at(a).X + at(a + Math.PI).X) / 2, (at(a).Y + at(a + Math.PI).Y) / 2);
            var (tangentA, tangentB) = (at(a + Math.PI / 2), at(b + Math.PI / 2));
            yield return new Step.Curve(
                new(from.X + reach * (tangentA.X - centre.X), from.Y + reach * (tangentA.Y - centre.Y)),
                new(to.X - reach * (tangentB.X - centre.X), to.Y - reach * (tangentB.Y - centre.Y)),
                to);
        }
    }
}

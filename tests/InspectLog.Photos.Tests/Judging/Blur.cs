using InspectLog.Photos.Judging;

namespace InspectLog.Photos.Tests.Judging;

/// <summary>What a lens out of focus and a hand that moves do to a picture.</summary>
internal static class Blur
{
    /// <summary>Out of focus: each point becomes a disc.</summary>
    /// <param name="picture">The picture.</param>
    /// <param name="radius">Radius of the disc, pixels.</param>
    public static LumaPlane Defocus(LumaPlane picture, float radius)
    {
        var reach = (int)MathF.Ceiling(radius + 0.5f);
        var kernel = new List<(int X, int Y, float Weight)>();
        for (var y = -reach; y <= reach; y++)
            for (var x = -reach; x <= reach; x++)
                if (Math.Clamp(radius + 0.5f - MathF.Sqrt((x * x) + (y * y)), 0, 1) is > 0 and var weight)
                    kernel.Add((x, y, weight));
        return Apply(picture, kernel);
    }

    /// <summary>Moved: each point becomes a line, a little bent as a hand moves.</summary>
    /// <param name="picture">The picture.</param>
    /// <param name="length">Length of the line, pixels.</param>
    /// <param name="angle">Its direction.</param>
    /// <param name="bend">How far its middle is beside the straight line, parts of its length.</param>
    public static LumaPlane Motion(LumaPlane picture, float length, float angle, float bend)
    {
        var weights = new Dictionary<(int, int), float>();
        var steps = (int)(length * 4) + 1;
        for (var step = 0; step <= steps; step++)
        {
            var along = ((float)step / steps) - 0.5f;
            var aside = bend * (1 - (4 * along * along)) * length;
            var x = (along * length * MathF.Cos(angle)) - (aside * MathF.Sin(angle));
            var y = (along * length * MathF.Sin(angle)) + (aside * MathF.Cos(angle));
            Spread(weights, x, y);
        }

        return Apply(picture, [.. weights.Select(one => (one.Key.Item1, one.Key.Item2, one.Value))]);
    }

    /// <summary>One picture within a soft-edged ellipse, and another around it.</summary>
    public static LumaPlane Within(LumaPlane inside, LumaPlane around, (float X, float Y, float Width, float Height) ellipse)
    {
        var values = new float[inside.Values.Length];
        for (var at = 0; at < values.Length; at++)
        {
            var x = (((float)(at % inside.Width) / inside.Width) - ellipse.X) / ellipse.Width;
            var y = (((float)(at / inside.Width) / inside.Height) - ellipse.Y) / ellipse.Height;
            var part = Math.Clamp((1.1f - MathF.Sqrt((x * x) + (y * y))) * 5, 0, 1);
            values[at] = (part * inside.Values[at]) + ((1 - part) * around.Values[at]);
        }

        return new(inside.Width, inside.Height, values);
    }

    private static void Spread(Dictionary<(int, int), float> weights, float x, float y)
    {
        var (left, top) = ((int)MathF.Floor(x), (int)MathF.Floor(y));
        foreach (var (column, row) in new[] { (left, top), (left + 1, top), (left, top + 1), (left + 1, top + 1) })
        {
            var weight = (1 - MathF.Abs(x - column)) * (1 - MathF.Abs(y - row));
            weights[(column, row)] = weights.GetValueOrDefault((column, row)) + weight;
        }
    }

    private static LumaPlane Apply(LumaPlane picture, IReadOnlyList<(int X, int Y, float Weight)> kernel)
    {
        var sum = kernel.Sum(one => one.Weight);
        var values = new float[picture.Values.Length];
        foreach (var (x, y, weight) in kernel)
        {
            var part = weight / sum;
            for (var row = 0; row < picture.Height; row++)
            {
                var from = picture.Row(Math.Clamp(row + y, 0, picture.Height - 1));
                var to = values.AsSpan(row * picture.Width, picture.Width);
                for (var column = 0; column < to.Length; column++)
                    to[column] += part * from[Math.Clamp(column + x, 0, picture.Width - 1)];
            }
        }

        return new(picture.Width, picture.Height, values);
    }
}

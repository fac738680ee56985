using System.Globalization;
using InspectLog.App.Media;
using InspectLog.Photos.Alignment;

namespace InspectLog.App.Bench.Then;

/// <summary>How the earlier of two photos is drawn over the later one, in units of a drawing <see cref="Width"/> wide. Pure.</summary>
/// <param name="Then">The earlier photo.</param>
/// <param name="Now">The later photo.</param>
/// <param name="Way">How the earlier one has to be laid.</param>
public sealed record OverDrawing(PhotoUse Then, PhotoUse Now, ViewTransform Way)
{
    /// <summary>Width of the drawing.</summary>
    public const double Width = 1000;

    /// <summary>Height of the drawing, as high as the later photo.</summary>
    public double Height => Width * Now.Photo.Photo.Height / Now.Photo.Photo.Width;

    /// <summary>Height of the earlier photo before it is laid over.</summary>
    public double ThenHeight => Width * Then.Photo.Photo.Height / Then.Photo.Photo.Width;

    /// <summary>Its move, for the drawing: about the middle of both.</summary>
    public string Transform => string.Create(
        CultureInfo.InvariantCulture,
        $"translate({Width * (0.5 + Way.ShiftX):0.##} {(Height / 2) + (Width * Way.ShiftY):0.##}) rotate({Way.Turn:0.###}) scale({Way.Scale:0.####})");

    /// <summary>Its move in words: "turned by 1.2° to the right and made 4 % larger".</summary>
    public string Words
    {
        get
        {
            var turned = Math.Abs(Way.Turn) < 0.05 ? null
                : string.Create(CultureInfo.InvariantCulture, $"turned by {Math.Abs(Way.Turn):0.0}° to the {(Way.Turn > 0 ? "right" : "left")}");
            var percent = Math.Round(100 * (Way.Scale - 1));
            var scaled = percent == 0 ? null
                : string.Create(CultureInfo.InvariantCulture, $"made {Math.Abs(percent):0} % {(percent > 0 ? "larger" : "smaller")}");
            var shift = Math.Round(100 * Math.Sqrt((Way.ShiftX * Way.ShiftX) + (Way.ShiftY * Way.ShiftY)));
            var shifted = shift == 0 ? null : string.Create(CultureInfo.InvariantCulture, $"shifted by {shift:0} % of the width");
            return new[] { turned, scaled, shifted }.OfType<string>().ToList() switch
            {
                [] => "not moved at all",
                [var one] => one,
                [.. var first, var last] => $"{string.Join(", ", first)} and {last}",
            };
        }
    }

    /// <summary>A length for the drawing.</summary>
    public static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}

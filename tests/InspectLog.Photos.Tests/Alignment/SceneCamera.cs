using InspectLog.Photos.Tests.Support;

namespace InspectLog.Photos.Tests.Alignment;

/// <summary>Where the camera of a rendered view sees a point of the scene. The renderer's axes are left-handed.</summary>
internal sealed class SceneCamera(SceneView view)
{
    private readonly double[] _ahead = Unit(Less(view.LookAt, view.Location));

    /// <summary>Pixels from the middle of the picture, right and down.</summary>
    public (double X, double Y) See(double[] point)
    {
        var right = Unit(Cross(view.Sky, _ahead));
        var up = Cross(_ahead, right);
        var from = Less(point, view.Location);
        var perUnit = MovedPicture.Width / 2.0 / Math.Tan(view.Angle * Math.PI / 360) / Dot(from, _ahead);
        return (Dot(from, right) * perUnit, -Dot(from, up) * perUnit);
    }

    private static double[] Less(double[] a, double[] b) => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];

    private static double Dot(double[] a, double[] b) => (a[0] * b[0]) + (a[1] * b[1]) + (a[2] * b[2]);

    private static double[] Cross(double[] a, double[] b) =>
        [(a[1] * b[2]) - (a[2] * b[1]), (a[2] * b[0]) - (a[0] * b[2]), (a[0] * b[1]) - (a[1] * b[0])];

    private static double[] Unit(double[] a) => [.. a.Select(value => value / Math.Sqrt(Dot(a, a)))];
}

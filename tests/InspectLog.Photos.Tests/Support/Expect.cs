using InspectLog.Photos.Imaging;

namespace InspectLog.Photos.Tests.Support;

internal static class Expect
{
    public static PhotoFacts Taken(ReadOnlyMemory<byte> file) =>
        Assert.IsType<PhotoResult.Ok>(PhotoIntake.Examine(file)).Facts;

    public static string Refused(PhotoProblem problem, ReadOnlyMemory<byte> file)
    {
        var refused = Assert.IsType<PhotoResult.Refused>(PhotoIntake.Examine(file));
        Assert.Equal(problem, refused.Problem);
        return refused.Message;
    }

    /// <summary>The copy of a photo that fits an edge, as a worker makes it.</summary>
    public static byte[] Copy(ReadOnlyMemory<byte> file, int longestEdge)
    {
        using var photo = OpenedPhoto.Open(file) ?? throw new InvalidDataException("It is no photo.");
        using var copy = photo.CopyWithin(longestEdge);
        return copy.ToJpeg(PhotoIntake.DisplayQuality);
    }
}

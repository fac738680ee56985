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
}

using CsCheck;
using InspectLog.Journal.Storage;

namespace InspectLog.Journal.Tests.Storage;

public sealed class WholeLinesTests
{
    private static readonly Gen<byte[]> Texts = Gen.OneOf(Gen.Const((byte)'\n'), Gen.Const((byte)'a'), Gen.Byte).Array[0, 300];

    [Fact]
    public void Parts_are_the_file_and_each_but_the_last_ends_with_a_line() => Gen.Select(Texts, Gen.Int[1, 40]).Sample((text, partBytes) =>
    {
        var parts = Parts(text, partBytes);

        Assert.Equal(text, parts.SelectMany(part => part));
        Assert.All(parts, Assert.NotEmpty);
        Assert.All(parts.SkipLast(1), part => Assert.Equal((byte)'\n', part[^1]));
    });

    private static List<byte[]> Parts(byte[] text, int partBytes)
    {
        var lines = new WholeLines(new MemoryStream(text), partBytes);
        var parts = new List<byte[]>();
        while (lines.Next() is { } part)
        {
            parts.Add(part.ToArray());
        }

        return parts;
    }
}

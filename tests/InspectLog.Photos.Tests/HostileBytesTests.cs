using System.Buffers.Binary;
using CsCheck;
using InspectLog.Photos.Tests.Support;

namespace InspectLog.Photos.Tests;

/// <summary>Whatever the bytes, the answer is a result or the declared exception.</summary>
public sealed class HostileBytesTests
{
    private static readonly byte[][] Seeds =
    [
        Pictures.PhoneJpeg(6),
        Pictures.PhonePng(6),
        SampleFiles.Read("progressive.jpg"),
        SampleFiles.Read("restarts.jpg"),
    ];

    [Fact]
    public void Random_bytes_never_throw_anything_else()
    {
        Gen.Byte.Array[0, 400].Sample(AssertOnlyDeclared, iter: 5_000);
    }

    [Fact]
    public void Mutated_photos_never_throw_anything_else()
    {
        var edit = Gen.Select(Gen.Int[0, int.MaxValue], Gen.Byte, Gen.Int[0, 3]);
        Gen.Select(Gen.Int[0, Seeds.Length - 1], edit.List[1, 6])
            .Select((seed, edits) => edits.Aggregate(Seeds[seed], Apply))
            .Sample(AssertOnlyDeclared, iter: 5_000);
    }

    [Fact]
    public void Mutated_chunks_with_right_checksums_never_throw_anything_else()
    {
        // Past the checksums, so that the decoder itself meets the bytes.
        string[] types = ["IDAT", "PLTE", "tRNS", "gAMA", "eXIf", "iCCP", "pHYs"];
        var chunk = Gen.Select(Gen.Int[0, types.Length - 1].Select(index => types[index]), Gen.Byte.Array[0, 60]);
        Gen.Select(Gen.Int[1, 64], Gen.Int[1, 64], Gen.Byte, Gen.Byte[0, 7], chunk.List[1, 5])
            .Select((width, height, depth, colour, chunks) =>
            {
                var header = PngChunks.Header(width, height)[8..21];
                header[8] = depth;
                header[9] = colour;
                return PngChunks.File(
                [
                    PngChunks.Chunk("IHDR", header),
                    .. chunks.Select(part => PngChunks.Chunk(part.Item1, part.Item2)),
                    PngChunks.Pixels(width, height),
                    PngChunks.End(),
                ]);
            })
            .Sample(AssertOnlyDeclared, iter: 5_000);
    }

    [Fact]
    public void Mutated_exif_never_throws()
    {
        var jpeg = Pictures.PhoneJpeg(6);
        var start = jpeg.AsSpan().IndexOf("Exif\0\0"u8) + 6;
        var end = start - 8 + BinaryPrimitives.ReadUInt16BigEndian(jpeg.AsSpan(start - 8));
        Gen.Select(Gen.Int[start, end - 1], Gen.Byte).List[1, 4].Sample(
            edits =>
            {
                var file = jpeg.ToArray();
                foreach (var (position, value) in edits)
                    file[position] = value;
                Expect.Taken(file);
            },
            iter: 5_000);
    }

    private static byte[] Apply(byte[] file, (int Position, byte Value, int Kind) edit)
    {
        var position = file.Length == 0 ? 0 : edit.Position % file.Length;
        return edit.Kind switch
        {
            0 => [.. file[..position], edit.Value, .. file[position..]],
            1 when file.Length > 0 => [.. file[..position], .. file[(position + 1)..]],
            2 => [.. file[..position], .. file[(position / 2)..]],
            _ when file.Length > 0 => [.. file[..position], edit.Value, .. file[(position + 1)..]],
            _ => file,
        };
    }

    private static void AssertOnlyDeclared(byte[] file)
    {
        if (PhotoIntake.Examine(file) is PhotoResult.Refused refused)
        {
            Assert.NotEmpty(refused.Message);
            return;
        }

        try
        {
            var copy = Expect.Copy(file, 32);
            Assert.Equal([0xFF, 0xD8], copy[..2]);
        }
        catch (InvalidDataException)
        {
            // Declared: the outside was whole, the inside was not.
        }
    }
}

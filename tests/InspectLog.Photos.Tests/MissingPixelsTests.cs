using CsCheck;
using InspectLog.Photos.Tests.Support;
using SixLabors.ImageSharp.Formats.Png;

namespace InspectLog.Photos.Tests;

/// <summary>A PNG whose file is whole but whose pixel data ends early. The image library never returns from an
/// interlaced one, so it must not come that far.</summary>
public sealed class MissingPixelsTests
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    private static readonly (byte Colour, byte Depth)[] Kinds =
    [
        (0, 1), (0, 2), (0, 4), (0, 8), (0, 16), (2, 8), (2, 16), (3, 1), (3, 2), (3, 4), (3, 8), (4, 8), (4, 16),
        (6, 8), (6, 16),
    ];

    [Fact]
    public void Interlaced_picture_of_69_bytes_is_refused_at_once()
    {
        var file = PngChunks.File(
            PngChunks.Header(33, 21, 8, 2, interlaced: true), PngChunks.Chunk("IDAT", PngChunks.Packed(100)), PngChunks.End());
        Assert.Equal(69, file.Length);

        var message = Expect.Refused(PhotoProblem.Broken, file);

        Assert.Contains("part of the picture is missing", message, StringComparison.Ordinal);
        InTime(() => Assert.Throws<InvalidDataException>(() => Expect.Copy(file, 320)));
    }

    [Fact]
    public void Plain_picture_whose_last_row_is_missing_is_refused()
    {
        var file = PngChunks.File(
            PngChunks.Header(8, 8), PngChunks.Chunk("IDAT", PngChunks.Packed((9 * 8) - 1)), PngChunks.End());

        Expect.Refused(PhotoProblem.Broken, file);
    }

    [Fact]
    public void Picture_of_every_kind_is_taken_whole_and_refused_with_one_byte_less()
    {
        Gen.Select(Gen.Int[0, Kinds.Length - 1], Gen.Int[1, 40], Gen.Int[1, 40], Gen.Bool).Sample(
            (kind, width, height, interlaced) =>
            {
                width += interlaced ? 4 : 0;
                var (colour, depth) = Kinds[kind];
                var bytes = Demanded(width, height, depth, colour, interlaced);
                var header = PngChunks.Header(width, height, depth, colour, interlaced);
                byte[][] palette = colour == 3 ? [PngChunks.Chunk("PLTE", new byte[3 << depth])] : [];

                var whole = PngChunks.File([header, .. palette, PngChunks.Chunk("IDAT", PngChunks.Packed(bytes)), PngChunks.End()]);
                Expect.Taken(whole);
                InTime(() => Assert.Equal([0xFF, 0xD8], Expect.Copy(whole, 64)[..2]));

                var less = PngChunks.File([header, .. palette, PngChunks.Chunk("IDAT", PngChunks.Packed(bytes - 1)), PngChunks.End()]);
                Expect.Refused(PhotoProblem.Broken, less);
            },
            iter: 250);
    }

    [Fact]
    public void Interlaced_picture_cut_anywhere_in_its_compressed_data_is_refused()
    {
        var png = Pictures.Save(Pictures.Gradient(37, 29), new PngEncoder { InterlaceMethod = PngInterlaceMode.Adam7 });
        Expect.Taken(png);
        var packed = DataOf(png);

        // The last eight bytes are the end mark and the checksum; without them every pixel is there still.
        Gen.Int[0, packed.Length - 9].Sample(
            length =>
            {
                var file = Rebuilt(png, [packed[..length]]);
                Assert.IsType<PhotoResult.Refused>(PhotoIntake.Examine(file));
                InTime(() => Assert.Throws<InvalidDataException>(() => Expect.Copy(file, 64)));
            },
            iter: 300);
    }

    [Fact]
    public void Interlaced_picture_cut_into_chunks_of_any_size_is_shown_as_ever()
    {
        // Chunks of one byte and of none are allowed (W3C PNG Third Edition, 11.2.3).
        var png = Pictures.Save(Pictures.Gradient(37, 29), new PngEncoder { InterlaceMethod = PngInterlaceMode.Adam7 });
        var expected = Expect.Copy(png, 64);
        var packed = DataOf(png);
        Gen.Int[0, packed.Length].Array[0, 12].Sample(
            cuts =>
            {
                var ends = cuts.Append(packed.Length).Order().ToList();
                var parts = ends.Select((end, i) => packed[(i == 0 ? 0 : ends[i - 1])..end]);
                var file = Rebuilt(png, [[], packed[..1], .. Rebased(parts)]);
                Expect.Taken(file);
                InTime(() => Assert.Equal(expected, Expect.Copy(file, 64)));
            },
            iter: 200);
    }

    [Fact]
    public void Pixel_data_parted_by_another_chunk_is_refused()
    {
        var bytes = Demanded(33, 21, 8, 2, interlaced: true);
        var packed = PngChunks.Packed(bytes);
        var file = PngChunks.File(
            PngChunks.Header(33, 21, 8, 2, interlaced: true),
            PngChunks.Chunk("IDAT", packed.AsSpan(..10)),
            PngChunks.Chunk("tEXt", "by\0Tess Okafor"u8),
            PngChunks.Chunk("IDAT", packed.AsSpan(10..)),
            PngChunks.End());

        Expect.Refused(PhotoProblem.Broken, file);
    }

    [Fact]
    public void Interlaced_picture_with_an_empty_pass_is_refused_as_rare()
    {
        var bytes = Demanded(4, 9, 8, 2, interlaced: true);
        var file = PngChunks.File(
            PngChunks.Header(4, 9, 8, 2, interlaced: true), PngChunks.Chunk("IDAT", PngChunks.Packed(bytes)), PngChunks.End());

        Expect.Refused(PhotoProblem.OtherFormat, file);
    }

    [Fact]
    public void Chunk_that_changes_the_pixels_and_is_not_known_is_refused_as_rare()
    {
        var file = PngChunks.File(
            PngChunks.Header(8, 8), PngChunks.Chunk("ABCD", [1]), PngChunks.Pixels(8, 8), PngChunks.End());

        Expect.Refused(PhotoProblem.OtherFormat, file);
    }

    [Theory]
    [InlineData(0x18, 0x9C)]
    [InlineData(0x78, 0x9D)]
    [InlineData(0x78, 0xBB)]
    public void Pixel_data_that_is_not_zlib_is_refused(byte first, byte second)
    {
        var packed = PngChunks.Packed(9 * 8);
        (packed[0], packed[1]) = (first, second);

        Expect.Refused(PhotoProblem.Broken, PngChunks.File(PngChunks.Header(8, 8), PngChunks.Chunk("IDAT", packed), PngChunks.End()));
    }

    /// <summary>Counted pixel by pixel, each in the pass that the standard's own pattern gives it (W3C PNG Third
    /// Edition, 8, figure of the 8 by 8 pattern).</summary>
    private static int Demanded(int width, int height, int depth, int colour, bool interlaced)
    {
        string[] pattern =
            ["16462646", "77777777", "56565656", "77777777", "36463646", "77777777", "56565656", "77777777"];
        var bits = depth * (colour switch { 2 => 3, 4 => 2, 6 => 4, _ => 1 });
        var bytes = 0;
        for (var y = 0; y < height; y++)
        {
            var y8 = y % 8;
            var passes = Enumerable.Range(0, width).Select(x => interlaced ? pattern[y8][x % 8] : '1');
            bytes += passes.GroupBy(pass => pass).Sum(pass => 1 + (((pass.Count() * bits) + 7) / 8));
        }

        return bytes;
    }

    /// <summary>Without the first byte, which goes into a chunk of its own.</summary>
    private static IEnumerable<byte[]> Rebased(IEnumerable<byte[]> parts)
    {
        var isFirst = true;
        foreach (var part in parts)
        {
            yield return isFirst && part.Length > 0 ? part[1..] : part;
            isFirst &= part.Length == 0;
        }
    }

    private static byte[] Rebuilt(byte[] png, IEnumerable<byte[]> parts) => PngChunks.File(
    [
        PngChunks.Chunk("IHDR", png.AsSpan(16, 13)),
        .. parts.Select(part => PngChunks.Chunk("IDAT", part)),
        PngChunks.End(),
    ]);

    private static byte[] DataOf(byte[] png)
    {
        var data = new List<byte>();
        for (var at = 8; at < png.Length;)
        {
            var length = System.Buffers.Binary.BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(at));
            if (png.AsSpan(at + 4, 4).SequenceEqual("IDAT"u8))
                data.AddRange(png[(at + 8)..(at + 8 + length)]);
            at += 12 + length;
        }

        return [.. data];
    }

    /// <summary>A loop that never ends fails the test instead of hanging it.</summary>
    private static void InTime(Action action) =>
        Assert.True(Task.Run(action).Wait(Patience), "The picture was not done with in time.");
}

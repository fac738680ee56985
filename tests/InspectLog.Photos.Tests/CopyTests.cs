using System.IO.Compression;
using System.Text;
using InspectLog.Photos.Tests.Support;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats.Png;
using SixLabors.ImageSharp.PixelFormats;

namespace InspectLog.Photos.Tests;

public sealed class CopyTests
{
    [Theory]
    [InlineData(320, 213)]
    [InlineData(1600, 1067)]
    public void Large_photo_is_made_smaller_in_proportion(int edge, int otherEdge)
    {
        var copy = Image.Load(Expect.Copy(Pictures.Jpeg(2400, 1600), edge));

        Assert.Equal(new Size(edge, otherEdge), copy.Size());
    }

    [Fact]
    public void Small_photo_is_not_enlarged()
    {
        Assert.Equal(new Size(48, 32), Image.Load(Expect.Copy(Pictures.Jpeg(), 1600)).Size());
    }

    [Fact]
    public void Copy_shows_the_same_picture()
    {
        using var copy = Image.Load<Rgba32>(Expect.Copy(Pictures.Jpeg(480, 320), 48));
        using var expected = Pictures.Gradient(48, 32);

        for (var y = 0; y < copy.Height; y++)
            for (var x = 0; x < copy.Width; x++)
                AssertNear(expected[x, y], copy[x, y]);
    }

    [Fact]
    public void Transparent_parts_become_white()
    {
        var file = Pictures.Save(new Image<Rgba32>(16, 16, new Rgba32(0, 0, 0, 0)), new PngEncoder());

        using var copy = Image.Load<Rgba32>(Expect.Copy(file, 16));

        AssertNear(new Rgba32(255, 255, 255), copy[8, 8]);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Copy_holds_nothing_but_the_picture(bool jpeg)
    {
        var file = jpeg ? Pictures.PhoneJpeg() : Pictures.PhonePng();
        if (jpeg)
            file = JpegSegments.Insert(file, 0xFE, "taken at 12 Nowhere Lane"u8);
        var before = file.ToArray();
        AssertTellsMuch(file);

        var copy = Expect.Copy(file, 32);

        Assert.Equal(before, file);
        // JFIF header (APP0), quantisation, frame, Huffman tables, scan: no APP1 to APP15, no comment.
        Assert.Subset(new HashSet<byte> { 0xE0, 0xDB, 0xC0, 0xC4, 0xDA }, JpegSegments.MarkersOf(copy).ToHashSet());
        using var image = Image.Load(copy);
        Assert.Null(image.Metadata.ExifProfile);
        Assert.Null(image.Metadata.XmpProfile);
        Assert.Null(image.Metadata.IptcProfile);
        Assert.Null(image.Metadata.IccProfile);
    }

    [Fact]
    public void Compressed_text_of_a_png_is_never_unpacked()
    {
        using var packed = new MemoryStream();
        packed.Write("Comment\0\0"u8);
        using (var zlib = new ZLibStream(packed, CompressionLevel.Fastest, leaveOpen: true))
            for (var megabyte = 0; megabyte < 200; megabyte++)
                zlib.Write(new byte[1_000_000]);
        var file = PngChunks.File(
            PngChunks.Header(8, 8), PngChunks.Chunk("zTXt", packed.ToArray()), PngChunks.Pixels(8, 8), PngChunks.End());

        var before = GC.GetAllocatedBytesForCurrentThread();
        Expect.Taken(file);
        Expect.Copy(file, 8);

        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 50_000_000);
    }

    // Guards the test itself: the file it starts from must have what the copy must not.
    private static void AssertTellsMuch(byte[] file)
    {
        Assert.Contains(Pictures.CameraMaker, Encoding.Latin1.GetString(file), StringComparison.Ordinal);
        using var image = Image.Load(file);
        Assert.NotNull(image.Metadata.ExifProfile);
        Assert.Contains(image.Metadata.ExifProfile.Values, value => value.Tag.ToString() == "GPSLatitude");
        Assert.NotNull(image.Metadata.XmpProfile);
    }

    private static void AssertNear(Rgba32 expected, Rgba32 actual)
    {
        Assert.InRange(actual.R - expected.R, -12, 12);
        Assert.InRange(actual.G - expected.G, -12, 12);
        Assert.InRange(actual.B - expected.B, -12, 12);
    }
}

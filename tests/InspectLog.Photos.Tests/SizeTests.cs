using InspectLog.Photos.Tests.Support;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats.Jpeg;
using SixLabors.ImageSharp.PixelFormats;

namespace InspectLog.Photos.Tests;

public sealed class SizeTests
{
    [Fact]
    public void Empty_file_is_refused()
    {
        Expect.Refused(PhotoProblem.Empty, Array.Empty<byte>());
    }

    [Fact]
    public void Png_of_88_bytes_that_claims_four_gigapixels_is_refused_without_memory()
    {
        var bomb = PngChunks.File(
            PngChunks.Header(65500, 65500), PngChunks.Chunk("IDAT", new byte[31]), PngChunks.End());
        Assert.Equal(88, bomb.Length);

        var before = GC.GetAllocatedBytesForCurrentThread();
        var message = Expect.Refused(PhotoProblem.TooManyPixels, bomb);

        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 1_000_000);
        Assert.Contains("65500 by 65500", message, StringComparison.Ordinal);
    }

    [Fact]
    public void Jpeg_that_claims_four_gigapixels_is_refused()
    {
        var file = Pictures.Jpeg();
        var frame = file.AsSpan().IndexOf((ReadOnlySpan<byte>)[0xFF, 0xC0]);
        file.AsSpan(frame + 5, 4).Fill(0xFF);

        Expect.Refused(PhotoProblem.TooManyPixels, file);
    }

    [Theory]
    [InlineData(8000, 5000, true)]
    [InlineData(8001, 5000, false)]
    [InlineData(20_000, 1, true)]
    [InlineData(20_001, 1, false)]
    [InlineData(1, 20_001, false)]
    public void Picture_is_taken_up_to_40_megapixels_and_20000_along_an_edge(int width, int height, bool taken)
    {
        var file = PngChunks.File(PngChunks.Header(width, height), PngChunks.Pixels(width, height), PngChunks.End());

        if (taken)
            Expect.Taken(file);
        else
            Expect.Refused(PhotoProblem.TooManyPixels, file);
    }

    [Fact]
    public void File_is_taken_up_to_25_megabytes()
    {
        var photo = Pictures.Jpeg();
        var file = new byte[PhotoIntake.LargestFile + 1];
        photo.CopyTo(file, 0);

        Expect.Taken(file.AsMemory(..^1));
        var message = Expect.Refused(PhotoProblem.FileTooLarge, file);
        Assert.Contains("25.1 MB; at most 25 MB", message, StringComparison.Ordinal);
    }

    [Fact]
    public void Largest_picture_taken_can_be_copied()
    {
        var file = Pictures.Save(new Image<Rgb24>(8000, 5000, new Rgb24(200, 40, 40)), new JpegEncoder());

        var copy = Image.Load<Rgb24>(Expect.Copy(file, PhotoIntake.DisplayEdge));

        Assert.Equal(new Size(2048, 1280), copy.Size());
    }

    [Theory]
    [InlineData(20_000, 1, 1600, 1)]
    [InlineData(1, 20_000, 1, 1600)]
    public void Picture_as_thin_as_a_hair_keeps_a_pixel(int width, int height, int copyWidth, int copyHeight)
    {
        var file = PngChunks.File(PngChunks.Header(width, height), PngChunks.Pixels(width, height), PngChunks.End());

        Assert.Equal(new Size(copyWidth, copyHeight), Image.Load(Expect.Copy(file, 1600)).Size());
    }
}

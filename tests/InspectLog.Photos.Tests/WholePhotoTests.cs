using InspectLog.Photos.Tests.Support;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats.Png;

namespace InspectLog.Photos.Tests;

public sealed class WholePhotoTests
{
    [Fact]
    public void Jpeg_whole_is_taken()
    {
        Assert.Equal(new PhotoFacts(PhotoFormat.Jpeg, 48, 32), Expect.Taken(Pictures.Jpeg()));
    }

    [Theory]
    [InlineData(PngColorType.Grayscale, PngBitDepth.Bit1)]
    [InlineData(PngColorType.Grayscale, PngBitDepth.Bit16)]
    [InlineData(PngColorType.Palette, PngBitDepth.Bit8)]
    [InlineData(PngColorType.Rgb, PngBitDepth.Bit8)]
    [InlineData(PngColorType.RgbWithAlpha, PngBitDepth.Bit16)]
    public void Png_of_any_colour_type_is_taken_and_copied(PngColorType colour, PngBitDepth depth)
    {
        var file = Pictures.Save(Pictures.Gradient(48, 32), new PngEncoder
        {
            ColorType = colour,
            BitDepth = depth,
            InterlaceMethod = PngInterlaceMode.Adam7,
        });

        Assert.Equal(new PhotoFacts(PhotoFormat.Png, 48, 32), Expect.Taken(file));
        Assert.Equal(new Size(48, 32), Image.Load(Expect.Copy(file, 320)).Size());
    }

    [Theory]
    [InlineData("progressive.jpg")]
    [InlineData("restarts.jpg")]
    [InlineData("grey.jpg")]
    public void Jpeg_of_another_encoder_is_taken_and_copied(string name)
    {
        var file = SampleFiles.Read(name);

        Assert.Equal(new PhotoFacts(PhotoFormat.Jpeg, 40, 24), Expect.Taken(file));
        Assert.Equal(new Size(40, 24), Image.Load(Expect.Copy(file, 320)).Size());
    }

    [Fact]
    public void Jpeg_with_fill_bytes_before_a_marker_is_taken()
    {
        // ISO/IEC 10918-1, B.1.1.2: any marker may be preceded by any number of fill bytes 0xFF.
        var jpeg = Pictures.Jpeg();
        var tables = jpeg.AsSpan().IndexOf((ReadOnlySpan<byte>)[0xFF, 0xDB]);
        byte[] file = [.. jpeg[..tables], 0xFF, 0xFF, 0xFF, .. jpeg[tables..]];

        Expect.Taken(file);
        Assert.Equal(Expect.Copy(jpeg, 32), Expect.Copy(file, 32));
    }

    [Fact]
    public void Jpeg_with_a_film_behind_it_is_taken_and_copied()
    {
        byte[] file = [.. Pictures.Jpeg(), .. "\0\0\0\x18"u8, .. "ftypmp42"u8, .. new byte[5000]];

        Expect.Taken(file);
        Assert.Equal(new Size(48, 32), Image.Load(Expect.Copy(file, 320)).Size());
    }

    [Fact]
    public void Png_with_bytes_behind_its_end_is_taken()
    {
        Expect.Taken((byte[])[.. Pictures.Png(), .. new byte[100]]);
    }

    [Fact]
    public void File_in_the_middle_of_a_larger_buffer_is_read_from_its_own_start()
    {
        var photo = Pictures.Jpeg();
        byte[] buffer = [.. new byte[100], .. photo, .. new byte[100]];
        var file = buffer.AsMemory(100, photo.Length);

        Expect.Taken(file);
        Assert.Equal(Expect.Copy(photo, 32), Expect.Copy(file, 32));
    }
}

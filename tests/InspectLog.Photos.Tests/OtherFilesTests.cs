using System.Text;
using InspectLog.Photos.Tests.Support;

namespace InspectLog.Photos.Tests;

public sealed class OtherFilesTests
{
    public static TheoryData<string, byte[], string> Others => new()
    {
        // First bytes as the formats' own documents give them.
        { "HEIC of a phone", Iso("heic"), "HEIC" },
        { "HEIF of another phone", Iso("mif1"), "HEIC" },
        { "AVIF", Iso("avif"), "AVIF" },
        { "JPEG XL, bare", [0xFF, 0x0A, 0, 0], "JPEG XL" },
        { "JPEG XL, boxed", [0, 0, 0, 12, .. "JXL \r\n"u8, 0x87, 0x0A], "JPEG XL" },
        { "JPEG 2000", [0, 0, 0, 12, .. "jP  \r\n"u8, 0x87, 0x0A], "JPEG 2000" },
        { "WebP", [.. "RIFF"u8, 36, 0, 0, 0, .. "WEBPVP8 "u8], "WebP" },
        { "GIF 87", "GIF87a\x01\0\x01\0"u8.ToArray(), "GIF" },
        { "GIF 89", "GIF89a\x01\0\x01\0"u8.ToArray(), "GIF" },
        { "BMP", [.. "BM"u8, 70, 0, 0, 0, 0, 0, 0, 0, 54, 0, 0, 0], "BMP" },
        { "TIFF, little-endian", [.. "II*\0"u8, 8, 0, 0, 0], "TIFF" },
        { "TIFF, big-endian", [.. "MM\0*"u8, 0, 0, 0, 8], "TIFF" },
        { "SVG", "<?xml version='1.0'?><svg xmlns='http://www.w3.org/2000/svg'/>"u8.ToArray(), "SVG" },
        { "PDF", "%PDF-1.7\n"u8.ToArray(), "PDF" },
        { "MP4", Iso("mp42"), "video" },
        { "film of a phone", Iso("qt  "), "video" },
        { "AVI", [.. "RIFF"u8, 36, 0, 0, 0, .. "AVI LIST"u8], "video" },
        { "WebM", [0x1A, 0x45, 0xDF, 0xA3, 0x9F], "video" },
        { "sound", [.. "RIFF"u8, 36, 0, 0, 0, .. "WAVEfmt "u8], "not a photo" },
        { "text", "BM, the initials under a letter"u8.ToArray(), "not a photo" },
        { "zeros", new byte[200_000], "not a photo" },
        { "one byte", [0xFF], "not a photo" },
    };

    [Theory]
    [MemberData(nameof(Others))]
    public void Other_file_is_refused_by_name_and_with_what_to_do(string what, byte[] file, string named)
    {
        var message = Expect.Refused(PhotoProblem.OtherFormat, file);

        Assert.True(message.Contains(named, StringComparison.Ordinal), $"{what}: {message}");
        Assert.Matches("JPEG|still photo", message);
    }

    [Fact]
    public void Heic_refusal_tells_what_to_set_on_any_phone()
    {
        var message = Expect.Refused(PhotoProblem.OtherFormat, Iso("heic"));

        Assert.Contains("in the settings of its camera", message, StringComparison.Ordinal);
        Assert.Contains("as a JPEG", message, StringComparison.Ordinal);
    }

    [Fact]
    public void Jpeg_with_arithmetic_coding_is_refused_as_rare()
    {
        var message = Expect.Refused(PhotoProblem.OtherFormat, SampleFiles.Read("arithmetic.jpg"));

        Assert.Contains("ordinary JPEG", message, StringComparison.Ordinal);
    }

    [Fact]
    public void Real_webp_is_refused()
    {
        var message = Expect.Refused(PhotoProblem.OtherFormat, SampleFiles.Read("small.webp"));

        Assert.Contains("WebP", message, StringComparison.Ordinal);
    }

    private static byte[] Iso(string brand) =>
        [0, 0, 0, 24, .. "ftyp"u8, .. Encoding.ASCII.GetBytes(brand), 0, 0, 0, 0, .. "mif1miaf"u8];
}

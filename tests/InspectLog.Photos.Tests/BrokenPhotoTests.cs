using CsCheck;
using InspectLog.Photos.Tests.Support;

namespace InspectLog.Photos.Tests;

public sealed class BrokenPhotoTests
{
    [Fact]
    public void Jpeg_cut_at_any_length_is_refused()
    {
        RefuseEveryCut(Pictures.PhoneJpeg());
        RefuseEveryCut(SampleFiles.Read("progressive.jpg"));
        RefuseEveryCut(SampleFiles.Read("restarts.jpg"));
    }

    [Fact]
    public void Png_cut_at_any_length_is_refused()
    {
        RefuseEveryCut(Pictures.PhonePng());
    }

    [Fact]
    public void Jpeg_whose_thumbnail_is_whole_but_whose_picture_is_cut_is_refused()
    {
        var thumbnail = Pictures.Jpeg(16, 16);
        var file = JpegSegments.Insert(Pictures.Jpeg(), 0xE1, (byte[])[.. "Exif\0\0"u8, .. thumbnail]);
        Expect.Taken(file);

        Expect.Refused(PhotoProblem.Broken, file.AsMemory(..^40));
    }

    [Fact]
    public void Jpeg_half_sent_and_filled_up_with_zeros_is_refused()
    {
        var file = Pictures.Jpeg(200, 200);
        Array.Clear(file, file.Length / 2, file.Length - (file.Length / 2));

        Expect.Refused(PhotoProblem.Broken, file);
    }

    [Fact]
    public void Jpeg_without_a_scan_is_refused()
    {
        Expect.Refused(PhotoProblem.Broken, (byte[])[0xFF, 0xD8, 0xFF, 0xD9]);
    }

    [Fact]
    public void Jpeg_with_two_frames_is_refused()
    {
        var file = JpegSegments.Insert(Pictures.Jpeg(), 0xC0, [8, 0, 1, 0, 1, 1, 1, 0x11, 0]);

        Expect.Refused(PhotoProblem.Broken, file);
    }

    [Fact]
    public void Jpeg_with_thousands_of_scans_is_refused()
    {
        var jpeg = Pictures.Jpeg();
        byte[] scan = [0xFF, 0xDA, 0, 8, 1, 1, 0, 0, 63, 0];
        byte[] file = [.. jpeg[..^2], .. Enumerable.Repeat(scan, 5000).SelectMany(bytes => bytes), 0xFF, 0xD9];

        Expect.Refused(PhotoProblem.Broken, file);
    }

    [Fact]
    public void Png_with_a_single_flipped_bit_is_refused()
    {
        var png = Pictures.Png();
        Gen.Int[0, (png.Length * 8) - 1].Sample(
            bit =>
            {
                var file = png.ToArray();
                file[bit / 8] ^= (byte)(1 << (bit % 8));
                Assert.IsType<PhotoResult.Refused>(PhotoIntake.Examine(file));
            },
            iter: 2000);
    }

    [Fact]
    public void Png_garbled_by_a_text_transfer_is_refused()
    {
        // The signature holds CR LF and LF to show this (W3C PNG Third Edition, 5.2).
        var file = Pictures.Png().Where(value => value != (byte)'\r').ToArray();

        Expect.Refused(PhotoProblem.Broken, file);
    }

    [Fact]
    public void Png_without_pixels_is_refused()
    {
        Expect.Refused(PhotoProblem.Broken, PngChunks.File(PngChunks.Header(8, 8), PngChunks.End()));
    }

    [Fact]
    public void Png_with_no_width_is_refused()
    {
        Expect.Refused(
            PhotoProblem.Broken, PngChunks.File(PngChunks.Header(0, 8), PngChunks.Pixels(8, 8), PngChunks.End()));
    }

    [Fact]
    public void Png_whose_second_header_claims_another_size_is_refused()
    {
        Expect.Refused(
            PhotoProblem.Broken,
            PngChunks.File(
                PngChunks.Header(8, 8), PngChunks.Header(65500, 65500), PngChunks.Pixels(8, 8), PngChunks.End()));
    }

    [Fact]
    public void Crc_of_the_end_chunk_is_the_published_one()
    {
        // Every PNG ends with these eight bytes; the check value of the CRC-32 of ITU-T V.42 is CBF43926.
        Assert.Equal([0x49, 0x45, 0x4E, 0x44, 0xAE, 0x42, 0x60, 0x82], PngChunks.End()[4..]);
        Assert.Equal(0xCBF43926u, PngChunks.Crc("123456789"u8));
    }

    [Fact]
    public void Copy_of_a_broken_photo_is_an_invalid_data_error()
    {
        Assert.Throws<InvalidDataException>(() => Expect.Copy(Pictures.Jpeg().AsMemory(..^10), 320));
    }

    private static void RefuseEveryCut(byte[] file)
    {
        Expect.Taken(file);
        for (var length = 0; length < file.Length; length++)
        {
            var refused = Assert.IsType<PhotoResult.Refused>(PhotoIntake.Examine(file.AsMemory(0, length)));
            var expected = length switch
            {
                0 => PhotoProblem.Empty,
                < 4 when refused.Problem == PhotoProblem.OtherFormat => PhotoProblem.OtherFormat,
                _ => PhotoProblem.Broken,
            };
            Assert.Equal(expected, refused.Problem);
        }
    }
}

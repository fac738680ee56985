using InspectLog.Photos.Tests.Support;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats.Jpeg;
using SixLabors.ImageSharp.Formats.Png;
using SixLabors.ImageSharp.Metadata.Profiles.Exif;
using SixLabors.ImageSharp.PixelFormats;

namespace InspectLog.Photos.Tests;

public sealed class ExifTests
{
    /// <summary>EXIF 2.32 (CIPA DC-008), tag Orientation: for each value, the side of the scene that row 0 and column 0
    /// of the stored picture show.</summary>
    public static TheoryData<ushort, char, char> Orientations => new()
    {
        { 1, 'T', 'L' },
        { 2, 'T', 'R' },
        { 3, 'B', 'R' },
        { 4, 'B', 'L' },
        { 5, 'L', 'T' },
        { 6, 'R', 'T' },
        { 7, 'R', 'B' },
        { 8, 'L', 'B' },
    };

    [Theory]
    [MemberData(nameof(Orientations))]
    public void Orientation_is_applied_in_facts_and_copy(ushort orientation, char rowSide, char columnSide)
    {
        foreach (var jpeg in (bool[])[true, false])
        {
            var file = Store(orientation, rowSide, columnSide, jpeg);

            var facts = Expect.Taken(file);
            Assert.Equal((64, 32), (facts.Width, facts.Height));
            using var copy = Image.Load<Rgb24>(Expect.Copy(file, 64));
            Assert.Equal(new Size(64, 32), copy.Size());
            foreach (var (x, y) in ((int, int)[])[(8, 8), (56, 8), (8, 24), (56, 24)])
                Assert.True(Distance(Scene(x, y), copy[x, y]) < 40, $"{x},{y} is {copy[x, y]}, not {Scene(x, y)}");
        }
    }

    [Theory]
    [InlineData((ushort)0)]
    [InlineData((ushort)9)]
    [InlineData((ushort)65535)]
    public void Orientation_outside_the_standard_counts_as_upright(ushort orientation)
    {
        var facts = Expect.Taken(Pictures.JpegWithExif(exif => exif.SetValue(ExifTag.Orientation, orientation)));

        Assert.Equal((48, 32), (facts.Width, facts.Height));
    }

    [Fact]
    public void Time_taken_is_read_as_written()
    {
        var written = new DateTime(2025, 5, 3, 14, 7, 9, DateTimeKind.Unspecified);

        Assert.Equal(written, Expect.Taken(Pictures.PhoneJpeg()).Taken);
        Assert.Equal(written, Expect.Taken(Pictures.PhonePng()).Taken);
    }

    [Fact]
    public void Time_digitized_stands_in_and_time_of_change_does_not()
    {
        var digitized = Pictures.JpegWithExif(exif => exif.SetValue(ExifTag.DateTimeDigitized, "2024:02:29 23:59:59"));
        var changed = Pictures.JpegWithExif(exif => exif.SetValue(ExifTag.DateTime, "2024:02:29 23:59:59"));

        Assert.Equal(new DateTime(2024, 2, 29, 23, 59, 59, DateTimeKind.Unspecified), Expect.Taken(digitized).Taken);
        Assert.Null(Expect.Taken(changed).Taken);
    }

    [Theory]
    [InlineData("0000:00:00 00:00:00")]
    [InlineData("    :  :     :  :  ")]
    [InlineData("2025:02:30 10:00:00")]
    [InlineData("yesterday")]
    public void Time_that_is_no_time_is_left_out(string text)
    {
        var file = Pictures.JpegWithExif(exif => exif.SetValue(ExifTag.DateTimeOriginal, text));

        Assert.Null(Expect.Taken(file).Taken);
    }

    [Fact]
    public void What_the_camera_wrote_of_itself_is_read_but_for_place_and_serial_number()
    {
        var file = Pictures.JpegWithExif(exif =>
        {
            exif.SetValue(ExifTag.Make, "Pinhole Works");
            exif.SetValue(ExifTag.Model, "P2\u202E\u0007");
            exif.SetValue(ExifTag.LensModel, "4 mm");
            exif.SetValue(ExifTag.ExposureTime, new Rational(1, 125));
            exif.SetValue(ExifTag.FNumber, new Rational(18, 10));
            exif.SetValue(ExifTag.ISOSpeedRatings, new ushort[] { 400 });
            exif.SetValue(ExifTag.FocalLength, new Rational(42, 10));
            exif.SetValue(ExifTag.DateTimeOriginal, "2025:05:03 14:07:09");
            exif.SetValue(ExifTag.OffsetTimeOriginal, "-03:30");
            exif.SetValue(ExifTag.SerialNumber, "1234567");
        });

        var camera = Expect.Taken(file).Camera!;

        Assert.Equal(("Pinhole Works", "P2", "4 mm", 400), (camera.Maker, camera.Model, camera.Lens, camera.Sensitivity));
        Assert.Equal((0.008, 1.8, 4.2), (camera.Exposure!.Value, camera.Aperture!.Value, camera.FocalLength!.Value));
        Assert.Equal(new TimeSpan(-3, -30, 0), camera.Offset);
        Assert.DoesNotContain("1234567", camera.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Camera_that_writes_nonsense_has_written_nothing()
    {
        var file = Pictures.JpegWithExif(exif =>
        {
            exif.SetValue(ExifTag.Make, " \0 ");
            exif.SetValue(ExifTag.ExposureTime, new Rational(0, 0));
            exif.SetValue(ExifTag.FNumber, new Rational(uint.MaxValue, 1));
            exif.SetValue(ExifTag.ISOSpeedRatings, Array.Empty<ushort>());
            exif.SetValue(ExifTag.OffsetTimeOriginal, "+99:99");
        });

        Assert.Null(Expect.Taken(file).Camera);
    }

    [Fact]
    public void Photo_without_exif_has_no_time()
    {
        Assert.Null(Expect.Taken(Pictures.Jpeg()).Taken);
    }

    [Fact]
    public void Exif_that_cannot_be_read_does_not_cost_the_photo()
    {
        var file = JpegSegments.Insert(Pictures.Jpeg(), 0xE1, (byte[])[.. "Exif\0\0MM\0*"u8, 0xFF, 0xFF, 0xFF, 0xF0]);

        Assert.Equal(new PhotoFacts(PhotoFormat.Jpeg, 48, 32), Expect.Taken(file));
    }

    private static Rgb24 Scene(int x, int y) => (x < 32, y < 16) switch
    {
        (true, true) => new Rgb24(220, 30, 30),
        (false, true) => new Rgb24(30, 200, 30),
        (true, false) => new Rgb24(30, 30, 220),
        _ => new Rgb24(230, 230, 40),
    };

    /// <summary>Stores the scene the way the table says.</summary>
    private static byte[] Store(ushort orientation, char rowSide, char columnSide, bool jpeg)
    {
        var swapped = rowSide is 'L' or 'R';
        var stored = new Image<Rgb24>(swapped ? 32 : 64, swapped ? 64 : 32);
        for (var row = 0; row < stored.Height; row++)
        {
            for (var column = 0; column < stored.Width; column++)
            {
                var x = swapped ? From(rowSide, row) : From(columnSide, column);
                var y = swapped ? From(columnSide, column) : From(rowSide, row);
                stored[column, row] = Scene(x, y);
            }
        }

        stored.Metadata.ExifProfile = new ExifProfile();
        stored.Metadata.ExifProfile.SetValue(ExifTag.Orientation, orientation);
        return Pictures.Save(stored, jpeg ? new JpegEncoder { Quality = 95 } : new PngEncoder());
    }

    private static int From(char side, int steps) => side switch
    {
        'T' or 'L' => steps,
        'R' => 63 - steps,
        _ => 31 - steps,
    };

    private static int Distance(Rgb24 a, Rgb24 b) => Math.Abs(a.R - b.R) + Math.Abs(a.G - b.G) + Math.Abs(a.B - b.B);
}

using InspectLog.App.Bench.Photos;
using InspectLog.App.Media;
using InspectLog.Photos;
using InspectLog.Photos.Developing;

namespace InspectLog.App.Tests.Bench;

/// <summary>What is said of a photo at once.</summary>
public sealed class PhotoRemarksTests
{
    private static readonly DateTimeOffset Kept = new(2026, 11, 25, 10, 30, 0, TimeSpan.FromHours(1));

    [Fact]
    public void Nothing_is_said_of_a_good_photo_or_one_not_looked_at_yet()
    {
        Assert.Empty(PhotoRemarks.Of(null, canRetake: true));
        Assert.Empty(PhotoRemarks.Of(Slip(new PhotoSharpness(1.95, null), null), canRetake: true));
    }

    [Theory]
    [InlineData(BlurCause.Focus, "Blurred: nothing in it is in focus. Take it again?")]
    [InlineData(BlurCause.Motion, "Blurred: it moved while the photo was taken. Take it again?")]
    public void Blurred_photo_is_asked_about_with_the_reason(BlurCause cause, string said)
    {
        var slip = Slip(new PhotoSharpness(1.3, cause), null);

        Assert.Equal([said], PhotoRemarks.Of(slip, canRetake: true));
        Assert.Equal([said.Replace(" Take it again?", "", StringComparison.Ordinal)], PhotoRemarks.Of(slip, canRetake: false));
        Assert.Equal("not sharp", PhotoRemarks.Reason(slip));
    }

    [Theory]
    [InlineData(LightFault.Dark, "too dark")]
    [InlineData(LightFault.Bright, "too bright")]
    public void Bad_light_is_said(LightFault light, string reason)
    {
        var slip = Slip(null, light);

        Assert.StartsWith(reason, Assert.Single(PhotoRemarks.Of(slip, canRetake: true)), StringComparison.OrdinalIgnoreCase);
        Assert.Equal(reason, PhotoRemarks.Reason(slip));
    }

    [Theory]
    [InlineData("2026-11-25T10:29:10", null, "the same as this computer's clock")]
    [InlineData("2026-11-25T10:31:10", null, "the same as this computer's clock")]
    [InlineData("2026-11-25T09:29:00", 0, "the same as this computer's clock")]
    [InlineData("2026-11-25T11:33:00", null, "1 h 3 min after it was kept by this computer's clock: the camera's clock is ahead")]
    [InlineData("2026-11-22T09:00:00", null, "3 days before it was kept by this computer's clock: it was taken earlier, or the camera's clock is behind")]
    [InlineData("0001-01-01T00:00:00", null, "days before it was kept")]
    [InlineData("9999-12-31T23:59:59", null, "days after it was kept")]
    public void Skew_of_the_camera_is_told(string taken, int? offset, string said)
    {
        var camera = new CameraFacts
        {
            Taken = DateTime.Parse(taken, System.Globalization.CultureInfo.InvariantCulture),
            Offset = offset is { } hours ? TimeSpan.FromHours(hours) : null,
        };

        Assert.Contains(said, CameraWords.Skew(camera, Kept), StringComparison.Ordinal);
    }

    [Fact]
    public void Camera_and_exposure_are_told_as_recorded()
    {
        var camera = new CameraFacts
        {
            Maker = "Pinhole Works", Model = "P2", Lens = "4 mm", Exposure = 0.008, Aperture = 1.8, Sensitivity = 400, FocalLength = 4.2,
        };

        Assert.Equal("Pinhole Works P2, 4 mm", CameraWords.Camera(camera));
        Assert.Equal("1/125 s, f/1.8, ISO 400, 4.2 mm", CameraWords.Exposure(camera));
        Assert.Equal("2.5 s", CameraWords.Exposure(new() { Exposure = 2.5 }));
        Assert.Equal("Pinhole Works P2", CameraWords.Camera(new() { Maker = "Pinhole Works", Model = "Pinhole Works P2" }));
        Assert.Null(CameraWords.Camera(new()));
        Assert.Null(CameraWords.Exposure(new()));
        Assert.Null(CameraWords.Skew(new(), Kept));
    }

    private static PhotoSlip Slip(PhotoSharpness? sharpness, LightFault? light) =>
        new(PhotoSlip.Current, new string('a', 64)) { Figures = new(640, 480) { Sharpness = sharpness, Light = light } };
}

using InspectLog.App.Demo;
using InspectLog.App.Tests.Commands;
using InspectLog.Journal.Entries;
using InspectLog.Photos;
using Microsoft.Extensions.Time.Testing;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;
using UglyToad.PdfPig;

namespace InspectLog.App.Tests.OnPaper;

/// <summary>An inspection with hundreds of readings and a hundred photos as a phone makes them.</summary>
[Trait("Takes", "long")]
public sealed class LargeReportTests : IDisposable
{
    private const int Photos = 100, TimesAgain = 12;

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("inspectlog-");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public async Task Report_of_a_hundred_photos_can_still_be_sent_by_mail()
    {
        var data = Path.Combine(_folder.FullName, "garage");
        var (originals, readings) = Fill(data);
        var to = Path.Combine(_folder.FullName, "large.pdf");

        var run = await CommandRun.OfAsync("report", "--data", data, "--vehicle", "teasel", "--to", to);

        Assert.Equal(0, run.ExitCode);
        Assert.Matches(@"photo \d+ of 10\d", run.Error);
        var size = new FileInfo(to).Length;
        Assert.True(originals > 30_000_000 && size < 12_000_000, $"{size} bytes of {originals}");
        using var pdf = PdfDocument.Open(to);
        Assert.True(readings > 200);
        Assert.InRange(pdf.NumberOfPages, 20, 80);
        Assert.True(TaggedTree.Of(pdf).All.Count(one => one.Type == "Figure") >= Photos);
        Assert.All(
            pdf.GetPages().SelectMany(page => page.GetImages()),
            picture => Assert.True(Math.Max(picture.WidthInSamples, picture.HeightInSamples) <= PhotoIntake.SmallPrintEdge));
    }

    /// <summary>Repeats the last inspection of the demo many times in one, and adds photos.</summary>
    private static (long Bytes, int Readings) Fill(string data)
    {
        var clock = new FakeTimeProvider(new DateTimeOffset(2026, 11, 25, 14, 0, 0, TimeSpan.Zero));
        DemoGarage.Make(data, clock, App.Demo.DemoFiles.Shipped());
        using var garage = Journal.Garage.Open(data, clock);
        var entries = garage.Entries("teasel").Select(entry => entry.Body).ToList();
        var readings = entries.OfType<ReadingDecided>().Where(one => one.Amends is null).TakeLast(20).ToList();
        var number = garage.Append("teasel", "Tess Okafor", _ => [entries.OfType<InspectionStarted>().Last()]).Inspections[^1].Number;
        var (bytes, photos) = (0L, new List<PhotoKept>());
        for (var one = 0; one < Photos; one++)
        {
            var jpeg = Noise(one);
            bytes += jpeg.Length;
            var media = garage.Media.Keep(jpeg, "image/jpeg");
            photos.Add(new(number, media, 2000, 1500, null, null) { Caption = $"Photo number {one}" });
        }

        garage.Append("teasel", "Tess Okafor", _ =>
        [
            .. Enumerable.Repeat(readings, TimesAgain).SelectMany(again => again).Select(one => one with { Inspection = number, From = [] }),
            .. photos,
            new InspectionClosed(number),
        ]);
        return (bytes, readings.Count * TimesAgain);
    }

    /// <summary>Coarse and fine noise: as many bytes as a photo of a workshop has.</summary>
    private static byte[] Noise(int seed)
    {
        var random = new Random(seed);
        using var image = new Image<Rgb24>(2000, 1500);
        image.ProcessPixelRows(rows =>
        {
            for (var y = 0; y < rows.Height; y++)
            {
                var row = rows.GetRowSpan(y);
                for (var x = 0; x < row.Length; x++)
                {
                    var shade = (byte)(((x / 90 * 37 + y / 70 * 53 + seed * 11) % 160) + random.Next(24));
                    row[x] = new(shade, (byte)(shade / 2 + 40), (byte)(200 - shade));
                }
            }
        });
        using var jpeg = new MemoryStream();
        image.SaveAsJpeg(jpeg, new SixLabors.ImageSharp.Formats.Jpeg.JpegEncoder { Quality = 85 });
        return jpeg.ToArray();
    }
}

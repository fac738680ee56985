using InspectLog.Photos;
using InspectLog.Photos.Developing;
using InspectLog.Photos.Worker;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats.Jpeg;
using SixLabors.ImageSharp.PixelFormats;
using SixLabors.ImageSharp.Processing;
using System.Diagnostics;
using System.Globalization;

namespace InspectLog.Benchmarks.Photos;

/// <summary>Times a 12-megapixel JPEG to all copies and figures, against Debian's vipsthumbnail (libvips-tools) making the
/// display copy alone: processor time, both on one core, in turns, in one run. Then thirty such photos at once through the
/// workers, with the most memory any of them had.</summary>
internal static class PhotosCommand
{
    private const int AtOnce = 30;
    private const int WarmUps = 6;

    /// <summary>Runs it.</summary>
    /// <param name="arguments">A JPEG to take instead of one made of a photo of the demo garage.</param>
    public static async Task<int> RunAsync(string[] arguments)
    {
        var folder = Directory.CreateTempSubdirectory("inspectlog-photos-").FullName;
        try
        {
            var file = Path.Combine(folder, "photo.jpg");
            await File.WriteAllBytesAsync(file, arguments is [var given] ? await File.ReadAllBytesAsync(given) : Make());
            return Compare(file, folder) && await ManyAsync(await File.ReadAllBytesAsync(file)) ? 0 : 1;
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static bool Compare(string file, string folder)
    {
        const int rounds = 15;
        var bytes = File.ReadAllBytes(file);
        var before = Cores();
        Use(1);
        for (var warming = 0; warming < WarmUps; warming++)
            PhotoDeveloper.Develop(PhotoWork.Copies, bytes);

        var (ours, theirs) = (new List<double>(), new List<double>());
        for (var round = 0; round < rounds; round++)
        {
            ours.Add(OwnTime(() => PhotoDeveloper.Develop(PhotoWork.Copies, bytes)));
            theirs.Add(ChildTime.Of("vipsthumbnail", file, "--size", $"{PhotoIntake.DisplayEdge}x{PhotoIntake.DisplayEdge}", "-o", Path.Combine(folder, "%s-vips.jpg[Q=85,strip]")));
        }

        Use(before);
        var (own, other) = (Median(ours), Median(theirs));
        Say($"{bytes.Length / 1e6:0.0} MB: all copies and figures {own:0} ms of the processor; vipsthumbnail's display copy alone {other:0} ms; {own / other:0.00} times (at most 1.5)");
        return own <= 1.5 * other;
    }

    private static async Task<bool> ManyAsync(byte[] file)
    {
        var program = Path.Combine(AppContext.BaseDirectory, "inspectlog.dll");
        using var workers = new PhotoWorkers(new("dotnet", [program, "photo-worker"]), PhotoBounds.Usual, PhotoWorkers.UsualCount, TimeProvider.System);
        var facts = ((PhotoResult.Ok)PhotoIntake.Examine(file)).Facts;
        var watch = Stopwatch.StartNew();
        var answers = await Task.WhenAll(Enumerable.Range(0, AtOnce).Select(_ => workers.DevelopAsync(PhotoWork.Copies, file, facts, CancellationToken.None)));
        var most = workers.IdleIds.Max(id => Process.GetProcessById(id).PeakWorkingSet64) / 1e6;
        Say($"{AtOnce} at once: {answers.Count(answer => answer is PhotoAnswer.Copies)} developed by {workers.Started} workers in {watch.Elapsed.TotalSeconds:0.0} s; the largest had {most:0} MB (at most 250)");
        return most <= 250 && answers.All(answer => answer is PhotoAnswer.Copies);
    }

    /// <summary>The cores this process and those it starts may use, a bit each; 0 where the system does not say.</summary>
    private static nint Cores() =>
        OperatingSystem.IsLinux() || OperatingSystem.IsWindows() ? Process.GetCurrentProcess().ProcessorAffinity : 0;

    private static void Use(nint cores)
    {
        if (OperatingSystem.IsLinux() || OperatingSystem.IsWindows())
            Process.GetCurrentProcess().ProcessorAffinity = cores;
    }

    private static double OwnTime(Action work)
    {
        var process = Process.GetCurrentProcess();
        var before = process.TotalProcessorTime;
        work();
        process.Refresh();
        return (process.TotalProcessorTime - before).TotalMilliseconds;
    }

    /// <summary>A photo of the demo garage, enlarged to 4,000 by 3,000, with grain as a camera has it.</summary>
    private static byte[] Make()
    {
        using var image = Image.Load<Rgb24>(Path.Combine(AppContext.BaseDirectory, "demo/photos/teasel-cap.jpg"));
        image.Mutate(picture => picture.Resize(4000, 3000));
        var random = new Random(12);
        image.ProcessPixelRows(rows =>
        {
            for (var row = 0; row < rows.Height; row++)
            {
                foreach (ref var pixel in rows.GetRowSpan(row))
                {
                    var grain = random.Next(-9, 10);
                    pixel = new(Moved(pixel.R, grain), Moved(pixel.G, grain), Moved(pixel.B, grain));
                }
            }
        });
        using var file = new MemoryStream();
        image.Save(file, new JpegEncoder { Quality = 90, ColorType = JpegColorType.YCbCrRatio420 });
        return file.ToArray();

        static byte Moved(byte level, int by) => (byte)Math.Clamp(level + by, 0, 255);
    }

    private static double Median(List<double> values) => values.Order().ElementAt(values.Count / 2);

    private static void Say(FormattableString text) => Console.WriteLine(text.ToString(CultureInfo.InvariantCulture));
}

using System.Diagnostics;
using System.Globalization;
using InspectLog.Journal.Entries;

namespace InspectLog.Benchmarks.Garages;

/// <summary>Makes the archive of a vehicle turn by turn with copying the very same files and summing the copies, in processes of
/// their own. The program's own start is part of it.</summary>
internal static class ExportTimes
{
    private const int Rounds = 3;
    private const int Recordings = 60;
    private const int RecordingBytes = 5_000_000;

    /// <summary>Runs it.</summary>
    /// <param name="program">The program; null for the one that was built with this.</param>
    /// <param name="folder">A garage of <see cref="LongJournal"/>; recordings are added to it.</param>
    public static void Run(string? program, string folder)
    {
        AddRecordings(folder);
        var (exports, copies, bytes) = (new List<double>(), new List<double>(), 0L);
        for (var round = 0; round < Rounds; round++)
        {
            var (archives, copy) = (Path.Combine(folder, $"archives-{round}"), Path.Combine(folder, $"copy-{round}"));
            exports.Add(Seconds(Exporting(program, folder, archives)));
            copies.Add(Seconds(new("sh", ["-c", "cp -r \"$0\" \"$1\" && find \"$1\" -type f -exec sha256sum {} +", archives, copy])));
            bytes = Directory.GetFiles(archives, "*", SearchOption.AllDirectories).Sum(file => new FileInfo(file).Length);
            Directory.Delete(archives, recursive: true);
            Directory.Delete(copy, recursive: true);
        }

        var (export, other) = (exports.Min(), copies.Min());
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"Export of {bytes / 1e6:0} MB: best of {Rounds} {export:0.00} s, cp and sha256sum of the same files {other:0.00} s: {export / other:0.00} x (wanted: at most 1.5)"));
    }

    private static void AddRecordings(string folder)
    {
        using var garage = LongJournal.Open(folder);
        var id = garage.Vehicles()[0].Id;
        var inspection = garage.FindVehicle(id)!.OpenInspection!.Number;
        var random = new Random(1);
        for (var n = 0; n < Recordings; n++)
        {
            var sound = new byte[RecordingBytes];
            random.NextBytes(sound);
            var media = garage.Media.Keep(sound, "audio/wav");
            garage.Append(id, LongJournal.Technician, _ => [new RecordingKept(inspection, media, RecordingBytes / 32_000.0, null)]);
        }
    }

    private static ProcessStartInfo Exporting(string? program, string folder, string into)
    {
        string[] export = ["export", "--data", folder, "--vehicle", "marigold", "--to", into, "--unsealed"];
        return program is null || program.EndsWith(".dll", StringComparison.Ordinal)
            ? new("dotnet", [program ?? Path.Combine(AppContext.BaseDirectory, "inspectlog.dll"), .. export])
            : new(program, export);
    }

    private static double Seconds(ProcessStartInfo what)
    {
        what.RedirectStandardOutput = true;
        var watch = Stopwatch.StartNew();
        using var process = Process.Start(what)!;
        process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0 ? watch.Elapsed.TotalSeconds : throw new InvalidOperationException($"{what.FileName} failed.");
    }
}

using InspectLog.App.Demo;
using InspectLog.App.Tests.Commands;
using InspectLog.Inspecting.Words;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using Microsoft.Extensions.Time.Testing;

namespace InspectLog.App.Tests.OnPaper;

/// <summary>Reports of the invented garage, each written once. Of Teasel there is more that not everybody is told: its owner, and a
/// note that is left out of the report.</summary>
public sealed class DemoReports : IDisposable
{
    public const string Owner = "Hettie Brookfield";
    public const string Contact = "hettie@example.org";
    public const string Vin = "INVENTED0TEASEL68";

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("inspectlog-");

    public DemoReports()
    {
        var clock = new FakeTimeProvider(new DateTimeOffset(2026, 11, 25, 14, 0, 0, TimeSpan.Zero));
        DemoGarage.Make(Garage, clock, App.Demo.DemoFiles.Shipped());
        using var garage = Journal.Garage.Open(Garage, clock);
        var teasel = garage.FindVehicle("teasel")!;
        var note = teasel.Inspections.Last(one => one.IsClosed).Captures.OfType<WordedNote>().Last(NotesInWords.KeepsItsWords);
        LeftOut = note.Words!;
        garage.Append("teasel", "Ruben Halloway", _ => [new PrivateFactsNoted(Owner, Contact, Vin), new ReportChoice(note.Sequence, false)]);
    }

    /// <summary>The words of the note that is left out.</summary>
    public string LeftOut { get; }

    /// <summary>The data folder.</summary>
    public string Garage => Path.Combine(_folder.FullName, "garage");

    /// <summary>The report of a vehicle's last closed inspection.</summary>
    public async Task<string> FileAsync(string vehicle, string ending, string profile = "everything")
    {
        var file = Path.Combine(_folder.FullName, $"{vehicle}-{profile}.{ending}");
        if (!File.Exists(file))
        {
            var run = await CommandRun.OfAsync("report", "--data", Garage, "--vehicle", vehicle, "--profile", profile, "--to", file);
            Assert.Equal((0, $"{file}\n"), (run.ExitCode, run.Out));
        }

        return file;
    }

    public void Dispose() => _folder.Delete(recursive: true);
}

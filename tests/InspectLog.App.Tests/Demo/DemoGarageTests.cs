using InspectLog.App.Demo;
using InspectLog.App.Wear;
using InspectLog.Checks;
using InspectLog.Inspecting;
using InspectLog.Journal;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Journal.Verification;
using InspectLog.Measuring;
using Microsoft.Extensions.Time.Testing;

namespace InspectLog.App.Tests.Demo;

/// <summary>The garage that <c>demo</c> opens, played from the story.</summary>
public sealed class DemoGarageTests : IDisposable
{
    private static readonly DateTimeOffset Now = new(2026, 11, 25, 14, 0, 0, TimeSpan.Zero);

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("inspectlog-");
    private readonly Garage _garage;

    public DemoGarageTests()
    {
        var time = new FakeTimeProvider(Now);
        DemoGarage.Make(_folder.FullName, time, App.Demo.DemoFiles.Shipped());
        _garage = Garage.Open(_folder.FullName, time);
    }

    public void Dispose()
    {
        _garage.Dispose();
        _folder.Delete(recursive: true);
    }

    [Fact]
    public void Journals_are_intact_and_nothing_waits_to_be_transcribed()
    {
        Assert.True(JournalVerifier.Verify(_folder.FullName).IsIntact);
        Assert.Empty(_garage.Problems);
        Assert.Empty(_garage.WaitingRecordings());
    }

    [Fact]
    public void One_vehicle_is_in_the_middle_of_its_inspection()
    {
        var marigold = Vehicle("Marigold");

        Assert.Equal(["Marigold", "Teasel"], _garage.Vehicles().Select(vehicle => vehicle.Name));
        Assert.Equal([true, true, true, true, true, false], marigold.Inspections.Select(inspection => inspection.IsClosed));
        Assert.Equal([true, true, true], Vehicle("Teasel").Inspections.Select(inspection => inspection.IsClosed));
        Assert.NotEmpty(marigold.OpenInspection!.OpenLooseEnds);
        Assert.Contains(
            marigold.OpenInspection.VoiceNotes.SelectMany(note => note.Proposals!), one => one.State == ProposalState.Open);
    }

    [Fact]
    public void Times_keep_their_distance_from_now_and_go_forward()
    {
        Assert.Equal(Now.AddMinutes(-52), Vehicle("Marigold").OpenInspection!.Started);
        Assert.All(_garage.Vehicles(), vehicle =>
        {
            var times = _garage.Entries(vehicle.Id).Select(entry => entry.Time).ToList();
            Assert.Equal(times.Order(), times);
            Assert.True(times[^1] < Now);
        });
    }

    [Fact]
    public void Readings_by_hand_got_the_decisions_the_story_counts_on()
    {
        foreach (var (vehicle, inspection) in DemoFiles.Inspections)
        {
            var expected = inspection.Steps.Select(step => step.What)
                .Select(what => what is MeasureStep measure ? measure.Expect : what is GaugeStep gauge ? gauge.Expect : null)
                .OfType<string>();
            var played = Played(vehicle, inspection).Readings
                .Where(reading => reading.Body.From.Count == 0)
                .Select(reading => reading.Body.Conformity?.Decision.Words() ?? "recorded");

            Assert.Equal(expected, played);
        }
    }

    [Fact]
    public void Search_in_depth_was_decided_by_battery_and_lengths()
    {
        var inspection = Vehicle("Teasel").Inspections[1];

        Assert.Equal(BuiltInSheets.IgnitionInDepth, inspection.How.Sheet);
        Assert.Equal(
            [("supply-voltage", "fail"), ("supply-voltage", "pass"), .. Enumerable.Repeat(("lead-resistance", "pass"), 5), ("lead-resistance", "fail")],
            inspection.Readings.Where(reading => reading.Body.With is not null)
                .Select(reading => (reading.Body.Check, reading.Body.Conformity!.Decision.Words())));
        Assert.All(
            inspection.Readings.Where(reading => reading.Body.Check == "supply-voltage"),
            reading => Assert.True(reading.Body.With!.SameInstrument));
    }

    [Fact]
    public void Voice_notes_were_understood_as_the_story_means_them()
    {
        foreach (var (vehicle, inspection, say) in DemoFiles.Steps<SayStep>())
        {
            var words = DemoFiles.Story.Recordings.Single(recording => recording.File == say.Recording);
            var note = Played(vehicle, inspection).VoiceNotes
                .Single(note => note.Recording.Media.Sha256 == Sha256(DemoFiles.Recording(say.Recording)));

            Assert.Equal(
                words.Findings.SelectMany(Each).ToHashSet(),
                note.Proposals!.Select(one => Meaning(one.Finding)).ToHashSet());
            Assert.All(note.Proposals!, one => Assert.Equal(say.Confirm, one.State == ProposalState.Confirmed));
        }
    }

    [Fact]
    public void One_part_is_offered_as_renewed()
    {
        var offers = _garage.Vehicles().Select(vehicle => _garage.FindVehicle(vehicle.Id)!)
            .SelectMany(vehicle => WearLine.Of(vehicle, new SheetLibrary(_garage.Sheets), DateOnly.FromDateTime(Now.Date)))
            .Where(line => line.Replaced is not null);

        var offer = Assert.Single(offers);
        Assert.Equal(("Rotor", DateOnly.FromDateTime(Now.Date).AddDays(-9)), (offer.Part.Name, offer.Replaced!.On));
        Assert.False(offer.Due.IsDue);
    }

    private VehicleState Vehicle(string name) =>
        _garage.FindVehicle(_garage.Vehicles().Single(vehicle => vehicle.Name == name).Id)!;

    private InspectionState Played(StoryVehicle vehicle, StoryInspection inspection) =>
        Vehicle(vehicle.Name).Inspections[vehicle.Inspections.ToList().IndexOf(inspection)];

    private static string Sha256(string file) =>
        Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(file)));

    private static IEnumerable<string> Each(StoryFinding finding) =>
        (finding.Cylinders?.Select(cylinder => (int?)cylinder) ?? [null])
            .Select(cylinder => $"{finding.Kind} {finding.Check} {cylinder}: {finding.Value}{finding.Condition}{finding.Action}");

    private static string Meaning(ProposedFinding finding) =>
        $"{finding.Kind} {finding.Check} {finding.Cylinder}: {finding.Value}{finding.Condition}{finding.Action}";
}

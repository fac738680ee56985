using InspectLog.Journal.Entries;
using InspectLog.Journal.Index;
using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests.Index;

/// <summary>The recordings that wait for a transcript.</summary>
public sealed class WaitingRecordingsTests : IDisposable
{
    private readonly TempFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Recording_waits_until_it_has_a_transcript_or_has_failed()
    {
        var clock = Some.Clock();
        using var garage = Garage.Open(_folder.Path, clock);
        var id = garage.AddVehicle(Some.Technician, Some.Vehicle());
        var number = garage.StartInspection(id);
        var recordings = Enumerable.Range(0, 3).Select(_ =>
        {
            clock.Advance(TimeSpan.FromSeconds(1));
            return garage.Append(id, "Tess", _ => [new RecordingKept(number, Some.Recording, 1, null)]).NextSequence - 1;
        }).ToArray();

        Assert.Equal(recordings, garage.WaitingRecordings().Select(waiting => waiting.Recording));
        Assert.All(garage.WaitingRecordings(), waiting => Assert.Equal((id, number), (waiting.VehicleId, waiting.Inspection)));

        garage.Append(id, "InspectLog", _ => [new TranscriptFailed(recordings[0], "unreadable")]);
        garage.Append(id, "InspectLog", _ => [new TranscriptMade(recordings[2], "", [], false, "m", "")]);

        Assert.Equal([recordings[1]], garage.WaitingRecordings().Select(waiting => waiting.Recording));
        garage.RebuildIndex();
        Assert.Equal([recordings[1]], garage.WaitingRecordings().Select(waiting => waiting.Recording));
    }

    [Fact]
    public void Recording_that_is_cancelled_waits_no_more_and_waits_again_once_asked_for()
    {
        var clock = Some.Clock();
        using var garage = Garage.Open(_folder.Path, clock);
        var id = garage.AddVehicle(Some.Technician, Some.Vehicle());
        var number = garage.StartInspection(id);
        var recording = garage.Append(id, "Tess", _ => [new RecordingKept(number, Some.Recording, 1, null)]).NextSequence - 1;

        garage.Append(id, "Tess", _ => [new TranscriptCancelled(recording)]);
        Assert.Empty(garage.WaitingRecordings());

        clock.Advance(TimeSpan.FromSeconds(5));
        garage.Append(id, "Tess", _ => [new TranscriptAsked(recording)]);
        WaitingRecording asked = new(id, recording, number, clock.GetUtcNow());
        Assert.Equal(asked, Assert.Single(garage.WaitingRecordings()));
        garage.RebuildIndex();
        Assert.Equal(asked, Assert.Single(garage.WaitingRecordings()));
    }
}

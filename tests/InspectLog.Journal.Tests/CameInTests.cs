using InspectLog.Journal.Entries;
using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests;

/// <summary>Recordings that came in from elsewhere are not read by themselves, since the journals would part.</summary>
public sealed class CameInTests : IDisposable
{
    private readonly TempFolder _there = new();
    private readonly TempFolder _here = new();

    public void Dispose()
    {
        _there.Dispose();
        _here.Dispose();
    }

    [Fact]
    public void Recording_that_came_in_waits_until_somebody_asks_also_after_a_restart_and_with_lists_made_anew()
    {
        var journal = Written(1);
        using (var garage = Open(_here))
        {
            garage.AddJournal("marigold", journal, []);
            Assert.Empty(garage.WaitingRecordings());
        }

        File.Delete(_here.At("index.db"));
        using var again = Open(_here);
        Assert.Empty(again.WaitingRecordings());
        var note = again.FindVehicle("marigold")!.Inspections[0].VoiceNotes.Single();
        Assert.Equal((true, true, false), (note.AwaitsAsking, note.IsSetAside, note.IsWaiting));
        Assert.Equal(journal, File.ReadAllBytes(_here.At("vehicles", "marigold", "journal.jsonl")));

        again.Append("marigold", Some.Technician, _ => [new TranscriptAsked(note.Sequence)]);

        Assert.Equal(note.Sequence, Assert.Single(again.WaitingRecordings()).Recording);
    }

    [Fact]
    public void Recording_kept_here_is_read_by_itself_before_and_after_a_newer_state_came_in()
    {
        using var garage = Open(_here);
        garage.AddJournal("marigold", Written(1), []);
        garage.ContinueJournal("marigold", Written(2), []);
        Assert.Empty(garage.WaitingRecordings());

        var own = garage.Append("marigold", Some.Technician, state => [new RecordingKept(state.Inspections[0].Number, Some.Recording, 1, null)]).NextSequence - 1;

        Assert.Equal(own, Assert.Single(garage.WaitingRecordings()).Recording);
    }

    [Fact]
    public void Own_recording_that_was_not_read_goes_on_waiting_to_be_read_where_the_journal_comes_back_longer()
    {
        byte[] longer;
        using (var garage = Open(_here))
        {
            Begin(garage, 1);
            Directory.CreateDirectory(_there.At("vehicles"));
        }

        CopyTo(_there);
        using (var other = Open(_there))
        {
            other.Note("marigold", "Gone on with");
        }

        longer = File.ReadAllBytes(_there.At("vehicles", "marigold", "journal.jsonl"));
        using var back = Open(_here);
        back.ContinueJournal("marigold", longer, []);

        Assert.Single(back.WaitingRecordings());
    }

    [Fact]
    public void What_was_asked_for_elsewhere_is_not_asked_for_here()
    {
        using (var garage = Open(_there))
        {
            Begin(garage, 1);
            garage.Append("marigold", Some.Technician, state => [new TranscriptCancelled(state.NextSequence - 1), new TranscriptAsked(state.NextSequence - 1)]);
        }

        using var here = Open(_here);
        here.AddJournal("marigold", File.ReadAllBytes(_there.At("vehicles", "marigold", "journal.jsonl")), []);

        Assert.Empty(here.WaitingRecordings());
    }

    [Fact]
    public void List_that_cannot_be_read_costs_no_more_than_that_recordings_are_read()
    {
        using (var garage = Open(_here))
        {
            garage.AddJournal("marigold", Written(1), []);
        }

        File.WriteAllText(_here.At("vehicles", "marigold", "came-in.json"), "[[1");

        using var again = Open(_here);
        Assert.Single(again.WaitingRecordings());
    }

    /// <summary>The journal of the other garage with so many recordings that nobody read; longer ones continue shorter ones.</summary>
    private byte[] Written(int recordings)
    {
        using (var garage = Open(_there))
        {
            Begin(garage, recordings);
        }

        return File.ReadAllBytes(_there.At("vehicles", "marigold", "journal.jsonl"));
    }

    private static void Begin(Garage garage, int recordings)
    {
        if (garage.FindVehicle("marigold") is null)
        {
            garage.AddVehicle(Some.Technician, Some.Vehicle());
            garage.StartInspection("marigold");
        }

        while (garage.FindVehicle("marigold")!.Inspections[0].VoiceNotes.Count() < recordings)
        {
            garage.Append("marigold", Some.Technician, state => [new RecordingKept(state.Inspections[0].Number, Some.Recording, 1, null)]);
        }
    }

    private void CopyTo(TempFolder other)
    {
        Directory.CreateDirectory(other.At("vehicles", "marigold"));
        File.Copy(_here.At("vehicles", "marigold", "journal.jsonl"), other.At("vehicles", "marigold", "journal.jsonl"));
    }

    private static Garage Open(TempFolder folder) => Garage.Open(folder.Path, Some.Clock());
}

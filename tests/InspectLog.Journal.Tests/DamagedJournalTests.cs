using System.Text;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.Storage;
using InspectLog.Journal.Tests.Record;
using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests;

/// <summary>One bad journal costs only itself.</summary>
public sealed class DamagedJournalTests : IDisposable
{
    private readonly TempFolder _folder = new();

    public DamagedJournalTests()
    {
        using var garage = Garage.Open(_folder.Path, Some.Clock());
        garage.AddVehicle(Some.Technician, Some.Vehicle("Teasel"));
        garage.AddVehicle(Some.Technician, Some.Vehicle("Heron"));
        garage.AppendToWorkshop(Some.Technician, new InstrumentAdded(Some.Meter), new AccessGiven("Tess", "phone", AccessRole.Technician, new string('d', 64)));
    }

    private string Teasel => _folder.At("vehicles", "teasel", "journal.jsonl");

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Journal_that_cannot_be_read_closes_itself_only()
    {
        File.Delete(Teasel);
        File.CreateSymbolicLink(Teasel, Teasel); // reading it fails with an I/O error

        using var garage = Garage.Open(_folder.Path, Some.Clock());

        var problem = Assert.Single(garage.Problems);
        Assert.Equal((true, "teasel", false), (problem.ReadOnly, problem.VehicleId, problem.ClosesGarage));
        Assert.Contains("put it back from a copy", problem.Message, StringComparison.Ordinal);
        Assert.Contains(garage.Vehicles(), vehicle => vehicle.Id == "teasel");
        Assert.Empty(garage.Entries("teasel"));
        Assert.Throws<JournalReadOnlyException>(() => garage.Note("teasel", "lost"));
        Assert.Equal(3, garage.Note("heron", "goes on").NextSequence);
    }

    [Fact]
    public void Entry_with_sound_hashes_and_an_offset_no_clock_has_closes_its_journal_only()
    {
        var last = JournalScan.Of(File.ReadAllBytes(Teasel)).Entries[^1].Hash;
        var line = ScannedJournal.LineOfAnotherProgram(2, "note-written", 1, """{"inspection":0,"text":"midnight sun"}""", last);
        var entry = System.Text.Json.Nodes.JsonNode.Parse(ScannedJournal.Without(line, "body", "salt", "hash"))!;
        entry["offset"] = "+23:00";
        entry["hash"] = ScannedJournal.Sha256(ScannedJournal.Canonical(entry));
        File.AppendAllText(Teasel, Encoding.UTF8.GetString(ScannedJournal.Canonical(entry)) + "\n");

        using var garage = Garage.Open(_folder.Path, Some.Clock());

        Assert.Contains("Line 2 of the journal of Teasel is damaged", Assert.Single(garage.Problems).Message, StringComparison.Ordinal);
        Assert.Equal("Teasel", garage.FindVehicle("teasel")!.Name);
        Assert.Equal(3, garage.Note("heron", "goes on").NextSequence);
    }

    [Fact]
    public void Entry_that_cannot_be_taken_counts_for_nothing_and_is_shown()
    {
        var file = new JournalFile(_folder.At("workshop.jsonl"), new Durable(), new WriteLatches().Workshop);

        var journal = new OpenJournal<string>(
            file, "", (state, entry) => entry.Body is AccessGiven ? throw new InvalidOperationException() : state + entry.Kind, Some.Clock());

        Assert.Contains("instrument-added", journal.Now.State, StringComparison.Ordinal);
        Assert.Contains(journal.Now.Entries, entry => entry.Body is AccessGiven);
        Assert.Equal("what it says cannot be taken", Assert.Single(journal.Damage!.Lines).Reason);
        Assert.Throws<JournalReadOnlyException>(() => journal.Append("Tess", _ => [new InstrumentRetired("a")], (_, _) => { }));
    }

    [Fact]
    public void Damaged_journal_of_the_workshop_lets_no_device_in_and_the_vehicles_go_on()
    {
        var path = _folder.At("workshop.jsonl");
        File.WriteAllText(path, File.ReadAllText(path).Replace("Bench meter", "Bench motor", StringComparison.Ordinal));

        using var garage = Garage.Open(_folder.Path, Some.Clock());

        var problem = Assert.Single(garage.Problems);
        Assert.Equal((true, true, false), (problem.ReadOnly, problem.IsOfWorkshop, problem.ClosesGarage));
        Assert.Contains("no paired device is let in", problem.Message, StringComparison.Ordinal);
        Assert.Empty(garage.Workshop.Accesses);
        Assert.Empty(garage.Workshop.Instruments);
        Assert.Throws<JournalReadOnlyException>(() => garage.AppendToWorkshop("Tess", new InstrumentRetired("a")));
        Assert.Equal(3, garage.Note("heron", "goes on").NextSequence);
    }

    [Fact]
    public void Many_damaged_lines_are_counted_and_the_first_ones_named()
    {
        using (var garage = Garage.Open(_folder.Path, Some.Clock()))
        {
            garage.Append("teasel", Some.Technician, _ => [.. Enumerable.Range(0, 9).Select(n => new NoteWritten(0, null, $"note {n}"))]);
        }

        File.WriteAllText(Teasel, File.ReadAllText(Teasel).Replace("\"note ", "\"mote ", StringComparison.Ordinal));

        using var again = Garage.Open(_folder.Path, Some.Clock());

        Assert.StartsWith(
            "9 lines of the journal of Teasel are damaged: line 2, its body was changed; line 3, its body was changed;",
            Assert.Single(again.Problems).Message,
            StringComparison.Ordinal);
        Assert.Equal(9, again.DamagedLines("teasel").Count);
        Assert.Empty(again.DamagedLines("heron"));
    }
}

using InspectLog.Journal.Backups;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Erasing;
using InspectLog.Journal.Record;
using InspectLog.Journal.Sealing;
using InspectLog.Journal.Tests.Support;
using InspectLog.Journal.Verification;

namespace InspectLog.Journal.Tests.Erasing;

/// <summary>Erasing what is known of one person: nothing of her is left in any byte, and all the rest holds.</summary>
public sealed class ErasureTests : IDisposable
{
    private readonly TempFolder _folder = new();

    public ErasureTests() => SomePerson.Make(Data);

    private string Data => _folder.At("garage");

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Person_is_in_no_byte_of_the_folder_afterwards_and_everything_verifies()
    {
        Assert.NotEmpty(SomePerson.Remains(Data));

        Erase(SomePerson.Request);

        Assert.Empty(SomePerson.Remains(Data));
        Assert.False(File.Exists(_folder.At("garage", "set-aside", "marigold-20261125T103000Z")));
        Assert.True(File.Exists(_folder.At("garage", "set-aside", "teasel-20261125T103000Z")));
        Assert.False(Directory.Exists(_folder.At("garage", PendingErasure.FolderName)));
        var report = JournalVerifier.Verify(Data, _ => true);
        Assert.True(report.IsIntact);
        Assert.All(report.Journals, journal => Assert.NotEmpty(journal.ErasedBy(Assert.Single(journal.Erasures).Entry)));
    }

    [Fact]
    public void Hashes_stay_and_a_tombstone_says_what_was_erased_without_whose()
    {
        var before = Entries("marigold");

        var plan = Erase(SomePerson.Request);

        using var garage = Garage.Open(Data, Some.Clock());
        Assert.Empty(garage.Problems);
        var after = garage.Entries("marigold");
        Assert.Equal(before.Select(entry => entry.Hash), after.Take(before.Count).Select(entry => entry.Hash));
        var tombstone = (PersonErased)after[before.Count].Body!;
        Assert.Equal(("the former owner", "a privacy request", 3), (tombstone.AskedBy, tombstone.Reason, tombstone.Media));
        Assert.Equal(plan.Journals.Single(one => one.VehicleId == "marigold") is var listed ? listed.Gone.Count + listed.Restated.Count : 0, tombstone.CountTaken());
        Assert.Equal("Office", after[before.Count].Actor);
    }

    [Fact]
    public void What_others_recorded_stays_without_the_name()
    {
        Erase(SomePerson.Request);

        using var garage = Garage.Open(Data, Some.Clock());
        var marigold = garage.FindVehicle("marigold")!;
        Assert.Null(marigold.Private);
        var inspection = Assert.Single(marigold.Inspections);
        Assert.True(inspection.IsClosed);
        Assert.Equal("burnt", Assert.Single(inspection.Observations).Body.Condition);
        Assert.Equal($"{Erased.Name} says it pinks uphill; ring {Erased.Name} when it is done", Assert.Single(inspection.Captures.OfType<Journal.State.TypedNote>()).Words);
        var photo = Assert.Single(inspection.Captures.OfType<Journal.State.PhotoCapture>());
        Assert.Equal((SomePerson.MediaNamed(SomePerson.Shared), Erased.Name), (photo.Photo.Media.Sha256, photo.History.By));
        Assert.Equal($"dent {Erased.Name} drove", Assert.Single(inspection.MarksOf(photo.Sequence)!.Body.Marks).Text);
        Assert.Single(inspection.PhotoMarks);
        Assert.Equal(Erased.Name, Assert.Single(garage.FindVehicle("teasel")!.Inspections).How.Technician);
        Assert.NotNull(Assert.Single(garage.Workshop.Accesses).Withdrawn);
        Assert.DoesNotContain(garage.PeopleNamed(), name => name == Erased.Name);
        Assert.Empty(garage.Search("lindqvist"));
        Assert.NotEmpty(garage.Search("pinks"));
    }

    [Fact]
    public void Garage_goes_on_after_it_without_a_new_start()
    {
        using (var garage = Garage.Open(Data, Some.Clock()))
        {
            garage.Erase("Office", SomePerson.Request);
            Assert.Empty(garage.Search("lindqvist"));
            garage.Note("marigold", "Goes on");
            garage.Note("teasel", "Goes on");
        }

        Assert.Empty(SomePerson.Remains(Data));
        Assert.True(JournalVerifier.Verify(Data, _ => true).IsIntact);
        using var again = Garage.Open(Data, Some.Clock());
        Assert.Empty(again.Problems);
        Assert.Equal(2, again.Search("goes on").Count);
    }

    [Fact]
    public void Name_of_who_worked_stays_unless_it_is_asked_for()
    {
        var plan = Erase(SomePerson.Request with { AsWorker = false });

        Assert.True(plan.Staying > 3);
        Assert.Empty(SomePerson.Remains(Data, asWorker: false));
        using var garage = Garage.Open(Data, Some.Clock());
        Assert.Equal(SomePerson.Name, Assert.Single(garage.FindVehicle("teasel")!.Inspections).How.Technician);
        Assert.Contains(garage.Entries("marigold"), entry => entry.Actor == SomePerson.Name);
        Assert.All(garage.Entries("marigold"), entry => Assert.Null(entry.Rest));

        garage.Erase("Office", SomePerson.Request);
        garage.Dispose();
        Assert.Empty(SomePerson.Remains(Data));
        Assert.True(JournalVerifier.Verify(Data, _ => true).IsIntact);
    }

    [Fact]
    public void Seals_and_printed_heads_of_before_hold()
    {
        var chain = JournalChain.Read(Data, "marigold");
        using var key = new SealKeyFile(Data).ReadOrMake(null);
        var sealer = new Sealer(Some.Clock(), "InspectLog");
        sealer.Seal(SealFolder.Of(Data, "marigold"), "marigold", chain, key);

        Erase(SomePerson.Request);

        var report = JournalVerifier.Verify(Data, _ => true).Journals.Single(journal => journal.Seals.Seals.Count > 0);
        Assert.True(report.Seals.IsIntact());
        Assert.Equal(report.ErasedBy(report.Erasures[0].Entry), Assert.Single(report.Seals.Seals).Comparison!.ErasedSince);
        Assert.Contains("erased since", SealWords.Line(report.Seals.Seals[0]), StringComparison.Ordinal);
        var found = report.Find(chain.Record);
        Assert.True(found is { IsMatch: true, ErasedSince.Count: > 0 });
        Assert.Equal(chain.Count, found!.Entries);
        Assert.True(new PrintedSeal("marigold", chain.Count, chain.Record, null).Compare(JournalChain.Read(Data, "marigold")) is { Stands: true, WithheldSince.Count: 0, ErasedSince.Count: > 0 });
        sealer.Seal(SealFolder.Of(Data, "marigold"), "marigold", JournalChain.Read(Data, "marigold"), key);
        Assert.True(JournalVerifier.Verify(Data, _ => true).IsIntact);
    }

    [Fact]
    public void Withheld_without_a_tombstone_is_still_told_by_the_seal()
    {
        using var key = new SealKeyFile(Data).ReadOrMake(null);
        new Sealer(Some.Clock(), "InspectLog").Seal(SealFolder.Of(Data, "marigold"), "marigold", JournalChain.Read(Data, "marigold"), key);
        Erase(SomePerson.Request);
        var journal = _folder.At("garage", "vehicles", "marigold", "journal.jsonl");
        var lines = File.ReadAllLines(journal);
        lines[1] = System.Text.Encoding.UTF8.GetString(EntryLine.WithoutBody(System.Text.Encoding.UTF8.GetBytes(lines[1])));
        File.WriteAllText(journal, string.Join('\n', lines) + "\n");

        var report = JournalVerifier.Verify(Data, _ => true).Journals.Single(one => one.Seals.Seals.Count > 0);

        Assert.Equal([2], report.Seals.Newest()!.Comparison!.WithheldSince);
        Assert.False(report.IsIntact);
    }

    [Theory]
    [InlineData("\"time\":\"2026-11-25T10", "\"time\":\"2026-11-25T11")]
    [InlineData("\"kind\":\"photo-kept\"", "\"kind\":\"photo-hept\"")]
    public void What_is_left_of_a_nameless_line_cannot_be_changed(string from, string to)
    {
        Erase(SomePerson.Request);
        var journal = _folder.At("garage", "vehicles", "marigold", "journal.jsonl");
        var lines = File.ReadAllLines(journal);
        var at = Array.FindLastIndex(lines, line => !line.Contains("\"actor\"", StringComparison.Ordinal));
        lines[at] = lines[at].Replace(from, to, StringComparison.Ordinal);
        File.WriteAllText(journal, string.Join('\n', lines) + "\n");

        var damage = Assert.Single(JournalVerifier.Verify(Data, _ => true).Journals.Single(one => one.File == journal).Damage);

        Assert.Equal(at + 1, damage.Line);
        Assert.Contains("changed", damage.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Name_cannot_be_taken_out_of_a_line_without_a_tombstone()
    {
        var journal = _folder.At("garage", "vehicles", "teasel", "journal.jsonl");
        var lines = File.ReadAllLines(journal);
        lines[^1] = System.Text.Encoding.UTF8.GetString(EntryLine.WithoutActor(System.Text.Encoding.UTF8.GetBytes(lines[^1])).Line);
        File.WriteAllText(journal, string.Join('\n', lines) + "\n");

        Assert.Contains("no entry says so", Assert.Single(JournalVerifier.Verify(Data, _ => true).Journals.Single(one => one.File == journal).Damage).Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Anna Lindqvist", "nobody called")]
    [InlineData("InspectLog", "nobody called")]
    [InlineData("", "nobody called")]
    [InlineData("example", "nobody called")]
    [InlineData("0151 496 0000", "nobody called")]
    public void Wrong_name_is_told_and_changes_nothing(string name, string problem)
    {
        var files = Files();

        Assert.Contains(problem, Assert.Throws<ErasureRefusedException>(() => Erase(SomePerson.Request with { Person = name })).Message, StringComparison.Ordinal);

        Assert.Equal(files, Files());
    }

    [Fact]
    public void Erased_twice_there_is_nobody_any_more()
    {
        Erase(SomePerson.Request);

        Assert.Contains("nobody called", Assert.Throws<ErasureRefusedException>(() => Erase(SomePerson.Request)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Person_of_whom_only_the_work_is_known_stays_and_that_is_told()
    {
        using var garage = Garage.Open(Data, Some.Clock());

        var plan = garage.PlanErasure(Some.Technician, asWorker: false);

        Assert.DoesNotContain(plan.Journals, one => one.Gone.Any(entry => entry.Part == ErasedPart.OwnerFacts));
        garage.Note("teasel", "Looked in");
        garage.AppendToWorkshop("Noor Haddad", new InstrumentAdded(Some.Meter));
        Assert.True(garage.PlanErasure("noor  haddad", asWorker: false).IsEmpty);
        Assert.Contains("nothing but the name of who worked", Assert.Throws<ErasureRefusedException>(() => garage.Erase("Office", SomePerson.Request with { Person = "Noor Haddad", AsWorker = false })).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Ana Lindqvist", "the owner", "asked", "somebody else do it")]
    [InlineData("Office", "ana lindqvist", "asked", "without naming")]
    [InlineData("Office", "the owner", "Ana Lindqvist wrote", "without naming")]
    [InlineData("Office", "", "asked", "without naming")]
    public void Tombstone_cannot_name_the_person(string by, string askedBy, string reason, string problem)
    {
        var files = Files();

        using (var garage = Garage.Open(Data, Some.Clock()))
        {
            Assert.Contains(problem, Assert.Throws<ErasureRefusedException>(() => garage.Erase(by, SomePerson.Request with { AskedBy = askedBy, Reason = reason })).Message, StringComparison.Ordinal);
        }

        Assert.Equal(files, Files());
    }

    [Fact]
    public void List_that_is_out_of_date_is_not_carried_out()
    {
        using var garage = Garage.Open(Data, Some.Clock());
        var plan = garage.PlanErasure(SomePerson.Name, asWorker: true);
        garage.Note("teasel", $"{SomePerson.Name} rang");

        Assert.Contains("Look at the list again", Assert.Throws<ErasureRefusedException>(() => garage.Erase("Office", SomePerson.Request, plan.Mark)).Message, StringComparison.Ordinal);
        garage.Erase("Office", SomePerson.Request, garage.PlanErasure(SomePerson.Name, asWorker: true).Mark);
    }

    [Fact]
    public void Damaged_journal_stops_it()
    {
        var journal = _folder.At("garage", "vehicles", "teasel", "journal.jsonl");
        File.WriteAllText(journal, File.ReadAllText(journal).Replace("Nothing of", "Something of", StringComparison.Ordinal));

        Assert.Contains("is damaged", Assert.Throws<ErasureRefusedException>(() => Erase(SomePerson.Request)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Folder_that_is_looked_at_only_is_left_alone()
    {
        using var garage = Garage.OpenToLook(Data, Some.Clock());

        Assert.False(garage.PlanErasure(SomePerson.Name, asWorker: true).IsEmpty);
        Assert.Throws<JournalReadOnlyException>(() => garage.Erase("Office", SomePerson.Request));
    }

    [Fact]
    public void Medium_that_another_entry_names_stays_and_that_is_told()
    {
        using (var garage = Garage.Open(Data, Some.Clock()))
        {
            garage.Append("teasel", Some.Technician, _ => [new VehiclePictured(garage.Media.Keep(SomePerson.Picture, "image/jpeg"))]);
        }

        var plan = Erase(SomePerson.Request);

        Assert.Equal(SomePerson.MediaNamed(SomePerson.Picture), Assert.Single(plan.Shared).Sha256);
        Assert.Equal(2, plan.Media);
        Assert.True(JournalVerifier.Verify(Data, _ => true).IsIntact);
    }

    [Fact]
    public void Backups_that_hold_it_are_named_and_the_next_backup_takes_it_out_there()
    {
        var to = _folder.At("backup");
        new BackupRecord(Data).Completed(new Backup(Data, to, Some.Clock(), "InspectLog").Run(stop: TestContext.Current.CancellationToken), to);
        new BackupRecord(Data).Keep(new(_folder.At("stick"), Nightly: false, 14));

        var plan = Erase(SomePerson.Request);

        Assert.Equal([(_folder.At("stick"), BackupHolding.NotReachable), (to, BackupHolding.Holds)], plan.Backups.Select(one => (one.Folder, one.Holding)));
        Assert.NotEmpty(SomePerson.Remains(to));
        var outcome = new Backup(Data, to, Some.Clock(), "InspectLog").Run(stop: TestContext.Current.CancellationToken);
        Assert.Equal(4, outcome.Erased); // three media, and what was set aside
        Assert.Empty(SomePerson.Remains(to));
        Assert.True(JournalVerifier.Verify(to, _ => true).IsIntact);
    }

    private ErasurePlan Erase(ErasureRequest request)
    {
        using var garage = Garage.Open(Data, Some.Clock());
        return garage.Erase("Office", request);
    }

    private IReadOnlyList<JournalEntry> Entries(string vehicle)
    {
        using var garage = Garage.Open(Data, Some.Clock());
        return [.. garage.Entries(vehicle)];
    }

    private SortedDictionary<string, string> Files() => Backups.SomeBackup.Files(Data);
}

using InspectLog.Archives.Checking;
using InspectLog.Archives.Importing;
using InspectLog.Archives.Making;
using InspectLog.Archives.Tests.Support;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Storage;
using InspectLog.Journal.Verification;

namespace InspectLog.Archives.Tests.Importing;

public sealed class ArchiveImportTests : IDisposable
{
    private readonly TempFolder _there = new();
    private readonly TempFolder _here = new();
    private readonly TempFolder _out = new();
    private readonly string _vehicle;

    public ArchiveImportTests() => _vehicle = SomeGarage.Make(_there.Path);

    public void Dispose()
    {
        _there.Dispose();
        _here.Dispose();
        _out.Dispose();
    }

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Vehicle_that_is_not_here_is_added_with_all_it_has_and_the_garage_verifies()
    {
        var (vehicle, plan) = Import(await ZipAsync());

        Assert.Equal(("marigold", true), (vehicle, plan is ImportPlan.Adds));
        Assert.Equal(Journal(_there), Journal(_here));
        Assert.True(JournalVerifier.Verify(_here.Path).IsIntact);
    }

    [Fact]
    public async Task Newer_state_continues_and_an_older_or_equal_one_changes_nothing_and_says_so()
    {
        var older = await ZipAsync();
        Import(older);
        SomeGarage.Note(_there.Path, _vehicle, "One more thing");
        var newer = await ZipAsync();

        var (_, continued) = Import(newer);
        var after = Snapshot();
        var (_, equal) = Import(newer);
        var (_, behind) = Import(older);

        Assert.Equal(1, Assert.IsType<ImportPlan.Continues>(continued).Further);
        Assert.Equal([0, 1], new[] { equal, behind }.Cast<ImportPlan.Known>().Select(plan => plan.Behind));
        Assert.Equal(after, Snapshot());
        Assert.Equal(Journal(_there), Journal(_here));
        Assert.Contains("All of this is here already", Words(equal, newer), StringComparison.Ordinal);
        Assert.Contains("earlier state of Marigold: the journal here has 1 entry more", Words(behind, older), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Forked_journal_is_refused_and_shown_with_the_entry_where_they_part()
    {
        Import(await ZipAsync());
        SomeGarage.Note(_here.Path, _vehicle, "Gone on with here");
        SomeGarage.Note(_there.Path, _vehicle, "Gone on with there");
        var before = Snapshot();

        var refused = Assert.Throws<ImportRefusedException>(() => Import(ZipAsync().GetAwaiter().GetResult()));

        Assert.Contains($"parted at entry {VehicleReading.Of(_here.Path, _vehicle).Entries.Count}", refused.Message, StringComparison.Ordinal);
        Assert.Contains("take the archive into a garage of its own", refused.Message, StringComparison.Ordinal);
        Assert.Equal(before, Snapshot());
    }

    [Fact]
    public async Task Withheld_copy_never_replaces_a_fuller_one_and_its_newer_entries_are_added()
    {
        Import(await ZipAsync());
        SomeGarage.Note(_there.Path, _vehicle, "One more thing");
        Import(await ZipAsync(ArchiveProfiles.Buyer));

        Assert.Equal(Journal(_there), Journal(_here));
        Assert.Empty(VehicleReading.Of(_here.Path, _vehicle).Withheld);
        Assert.True(JournalVerifier.Verify(_here.Path).IsIntact);
    }

    [Fact]
    public async Task Fuller_copy_brings_back_nothing_that_is_withheld_here_and_says_so()
    {
        Import(await ZipAsync(ArchiveProfiles.Buyer));
        var before = Snapshot();
        var full = await ZipAsync();

        var (_, plan) = Import(full);

        Assert.Equal(before, Snapshot());
        Assert.Equal(10, plan.StayWithheld);
        Assert.Contains("10 entries of which this garage has only the hash stay that way", Words(plan, full), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Archive_of_a_buyer_can_be_archived_again_with_its_copies_and_still_names_what_is_withheld()
    {
        var first = await FolderAsync(_there, ArchiveProfiles.Buyer);
        Import(first);
        SomeGarage.Note(_here.Path, _vehicle, "The buyer goes on");

        var again = SomeArchive.Checked(await FolderAsync(_here, ArchiveProfiles.Everything));

        var before = SomeArchive.Checked(first).Facts!;
        var verified = JournalVerifier.Verify(_here.Path);
        Assert.True(verified.IsIntact);
        Assert.Equal(3, verified.Journals.Sum(journal => journal.Media!.Count(file => file.Condition == MediaCondition.Withheld)));
        Assert.Empty(again.Faults);
        Assert.Equal(before.Withheld, again.Facts!.Withheld);
        Assert.Equal(before.WithheldEntries.Select(entry => entry.Sequence), again.Facts.WithheldEntries.Select(entry => entry.Sequence));
        using var garage = SomeGarage.Open(_here.Path);
        Assert.All(before.Withheld.Where(one => one.Copy is not null), one => Assert.Equal(one, garage.Withheld(one.File.Sha256)));
    }

    [Fact]
    public async Task Another_vehicle_of_the_same_name_stays_and_the_new_one_gets_an_id_of_its_own()
    {
        using (var garage = SomeGarage.Open(_here.Path))
        {
            garage.AddVehicle(SomeGarage.Technician, new VehicleAdded("Marigold", "another one", null));
        }

        Assert.Equal("marigold-2", Import(await ZipAsync()).VehicleId);
    }

    [Fact]
    public async Task Disk_that_is_too_full_is_told_before_anything_is_written()
    {
        using var tree = SomeArchive.Open(await ZipAsync());
        using (var garage = SomeGarage.Open(_here.Path))
        {
            var refused = Assert.Throws<ImportRefusedException>(
                () => new ArchiveImport(garage, _ => 1_000_000).Run(tree, SomeArchive.Check.Check(tree, stop: Stop).Facts!, Stop));
            Assert.Contains("1 MB are free", refused.Message, StringComparison.Ordinal);
        }

        Assert.Empty(Snapshot());
    }

    [Fact]
    public async Task Import_that_was_stopped_on_the_way_goes_on_when_it_is_made_again()
    {
        var zip = await ZipAsync();
        using var stopped = new CancellationTokenSource();
        using (var garage = SomeGarage.Open(_here.Path))
        using (var tree = SomeArchive.Open(zip))
        {
            var facts = SomeArchive.Check.Check(tree, stop: Stop).Facts!;
            await stopped.CancelAsync();
            Assert.Throws<OperationCanceledException>(() => new ArchiveImport(garage, _ => long.MaxValue).Run(tree, facts, stopped.Token));
            Assert.Empty(garage.Vehicles());
        }

        Import(zip);
        Assert.True(JournalVerifier.Verify(_here.Path).IsIntact);
    }

    private (string VehicleId, ImportPlan Done) Import(string archive)
    {
        using var garage = SomeGarage.Open(_here.Path);
        using var tree = SomeArchive.Open(archive);
        var found = SomeArchive.Check.Check(tree, stop: Stop);
        Assert.Empty(found.Faults);
        return new ArchiveImport(garage, _ => long.MaxValue).Run(tree, found.Facts!, Stop);
    }

    private static string Words(ImportPlan plan, string archive) => ImportWords.Of(plan, SomeArchive.Checked(archive).Facts!);

    private Task<string> ZipAsync(ArchiveProfile? profile = null) => SomeArchive.ZipAsync(_there.Path, _vehicle, _out.Path, profile, Stop);

    private Task<string> FolderAsync(TempFolder garage, ArchiveProfile profile) => SomeArchive.FolderAsync(garage.Path, _vehicle, _out.Path, profile, Stop);

    private byte[] Journal(TempFolder garage) => File.ReadAllBytes(garage.At("vehicles", _vehicle, "journal.jsonl"));

    /// <summary>All that is the truth of the garage, by its hashes.</summary>
    private List<string> Snapshot() =>
    [
        .. SomeArchive.Files(_here.Path)
            .Where(file => !file.Key.StartsWith("index", StringComparison.Ordinal) && file.Key != "inspectlog.lock")
            .Select(file => $"{file.Key} {BagIt.SomeBag.Sha256(file.Value)}"),
    ];
}

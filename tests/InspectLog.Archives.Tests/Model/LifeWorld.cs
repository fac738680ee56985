using System.Globalization;
using System.Text;
using InspectLog.Archives.Importing;
using InspectLog.Archives.Making;
using InspectLog.Archives.Tests.Support;
using InspectLog.Archives.Zip;
using InspectLog.Journal;
using InspectLog.Journal.Backups;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Erasing;
using InspectLog.Journal.Record;
using InspectLog.Journal.Storage;
using InspectLog.Journal.Verification;

namespace InspectLog.Archives.Tests.Model;

/// <summary>A garage and its model, to which the same is done.</summary>
internal sealed class LifeWorld : IDisposable
{
    private const string Keeper = "Office";

    private readonly TempFolder _folder = new();
    private readonly List<(string Zip, string Vehicle, List<ModelEntry> Entries)> _archives = [];
    private LifeModel _model = new([]);
    private LifeModel? _backedUp;
    private Garage _garage;
    private string _data;
    private int _made;

    public LifeWorld()
    {
        _data = _folder.At("garage");
        _garage = SomeGarage.Open(_data);
    }

    private List<string> Vehicles => [.. _model.Vehicles.Keys.Order(StringComparer.Ordinal)];

    public void Dispose()
    {
        _garage.Dispose();
        _folder.Dispose();
    }

    public async Task DoAsync(LifeStep step)
    {
        switch (step)
        {
            case LifeStep.Add:
                Acknowledge(_garage.AddVehicle(Keeper, new VehicleAdded("Marigold", Next(), null)), (_, _) => "");
                break;
            case LifeStep.Write write when Chosen(write.Vehicle) is { } vehicle:
                Append(vehicle, write.By, _ => new NoteWritten(Inspection(vehicle), null, $"Note {Next()}{(write.Naming is { } name ? $", as {name} says" : "")}"));
                break;
            case LifeStep.Say say when Chosen(say.Vehicle) is { } vehicle:
                Append(vehicle, say.By, inspection => new RecordingKept(inspection, _garage.Media.Keep(Encoding.UTF8.GetBytes($"sound {Next()}"), "audio/wav"), 1, null));
                break;
            case LifeStep.Own own when Chosen(own.Vehicle) is { } vehicle:
                Append(vehicle, Keeper, _ => new PrivateFactsNoted(own.Owner, "", ""));
                break;
            case LifeStep.LeaveOut leave when Chosen(leave.Vehicle) is { } vehicle && NoteOf(vehicle, leave.Note) is { } note:
                Append(vehicle, Keeper, _ => new ReportChoice(note + 1, false));
                break;
            case LifeStep.Restart:
                Reopen(() => { });
                break;
            case LifeStep.Crash:
                Crash();
                break;
            case LifeStep.BackUp:
                new Backup(_data, _folder.At("backup"), SomeGarage.Clock, "InspectLog").Run(stop: TestContext.Current.CancellationToken);
                _backedUp = _model.Copy();
                Assert.True(JournalVerifier.Verify(_folder.At("backup")).IsIntact, "the backup is not intact");
                break;
            case LifeStep.PutBack when _backedUp is { } backedUp:
                PutBack(backedUp);
                break;
            case LifeStep.Export export when Chosen(export.Vehicle) is { } vehicle:
                await ExportAsync(vehicle, export.ForBuyer);
                break;
            case LifeStep.Import import when _archives.Count > 0:
                Import(_archives[import.Archive % _archives.Count]);
                break;
            case LifeStep.Erase erase:
                Erase(erase.Person, erase.AsWorker);
                break;
        }

        Compare();
    }

    /// <summary>What is on disk is what the model has, too.</summary>
    public void End()
    {
        Reopen(() => Assert.True(JournalVerifier.Verify(_data).IsIntact, "the data folder is not intact"));
        Compare();
    }

    private string Next() => (++_made).ToString(CultureInfo.InvariantCulture);

    private string? Chosen(int number) => Vehicles is { Count: > 0 } all ? all[number % all.Count] : null;

    private long Inspection(string vehicle) => _garage.FindVehicle(vehicle)!.Inspections[0].Number;

    private int? NoteOf(string vehicle, int number)
    {
        var notes = _model.Vehicles[vehicle].Index().Where(one => one.Item.Kind == ModelEntry.Note && one.Item.Says is not null).Select(one => one.Index).ToList();
        return notes.Count == 0 ? null : notes[number % notes.Count];
    }

    private void Append(string vehicle, string by, Func<long, EntryBody> body)
    {
        if (_garage.FindVehicle(vehicle)!.Inspections.IsEmpty)
        {
            var sheet = _garage.Sheets.Keep(Encoding.UTF8.GetBytes(SomeGarage.SheetText));
            _garage.Append(vehicle, Keeper, _ => [new InspectionStarted("invented", 1, sheet, Keeper, null, null)]);
        }

        var made = body(Inspection(vehicle));
        _garage.Append(vehicle, by, _ => [made]);
        Acknowledge(vehicle, (_, _) => made switch
        {
            NoteWritten note => note.Text,
            RecordingKept recording => recording.Media.Sha256,
            PrivateFactsNoted facts => facts.Owner,
            _ => "",
        });
    }

    /// <summary>Takes what the garage acknowledged more than the model has into the model.</summary>
    private void Acknowledge(string vehicle, Func<JournalEntry, int, string> says)
    {
        var known = _model.Vehicles.TryGetValue(vehicle, out var before) ? before : _model.Vehicles[vehicle] = [];
        foreach (var entry in _garage.Entries(vehicle).Skip(known.Count).ToList())
        {
            var about = entry.Body switch { ReportChoice choice => (int?)choice.Entry - 1, EntryRestated restated => (int?)restated.Entry - 1, _ => null };
            known.Add(new(entry.Hash, entry.Actor, entry.Kind, entry.Kind is "inspection-started" or "person-erased" ? "" : says(entry, known.Count), about));
        }
    }

    private void Reopen(Action between)
    {
        _garage.Dispose();
        between();
        _garage = SomeGarage.Open(_data);
        Assert.Empty(_garage.Problems);
    }

    private void Crash()
    {
        var copy = _folder.At($"crashed-{Next()}");
        foreach (var file in Directory.GetFiles(_data, "*", SearchOption.AllDirectories).Where(file => Path.GetFileName(file) != "inspectlog.lock"))
        {
            var place = Path.Combine(copy, Path.GetRelativePath(_data, file));
            Directory.CreateDirectory(Path.GetDirectoryName(place)!);
            File.Copy(file, place);
        }

        MoveTo(copy);
    }

    private void PutBack(LifeModel backedUp)
    {
        var back = _folder.At($"back-{Next()}");
        Assert.Empty(new Restore(_folder.At("backup"), back).Run(stop: TestContext.Current.CancellationToken).Problems);
        _model = backedUp.Copy();
        MoveTo(back);
    }

    private void MoveTo(string data)
    {
        var before = _data;
        _data = data;
        Reopen(() => Directory.Delete(before, recursive: true));
    }

    private async Task ExportAsync(string vehicle, bool forBuyer)
    {
        var entries = _model.Vehicles[vehicle];
        var zip = await SomeArchive.ZipAsync(_data, vehicle, _folder.At("archives", Next()), forBuyer ? ArchiveProfiles.Buyer : ArchiveProfiles.Everything, TestContext.Current.CancellationToken);
        _archives.Add((zip, vehicle, forBuyer ? LifeModel.ForBuyer(entries) : [.. entries]));
        Assert.Empty(SomeArchive.Checked(zip).Faults);
    }

    private void Import((string Zip, string Vehicle, List<ModelEntry> Entries) archive)
    {
        var here = _model.Vehicles.FirstOrDefault(one => one.Value[0].Hash == archive.Entries[0].Hash).Key;
        var both = here is null ? 0 : Math.Min(_model.Vehicles[here].Count, archive.Entries.Count);
        var hasParted = here is not null && !_model.Vehicles[here].Take(both).Select(one => one.Hash).SequenceEqual(archive.Entries.Take(both).Select(one => one.Hash));
        using var tree = ZipTree.Of(archive.Zip);
        var import = new ArchiveImport(_garage, _ => long.MaxValue);
        var facts = SomeArchive.Check.Check(tree).Facts!;
        if (hasParted)
        {
            Assert.Throws<ImportRefusedException>(() => import.Run(tree, facts, TestContext.Current.CancellationToken));
            return;
        }

        var (vehicle, _) = import.Run(tree, facts, TestContext.Current.CancellationToken);
        Assert.True(here is null || here == vehicle);
        _model.Vehicles[vehicle] = here is null ? [.. archive.Entries] : [.. _model.Vehicles[here], .. archive.Entries.Skip(_model.Vehicles[here].Count)];
    }

    private void Erase(string person, bool asWorker)
    {
        var request = new ErasureRequest(person, asWorker, "the person", "a privacy request");
        var after = _model.Vehicles.ToDictionary(one => one.Key, one => LifeModel.Without(one.Value, person, asWorker));
        if (!_model.Knows(person) || !after.Values.Any(one => one.IsChanged))
        {
            Assert.Throws<ErasureRefusedException>(() => _garage.Erase(Keeper, request));
            return;
        }

        _garage.Erase(Keeper, request);
        foreach (var (vehicle, (entries, restated, isChanged)) in after)
        {
            Assert.Equal(entries.Count + (isChanged ? 1 + restated.Count : 0), _garage.Entries(vehicle).Count);
            _model.Vehicles[vehicle] = entries;
            Acknowledge(vehicle, (_, _) => "");
        }

        if (asWorker)
        {
            Assert.DoesNotContain(Directory.GetFiles(_data, "*", SearchOption.AllDirectories).Where(file => Path.GetFileName(file) != "inspectlog.lock" && !file.Contains("index", StringComparison.Ordinal)), file => File.ReadAllText(file).Contains(person, StringComparison.OrdinalIgnoreCase));
        }
    }

    private void Compare()
    {
        Assert.Equal(Vehicles, _garage.Vehicles().Select(one => one.Id).Order(StringComparer.Ordinal));
        foreach (var (vehicle, model) in _model.Vehicles)
        {
            var entries = _garage.Entries(vehicle);
            Assert.Equal(model.Select(one => (one.Hash, one.Actor, one.Kind, one.Says)), entries.Zip(model).Select(pair => (pair.First.Hash, pair.First.Actor, pair.First.Kind, SaysOf(pair.First, pair.Second))));
            Assert.Equal(model.Count, entries.Count);
            Assert.All(model.Where(one => one is { Kind: ModelEntry.Recording, Says: not null }), one => Assert.True(_garage.Media.Has(one.Says!), "a recording is missing"));
            var owner = model.LastOrDefault(one => one.Kind == ModelEntry.Owner)?.Says;
            Assert.Equal(owner, _garage.FindVehicle(vehicle)!.Private?.Owner);
        }
    }

    private static string? SaysOf(JournalEntry entry, ModelEntry model) => entry.Body switch
    {
        null => null,
        NoteWritten note => note.Text,
        RecordingKept recording => recording.Media.Sha256,
        PrivateFactsNoted facts => facts.Owner,
        _ => model.Says is null ? "there, and should be gone" : "",
    };
}

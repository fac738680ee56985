using CsCheck;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Storage;
using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests;

/// <summary>A garage against a list: whatever is done in whatever order, with failing writes, torn ends, lost indexes
/// and restarts in between, what was acknowledged is there, in order, nothing is there that nobody wrote, and only what failed
/// by itself refuses to be written.</summary>
public sealed class ModelTests
{
    private static readonly Gen<Step> AnyStep = Gen.Frequency(
        (6, Gen.Select(Gen.Int[0, 2], Gen.Int[1, 3], (vehicle, notes) => (Step)new Append(vehicle, notes))),
        (2, Gen.Const((Step)new Add())),
        (2, Gen.Byte.Array[0, 50].Select(bytes => (Step)new Keep(bytes))),
        (2, Gen.Const((Step)new Restart())),
        (1, Gen.Const((Step)new LoseIndex())),
        (1, Gen.Select(Gen.Int[0, 2], Gen.Int[1, 400], (vehicle, bytes) => (Step)new TearEnd(vehicle, bytes))),
        (2, Gen.Select(
            Gen.Int[1, 5], Gen.Double[0, 1], Gen.Bool.Select(full => full ? FaultyDisk.NoSpace : FaultyDisk.InputOutputError),
            (act, written, error) => (Step)new Fail(act, written, error))));

    [Fact]
    public void Garage_keeps_what_the_list_keeps() => AnyStep.Array[1, 25].Sample(
        steps =>
        {
            using var world = new World();
            foreach (var step in steps)
            {
                world.Do(step);
            }

            world.Do(new Restart());
        },
        iter: 60,
        threads: 2);

    private abstract record Step;

    private sealed record Append(int Vehicle, int Notes) : Step;

    private sealed record Add : Step;

    private sealed record Keep(byte[] Bytes) : Step
    {
        public override string ToString() => $"Keep({Bytes.Length} bytes)";
    }

    private sealed record Restart : Step;

    private sealed record LoseIndex : Step;

    private sealed record TearEnd(int Vehicle, int Bytes) : Step;

    private sealed record Fail(int Act, double Written, int Error) : Step;

    private sealed class World : IDisposable
    {
        private readonly TempFolder _folder = new();
        private readonly Dictionary<string, List<string>> _kept = []; // hashes of acknowledged entries, by vehicle
        private readonly List<MediaFile> _media = [];
        private readonly HashSet<string> _failed = []; // what a write failed to since the start: a vehicle, "adding" or "media"
        private FaultyDisk _disk = new();
        private Garage _garage;
        private int _notes;

        private const string Adding = "adding";
        private const string Media = "media";

        public World() => _garage = Garage.Open(_folder.Path, Some.Clock(), _disk);

        private string[] Vehicles => [.. _kept.Keys.Order(StringComparer.Ordinal)];

        public void Dispose()
        {
            _garage.Dispose();
            _folder.Dispose();
        }

        public void Do(Step step)
        {
            switch (step)
            {
                case Append append when Vehicles.Length > 0:
                    Write(Vehicles[append.Vehicle % Vehicles.Length], append.Notes);
                    break;
                case Add:
                    Try(Adding, () => Note(_garage.AddVehicle("Tess", Some.Vehicle("Teasel"))));
                    break;
                case Keep keep:
                    Try(Media, () => _media.Add(_garage.Media.Keep(keep.Bytes, "audio/wav")));
                    break;
                case Restart:
                    Reopen(() => { });
                    break;
                case LoseIndex:
                    Reopen(() => File.Delete(_folder.At("index.db")));
                    break;
                case TearEnd tear when Vehicles.Length > 0:
                    var journal = _folder.At("vehicles", Vehicles[tear.Vehicle % Vehicles.Length], "journal.jsonl");
                    Reopen(() => File.AppendAllText(journal, File.ReadAllText(journal)[..Math.Min(tear.Bytes, 300)]));
                    break;
                case Fail fail:
                    _disk.Arm(fail.Act, fail.Error, fail.Written);
                    break;
            }
        }

        private void Write(string vehicle, int count)
        {
            string[] texts = [.. Enumerable.Range(0, count).Select(_ => $"note {_notes++}")];
            Try(vehicle, () =>
            {
                _garage.Append(vehicle, "Tess", _ => [.. texts.Select(text => new NoteWritten(0, null, text))]);
                Note(vehicle);
            });
        }

        private void Try(string what, Action act)
        {
            var before = _kept.ToDictionary(pair => pair.Key, pair => _garage.FindVehicle(pair.Key));
            var failures = _disk.Failures;
            try
            {
                act();
                Assert.DoesNotContain(what, _failed);
            }
            catch (JournalReadOnlyException)
            {
                Assert.True(_failed.Contains(what) || _disk.Failures > failures, $"{what} was refused, and no write to it had failed");
                _failed.Add(what);
                Assert.Contains(_garage.Problems, problem => problem.ReadOnly && problem.IsFailedWrite && problem.VehicleId == (what is Adding or Media ? null : what));
                Assert.DoesNotContain(_garage.Problems, problem => problem.ClosesGarage);
                Assert.All(before, pair => Assert.Same(pair.Value, _garage.FindVehicle(pair.Key)));
            }
        }

        /// <summary>What the garage says of a vehicle now is what was acknowledged.</summary>
        private void Note(string vehicle) => _kept[vehicle] = [.. _garage.Entries(vehicle).Select(entry => entry.Hash)];

        private void Reopen(Action between)
        {
            _garage.Dispose();
            between();
            _disk = new FaultyDisk();
            _failed.Clear();
            _garage = Garage.Open(_folder.Path, Some.Clock(), _disk);
            Check();
            foreach (var vehicle in _garage.Vehicles())
            {
                Note(vehicle.Id);
            }
        }

        private void Check()
        {
            Assert.DoesNotContain(_garage.Problems, problem => problem.ReadOnly);
            foreach (var (vehicle, hashes) in _kept)
            {
                var entries = _garage.Entries(vehicle);
                Assert.Equal(hashes, entries.Take(hashes.Count).Select(entry => entry.Hash));
                Assert.All(entries.Skip(hashes.Count), entry => Assert.IsType<TailSetAside>(entry.Body));
            }

            Assert.All(_media, file => Assert.Equal(MediaCondition.Whole, _garage.Media.Check(file)));
            var notes = _garage.Vehicles().SelectMany(vehicle => _garage.Entries(vehicle.Id))
                .Count(entry => entry.Body is NoteWritten);
            Assert.Equal(notes, _garage.Search("note").Count);
        }
    }
}

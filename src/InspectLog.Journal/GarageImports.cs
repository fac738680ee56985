using System.Collections.Immutable;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.State;
using InspectLog.Journal.Storage;

namespace InspectLog.Journal;

/// <content>Journals that were written elsewhere: they come in line for line, with their authors and times.</content>
public sealed partial class Garage
{
    private ImmutableDictionary<string, WithheldMedia> _withheld = ImmutableDictionary<string, WithheldMedia>.Empty;

    /// <summary>Adds a vehicle whose journal was written elsewhere. Its files have to be kept before.</summary>
    /// <param name="preferredId">The id it had there; it gets another where that is taken, or is no id.</param>
    /// <param name="journal">The journal, sound to its end.</param>
    /// <param name="withheld">What it comes without.</param>
    /// <returns>Its id.</returns>
    /// <exception cref="FormatException">The journal is not sound.</exception>
    /// <exception cref="InvalidOperationException">The vehicle is here already.</exception>
    /// <exception cref="JournalReadOnlyException">Nothing can be written at present.</exception>
    public string AddJournal(string preferredId, ReadOnlyMemory<byte> journal, IReadOnlyList<WithheldMedia> withheld)
    {
        var written = Sound(journal);
        lock (_adding)
        {
            if (FindJournal(written[0].Hash) is { } known)
            {
                throw new InvalidOperationException($"The vehicle {known} is here already.");
            }

            var id = VehicleIds.New(preferredId, id => Directory.Exists(_folder.Vehicle(id)));
            _latches.Adding.Guard(() => MakeVehicle(id, journal, written.Count, withheld));
            Remember(withheld);
            var opened = OpenVehicle(id);
            _vehicles[id] = opened;
            _index.Add(opened.Now.State, opened.Now.Entries);
            NoteArrival(written);
            return id;
        }
    }

    /// <summary>Adds to a vehicle's journal what a newer state of the very same journal has more. What is here stays as it
    /// is, line by line. The files it names have to be kept before.</summary>
    /// <param name="vehicleId">The vehicle.</param>
    /// <param name="journal">The newer state, sound to its end; one that is older or equal changes nothing.</param>
    /// <param name="withheld">What it comes without.</param>
    /// <returns>The vehicle's state afterwards.</returns>
    /// <exception cref="FormatException">The journal is not sound, or is not the same one as far as both go.</exception>
    /// <exception cref="UnknownVehicleException">There is no such vehicle.</exception>
    /// <exception cref="JournalReadOnlyException">Nothing can be written at present, or the journal here is damaged.</exception>
    public VehicleState ContinueJournal(string vehicleId, ReadOnlyMemory<byte> journal, IReadOnlyList<WithheldMedia> withheld)
    {
        var written = Sound(journal);
        var after = Journal(vehicleId).Continue(
            written,
            lines => journal[JournalLines.StartAfter(journal.Span, lines)..],
            state =>
            {
                KeepWithheld(vehicleId, withheld);
                var came = state.CameIn.With(state.NextSequence, written.Count);
                Journal(vehicleId).Latch.Guard(() => came.Keep(_folder.Vehicle(vehicleId), _durable));
                return state with { CameIn = came };
            },
            (now, entries) => _index.Add(now.State, entries));
        NoteArrival(written);
        return after;
    }

    /// <summary>Notes the vehicle as it came. What its journal noted of the workshop it comes from is not about the journal of
    /// this one, and is not missed here.</summary>
    private void NoteArrival(IReadOnlyList<JournalEntry> written)
    {
        var elsewhere = written.Select(entry => entry.Body).OfType<WorkshopNoted>().Distinct()
            .Where(noted => _workshop.Now.Entries.HashOf(noted.Entries) != noted.Head)
            .Select(noted => (EntryBody)new LossAccepted(Vehicle: null, noted.Entries, noted.Head))
            .ToList();
        if (elsewhere.Count > 0)
        {
            AppendToWorkshop(JournalEntry.Program, elsewhere);
        }

        NoteVehicles();
        _losses = FindLosses();
    }

    /// <summary>The vehicle whose journal begins with an entry; null when there is none.</summary>
    /// <param name="firstHash">The entry's hash.</param>
    public string? FindJournal(string firstHash) =>
        _vehicles.FirstOrDefault(one => one.Value.Now.Entries is { Count: > 0 } entries && entries.HashAt(0) == firstHash).Key;

    /// <summary>What is known of a recording or photo that a journal came without; null where none did.</summary>
    /// <param name="sha256">Its name.</param>
    public WithheldMedia? Withheld(string sha256) => _withheld.GetValueOrDefault(sha256);

    private static ImmutableList<JournalEntry> Sound(ReadOnlyMemory<byte> journal)
    {
        var scan = JournalScan.Of(journal);
        return scan switch
        {
            { Broken: { } broken } => throw new FormatException($"line {broken.Line}: {broken.Reason}"),
            { Entries.IsEmpty: true } => throw new FormatException("it has no line"),
            _ => scan.Entries,
        };
    }

    private void MakeVehicle(string id, ReadOnlyMemory<byte> journal, int count, IReadOnlyList<WithheldMedia> withheld)
    {
        var folder = _folder.VehicleInTheMaking(id);
        Directory.CreateDirectory(folder);
        if (withheld.Count > 0)
        {
            WholeFile.Write(_durable, Path.Combine(folder, WithheldMediaList.FileName), WithheldMediaList.Write(withheld));
        }

        CameIn.None.With(1, count).Keep(folder, _durable);
        NewFile(folder).Append(journal);
        Directory.Move(folder, _folder.Vehicle(id));
        _durable.SyncFolder(_folder.Vehicles);
    }

    /// <summary>Adds to the list of what a vehicle's journal came without, before the lines that name it.</summary>
    private void KeepWithheld(string vehicleId, IReadOnlyList<WithheldMedia> withheld)
    {
        var folder = _folder.Vehicle(vehicleId);
        var before = WithheldMediaList.In(folder);
        var all = before.UnionBy(withheld, one => one.File.Sha256).ToList();
        if (all.Count > before.Count)
        {
            Journal(vehicleId).Latch.Guard(() => WholeFile.Write(_durable, Path.Combine(folder, WithheldMediaList.FileName), WithheldMediaList.Write(all)));
            Remember(all);
        }
    }

    private void Remember(IEnumerable<WithheldMedia> withheld) => ImmutableInterlocked.Update(
        ref _withheld, known => known.SetItems(withheld.Select(one => KeyValuePair.Create(one.File.Sha256, one))));
}

using InspectLog.Journal.Entries;
using InspectLog.Journal.Noted;
using InspectLog.Journal.Record;

namespace InspectLog.Journal;

/// <content>What the journals note of each other, so that none of them can lack anything unseen.</content>
public sealed partial class Garage
{
    private volatile IReadOnlyList<JournalLoss> _losses = [];

    /// <summary>What journals lack of what was noted of them. It stays until the journal is put back, or until a person
    /// goes on without.</summary>
    public IReadOnlyList<JournalLoss> Losses => _losses;

    /// <summary>Goes on without what a journal lacks; from now on it is noted as it is.</summary>
    /// <param name="by">Who decides that.</param>
    /// <param name="loss">One of <see cref="Losses"/>.</param>
    /// <exception cref="JournalReadOnlyException">Nothing can be written at present.</exception>
    public void Accept(Author by, JournalLoss loss)
    {
        AppendToWorkshop(by, loss.Accepted());
        NoteVehicles();
        _losses = FindLosses();
    }

    private IReadOnlyList<JournalLoss> FindLosses() => HeadNotes.Losses(
        _workshop.Now.State.Noted,
        _workshop.Now.Entries,
        _vehicles.ToDictionary(vehicle => vehicle.Key, vehicle => vehicle.Value.Now, StringComparer.Ordinal));

    /// <summary>Losses for the banner; of a journal whose damage is told already, that says enough.</summary>
    private IEnumerable<GarageProblem> LossesInWords() => _losses
        .Where(loss => !_foundAtOpening.Any(found => found.ReadOnly
            && found.VehicleId == loss.VehicleId && found.IsOfWorkshop == loss.VehicleId is null))
        .Select(loss => new GarageProblem(ReadOnly: false, $"{loss.WhatIsWrong} {JournalLoss.WhatToDo}")
        {
            VehicleId = loss.VehicleId,
            IsOfWorkshop = loss.VehicleId is null,
            Loss = loss,
        });

    /// <summary>Notes how far journals once were that are shorter now, as only the index still knew.</summary>
    private void KeepNoted(IReadOnlyList<NotedJournal> lost)
    {
        var noted = _workshop.Now.State.Noted.Vehicles;
        Note(() => [.. lost.Where(one => noted.GetValueOrDefault(one.Id) is not { } before || before.Entries < one.Entries)]);
    }

    /// <summary>Notes the vehicles whose journals grew.</summary>
    private void NoteVehicles() => Note(() => HeadNotes.Grown(
        _workshop.Now.State.Noted,
        _vehicles.Where(vehicle => vehicle.Value.Damage is null)
            .Select(vehicle => KeyValuePair.Create(vehicle.Key, vehicle.Value.Now.Entries))));

    private void Note(Func<IReadOnlyList<NotedJournal>> vehicles)
    {
        try
        {
            _workshop.Append(
                JournalEntry.Program, _ => vehicles() is { Count: > 0 } some ? [new VehiclesNoted(some)] : [], (_, _) => { });
        }
        catch (Exception problem) when (problem is JournalReadOnlyException or ObjectDisposedException)
        {
            // What was to be noted is on disk itself. That nothing can be written is told by the latch, or by the damage,
            // of the workshop's journal; the next start notes it.
        }
    }

    /// <summary>A closing also notes how far the workshop's journal is.</summary>
    private IReadOnlyList<EntryBody> WithWorkshopNoted(IReadOnlyList<EntryBody> bodies) =>
        _workshop is { Damage: null, Now.Entries: { Count: > 0 } noted } && bodies.Any(body => body is InspectionClosed)
            ? [.. bodies, new WorkshopNoted(noted.LastSequence(), noted.HashAt(noted.Count - 1))]
            : bodies;
}

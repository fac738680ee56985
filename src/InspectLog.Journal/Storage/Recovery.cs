using System.Globalization;

namespace InspectLog.Journal.Storage;

/// <summary>Puts right, on opening, what an interrupted write has left, and collects what there is to tell. Nothing
/// is thrown away: remains go to the folder for things set aside.</summary>
internal sealed class Recovery(DataFolder folder, TimeProvider time)
{
    private readonly List<GarageProblem> _found = [];

    /// <summary>What was found.</summary>
    public IReadOnlyList<GarageProblem> Found => _found;

    /// <summary>Sets aside vehicles that were being added when the program stopped.</summary>
    public void SetUnfinishedVehiclesAside()
    {
        foreach (var unfinished in Directory.GetDirectories(folder.Vehicles, DataFolder.InTheMaking + "*"))
        {
            var place = NewPlace(Path.GetFileName(unfinished)[DataFolder.InTheMaking.Length..]);
            Directory.Move(unfinished, place);
            _found.Add(new(ReadOnly: false,
                "The program stopped while a vehicle was being added, before that was acknowledged. "
                + $"What was written of it is in {place}; add the vehicle again."));
        }
    }

    /// <summary>Sets the unfinished end of a journal aside, or reports damage.</summary>
    /// <param name="journal">The journal.</param>
    /// <param name="key">Its name in file names.</param>
    /// <param name="name">Its name for people.</param>
    /// <param name="vehicleId">The vehicle; null for the workshop.</param>
    public void Recover<TState>(OpenJournal<TState> journal, string key, string name, string? vehicleId)
        where TState : class
    {
        if (journal.Broken is { IsUnfinished: true })
        {
            SetTailAside(journal, key, name, vehicleId);
        }
        else if (journal.Broken is { } broken)
        {
            _found.Add(new(ReadOnly: true,
                $"Line {broken.Line} of the journal of {name} is damaged: {broken.Reason}. What stands before it is "
                + "shown, and nothing more is written to it. Put the file back from a copy and start InspectLog again.")
            { VehicleId = vehicleId });
        }
    }

    /// <summary>Whether a vehicle's journal has an entry to show; reports it when it has none.</summary>
    public bool HoldsAnything<TState>(OpenJournal<TState> journal, string vehicleId)
        where TState : class
    {
        if (journal.Now.Entries.IsEmpty && journal.Broken is null)
        {
            _found.Add(new(ReadOnly: false,
                $"The folder {folder.Vehicle(vehicleId)} holds no journal, or an empty one. "
                + "Put the journal back from a copy and start InspectLog again.") { VehicleId = vehicleId });
        }

        return !journal.Now.Entries.IsEmpty;
    }

    private void SetTailAside<TState>(OpenJournal<TState> journal, string key, string name, string? vehicleId)
        where TState : class
    {
        var place = NewPlace(key);
        try
        {
            journal.SetTailAside(place);
            _found.Add(new(ReadOnly: false,
                $"The last write to the journal of {name} was cut short before it was acknowledged. Its remains are in "
                + $"{place}. Look whether the last thing you did is there, and do it again if not.")
            { VehicleId = vehicleId });
        }
        catch (JournalReadOnlyException)
        {
            // The latch tells; the remains stay in place until the next start.
        }
    }

    private string NewPlace(string key)
    {
        var moment = time.GetUtcNow().ToString("yyyyMMdd'T'HHmmss'Z'", CultureInfo.InvariantCulture);
        var name = $"{key}-{moment}";
        for (var n = 2; Path.Exists(Path.Combine(folder.SetAside, name)); n++)
        {
            name = $"{key}-{moment}-{n}";
        }

        return Path.Combine(folder.SetAside, name);
    }
}

using System.Globalization;

namespace InspectLog.Journal.Storage;

/// <summary>Puts right, on opening, what an interrupted write has left, and collects what there is to tell. Nothing
/// is thrown away: remains go to the folder for things set aside.</summary>
/// <param name="folder">The data folder.</param>
/// <param name="time">The clock.</param>
/// <param name="isAllowedToWrite">Whether anything may be put right; else it is only told.</param>
internal sealed class Recovery(DataFolder folder, TimeProvider time, bool isAllowedToWrite = true)
{
    // A withdrawal of a device may stand in what cannot be read.
    private const string NoDevices = " Until then no paired device is let in, because it cannot be told which ones still may.";

    private readonly List<GarageProblem> _found = [];

    /// <summary>What was found.</summary>
    public IReadOnlyList<GarageProblem> Found => _found;

    /// <summary>Closes the folder to other users of the computer.</summary>
    public void CloseToOthers()
    {
        if (OwnerOnly.Tighten(folder.Root) is { } problem)
        {
            _found.Add(new(ReadOnly: false,
                $"Other users of this computer can read {folder.Root}, because its rights could not be changed ({problem}). "
                + "Whoever owns the folder can take their rights away."));
        }
    }

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
        if (journal.Damage is { IsUnfinishedWrite: true } && !isAllowedToWrite)
        {
            _found.Add(new(ReadOnly: false,
                $"The last line of the journal of {name} is not whole and is not shown: a write that was never acknowledged.")
            {
                VehicleId = vehicleId,
                IsOfWorkshop = vehicleId is null,
            });
        }
        else if (journal.Damage is { IsUnfinishedWrite: true })
        {
            SetTailAside(journal, key, name, vehicleId);
        }
        else if (journal.Damage is { } damage)
        {
            _found.Add(new(ReadOnly: true, damage.InWords(name) + (vehicleId is null ? NoDevices : ""))
            {
                VehicleId = vehicleId,
                IsOfWorkshop = vehicleId is null,
            });
        }
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
            {
                VehicleId = vehicleId,
                IsOfWorkshop = vehicleId is null,
            });
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

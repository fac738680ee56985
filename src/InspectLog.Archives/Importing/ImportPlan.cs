using InspectLog.Archives.Checking;
using InspectLog.Journal;
using InspectLog.Journal.Record;

namespace InspectLog.Archives.Importing;

/// <summary>What taking in an archive would do to a garage. Nothing is ever overwritten.</summary>
public abstract record ImportPlan
{
    private ImportPlan()
    {
    }

    /// <summary>Whether taking it in would change anything.</summary>
    public bool ChangesSomething => this is Adds or Continues;

    /// <summary>Compares an archive with what is here.</summary>
    /// <param name="archive">The archive, checked and intact.</param>
    /// <param name="garage">The garage.</param>
    public static ImportPlan Of(ArchiveFacts archive, Garage garage)
    {
        if (garage.FindJournal(archive.FirstHash) is not { } vehicle)
        {
            return new Adds();
        }

        var here = garage.Entries(vehicle);
        var both = Math.Min(here.Count, archive.Entries.Count);
        for (var at = 0; at < both; at++)
        {
            if (here.HashAt(at) != archive.Entries[at].Hash)
            {
                return new Parted(vehicle, here[at], archive.Entries[at]);
            }
        }

        // Of erased or withheld bodies nothing comes back by an archive that still has them.
        var fuller = here.Zip(archive.Entries).Count(pair => pair.First.IsWithheld && !pair.Second.IsWithheld);
        return archive.Entries.Count > here.Count
            ? new Continues(vehicle, archive.Entries.Count - here.Count) { StayWithheld = fuller }
            : new Known(vehicle, here.Count - archive.Entries.Count) { StayWithheld = fuller };
    }

    /// <summary>The vehicle is not here: it is added.</summary>
    public sealed record Adds : ImportPlan;

    /// <summary>The archive is a newer state of a journal that is here: what it has more is added.</summary>
    /// <param name="VehicleId">The vehicle here.</param>
    /// <param name="Further">How many entries it has more.</param>
    public sealed record Continues(string VehicleId, int Further) : ImportPlan;

    /// <summary>All of it is here already.</summary>
    /// <param name="VehicleId">The vehicle here.</param>
    /// <param name="Behind">How many entries the journal here has more.</param>
    public sealed record Known(string VehicleId, int Behind) : ImportPlan;

    /// <summary>Both began as one journal and were gone on with in two places. Neither can continue the other.</summary>
    /// <param name="VehicleId">The vehicle here.</param>
    /// <param name="Here">The first entry here that is not that of the archive.</param>
    /// <param name="There">The archive's entry in its place.</param>
    public sealed record Parted(string VehicleId, JournalEntry Here, JournalEntry There) : ImportPlan;

    /// <summary>How many entries are withheld here that the archive has in full; they stay as they are here.</summary>
    public int StayWithheld { get; init; }
}

using System.Collections.Immutable;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.Storage;

namespace InspectLog.Journal.State;

/// <summary>What a vehicle's journal says as a whole: all entries read in order. Immutable.</summary>
public sealed partial record VehicleState
{
    private const string PrivateFacts = "private-facts"; // by its kind, as the body is gone

    private VehicleState(string id) => (Id, Name) = (id, id);

    /// <summary>Vehicle id.</summary>
    public string Id { get; }

    /// <summary>What people call it; its id as long as the journal does not say.</summary>
    public string Name { get; private init; }

    /// <summary>Year, body, what it is; may be empty.</summary>
    public string Description { get; private init; } = "";

    /// <summary>Engine layout; null while unknown.</summary>
    public EngineLayout? Engine { get; private init; }

    /// <summary>Its picture; null when there is none.</summary>
    public MediaFile? Picture { get; private init; }

    /// <summary>Private facts; null when none were noted, or they were emptied or withheld.</summary>
    public PrivateFactsNoted? Private { get; private init; }

    /// <summary>Limits of its own, by sheet and check.</summary>
    public ImmutableDictionary<LimitsKey, LimitsSet> Limits { get; private init; } =
        ImmutableDictionary<LimitsKey, LimitsSet>.Empty;

    /// <summary>Inspections, oldest first.</summary>
    public ImmutableList<InspectionState> Inspections { get; private init; } = [];

    /// <summary>Parts that wear and are watched, in the order they were added.</summary>
    public ImmutableList<WearPart> WearParts { get; private init; } = [];

    /// <summary>The entries whose bodies are withheld, by rising sequence.</summary>
    public ImmutableList<WithheldEntry> Withheld { get; private init; } = [];

    /// <summary>The entries of which it is not known what they said.</summary>
    public IReadOnlyList<WithheldEntry> Lacking => Withheld.FindAll(entry => !entry.IsRestated);

    /// <summary>The tombstones of erasures, by rising sequence.</summary>
    public ImmutableList<Tombstone> Erasures { get; private init; } = [];

    /// <summary>The head of the record: one value for all its entries and for what is withheld of them.</summary>
    public string RecordHead => Record.RecordHead.Of(NextSequence - 1, LastHash, Withheld.Select(entry => entry.Sequence));

    /// <summary>Which of its entries came in from elsewhere, as the file beside the journal says.</summary>
    internal CameIn CameIn { get; init; } = CameIn.None;

    /// <summary>Where the lists of closed inspections are left; null where all are in memory.</summary>
    internal InspectionShelf? Shelf { get; init; }

    // Closed inspections whose lists are in memory since something was added to them.
    private ImmutableList<long> AddedTo { get; init; } = [];

    private ImmutableDictionary<string, ImmutableList<long>> Media { get; init; } =
        ImmutableDictionary.Create<string, ImmutableList<long>>(StringComparer.Ordinal);

    /// <summary>How far the workshop's journal was when an inspection was last closed; null where it was not noted.</summary>
    public WorkshopNoted? WorkshopNoted { get; private init; }

    /// <summary>Who recorded something, or for whom an inspection was begun, and when last, UTC. The program is not among
    /// them.</summary>
    public ImmutableDictionary<string, DateTimeOffset> People { get; private init; } = ImmutableDictionary.Create<string, DateTimeOffset>(StringComparer.Ordinal);

    /// <summary>Sequence the next entry gets.</summary>
    public long NextSequence { get; private init; } = 1;

    /// <summary>Hash of the last entry, lower-case hex; empty before the first.</summary>
    public string LastHash { get; private init; } = "";

    /// <summary>The inspection still open; null when there is none. At most one is open at a time.</summary>
    public InspectionState? OpenInspection => Inspections.FindLast(inspection => !inspection.IsClosed);

    /// <summary>A vehicle before its first entry.</summary>
    public static VehicleState Before(string id) => new(id);

    /// <summary>The inspection with this number, or null.</summary>
    public InspectionState? Inspection(long number) => Place(number) is >= 0 and var at ? Inspections[at] : null;

    /// <summary>The inspection in which something was captured or recorded first by an entry; null where that was in none.
    /// </summary>
    /// <param name="first">Sequence of the entry.</param>
    public InspectionState? InspectionWith(long first)
    {
        for (var at = LastUpTo(first); at >= 0; at--) // mostly it is the last that was begun before it
        {
            if (Inspections[at].Find(first) is not null)
            {
                return Inspections[at];
            }
        }

        return null;
    }

    /// <summary>The state after one more entry.</summary>
    public VehicleState Apply(JournalEntry entry)
    {
        var counted = this with
        {
            NextSequence = entry.Sequence + 1,
            LastHash = entry.Hash,
            People = PeopleAfter(entry),
            Media = MediaAfter(entry),
            Withheld = entry.IsWithheld ? Withheld.Add(WithheldEntry.Of(entry)) : Withheld,
        };
        return entry.Body switch
        {
            VehicleAdded v => counted with { Name = v.Name, Description = v.Description, Engine = v.Engine },
            VehicleDescribed v => counted with { Name = v.Name, Description = v.Description, Engine = v.Engine },
            VehiclePictured p => counted with { Picture = p.Media },
            PrivateFactsNoted p => counted with { Private = p is { Owner: "", Contact: "", Vin: "" } ? null : p },
            LimitsSet l => counted with { Limits = Limits.SetItem(new(l.Sheet, l.Check), l) },
            LimitsCleared l => counted with { Limits = Limits.Remove(new(l.Sheet, l.Check)) },
            WearPartAdded p => counted with
            {
                WearParts = WearParts.Add(new(entry.Sequence, p.Name, p.Interval, [p.Fitting])),
            },
            WearPartFitted f => counted with
            {
                WearParts = Changed(f.Part, part => part with { Fittings = part.Fittings.Add(f.Fitting) }),
            },
            WearPartIntervalSet s => counted with { WearParts = Changed(s.Part, part => part with { Interval = s.Interval }) },
            WearPartNotRenewed n => counted with
            {
                WearParts = Changed(n.Part, part => part with { NotRenewed = new(entry.Sequence, entry.LocalTime, n) }),
            },
            WearPartRetired r => counted with { WearParts = WearParts.RemoveAll(part => part.Number == r.Part) },
            InspectionStarted s => counted with { Inspections = Inspections.Add(InspectionState.Begin(entry, s)) },
            WorkshopNoted n => counted with { WorkshopNoted = n },
            PersonErased => counted with { Erasures = Erasures.Add(Tombstone.Of(entry)) },

            // What was said before it of owner and contact was no longer so.
            null when entry is { IsWithheld: true, Kind: PrivateFacts } => counted with { Private = null },
            null or EntryRestated => counted,
            _ when Shelf is null => counted with { Inspections = Applied(entry) },
            _ => (counted with { Inspections = Applied(entry) }).Shelved(Inspections, entry),
        };
    }

    /// <summary>The entries that name a recording or photo, rising.</summary>
    /// <param name="sha256">Its name.</param>
    public IReadOnlyList<long> Naming(string sha256) => Media.GetValueOrDefault(sha256) ?? [];

    /// <summary>Leaves the lists of an inspection on the disk once it is closed. One that is added to later has them in memory
    /// until the next is closed, so that adding much to it does not read them each time.</summary>
    private VehicleState Shelved(ImmutableList<InspectionState> before, JournalEntry entry)
    {
        if (ReferenceEquals(before, Inspections))
        {
            return this;
        }

        var at = Inspections.Count - 1;
        while (ReferenceEquals(before[at], Inspections[at]))
        {
            at--;
        }

        var changed = Inspections[at];
        var later = changed.IsClosed && !AddedTo.Contains(changed.Number) ? AddedTo.Add(changed.Number) : AddedTo;
        if (entry.Body is not InspectionClosed && later.Count <= MostAddedTo)
        {
            return this with { AddedTo = later };
        }

        return this with
        {
            AddedTo = [],
            Inspections = later.Aggregate(Inspections, (all, number) => all.SetItem(Place(number), all[Place(number)].OnShelf(Shelf!, CameIn))),
        };
    }

    private const int MostAddedTo = 8;

    private ImmutableDictionary<string, ImmutableList<long>> MediaAfter(JournalEntry entry)
    {
        var named = entry.Body switch
        {
            RecordingKept recording => recording.Media,
            PhotoKept photo => photo.Media,
            VehiclePictured picture => picture.Media,
            _ => null,
        };
        return named is null ? Media : Media.SetItem(named.Sha256, (Media.GetValueOrDefault(named.Sha256) ?? []).Add(entry.Sequence));
    }

    private ImmutableDictionary<string, DateTimeOffset> PeopleAfter(JournalEntry entry)
    {
        var people = entry.Actor is JournalEntry.Program or Erased.Name ? People : Later(People, entry.Actor, entry.Time);
        return entry.Body is InspectionStarted { Technician: not Erased.Name and var technician } ? Later(people, technician, entry.Time) : people;
    }

    private static ImmutableDictionary<string, DateTimeOffset> Later(
        ImmutableDictionary<string, DateTimeOffset> people, string name, DateTimeOffset time) =>
        people.TryGetValue(name, out var before) && before >= time ? people : people.SetItem(name, time);

    private ImmutableList<WearPart> Changed(long number, Func<WearPart, WearPart> change) =>
        WearParts.ConvertAll(part => part.Number == number ? change(part) : part);
}

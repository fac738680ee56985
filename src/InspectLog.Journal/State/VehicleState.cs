using System.Collections.Immutable;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.Storage;

namespace InspectLog.Journal.State;

/// <summary>What a vehicle's journal says as a whole: all entries read in order. Immutable.</summary>
public sealed record VehicleState
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
            _ => counted with { Inspections = Applied(entry) },
        };
    }

    /// <summary>The inspections after one more entry. It changes one of them, or none, so the list is not made anew for
    /// each: a vehicle may have a thousand. What names its inspection is of that one alone.</summary>
    private ImmutableList<InspectionState> Applied(JournalEntry entry)
    {
        if (Named(entry.Body) is { } number)
        {
            return Place(number) is >= 0 and var named ? Changed(Inspections, named, entry) : Inspections;
        }

        // What is referred to is mostly of the newest.
        for (var at = Inspections.Count - 1; at >= 0; at--)
        {
            if (Changed(Inspections, at, entry) is var now && !ReferenceEquals(now, Inspections))
            {
                return now;
            }
        }

        return Inspections;
    }

    private ImmutableList<InspectionState> Changed(ImmutableList<InspectionState> inspections, int at, JournalEntry entry)
    {
        var before = inspections[at];
        var next = CameIn.Has(entry.Sequence) ? before.Apply(entry).WithWordsNotAskedFor(entry) : before.Apply(entry);
        return ReferenceEquals(next, before) ? inspections : inspections.SetItem(at, next);
    }

    /// <summary>The inspection that an entry names; null where it names another entry, whichever inspection has that.</summary>
    private static long? Named(EntryBody? body) => body switch
    {
        AmendableBody { Amends: not null } => null,
        ReadingDecided reading => reading.Inspection,
        ObservationMade seen => seen.Inspection,
        ActionDone done => done.Inspection,
        PhotoKept photo => photo.Inspection,
        NoteWritten note => note.Inspection,
        RecordingKept kept => kept.Inspection,
        LooseEndOpened opened => opened.Inspection,
        CheckLeftOut left => left.Inspection,
        InspectionClosed closed => closed.Inspection,
        _ => null,
    };

    /// <summary>Where an inspection stands in the list, which goes by rising numbers; negative where there is none.</summary>
    private int Place(long number) => LastUpTo(number) is >= 0 and var at && Inspections[at].Number == number ? at : -1;

    /// <summary>Where the last inspection stands whose number is no higher; -1 where there is none.</summary>
    private int LastUpTo(long number)
    {
        var (from, to) = (0, Inspections.Count);
        while (from < to)
        {
            var middle = from + ((to - from) / 2);
            (from, to) = Inspections[middle].Number <= number ? (middle + 1, to) : (from, middle);
        }

        return from - 1;
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

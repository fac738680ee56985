using System.Collections.Immutable;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Measuring;

namespace InspectLog.Journal.State;

/// <summary>What the workshop's own journal says.</summary>
/// <param name="Instruments">Instruments in use, in the order they were added.</param>
/// <param name="Words">The workshop's own words, in the order they were added.</param>
public sealed record WorkshopState(ImmutableList<Instrument> Instruments, ImmutableList<WorkshopWord> Words)
{
    /// <summary>A workshop without a journal.</summary>
    public static readonly WorkshopState Empty = new([], []);

    /// <summary>Paired devices and links given away, in the order they were given, those withdrawn among them.</summary>
    public ImmutableList<Access> Accesses { get; init; } = [];

    /// <summary>Which vehicles there should be, and how far their journals were.</summary>
    public NotedHeads Noted { get; init; } = NotedHeads.None;

    /// <summary>What it is called and where it is, for the head of reports; null where nobody said.</summary>
    public WorkshopNamed? Named { get; init; }

    /// <summary>The state after one more entry.</summary>
    public WorkshopState Apply(JournalEntry entry) => entry.Body switch
    {
        InstrumentAdded added => this with { Instruments = Without(added.Instrument.Id).Add(added.Instrument) },
        InstrumentRetired retired => this with { Instruments = Without(retired.Id) },
        OwnWordAdded added => this with { Words = Words.Add(new(entry.Sequence, entry.LocalTime, entry.Actor, added)) },
        OwnWordRemoved removed => this with { Words = Words.RemoveAll(word => word.Number == removed.Word) },
        AccessGiven given => this with { Accesses = Accesses.Add(new(entry.Sequence, entry.LocalTime, given, Withdrawn: null)) },
        AccessWithdrawn withdrawn => this with { Accesses = Accesses.ConvertAll(access => access.Number == withdrawn.Access ? access with { Withdrawn = access.Withdrawn ?? entry.LocalTime } : access) },
        WorkshopNamed named => this with { Named = named.Name.Length == 0 && named.Address.Length == 0 ? null : named },
        VehiclesNoted noted => this with { Noted = Noted.With(noted) },
        LossAccepted loss => this with { Noted = Noted.Without(loss) },
        _ => this,
    };

    private ImmutableList<Instrument> Without(string id) => Instruments.RemoveAll(instrument => instrument.Id == id);
}

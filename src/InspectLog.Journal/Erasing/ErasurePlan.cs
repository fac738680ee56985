using InspectLog.Journal.Entries;

namespace InspectLog.Journal.Erasing;

/// <summary>Whose data are to go, and who asked for it.</summary>
/// <param name="Person">The person's name, as it stands in the journals; case does not matter.</param>
/// <param name="AsWorker">Whether the name goes as well where it says who worked: who made entries, who inspected, whose device
/// it was.</param>
/// <param name="AskedBy">Who asked, in words that do not name the person.</param>
/// <param name="Reason">Why, in words that do not name the person.</param>
public sealed record ErasureRequest(string Person, bool AsWorker, string AskedBy, string Reason);

/// <summary>Why an entry is concerned.</summary>
public enum ErasedPart
{
    /// <summary>Owner, contact and vehicle number.</summary>
    OwnerFacts,

    /// <summary>What the person said into a recording, or a recording that names them.</summary>
    Recording,

    /// <summary>What was read or heard of such a recording, or said about something that goes.</summary>
    SaidOfIt,

    /// <summary>A note or photo that is left out of reports, made by the person or naming them.</summary>
    LeftOutOfReport,

    /// <summary>An entry that names the person and is kept without the name.</summary>
    Mention,

    /// <summary>The person made the entry.</summary>
    Worker,
}

/// <summary>An entry that is concerned.</summary>
/// <param name="Sequence">The entry.</param>
/// <param name="Time">When it was made, in the workshop's time.</param>
/// <param name="Kind">Of what kind it is.</param>
/// <param name="Part">Why it is concerned.</param>
public sealed record ErasedEntry(long Sequence, DateTimeOffset Time, string Kind, ErasedPart Part);

/// <summary>What goes of one journal.</summary>
/// <param name="VehicleId">The vehicle; null for the workshop.</param>
/// <param name="Name">What people call it.</param>
/// <param name="Gone">The entries whose bodies go.</param>
/// <param name="Restated">The entries whose bodies go and are said again without the person.</param>
/// <param name="Nameless">The entries that will no longer say who made them.</param>
/// <param name="Staying">How many entries go on saying who worked, since that was not asked for.</param>
/// <param name="Media">The recordings and photos that go.</param>
public sealed record JournalErasure(
    string? VehicleId,
    string Name,
    IReadOnlyList<ErasedEntry> Gone,
    IReadOnlyList<ErasedEntry> Restated,
    IReadOnlyList<ErasedEntry> Nameless,
    int Staying,
    IReadOnlyList<MediaFile> Media)
{
    /// <summary>Whether the journal is written anew.</summary>
    public bool IsConcerned => Gone.Count + Restated.Count + Nameless.Count > 0;
}

/// <summary>What goes when a person is erased, listed before anything does.</summary>
/// <param name="Person">The name, with single blanks.</param>
/// <param name="Journals">The journals that are concerned, and those in which the name stays as that of who worked.</param>
/// <param name="Shared">Recordings and photos that stay, as another entry names them too.</param>
/// <param name="Backups">The backups that are known of.</param>
/// <param name="Remarks">What else is to be known, each in a sentence.</param>
/// <param name="Mark">Tells this plan from another, so that what is confirmed is what was listed.</param>
public sealed record ErasurePlan(
    string Person,
    IReadOnlyList<JournalErasure> Journals,
    IReadOnlyList<MediaFile> Shared,
    IReadOnlyList<KnownBackup> Backups,
    IReadOnlyList<string> Remarks,
    string Mark)
{
    /// <summary>Whether nothing goes.</summary>
    public bool IsEmpty => !Journals.Any(journal => journal.IsConcerned);

    /// <summary>How many entries' bodies go, those that are said again among them.</summary>
    public int Bodies => Journals.Sum(journal => journal.Gone.Count + journal.Restated.Count);

    /// <summary>How many recordings and photos go.</summary>
    public int Media => Journals.SelectMany(journal => journal.Media).DistinctBy(file => file.Sha256).Count();

    /// <summary>How many entries go on saying who worked.</summary>
    public int Staying => Journals.Sum(journal => journal.Staying);
}

/// <summary>Nothing was erased: the message says why and what to do.</summary>
public sealed class ErasureRefusedException(string message) : Exception(message);

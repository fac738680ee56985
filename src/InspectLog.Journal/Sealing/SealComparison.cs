namespace InspectLog.Journal.Sealing;

/// <summary>What a journal is to a seal.</summary>
public enum SealStanding
{
    /// <summary>It is what was sealed, whole, and nothing came later.</summary>
    Current,

    /// <summary>It begins with what was sealed, and entries came later.</summary>
    Continued,

    /// <summary>It is the journal that was sealed, and ends before the entry that was sealed last.</summary>
    Cut,

    /// <summary>It begins with the first entry of the journal that was sealed, and other entries follow.</summary>
    Rewritten,

    /// <summary>It begins with another entry: it is another vehicle's, or was written anew from its beginning.</summary>
    OtherJournal,

    /// <summary>It is damaged, so that the entry that was sealed last is not there to be compared.</summary>
    Unknown,
}

/// <summary>What came of holding a seal against a journal.</summary>
/// <param name="Standing">What the journal is to the seal.</param>
/// <param name="Matches">Up to which entry the journal is known to be the sealed one; 0 where that is not known of any.</param>
/// <param name="Later">How many entries came later.</param>
/// <param name="WithheldSince">Sequences of sealed entries that are withheld and were not then.</param>
/// <param name="GivenBack">Sequences of sealed entries that were withheld and are not now.</param>
public sealed record SealComparison(
    SealStanding Standing, long Matches, long Later, IReadOnlyList<long> WithheldSince, IReadOnlyList<long> GivenBack)
{
    /// <summary>Sequences of sealed entries that are erased since, as a later entry of the chain says.</summary>
    public IReadOnlyList<long> ErasedSince { get; init; } = [];

    /// <summary>Whether what was sealed is there, whatever of it is withheld.</summary>
    public bool Stands => Standing is SealStanding.Current or SealStanding.Continued;

    /// <summary>Holds a seal against a journal. Pure.</summary>
    /// <remarks>The hash of an entry stands for all entries before it, so one comparison at the place of the seal tells
    /// whether the journal continues what was sealed.</remarks>
    public static SealComparison Of(Seal seal, JournalChain chain)
    {
        if (chain.HashOf(seal.Count) == seal.Head)
        {
            var later = chain.Count - seal.Count;
            var erased = chain.ErasedSince(seal.Count);
            return new(
                later == 0 ? SealStanding.Current : SealStanding.Continued,
                seal.Count,
                later,
                [.. chain.Withheld.TakeWhile(sequence => sequence <= seal.Count).Except(seal.Withheld).Except(erased)],
                [.. seal.Withheld.Except(chain.Withheld)])
            {
                ErasedSince = [.. erased.Except(seal.Withheld)],
            };
        }

        return new(Otherwise(seal, chain), KnownMatch(seal, chain), 0, [], []);
    }

    private static SealStanding Otherwise(Seal seal, JournalChain chain)
    {
        if (chain.Count > 0 && chain.HashOf(1) is { } first && first != seal.First)
        {
            return SealStanding.OtherJournal;
        }

        if (chain.HashOf(seal.Count) is not null || Differs(seal.Earlier, chain))
        {
            return SealStanding.Rewritten;
        }

        return chain.IsDamaged ? SealStanding.Unknown : SealStanding.Cut;
    }

    private static long KnownMatch(Seal seal, JournalChain chain) =>
        seal.Earlier is { } earlier && chain.HashOf(earlier.Count) == earlier.Head ? earlier.Count
        : chain.HashOf(1) == seal.First ? 1
        : 0;

    private static bool Differs(EarlierSeal? earlier, JournalChain chain) =>
        earlier is not null && chain.HashOf(earlier.Count) is { } hash && hash != earlier.Head;
}

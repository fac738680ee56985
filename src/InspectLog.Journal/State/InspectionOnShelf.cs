using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.Storage;
using InspectLog.Measuring;

namespace InspectLog.Journal.State;

/// <content>A closed inspection whose lists stay on the disk, and what pages ask of many inspections at once: that is answered
/// without reading the lists.</content>
public sealed partial record InspectionState
{
    private ShelvedInspection? Shelved { get; init; }

    /// <summary>The entries of which it is made, in their order.</summary>
    internal EntryRuns Entries { get; private init; } = EntryRuns.None;

    /// <summary>Whether its lists are in memory by themselves, and not read from the disk when they are needed.</summary>
    internal bool IsHeld => _held is not null;

    /// <summary>Whether one of its entries can be of a sequence; of lists that are on the disk it is known without them.</summary>
    internal bool MayHave(long sequence) => IsHeld || Entries.Has(sequence);

    private InspectionDigest? Digest => Shelved?.Digest;

    /// <summary>The readings that count and were taken with gauges of a kind, oldest first.</summary>
    /// <param name="kind">What they gauge.</param>
    public IReadOnlyList<Recorded<ReadingDecided>> Gauged(QuantityKind kind) =>
        Digest is { } digest && !digest.Gauged.Contains(kind)
            ? []
            : [.. Content.Gauged.Where(reading => reading.Body.Instrument?.Kind == kind)];

    /// <summary>Whether a check has a reading or an observation that counts.</summary>
    public bool HasRecordOf(string check) => Digest?.Checks.Contains(check) ?? Content.Checks.Contains(check);

    /// <summary>Whether it has photos, withdrawn ones among them.</summary>
    public bool HasPhotos => Digest?.HasPhotos ?? Content.HasPhotos;

    /// <summary>How many voice notes wait to be read, or for somebody to ask for it.</summary>
    public int UnreadVoiceNotes => Digest?.Unread ?? Content.Unread;

    /// <summary>Which of its entries no longer count as they stand.</summary>
    internal IReadOnlyDictionary<long, EntryMark> Marks => Digest?.Marks ?? Content.Marks;

    /// <summary>The readings of several values that count: repeats, from which it is known how far readings scatter.</summary>
    public IReadOnlyList<Repeats> Repeats => Digest?.Repeats ?? Content.Repeats;

    /// <summary>The last reading that counts of a check at a place; null where it was not read.</summary>
    /// <param name="check">Check id.</param>
    /// <param name="cylinder">The place; null for a check done once.</param>
    public Recorded<ReadingDecided>? LastReading(string check, int? cylinder) => Shelved is { } shelved
        ? shelved.LastReading(check, cylinder)
        : Content.LastReadings.GetValueOrDefault((check, cylinder));

    /// <summary>Actions of some sorts that count, oldest first.</summary>
    /// <param name="sorts">The sorts: "replaced", "adjusted".</param>
    public IEnumerable<Recorded<ActionDone>> ActionsOf(params IReadOnlyList<string> sorts) =>
        Digest is { } digest && !digest.Actions.Intersect(sorts).Any() ? [] : Actions.Where(done => sorts.Contains(done.Body.Action));

    /// <summary>The same with its lists left on the disk.</summary>
    /// <param name="shelf">Reads them again.</param>
    /// <param name="cameIn">Which entries came in from elsewhere.</param>
    internal InspectionState OnShelf(InspectionShelf shelf, CameIn cameIn) => IsHeld && IsClosed
        ? this with { Content = null!, Shelved = shelf.Put(Number, How, Entries, cameIn, Content) }
        : this;

    /// <summary>A reading that its first entry alone says, recorded before the inspection was closed.</summary>
    internal static Recorded<ReadingDecided> PlainReading(JournalEntry entry) =>
        new(entry.Sequence, entry.CapturedTime, (ReadingDecided)entry.Body!) { History = Begun(entry, isLater: false) };

    /// <summary>The lists as they follow from the entries.</summary>
    internal static InspectionContent ReadAgain(IEnumerable<JournalEntry> entries, InspectionStarted how, CameIn cameIn)
    {
        InspectionState? state = null;
        foreach (var entry in entries)
        {
            state = state is null ? Begin(entry, how) : state.After(entry, cameIn);
        }

        return state!.Content;
    }

    /// <summary>The state after one more entry, which may have come in from elsewhere; this very one where it changes nothing.
    /// </summary>
    internal InspectionState After(JournalEntry entry, CameIn cameIn)
    {
        var next = cameIn.Has(entry.Sequence) ? Apply(entry).WithWordsNotAskedFor(entry) : Apply(entry);
        return ReferenceEquals(next, this) ? this : next with { Entries = Entries.With(entry.Sequence) };
    }
}

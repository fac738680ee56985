using System.Collections.Immutable;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;

namespace InspectLog.Journal.State;

/// <summary>What the journal says of one inspection. Immutable. What was put right stands here as it is now; what was
/// withdrawn, and what was added after the inspection was closed, is left out of the lists of what counts.</summary>
public sealed partial record InspectionState
{
    private InspectionState(long number, DateTimeOffset started, InspectionStarted how)
    {
        Number = number;
        Started = started;
        How = how;
    }

    private KeptList<Capture> KeptCaptures { get; init; } = KeptList<Capture>.Empty;

    private KeptList<Recorded<ReadingDecided>> KeptReadings { get; init; } = KeptList<Recorded<ReadingDecided>>.Empty;

    private KeptList<Recorded<ObservationMade>> KeptObservations { get; init; } = KeptList<Recorded<ObservationMade>>.Empty;

    private KeptList<Recorded<ActionDone>> KeptActions { get; init; } = KeptList<Recorded<ActionDone>>.Empty;

    private KeptList<Recorded<PhotoMarked>> KeptMarks { get; init; } = KeptList<Recorded<PhotoMarked>>.Empty;

    private KeptList<LooseEnd> KeptLooseEnds { get; init; } = KeptList<LooseEnd>.Empty;

    /// <summary>Its number: the sequence of its first entry.</summary>
    public long Number { get; }

    /// <summary>When it began, in the workshop's time.</summary>
    public DateTimeOffset Started { get; }

    /// <summary>Sheet, technician and odometer.</summary>
    public InspectionStarted How { get; }

    /// <summary>When it was closed, in the workshop's time; null while open.</summary>
    public DateTimeOffset? Closed { get; private init; }

    /// <summary>Whether it is closed. A closed inspection is amended, never edited.</summary>
    public bool IsClosed => Closed is not null;

    /// <summary>Voice notes, photos and typed notes that count, oldest first.</summary>
    public ImmutableList<Capture> Captures => KeptCaptures.Counting;

    /// <summary>Readings that count, oldest first.</summary>
    public ImmutableList<Recorded<ReadingDecided>> Readings => KeptReadings.Counting;

    /// <summary>Observations that count, oldest first.</summary>
    public ImmutableList<Recorded<ObservationMade>> Observations => KeptObservations.Counting;

    /// <summary>Actions that count, oldest first.</summary>
    public ImmutableList<Recorded<ActionDone>> Actions => KeptActions.Counting;

    /// <summary>Loose ends, oldest first, tied ones included.</summary>
    public ImmutableList<LooseEnd> LooseEnds => KeptLooseEnds.Counting;

    /// <summary>Everything captured and recorded, withdrawn and later added as well, in the order it was first
    /// recorded. Loose ends and the marks over photos are not among it.</summary>
    public IReadOnlyList<IKept> Everything => _merged.Of(KeptCaptures.All, KeptReadings.All, KeptObservations.All, KeptActions.All);

    // Taken over by the state after the next entry, which merges its own lists once it is asked.
    private readonly MergedLists _merged = new();

    private readonly Remembered<InspectionState, Dictionary<long, EntryMark>> _marks = new();
    private readonly Remembered<InspectionState, Dictionary<(string Check, int? Cylinder), Recorded<ReadingDecided>>> _lastReadings = new();

    private readonly Remembered<InspectionState, Recorded<ActionDone>[]> _lastActions = new();
    private readonly Remembered<InspectionState, Recorded<ReadingDecided>[]> _gauged = new();
    private readonly Remembered<InspectionState, HashSet<string>> _checks = new();

    /// <summary>Readings that count and were taken with gauges, oldest first.</summary>
    public IReadOnlyList<Recorded<ReadingDecided>> Gauged =>
        _gauged.Of(this, state => [.. state.Readings.Where(reading => reading.Body.Reading is Measuring.Bracket)]);

    /// <summary>Whether a check has a reading or an observation that counts.</summary>
    public bool HasRecordOf(string check) => _checks.Of(
        this, state => [.. state.Readings.Select(one => one.Body.Check), .. state.Observations.Select(one => one.Body.Check)]).Contains(check);

    /// <summary>Which of its entries no longer count as they stand.</summary>
    internal IReadOnlyDictionary<long, EntryMark> Marks => _marks.Of(this, EntryMarks.In);

    /// <summary>The last reading that counts of a check at a place; null where it was not read.</summary>
    /// <param name="check">Check id.</param>
    /// <param name="cylinder">The place; null for a check done once.</param>
    public Recorded<ReadingDecided>? LastReading(string check, int? cylinder) =>
        _lastReadings.Of(this, LastReadings).GetValueOrDefault((check, cylinder));

    /// <summary>The last action of each sort that counts, of a check at a place.</summary>
    public IReadOnlyCollection<Recorded<ActionDone>> LastActions =>
        _lastActions.Of(this, state => [.. state.Actions.GroupBy(done => (done.Body.Check, done.Body.Cylinder, done.Body.Action)).Select(same => same.Last())]);

    private static Dictionary<(string Check, int? Cylinder), Recorded<ReadingDecided>> LastReadings(InspectionState inspection)
    {
        var last = new Dictionary<(string, int?), Recorded<ReadingDecided>>();
        foreach (var reading in inspection.Readings)
        {
            last[(reading.Body.Check, reading.Body.Cylinder)] = reading;
        }

        return last;
    }

    internal IEnumerable<IKept> EverythingAndLooseEnds => Everything.Concat(KeptMarks.All).Concat(KeptLooseEnds.All);

    /// <summary>What was marked over photos, withdrawn or not, in the order it was first marked.</summary>
    public ImmutableList<Recorded<PhotoMarked>> PhotoMarks => KeptMarks.All;

    /// <summary>The marks over a photo, those that count before those that were withdrawn; null where it was never marked.</summary>
    /// <param name="photo">Sequence of the photo's first entry.</param>
    public Recorded<PhotoMarked>? MarksOf(long photo) =>
        KeptMarks.All.FindLast(one => one.Body.Photo == photo && one.History.Withdrawn is null) ?? KeptMarks.All.FindLast(one => one.Body.Photo == photo);

    /// <summary>What was added after the inspection was closed and counts, oldest first.</summary>
    public IEnumerable<IKept> Addenda =>
        Everything.Where(kept => kept.History is { IsLater: true, Withdrawn: null });

    /// <summary>Checks left out, with their reasons, by check id.</summary>
    public ImmutableDictionary<string, string> LeftOut { get; private init; } =
        ImmutableDictionary<string, string>.Empty;

    /// <summary>The first entry of each capture that brought a stamp, by the stamp's id.</summary>
    public ImmutableDictionary<string, long> Stamps { get; private init; } = ImmutableDictionary<string, long>.Empty;

    /// <summary>Loose ends that are still open.</summary>
    public IEnumerable<LooseEnd> OpenLooseEnds => LooseEnds.Where(end => end.IsOpen);

    /// <summary>Notes in words, spoken and typed, oldest first.</summary>
    public IEnumerable<WordedNote> WordedNotes => Captures.OfType<WordedNote>();

    /// <summary>Voice notes, oldest first.</summary>
    public IEnumerable<VoiceNote> VoiceNotes => Captures.OfType<VoiceNote>();

    /// <summary>Photos, oldest first.</summary>
    public IEnumerable<PhotoCapture> Photos => Captures.OfType<PhotoCapture>();

    /// <summary>The voice note with this sequence, or null.</summary>
    public VoiceNote? FindVoiceNote(long sequence) => FindNote(sequence) as VoiceNote;

    /// <summary>The note in words with this sequence, or null.</summary>
    public WordedNote? FindNote(long sequence) =>
        KeptCaptures.Find(sequence) is WordedNote { History: { Withdrawn: null, IsLater: false } } note ? note : null;

    /// <summary>What was captured or recorded by this entry first, withdrawn or not; null when nothing was.</summary>
    public IKept? Find(long sequence) =>
        (IKept?)KeptReadings.Find(sequence) ?? KeptObservations.Find(sequence) ?? KeptActions.Find(sequence) ?? (IKept?)KeptCaptures.Find(sequence) ?? KeptMarks.Find(sequence);

    /// <summary>The loose end that this entry opened, withdrawn or not; null when it opened none.</summary>
    public LooseEnd? FindLooseEnd(long sequence) => KeptLooseEnds.Find(sequence);

    /// <summary>Every loose end that a record opened, withdrawn ones included.</summary>
    public IEnumerable<LooseEnd> LooseEndsOf(long record) => KeptLooseEnds.All.Where(end => end.What.Record == record);

    /// <summary>The records that confirm a finding and count.</summary>
    public IEnumerable<IKept> RecordsOf(FindingReference finding) =>
        Everything.Where(kept => kept.History.Withdrawn is null && SourcesOf(kept.Says).Contains(finding));

    /// <summary>The findings a record confirms; none for what was entered by hand.</summary>
    public static IReadOnlyList<FindingReference> SourcesOf(EntryBody body) => body switch
    {
        ReadingDecided reading => reading.From,
        ObservationMade { From: { } finding } => [finding],
        ActionDone { From: { } finding } => [finding],
        _ => [],
    };

    internal static InspectionState Begin(JournalEntry entry, InspectionStarted how) =>
        new(entry.Sequence, entry.LocalTime, how);
}

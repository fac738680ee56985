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

    // Of a closed inspection the lists may stay on the disk, until somebody asks for them.
    private readonly InspectionContent? _held = new();

    private InspectionContent Content
    {
        get => _held ?? Shelved!.Content;
        init => (_held, Shelved) = (value, null);
    }

    private KeptList<Capture> KeptCaptures
    {
        get => Content.Captures;
        init => Content = Content with { Captures = value };
    }

    private KeptList<Recorded<ReadingDecided>> KeptReadings
    {
        get => Content.Readings;
        init => Content = Content with { Readings = value };
    }

    private KeptList<Recorded<ObservationMade>> KeptObservations
    {
        get => Content.Observations;
        init => Content = Content with { Observations = value };
    }

    private KeptList<Recorded<ActionDone>> KeptActions
    {
        get => Content.Actions;
        init => Content = Content with { Actions = value };
    }

    private KeptList<Recorded<PhotoMarked>> KeptMarks
    {
        get => Content.PhotoMarks;
        init => Content = Content with { PhotoMarks = value };
    }

    private KeptList<LooseEnd> KeptLooseEnds
    {
        get => Content.LooseEnds;
        init => Content = Content with { LooseEnds = value };
    }

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
    public IReadOnlyList<IKept> Everything => Content.Everything;

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
    public ImmutableDictionary<string, string> LeftOut
    {
        get => Content.LeftOut;
        private init => Content = Content with { LeftOut = value };
    }

    /// <summary>What people said of how soon a check is to be seen to, by check id.</summary>
    public ImmutableDictionary<string, UrgencyWord> Urgencies
    {
        get => Content.Urgencies;
        private init => Content = Content with { Urgencies = value };
    }

    /// <summary>The first entry of each capture that brought a stamp, by the stamp's id.</summary>
    public ImmutableDictionary<string, long> Stamps
    {
        get => Content.Stamps;
        private init => Content = Content with { Stamps = value };
    }

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
        Find(sequence) is WordedNote { History: { Withdrawn: null, IsLater: false } } note ? note : null;

    /// <summary>What was captured or recorded by this entry first, withdrawn or not; null when nothing was.</summary>
    public IKept? Find(long sequence) => MayHave(sequence) ? Content.Find(sequence) : null;

    /// <summary>The loose end that this entry opened, withdrawn or not; null when it opened none.</summary>
    public LooseEnd? FindLooseEnd(long sequence) => MayHave(sequence) ? KeptLooseEnds.Find(sequence) : null;

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
        new(entry.Sequence, entry.LocalTime, how) { Entries = EntryRuns.None.With(entry.Sequence) };
}

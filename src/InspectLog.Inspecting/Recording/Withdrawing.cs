using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.Inspecting.Recording;

/// <summary>The entries that take something back, or let it count again, with the loose ends that came of it. Pure.
/// </summary>
public static class Withdrawing
{
    private static readonly string[] OfWords = ["misheard", "said by mistake"];
    private static readonly string[] OfFindings = ["wrong place", "misread", "said by mistake"];
    private static readonly string[] OfWhatWasEntered = ["wrong place", "misread", "entered by mistake"];

    /// <summary>Reasons to be chosen in one press; any other is typed. Nobody said what was entered by hand.</summary>
    public static IReadOnlyList<string> UsualReasons(IKept kept) => kept is VoiceNote ? OfWords
        : InspectionState.SourcesOf(kept.Says).Any() ? OfFindings
        : OfWhatWasEntered;

    /// <summary>Whether a reason is one of the usual, of whatever: a form may have waited on a phone since other words were
    /// offered.</summary>
    public static bool IsUsual(string reason) => OfWords.Concat(OfFindings).Concat(OfWhatWasEntered).Contains(reason);

    /// <summary>Whether something can be withdrawn at all: a voice note only where its words are all there is of it.</summary>
    public static bool CanBe(IKept? kept) => kept is not (null or VoiceNote { IsWordsAlone: false });

    /// <summary>The entries that withdraw something; none when it is not there, withdrawn already, or a voice note that
    /// findings rest on, which stays and can be left out of the report.</summary>
    /// <remarks>A reading that was misread was taken all the same, and what was taken apart for it is still apart: its loose
    /// ends stay until somebody says otherwise. Only what was said to be off, and was not, goes with its record.</remarks>
    /// <param name="scene">The inspection.</param>
    /// <param name="entry">Sequence of its first entry.</param>
    /// <param name="reason">Why; never empty.</param>
    public static IReadOnlyList<EntryBody> Withdraw(BenchScene scene, long entry, string reason) =>
        scene.Inspection.Find(entry) is { History.Withdrawn: null } kept && CanBe(kept)
            ?
            [
                new EntryWithdrawn(entry, reason),
                .. kept is Recorded<ActionDone> ? TakeBackLooseEnds(scene, entry, reason) : [],
            ]
            : [];

    /// <summary>The entries that open a loose end again which somebody ticked off by mistake: since when it was open stays. None
    /// where nobody did, or where a record put it right, which is withdrawn itself.</summary>
    public static IReadOnlyList<EntryBody> Untie(BenchScene scene, long looseEnd) =>
        scene.Inspection.LooseEnds.Find(end => end.Sequence == looseEnd) is { IsTickedOff: true, TiedBy: { } tie }
            ? [new EntryWithdrawn(tie, "Ticked off by mistake.")]
            : [];

    /// <summary>The entries that let findings wait again which were dropped by mistake; in a closed inspection only what was
    /// dropped after closing.</summary>
    public static IReadOnlyList<EntryBody> Undrop(BenchScene scene, IEnumerable<Proposal> dropped) =>
        [.. dropped.Where(one => CanBeReopened(scene.Inspection, one)).Select(one => new FindingReopened(one.Reference))];

    /// <summary>Whether a finding was dropped and may wait again.</summary>
    public static bool CanBeReopened(InspectionState inspection, Proposal dropped) =>
        dropped.CanBeReopened && (!inspection.IsClosed || dropped.Later is not null);

    /// <summary>The entries that let something count again; none when it does. The loose ends that were withdrawn with it
    /// are there again, and what it had put back is put back again.</summary>
    public static IReadOnlyList<EntryBody> Restore(BenchScene scene, long entry) =>
        scene.Inspection.Find(entry) is { History.Withdrawn: { } withdrawn } kept
            ?
            [
                new EntryRestored(entry),
                .. scene.Inspection.IsClosed ? [] : EndsWithdrawnWith(scene.Inspection, entry, withdrawn),
                .. scene.Inspection.IsClosed ? [] : LooseEndRules.Following(scene, kept.Says, entry).OfType<LooseEndTied>(),
            ]
            : [];

    /// <summary>What a record opened was never off, and what it tied is still open. What another record says to be off as
    /// well stays, and nothing of a closed inspection is opened or tied.</summary>
    internal static IEnumerable<EntryBody> TakeBackLooseEnds(BenchScene scene, long record, string reason) =>
        scene.Inspection.IsClosed
            ? []
            : scene.Inspection.LooseEndsOf(record)
                .Where(end => end.History.Withdrawn is null && !IsOffByAnother(scene, end, record))
                .Select(end => end.Sequence)
                .Concat(scene.Inspection.LooseEnds.Where(end => end.TiedByRecord == record).Select(end => end.TiedBy).OfType<long>())
                .Select(sequence => new EntryWithdrawn(sequence, reason));

    /// <summary>The loose ends as they are once what a record opened and tied is taken back.</summary>
    internal static IReadOnlyList<LooseEnd> LooseEndsWithout(BenchScene scene, long record) =>
    [
        .. scene.Inspection.LooseEnds
            .Where(end => end.What.Record != record || IsOffByAnother(scene, end, record))
            .Select(end => end.TiedByRecord == record ? end with { Tied = null, TiedBy = null, TiedByRecord = null } : end),
    ];

    /// <summary>They were withdrawn for the same reason; those that an amendment withdrew, for its own, stay gone.</summary>
    private static IEnumerable<EntryBody> EndsWithdrawnWith(InspectionState inspection, long record, Withdrawal withdrawn) =>
        inspection.LooseEndsOf(record)
            .Where(end => end.History.Withdrawn?.Reason == withdrawn.Reason)
            .Select(end => new EntryRestored(end.Sequence));

    /// <summary>Whether another record that counts would have opened the same end, had it not been open already.</summary>
    private static bool IsOffByAnother(BenchScene scene, LooseEnd end, long record) => scene.Inspection.Everything
        .Where(one => one is not Capture && one.Sequence != record && one.History is { Withdrawn: null, IsLater: false })
        .SelectMany(one => LooseEndRules.Following(scene, [], one.Says, one.Sequence))
        .OfType<LooseEndOpened>()
        .Any(other => (other.Part ?? other.Disturbance, other.Cylinder) == (end.What.Part ?? end.What.Disturbance, end.What.Cylinder));
}

using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;

namespace InspectLog.Journal.State;

/// <summary>Why an entry no longer counts as it stands.</summary>
/// <param name="At">Since when, in the workshop's time.</param>
/// <param name="By">Who did that.</param>
public abstract record EntryMark(DateTimeOffset At, string By);

/// <summary>It was withdrawn.</summary>
/// <param name="Reason">Why.</param>
/// <param name="At">Since when, in the workshop's time.</param>
/// <param name="By">Who withdrew it.</param>
public sealed record WithdrawnSince(string Reason, DateTimeOffset At, string By) : EntryMark(At, By);

/// <summary>It was put right: another entry stands in its place.</summary>
/// <param name="Entry">Sequence of the entry that came next in its place.</param>
/// <param name="At">When that was, in the workshop's time.</param>
/// <param name="By">Who did it.</param>
public sealed record PutRightSince(long Entry, DateTimeOffset At, string By) : EntryMark(At, By);

/// <summary>It is a withdrawal that was undone.</summary>
/// <param name="Entry">Sequence of the entry that undid it.</param>
/// <param name="At">Since when, in the workshop's time.</param>
/// <param name="By">Who undid it.</param>
public sealed record UndoneSince(long Entry, DateTimeOffset At, string By) : EntryMark(At, By);

/// <summary>The entries of a vehicle that no longer count as they stand. Pure.</summary>
public sealed class EntryMarks
{
    /// <summary>Those of a vehicle of which nothing is known.</summary>
    public static readonly EntryMarks None = new([]);

    private readonly List<IReadOnlyDictionary<long, EntryMark>> _marks;

    private EntryMarks(List<IReadOnlyDictionary<long, EntryMark>> marks) => _marks = marks;

    /// <summary>Reads them from a vehicle's state.</summary>
    public static EntryMarks Of(VehicleState vehicle) =>
        new([.. vehicle.Inspections.Select(inspection => inspection.Marks).Where(marks => marks.Count > 0)]);

    /// <summary>Those of one inspection.</summary>
    internal static Dictionary<long, EntryMark> In(InspectionContent inspection) =>
        inspection.Everything.Concat(inspection.PhotoMarks.All).Concat(inspection.LooseEnds.All).SelectMany(Of).ToDictionary();

    /// <summary>Why an entry no longer counts as it stands; null where it does.</summary>
    /// <param name="sequence">Sequence of any entry: the first of something recorded, or one that put it right.</param>
    public EntryMark? At(long sequence) =>
        _marks.Select(marks => marks.GetValueOrDefault(sequence)).FirstOrDefault(mark => mark is not null);

    /// <summary>The sequence by which what an entry records goes: that of its first entry.</summary>
    public static long FirstOf(JournalEntry entry) => (entry.Body as AmendableBody)?.Amends ?? entry.Sequence;

    private static WithdrawnSince Mark(Withdrawal withdrawn) => new(withdrawn.Reason, withdrawn.At, withdrawn.By);

    private static IEnumerable<KeyValuePair<long, EntryMark>> Of(IKept kept)
    {
        // What was heard of a voice note stands in an entry of its own.
        var said = (kept as VoiceNote)?.TranscriptEntry ?? kept.Sequence;
        foreach (var past in kept.History.Past)
        {
            yield return new(said, new PutRightSince(past.ChangedBy, past.At, past.By));
            said = past.ChangedBy;
        }

        if (kept.History.Withdrawn is { } withdrawn)
        {
            yield return new(said, Mark(withdrawn));
            if (said != kept.Sequence && kept is VoiceNote)
            {
                yield return new(kept.Sequence, Mark(withdrawn));
            }
        }

        foreach (var undone in kept.History.Restored)
        {
            yield return new(undone.Withdrawn.Entry, new UndoneSince(undone.Entry, undone.At, undone.By));
        }

        foreach (var (tie, untied) in (kept as LooseEnd)?.WithdrawnTies ?? [])
        {
            yield return new(tie, Mark(untied));
        }
    }
}

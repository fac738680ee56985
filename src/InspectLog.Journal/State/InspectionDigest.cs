using InspectLog.Journal.Entries;
using InspectLog.Measuring;

namespace InspectLog.Journal.State;

/// <summary>What pages ask of many closed inspections at once, in few bytes an entry.</summary>
internal sealed record InspectionDigest
{
    private InspectionDigest()
    {
    }

    /// <summary>Checks that have a reading or an observation that counts.</summary>
    public required IReadOnlyList<string> Checks { get; init; }

    /// <summary>Sorts of the actions that count.</summary>
    public required IReadOnlyList<string> Actions { get; init; }

    /// <summary>What was gauged.</summary>
    public required IReadOnlyList<QuantityKind> Gauged { get; init; }

    /// <summary>Where the last readings stand that count.</summary>
    public required IReadOnlyList<LastPlace> LastReadings { get; init; }

    /// <summary>Readings of several values.</summary>
    public required IReadOnlyList<Repeats> Repeats { get; init; }

    /// <summary>Which entries no longer count as they stand.</summary>
    public required IReadOnlyDictionary<long, EntryMark> Marks { get; init; }

    /// <summary>Whether there are photos.</summary>
    public required bool HasPhotos { get; init; }

    /// <summary>How many voice notes are not read yet.</summary>
    public required int Unread { get; init; }

    /// <summary>Makes it of the lists.</summary>
    /// <param name="content">The lists.</param>
    /// <param name="shared">What many inspections say in the same words is held once.</param>
    public static InspectionDigest Of(InspectionContent content, SharedParts shared) => new()
    {
        Checks = [.. content.Checks.Select(shared.Text)],
        Actions = [.. content.Actions.Counting.Select(done => done.Body.Action).Distinct().Select(shared.Text)],
        Gauged = [.. content.Gauged.Select(reading => reading.Body.Instrument?.Kind).OfType<QuantityKind>().Distinct()],
        LastReadings = [.. content.LastReadings.Select(last => new LastPlace(shared.Text(last.Key.Check), last.Key.Cylinder, last.Value.Sequence, IsPlain(last.Value)))],
        Repeats = [.. content.Repeats.Select(one => one with { Check = shared.Text(one.Check), Instrument = shared.Instrument(one.Instrument), Values = [.. one.Values] })],
        Marks = content.Marks.Count == 0 ? NoMarks : content.Marks,
        HasPhotos = content.HasPhotos,
        Unread = content.Unread,
    };

    private static readonly Dictionary<long, EntryMark> NoMarks = [];

    /// <summary>Whether it says what its first entry says, and nothing became of it since.</summary>
    private static bool IsPlain(Recorded<ReadingDecided> reading) => reading.History is
        { Past.Count: 0, Restored.Count: 0, Withdrawn: null, IsLater: false, IsLeftOutOfReport: false };
}

/// <summary>Where the last reading of a check at a place stands.</summary>
/// <param name="Check">Check id.</param>
/// <param name="Cylinder">The place; null for a check done once.</param>
/// <param name="Sequence">Sequence of its first entry.</param>
/// <param name="IsPlain">Whether that entry alone says it.</param>
internal readonly record struct LastPlace(string Check, int? Cylinder, long Sequence, bool IsPlain);

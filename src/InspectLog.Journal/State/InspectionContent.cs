using System.Collections.Immutable;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;

namespace InspectLog.Journal.State;

/// <summary>The lists of an inspection, and what follows from them. Immutable.</summary>
internal sealed record InspectionContent
{
    // Taken over by the content after the next entry, which makes its own once it is asked.
    private readonly MergedLists _merged = new();
    private readonly Remembered<InspectionContent, Dictionary<long, EntryMark>> _marks = new();
    private readonly Remembered<InspectionContent, Dictionary<(string Check, int? Cylinder), Recorded<ReadingDecided>>> _lastReadings = new();
    private readonly Remembered<InspectionContent, Recorded<ReadingDecided>[]> _gauged = new();
    private readonly Remembered<InspectionContent, HashSet<string>> _checks = new();
    private readonly Remembered<InspectionContent, Repeats[]> _repeats = new();

    public KeptList<Capture> Captures { get; init; } = KeptList<Capture>.Empty;

    public KeptList<Recorded<ReadingDecided>> Readings { get; init; } = KeptList<Recorded<ReadingDecided>>.Empty;

    public KeptList<Recorded<ObservationMade>> Observations { get; init; } = KeptList<Recorded<ObservationMade>>.Empty;

    public KeptList<Recorded<ActionDone>> Actions { get; init; } = KeptList<Recorded<ActionDone>>.Empty;

    public KeptList<Recorded<PhotoMarked>> PhotoMarks { get; init; } = KeptList<Recorded<PhotoMarked>>.Empty;

    public KeptList<LooseEnd> LooseEnds { get; init; } = KeptList<LooseEnd>.Empty;

    public ImmutableDictionary<string, string> LeftOut { get; init; } = ImmutableDictionary<string, string>.Empty;

    public ImmutableDictionary<string, UrgencyWord> Urgencies { get; init; } = ImmutableDictionary<string, UrgencyWord>.Empty;

    public ImmutableDictionary<string, long> Stamps { get; init; } = ImmutableDictionary<string, long>.Empty;

    public IReadOnlyList<IKept> Everything => _merged.Of(Captures.All, Readings.All, Observations.All, Actions.All);

    /// <summary>Readings that count and were taken with gauges, oldest first.</summary>
    public IReadOnlyList<Recorded<ReadingDecided>> Gauged =>
        _gauged.Of(this, content => [.. content.Readings.Counting.Where(reading => reading.Body.Reading is Bracket)]);

    /// <summary>The checks that have a reading or an observation that counts.</summary>
    public IReadOnlySet<string> Checks => _checks.Of(this, content =>
        [.. content.Readings.Counting.Select(one => one.Body.Check), .. content.Observations.Counting.Select(one => one.Body.Check)]);

    public bool HasPhotos => Captures.All.Exists(capture => capture is PhotoCapture);

    public int Unread => Captures.Counting.Count(capture => capture is VoiceNote note && (note.IsWaiting || note.AwaitsAsking));

    public IReadOnlyDictionary<long, EntryMark> Marks => _marks.Of(this, EntryMarks.In);

    public IReadOnlyDictionary<(string Check, int? Cylinder), Recorded<ReadingDecided>> LastReadings => _lastReadings.Of(this, LastOf);

    public IReadOnlyList<Repeats> Repeats => _repeats.Of(this, content => [.. content.Readings.Counting.Select(State.Repeats.Of).OfType<Repeats>()]);

    /// <summary>What was captured or recorded by this entry first, withdrawn or not; null when nothing was.</summary>
    public IKept? Find(long sequence) =>
        (IKept?)Readings.Find(sequence) ?? Observations.Find(sequence) ?? Actions.Find(sequence) ?? (IKept?)Captures.Find(sequence) ?? PhotoMarks.Find(sequence);

    private static Dictionary<(string Check, int? Cylinder), Recorded<ReadingDecided>> LastOf(InspectionContent content)
    {
        var last = new Dictionary<(string, int?), Recorded<ReadingDecided>>();
        foreach (var reading in content.Readings.Counting)
        {
            last[(reading.Body.Check, reading.Body.Cylinder)] = reading;
        }

        return last;
    }
}

/// <summary>A reading of several values, as far as it says how readings scatter.</summary>
/// <param name="Sequence">Sequence of its first entry.</param>
/// <param name="Check">Check id.</param>
/// <param name="Instrument">With what it was taken.</param>
/// <param name="Values">The values, base unit.</param>
public sealed record Repeats(long Sequence, string Check, RepeatedWith Instrument, IReadOnlyList<double> Values)
{
    /// <summary>Those of a reading; null where it has one value, is a bracket, or names no instrument.</summary>
    public static Repeats? Of(Recorded<ReadingDecided> reading) =>
        reading.Body is { Instrument: { } with, Reading: DisplayedReading { Values: { Count: > 1 } values } }
            ? new(reading.Sequence, reading.Body.Check, new(with.Id, with.Accuracy, with.Resolution), values)
            : null;
}

/// <summary>The instrument that repeats were taken with, on the range it was on.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Accuracy">Its accuracy there.</param>
/// <param name="Resolution">Its step there, base unit.</param>
public sealed record RepeatedWith(string Id, Accuracy Accuracy, double Resolution);

using System.Globalization;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using Microsoft.Extensions.Primitives;

namespace InspectLog.App.Bench;

/// <summary>Which part of the stream the bench shows: the newest of one sort. Pure.</summary>
/// <param name="Sort">Which captures: one of <see cref="Sorts"/>.</param>
/// <param name="Show">How many of them at most, the newest; 1 or more.</param>
public sealed record StreamStretch(string Sort, int Show)
{
    /// <summary>How many captures are shown at first: a phone loads no more than it can show.</summary>
    public const int Length = 5;

    /// <summary>How many older ones a press adds.</summary>
    public const int Step = 24;

    /// <summary>How many captures that wait for an answer are shown however old they are.</summary>
    public const int MostWaiting = 12;

    /// <summary>The query that names the sort.</summary>
    public const string SortParameter = "stream";

    /// <summary>The query that says how many are shown.</summary>
    public const string ShowParameter = "show";

    private const string All = "all";

    /// <summary>The sorts with their words, everything first.</summary>
    public static IReadOnlyList<(string Sort, string Words)> Sorts { get; } =
        [(All, "All"), ("notes", "Notes"), ("recorded", "Recorded"), ("photos", "Photos")];

    /// <summary>The newest of everything.</summary>
    public static StreamStretch Newest { get; } = new(All, Length);

    /// <summary>What an address asks for; the newest of everything where it asks for nothing that is known.</summary>
    public static StreamStretch Read(IReadOnlyDictionary<string, StringValues> values) => new(
        Sorts.Select(one => one.Sort).FirstOrDefault(sort => sort == values.GetValueOrDefault(SortParameter)) ?? All,
        int.TryParse(values.GetValueOrDefault(ShowParameter), NumberStyles.None, CultureInfo.InvariantCulture, out var show) && show > Length
            ? show
            : Length);

    /// <summary>The stretch of everything that reaches back to a capture.</summary>
    /// <param name="inspection">The inspection.</param>
    /// <param name="entry">The capture, or any entry; of one that is no capture nothing more is shown.</param>
    public static StreamStretch Reaching(InspectionState inspection, long entry)
    {
        var newer = inspection.Everything.Where(IsCapture).Reverse().TakeWhile(kept => kept.Sequence != entry).Count();
        return inspection.Find(entry) is null && inspection.FindNote(entry) is null ? Newest
            : Newest with { Show = ((newer / Length) + 1) * Length };
    }

    /// <summary>The address of a bench with as much of the stream as reaches back to a part of it.</summary>
    /// <param name="inspection">The inspection.</param>
    /// <param name="page">The address, with or without a query.</param>
    /// <param name="part">Id of the part; of one that is no capture and stands in none nothing more is shown.</param>
    public static string Reaching(InspectionState inspection, string page, string part) =>
        part.Split('-') is ["item" or "finding", var number, ..]
        && long.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var entry)
        && Reaching(inspection, entry).Query is { Length: > 0 } query
            ? page + (page.Contains('?', StringComparison.Ordinal) ? query : $"?{query[1..]}")
            : page;

    /// <summary>Whether it stands in the stream by itself: what confirms a finding shows there.</summary>
    public static bool IsCapture(IKept kept) => InspectionState.SourcesOf(kept.Says).Count == 0;

    /// <summary>It as the end of an address that has a query already; empty where it is the newest of everything.</summary>
    public string Query =>
        (Sort == All ? "" : $"&{SortParameter}={Sort}")
        + (Show == Length ? "" : string.Create(CultureInfo.InvariantCulture, $"&{ShowParameter}={Show}"));

    /// <summary>Whether a capture is of the sort.</summary>
    public bool Holds(CaptureView item) => Sort switch
    {
        "notes" => item.Kept is WordedNote,
        "photos" => item.Kept is PhotoCapture,
        "recorded" => item.Kept.Says is ReadingDecided or ObservationMade or ActionDone || item.HasConfirmed,
        _ => true,
    };

    /// <summary>What is shown of the captures: its own, what was searched for, and the newest of what waits for an answer; where
    /// much waits, the rest of it stands among the older ones.</summary>
    /// <param name="captures">All of them, newest first.</param>
    /// <param name="isMeant">Whether a capture is meant by the address or a form.</param>
    public IReadOnlyList<CaptureView> Of(IReadOnlyList<CaptureView> captures, Func<CaptureView, bool> isMeant)
    {
        var own = captures.Where(Holds).Take(Show).ToHashSet();
        own.UnionWith(captures.Where(item => item.ToSettle > 0).Take(MostWaiting));
        return [.. captures.Where(item => own.Contains(item) || isMeant(item))];
    }
}

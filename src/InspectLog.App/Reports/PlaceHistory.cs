using InspectLog.App.Bench;
using InspectLog.Checks;
using InspectLog.Checks.Judging;
using InspectLog.Inspecting.Standing;
using InspectLog.Inspecting.Words;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.App.Reports;

/// <summary>What was seen and done at a place of a check, in words: what holds first, what it took the place of behind it,
/// the readings before the one that counts among that. Pure.</summary>
public static class PlaceHistory
{
    // An earlier reading has no statement: it is judged by its own decision.
    private sealed record Said(long Sequence, Statement? Statement, string Words);

    /// <summary>"Present, not weak. Before that: weak." or "Good. Before that: burnt, then replaced." Empty where nothing was
    /// seen or done. Nothing that was noted is missing, but for words said again with nothing else in between.</summary>
    /// <param name="place">The place.</param>
    /// <param name="check">The check, in whose unit values are printed.</param>
    public static string Of(PlaceView place, Check check)
    {
        var said = WithoutEchoes(InOrder(place));
        var holding = ObservationJudge.Standing([.. said.Select(one => one.Statement!)]).Select(at => said[at]).ToHashSet();
        var lastSeen = said.FindLastIndex(one => one.Statement is Observed);
        var now = said.Where((one, at) => (holding.Contains(one) || at > lastSeen) && !IsBetweenReadings(one, place)).ToList();
        var before = said.Except(now).Concat(place.EarlierReadings.Select(reading => Earlier(reading, check))).OrderBy(one => one.Sequence).ToList();
        return before.Count == 0 ? Sentence(PlainFirst(now)) : $"{Sentence(PlainFirst(now))} Before that: {Joined(before)}.".TrimStart();
    }

    // What was adjusted after one reading and before the next stands between them.
    private static bool IsBetweenReadings(Said one, PlaceView place) =>
        one.Statement is Done && place.EarlierReadings.Any(earlier => earlier.Sequence < one.Sequence) && one.Sequence < place.Reading!.Sequence;

    private static Said Earlier(Recorded<ReadingDecided> reading, Check check) => new(
        reading.Sequence,
        null,
        reading.Body.Conformity is { Decision: var decision }
            ? $"{RecordWords.Value(reading.Body, check)} ({decision.Words()})"
            : RecordWords.Value(reading.Body, check));

    private static List<Said> InOrder(PlaceView place) =>
    [
        .. place.Observations.Select(one => new Said(one.Sequence, new Observed(null, one.Body.Condition, one.Body.Negated), RecordWords.Seen(one.Body)))
            .Concat(place.Actions.Select(one => new Said(one.Sequence, new Done(null, one.Body.Action), one.Body.Action)))
            .OrderBy(one => one.Sequence),
    ];

    // "Good" noted twice is no change; noted again after something was done, it is.
    private static List<Said> WithoutEchoes(List<Said> said)
    {
        var kept = new List<Said>();
        foreach (var one in said)
        {
            var last = one.Statement is Observed seen
                ? kept.FindLast(other => other.Statement is Done || other.Statement is Observed before && before.Condition == seen.Condition)
                : kept.LastOrDefault();
            if (last?.Statement != one.Statement)
            {
                kept.Add(one);
            }
        }

        return kept;
    }

    // What is there before what is not: "present, not weak".
    private static List<Said> PlainFirst(List<Said> now) =>
        [.. now.OrderBy(one => one.Statement switch { Observed { Negated: false } => 0, Observed => 1, _ => 2 })];

    private static string Sentence(List<Said> said)
    {
        var words = Joined(said);
        return words.Length == 0 ? "" : $"{char.ToUpperInvariant(words[0])}{words[1..]}.";
    }

    // "Burnt, cracked, then replaced": what was done parts what was seen before it from what was seen after.
    private static string Joined(List<Said> said) => string.Concat(said.Select((one, at) =>
        at == 0 ? one.Words : one.Statement is not Done && said[at - 1].Statement is not Done ? $", {one.Words}" : $", then {one.Words}"));
}

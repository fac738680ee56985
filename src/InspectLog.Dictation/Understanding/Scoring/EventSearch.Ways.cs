using InspectLog.Dictation.Understanding.Events;

namespace InspectLog.Dictation.Understanding.Scoring;

/// <content>Which ways are gone.</content>
internal sealed partial class EventSearch
{
    // A place makes a way no likelier: once enough are likelier than the ways left, these need no places.
    private List<ReadingState> Placed(List<Way> ways, NoteEvent found)
    {
        var next = new List<ReadingState>();
        var best = new PriorityQueue<int, double>(MostStates + 1);
        var counted = 0;
        foreach (var (state, claim) in goal is null ? ways.OrderByDescending(way => way.State.LogProbability) : ways.AsEnumerable())
        {
            if (goal is null && best.Count == MostStates && best.TryPeek(out _, out var least) && least >= state.LogProbability)
            {
                break;
            }

            if (claim is null)
            {
                next.Add(state);
            }
            else
            {
                Place(state, found, claim, next);
            }

            for (; counted < next.Count; counted++)
            {
                best.Enqueue(0, next[counted].LogProbability);
                if (best.Count > MostStates)
                {
                    best.Dequeue();
                }
            }
        }

        return next;
    }

    // The best of each set of findings, so that ways to the goal are not crowded out.
    private static List<ReadingState> Varied(List<ReadingState> states)
    {
        if (states.Count <= MostStatesToGoal)
        {
            return states;
        }

        var seen = new Dictionary<string, int>(StringComparer.Ordinal);
        var kept = new List<ReadingState>();
        foreach (var state in states)
        {
            var key = string.Join(';', Found.All(state.Found).Select(found => $"{found.Claim}@{found.Places}").Order(StringComparer.Ordinal)) + state.Skips?.First;
            seen[key] = seen.GetValueOrDefault(key) + 1;
            if (seen[key] <= 2)
            {
                kept.Add(state);
            }
        }

        return kept.Count > MostStatesToGoal ? kept[..MostStatesToGoal] : kept;
    }
}

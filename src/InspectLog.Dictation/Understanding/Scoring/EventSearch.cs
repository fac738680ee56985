using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Events;

namespace InspectLog.Dictation.Understanding.Scoring;

/// <summary>Goes through the events of a note from left to right and keeps the likeliest readings.</summary>
internal sealed partial class EventSearch(NoteScene scene, WeightTable weights, bool learns, IGoal? goal)
{
    private const int MostStates = 12;
    private const int MostStatesToGoal = 32;
    private const int MostClaims = 5;
    private const double ClaimsWithin = 7;
    private const int MostPlaces = 4;
    private const double PlacesWithin = 6;

    private readonly EventOptions _options = new(scene);
    private readonly PlaceOptions _places = new(scene);
    private readonly FeatureList _chain = new();

    // A way to go on: a state, what it says of the event (null for nothing), and where that is still open.
    private readonly record struct Way(ReadingState State, Claim? Claim);

    public List<ReadingState> From(ReadingState start)
    {
        List<ReadingState> states = [start];
        foreach (var found in scene.Events)
        {
            var options = _options.Of(found);
            var scores = options.ConvertAll(option => weights.Sum(option.Shared) + weights.Sum(option.Own));
            var ways = new List<Way>();
            foreach (var state in states)
            {
                if (state.Skips == found)
                {
                    ways.Add(new(state with { Skips = null }, null));
                }
                else
                {
                    Step(state, found, options, scores, ways);
                }
            }

            var next = Placed(ways, found);
            next.Sort((a, b) => b.LogProbability.CompareTo(a.LogProbability));
            states = goal is not null ? Varied(next) : next.Count > MostStates ? next[..MostStates] : next;
        }

        return states;
    }

    private void Step(ReadingState state, NoteEvent found, List<EventOption> options, List<double> scores, List<Way> ways)
    {
        var open = new List<(EventOption Option, uint[] Chain, double Score)>(options.Count);
        for (var at = 0; at < options.Count; at++)
        {
            if (options[at].Kind == OptionKind.Drop)
            {
                open.Add((options[at], [], scores[at]));
            }
            else if (options[at].Claim is { } claim)
            {
                var (chain, score) = Chain(found, claim, state.Found);
                open.Add((options[at], chain, scores[at] + score));
            }
            else
            {
                AddDependent(state, found, options[at].Kind, open);
            }
        }

        if (open.Count == 1)
        {
            ways.Add(new(state, null));
            return;
        }

        var logs = Probabilities.LogOf([.. open.Select(one => one.Score)]);
        var order = Enumerable.Range(0, open.Count).OrderByDescending(at => logs[at]).ToList();
        var choice = learns ? new Choice([.. open.Select(one => new[] { one.Option.Shared, one.Option.Own, one.Chain })]) : null;
        var taken = 0;
        foreach (var at in order)
        {
            var option = open[at].Option;
            if (goal is not null && option.Claim is { } meant && !goal.Allows(meant))
            {
                continue;
            }

            if (goal is null && (++taken > MostClaims || logs[at] < logs[order[0]] - ClaimsWithin))
            {
                break;
            }

            var kind = option.Kind == OptionKind.Drop ? ChoiceKind.Drop : ChoiceKind.Keep;
            var decision = new Decision(kind, (int)found.Kind, logs[at], state.Last) { Choice = choice, Chosen = at, At = found.First, Keys = [option.Shared, option.Own, open[at].Chain] };
            var skips = option.Kind == OptionKind.Bracket ? scene.Events.Find(other => other.Kind == EventKind.Value && other.First >= found.Next) : state.Skips;
            ways.Add(new(new(state.LogProbability + logs[at], state.Found, skips, decision), option.Claim));
        }
    }

    private (uint[] Keys, double Score) Chain(NoteEvent found, Claim claim, Found? last)
    {
        _chain.Scope = (int)found.Kind;
        ChainFeatures.Add(scene, found, claim, last, _chain);
        var keys = _chain.Take();
        return (keys, weights.Sum(keys));
    }

    private void Place(ReadingState state, NoteEvent found, Claim claim, List<ReadingState> next)
    {
        if (!scene.Checks[claim.Check].PerPlace)
        {
            if (goal is null || goal.Allows(claim, 0))
            {
                next.Add(state with { Found = new(claim, 0, found, state.Found) });
            }

            return;
        }

        var options = _places.Of(found, claim, state.Found);
        var logs = Probabilities.LogOf([.. options.Select(option => weights.Sum(option.Features))]);
        var order = Enumerable.Range(0, options.Count).OrderByDescending(at => logs[at]).ToList();
        var choice = learns ? new Choice([.. options.Select(option => new[] { option.Features })]) : null;
        var taken = 0;
        foreach (var at in order)
        {
            if (goal is not null && !goal.Allows(claim, options[at].Places))
            {
                continue;
            }

            if (goal is null && (++taken > MostPlaces || logs[at] < logs[order[0]] - PlacesWithin))
            {
                break;
            }

            var decision = new Decision(ChoiceKind.Places, (int)found.Kind, logs[at], state.Last) { Choice = choice, Chosen = at, At = found.First, Keys = [options[at].Features] };
            next.Add(state with { LogProbability = state.LogProbability + logs[at], Found = new(claim, options[at].Places, found, state.Found), Last = decision });
        }
    }

    // What depends on what was found last: the same of another place, or of another part.
    private void AddDependent(ReadingState state, NoteEvent found, OptionKind kind, List<(EventOption Option, uint[] Chain, double Score)> open)
    {
        if (state.Found is not { } last)
        {
            return;
        }

        foreach (var (claim, features) in kind == OptionKind.Copy ? Dependent.Copies(scene, found, last) : Dependent.Repeats(scene, found, last))
        {
            var (chain, score) = kind == OptionKind.Copy ? Chain(found, claim, last) : ([], 0);
            open.Add((new(OptionKind.Keep, claim, [], features), chain, weights.Sum(features) + score));
        }
    }
}

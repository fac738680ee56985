using InspectLog.Dictation.Understanding.Events;
using InspectLog.Dictation.Understanding.Lattice;

namespace InspectLog.Dictation.Understanding.Scoring;

/// <summary>A finished reading of a note.</summary>
internal sealed record Interpretation(NoteScene Scene, ReadingState State)
{
    public Found? Found => State.Found;
}

/// <summary>Searches the likeliest readings of a note: first of its numbers, then event by event what is said, and where.</summary>
/// <param name="weights">What each feature weighs.</param>
/// <param name="learns">Whether all that was open at each choice is kept, to learn from.</param>
internal sealed class Decoder(WeightTable weights, bool learns = false)
{
    private const int MostNumberWays = 8;
    private const double NumberWaysWithin = 7;
    private const int MostReadings = 60;

    /// <summary>The readings, likeliest first.</summary>
    /// <param name="note">The note.</param>
    /// <param name="goal">What it means, where only ways to that are searched.</param>
    public List<Interpretation> Read(Note note, IGoal? goal = null)
    {
        var found = new List<Interpretation>();
        foreach (var (segments, state) in Numbers(note, goal))
        {
            var scene = new NoteScene(note, segments);
            var states = new EventSearch(scene, weights, learns, goal).From(state);
            found.AddRange(states.Where(one => goal is null || goal.IsMet(one.Found)).Select(one => new Interpretation(scene, one)));
        }

        found.Sort((a, b) => b.State.LogProbability.CompareTo(a.State.LogProbability));
        return found.Count > MostReadings ? found[..MostReadings] : found;
    }

    private IEnumerable<(NumberSegment[] Segments, ReadingState State)> Numbers(Note note, IGoal? goal)
    {
        var features = new RunFeatures(note);
        List<(List<NumberSegment> Segments, ReadingState State, double Bonus)> beam = [([], new(0, null, null, null), 0)];
        for (var run = 0; run < note.Runs.Count; run++)
        {
            var ways = new Dictionary<int, (Choice Choice, double[] Log)>();
            var next = new List<(List<NumberSegment> Segments, ReadingState State, double Bonus)>();
            foreach (var (segments, state, bonus) in beam)
            {
                var before = segments.Count == 0 ? 3 : (int)segments[^1].Role;
                if (!ways.TryGetValue(before, out var way))
                {
                    var options = note.Runs[run].Options.Select(option => new[] { features.Of(run, option, before) }).ToArray();
                    ways[before] = way = (new(options), Softmax(options));
                }

                for (var option = 0; option < way.Log.Length; option++)
                {
                    var numbers = note.Runs[run].Options[option];
                    if (goal is not null && !goal.Allows(note, numbers))
                    {
                        continue;
                    }

                    // On the way to a goal, ways that make use of the numbers come first.
                    var used = goal is null ? 0 : numbers.Count(number => number.Role != NumberRole.Other);
                    var decision = new Decision(ChoiceKind.Numbers, -1, way.Log[option], state.Last) { Choice = learns ? way.Choice : null, Chosen = option, Keys = way.Choice.Options[option] };
                    next.Add(([.. segments, .. numbers], new(state.LogProbability + way.Log[option], null, null, decision), bonus + used));
                }
            }

            next.Sort((a, b) => (b.State.LogProbability + b.Bonus).CompareTo(a.State.LogProbability + a.Bonus));
            var most = goal is null ? MostNumberWays : MostNumberWays * 2;
            beam = next.Count > most ? next[..most] : next;
        }

        var least = goal is null ? beam.Select(one => one.State.LogProbability).DefaultIfEmpty(0).Max() - NumberWaysWithin : double.NegativeInfinity;
        return beam.Where(one => one.State.LogProbability >= least).Select(one => (one.Segments.ToArray(), one.State));
    }

    private double[] Softmax(uint[][][] options) => Probabilities.LogOf([.. options.Select(option => option.Sum(keys => weights.Sum(keys)))]);
}

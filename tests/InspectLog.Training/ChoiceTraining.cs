using System.Diagnostics;
using InspectLog.Dictation.Understanding.Scoring;

namespace InspectLog.Training;

/// <summary>Learns the choices on the way to a reading. How the words of a note come to their findings is not given: the search
/// finds the likeliest way there, then every choice on it is a lesson; so on for some rounds.</summary>
internal sealed class ChoiceTraining(TrainingSet set, double strength)
{
    private const int Least = 2;
    private const int Passes = 6;
    private const int Rounds = 12;

    private Lesson[]?[] _lessons = [];

    /// <summary>Finds the way to what each note means.</summary>
    /// <param name="weights">What the search goes by.</param>
    /// <param name="every">One note of so many is taken.</param>
    /// <param name="log">Where to say how it goes.</param>
    public void Align(IReadOnlyDictionary<uint, double> weights, int every, TextWriter log)
    {
        var clock = Stopwatch.StartNew();
        var decoder = new Decoder(ModelTables.Of(weights), learns: true);
        _lessons = new Lesson[set.Count][];
        Parallel.For(0, (set.Count + every - 1) / every, Workers.Options, one =>
        {
            var at = one * every;
            var ways = decoder.Read(set.Notes[at], new TrainingGoal(set.Meant[at]));
            _lessons[at] = ways.Count > 0 ? [.. Lessons(ways[0].State)] : null;
        });
        log.WriteLine($"ways to what is meant: {(double)_lessons.Count(one => one is not null) * every / set.Count:P1} ({clock.Elapsed.TotalSeconds:0} s)");
    }

    /// <summary>The ids of notes to whose meaning no way leads.</summary>
    public IEnumerable<int> Unreached => Enumerable.Range(0, set.Count).Where(at => _lessons[at] is null);

    /// <summary>Learns from all notes, or from those of all parts but one.</summary>
    public Dictionary<uint, double> Fit(int? without, IReadOnlyDictionary<uint, double>? begin, TextWriter log)
    {
        var clock = Stopwatch.StartNew();
        var groups = _lessons.Where((lessons, at) => lessons is not null && set.Parts[at] != without).Select(lessons => lessons!).ToList();
        var model = new LogLinear(groups, Least, strength);
        var weights = model.Fit(Rounds, begin, Passes);
        log.WriteLine($"choices: {model.Lessons} lessons, {model.Features} features ({clock.Elapsed.TotalSeconds:0} s)");
        return weights;
    }

    public void Forget() => _lessons = [];

    private static IEnumerable<Lesson> Lessons(ReadingState state)
    {
        for (var decision = state.Last; decision is not null; decision = decision.Before)
        {
            if (decision.Choice is { Options.Count: > 1 } choice)
            {
                var right = new bool[choice.Options.Count];
                right[decision.Chosen] = true;
                yield return new([.. choice.Options.Select(option => option.SelectMany(keys => keys).Select(key => (key, 1f)).ToArray())], right);
            }
        }
    }
}

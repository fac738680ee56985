using System.Diagnostics;
using InspectLog.Dictation.Understanding.Scoring;

namespace InspectLog.Training;

/// <summary>Learns what speaks for a reading of a whole note: of the likeliest, which are right. The readings are those of a
/// search that has not learned from the note.</summary>
internal sealed class WholeTraining
{
    private const int Least = 5;
    private const double Strength = 0.3;
    private const double StrengthOfChoices = 3;
    private const int MostReadings = 60;
    private const int Rounds = 30;
    private const int Passes = 4;

    private readonly TrainingSet _set;
    private readonly Lesson?[] _lessons;
    private readonly HashSet<uint> _choices;
    private readonly TextWriter _log;

    /// <param name="set">The notes.</param>
    /// <param name="readings">How each may be read by what the other parts taught.</param>
    /// <param name="choices">The features of choices, which are held more strongly than those of wholes.</param>
    /// <param name="log">Where to say how it goes.</param>
    public WholeTraining(TrainingSet set, IReadOnlyList<Interpretation>[] readings, IEnumerable<uint> choices, TextWriter log)
    {
        (_set, _choices, _log) = (set, [.. choices], log);
        var clock = Stopwatch.StartNew();
        _lessons = new Lesson?[set.Count];
        Parallel.For(0, set.Count, Workers.Options, at => _lessons[at] = LessonOf(at, readings[at]));
        log.WriteLine($"right among the likeliest: {(double)_lessons.Count(one => one is not null) / set.Count:P1} ({clock.Elapsed.TotalSeconds:0} s)");
    }

    /// <summary>The weights by all notes, and by those of all parts but each.</summary>
    public (Dictionary<uint, double> All, Dictionary<uint, double>[] Folds) Train()
    {
        var clock = Stopwatch.StartNew();
        var all = Fit(null);
        var folds = Enumerable.Range(0, TrainingSet.Folds).Select(fold => Fit(fold)).ToArray();

        _log.WriteLine($"wholes: {all.Count} features ({clock.Elapsed.TotalSeconds:0} s)");

        // The mean over the parts is steadier than the weights of one fit.
        var mean = all.Keys.ToDictionary(key => key, key => (all[key] + folds.Sum(fold => fold.GetValueOrDefault(key))) / (folds.Length + 1));
        return (mean, folds);
    }

    private Dictionary<uint, double> Fit(int? without)
    {
        var groups = _lessons.Where((lesson, at) => lesson is { Options.Count: > 1 } && _set.Parts[at] != without).Select(lesson => new[] { lesson! }).ToList();
        var prior = new Dictionary<uint, double> { [FeatureList.Key(0, Feature.WholeLog)] = 1 };
        return new LogLinear(groups, Least, key => _choices.Contains(key) ? StrengthOfChoices : Strength, prior).Fit(Rounds, null, Passes);
    }

    private Lesson? LessonOf(int at, IReadOnlyList<Interpretation> readings)
    {
        var goal = new TrainingGoal(_set.Meant[at]);
        var right = readings.Select(reading => goal.IsMet(reading.Found)).ToArray();
        if (!right.Contains(true))
        {
            return null;
        }

        var kept = Enumerable.Range(0, readings.Count).Where(one => one < MostReadings || right[one]).ToList();
        var options = kept.ConvertAll(one => Merged(WholeFeatures.Of(readings[one]), Chosen(readings[one].State)));
        return new(Different(options), [.. kept.Select(one => right[one])]);
    }

    private static IEnumerable<uint> Chosen(ReadingState state)
    {
        for (var decision = state.Last; decision is not null; decision = decision.Before)
        {
            foreach (var key in decision.Keys.SelectMany(keys => keys))
            {
                yield return key;
            }
        }
    }

    // What all have in common tells nothing.
    private static List<(uint Key, float Value)[]> Different(List<(uint Key, float Value)[]> options)
    {
        var counts = new Dictionary<(uint, float), int>();
        foreach (var feature in options.SelectMany(option => option))
        {
            counts[feature] = counts.GetValueOrDefault(feature) + 1;
        }

        return options.ConvertAll(option => option.Where(feature => counts[feature] < options.Count).ToArray());
    }

    internal static (uint Key, float Value)[] Merged(RealFeatures features, IEnumerable<uint>? more = null)
    {
        var sums = new SortedDictionary<uint, float>();
        foreach (var (key, value) in features.All)
        {
            sums[key] = sums.GetValueOrDefault(key) + value;
        }

        foreach (var key in more ?? [])
        {
            sums[key] = sums.GetValueOrDefault(key) + 1;
        }

        return [.. sums.Select(sum => (sum.Key, sum.Value))];
    }
}

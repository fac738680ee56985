using InspectLog.Dictation.Understanding.Scoring;

namespace InspectLog.Training;

/// <summary>One choice to learn from: the features of its options, and which of them are right.</summary>
/// <param name="Options">Keys and sizes of each option's features.</param>
/// <param name="Right">Which options are right.</param>
/// <param name="Weight">How much it counts.</param>
internal sealed record Lesson(IReadOnlyList<(uint Key, float Value)[]> Options, bool[] Right, double Weight = 1);

/// <summary>Fits the weights of log-linear choices: the most likely weights under a normal prior, by limited-memory BFGS. The
/// sums run in one order whatever the number of processors, so that the same lessons give the same weights.</summary>
internal sealed partial class LogLinear
{
    private const int Blocks = 16;

    private readonly List<uint> _keys = [];
    private readonly int[] _lessonStart;
    private readonly int[] _optionStart;
    private readonly int[] _index;
    private readonly float[] _value;
    private readonly bool[] _right;
    private readonly double[] _weight;
    private readonly double[] _prior;
    private readonly double[] _strength;

    /// <param name="groups">Lessons, those of one note together.</param>
    /// <param name="least">In how many notes a feature has to stand to be learned.</param>
    /// <param name="strength">How strongly weights are held to their prior.</param>
    /// <param name="prior">What a feature weighs where nothing is learned of it.</param>
    public LogLinear(IReadOnlyList<IReadOnlyList<Lesson>> groups, int least, double strength, IReadOnlyDictionary<uint, double>? prior = null)
        : this(groups, least, _ => strength, prior)
    {
    }

    /// <param name="groups">Lessons, those of one note together.</param>
    /// <param name="least">In how many notes a feature has to stand to be learned.</param>
    /// <param name="strength">How strongly the weight of a feature is held to its prior.</param>
    /// <param name="prior">What a feature weighs where nothing is learned of it.</param>
    public LogLinear(IReadOnlyList<IReadOnlyList<Lesson>> groups, int least, Func<uint, double> strength, IReadOnlyDictionary<uint, double>? prior = null)
    {
        var index = Index(groups, least);
        var lessons = groups.SelectMany(group => group).ToList();
        _lessonStart = new int[lessons.Count + 1];
        _weight = [.. lessons.Select(lesson => lesson.Weight)];
        var (optionStart, features, values, right) = (new List<int> { 0 }, new List<int>(), new List<float>(), new List<bool>());
        for (var at = 0; at < lessons.Count; at++)
        {
            for (var option = 0; option < lessons[at].Options.Count; option++)
            {
                foreach (var (key, value) in lessons[at].Options[option])
                {
                    if (index.TryGetValue(key, out var feature))
                    {
                        features.Add(feature);
                        values.Add(value);
                    }
                }

                optionStart.Add(features.Count);
                right.Add(lessons[at].Right[option]);
            }

            _lessonStart[at + 1] = right.Count;
        }

        (_optionStart, _index, _value, _right) = ([.. optionStart], [.. features], [.. values], [.. right]);
        _prior = [.. _keys.Select(key => prior?.GetValueOrDefault(key) ?? 0)];
        _strength = [.. _keys.Select(strength)];
    }

    public int Features => _keys.Count;

    public int Lessons => _weight.Length;

    /// <summary>The weights, from where they are begun.</summary>
    /// <param name="rounds">How many rounds at most over all lessons at once.</param>
    /// <param name="begin">Where to begin; null for the prior.</param>
    /// <param name="passes">How many passes lesson by lesson come first.</param>
    public Dictionary<uint, double> Fit(int rounds, IReadOnlyDictionary<uint, double>? begin = null, int passes = 0)
    {
        var start = _keys.Select((key, at) => begin is not null && begin.TryGetValue(key, out var weight) ? weight : _prior[at]).ToArray();
        Pass(start, passes);
        var weights = new QuasiNewton(Loss).Minimise(start, rounds);
        var learned = new Dictionary<uint, double>();
        for (var at = 0; at < weights.Length; at++)
        {
            learned[_keys[at]] = weights[at];
        }

        return learned;
    }

    private Dictionary<uint, int> Index(IReadOnlyList<IReadOnlyList<Lesson>> groups, int least)
    {
        var counts = new Dictionary<uint, int>();
        foreach (var group in groups)
        {
            var seen = new HashSet<uint>();
            foreach (var lesson in group)
            {
                foreach (var option in lesson.Options)
                {
                    foreach (var (key, _) in option)
                    {
                        if (seen.Add(key))
                        {
                            counts[key] = counts.GetValueOrDefault(key) + 1;
                        }
                    }
                }
            }
        }

        var index = new Dictionary<uint, int>();
        foreach (var (key, _) in counts.Where(count => count.Value >= least))
        {
            index[key] = _keys.Count;
            _keys.Add(key);
        }

        return index;
    }

    private double Loss(double[] weights, double[] gradient)
    {
        var parts = new (double Loss, double[] Gradient)[Blocks];
        Parallel.For(0, Blocks, Workers.Options, block => parts[block] = Block(weights, block));
        var loss = 0.0;
        for (var at = 0; at < weights.Length; at++)
        {
            var off = weights[at] - _prior[at];
            loss += 0.5 * _strength[at] * off * off;
            gradient[at] = _strength[at] * off;
        }

        foreach (var (part, slope) in parts)
        {
            loss += part;
            for (var at = 0; at < gradient.Length; at++)
            {
                gradient[at] += slope[at];
            }
        }

        return loss;
    }

    private (double Loss, double[] Gradient) Block(double[] weights, int block)
    {
        var gradient = new double[weights.Length];
        var loss = 0.0;
        var (first, next) = ((int)((long)Lessons * block / Blocks), (int)((long)Lessons * (block + 1) / Blocks));
        for (var lesson = first; lesson < next; lesson++)
        {
            loss += Lesson(weights, gradient, lesson);
        }

        return (loss, gradient);
    }

    private double Lesson(double[] weights, double[] gradient, int lesson)
    {
        var (first, next) = (_lessonStart[lesson], _lessonStart[lesson + 1]);
        Span<double> scores = next - first <= 256 ? stackalloc double[next - first] : new double[next - first];
        var loss = Slopes(weights, lesson, scores);
        for (var option = first; option < next; option++)
        {
            var slope = scores[option - first];
            for (var at = _optionStart[option]; slope != 0 && at < _optionStart[option + 1]; at++)
            {
                gradient[_index[at]] += slope * _value[at];
            }
        }

        return loss;
    }

    // How the loss of a lesson grows with the score of each option, and the loss.
    private double Slopes(double[] weights, int lesson, Span<double> scores)
    {
        var (first, next) = (_lessonStart[lesson], _lessonStart[lesson + 1]);
        var most = double.NegativeInfinity;
        for (var option = first; option < next; option++)
        {
            var score = 0.0;
            for (var at = _optionStart[option]; at < _optionStart[option + 1]; at++)
            {
                score += weights[_index[at]] * _value[at];
            }

            scores[option - first] = score;
            most = Math.Max(most, score);
        }

        var (all, right) = (0.0, 1e-300);
        for (var option = first; option < next; option++)
        {
            var likely = Probabilities.Exp(scores[option - first] - most);
            scores[option - first] = likely;
            all += likely;
            right += _right[option] ? likely : 0;
        }

        for (var option = first; option < next; option++)
        {
            scores[option - first] = _weight[lesson] * (scores[option - first] / all - (_right[option] ? scores[option - first] / right : 0));
        }

        return _weight[lesson] * (Probabilities.Log(all) - Probabilities.Log(right));
    }
}

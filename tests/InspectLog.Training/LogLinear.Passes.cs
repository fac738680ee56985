namespace InspectLog.Training;

/// <content>Passes lesson by lesson, which come near the least in a fraction of the time; rounds over all lessons then finish.
/// Each weight has a step of its own that shrinks with what it was moved (AdaGrad; Duchi, Hazan and Singer, 2011).</content>
internal sealed partial class LogLinear
{
    private const double Step = 0.15;
    private const long Stride = 1_000_003; // a prime, so that each pass meets every lesson once

    private void Pass(double[] weights, int passes)
    {
        if (passes == 0)
        {
            return;
        }

        var moved = new double[weights.Length];
        var held = Held();
        for (var at = 0L; at < (long)passes * Lessons; at++)
        {
            Learn(weights, moved, held, (int)(at * Stride % Lessons));
        }
    }

    private void Learn(double[] weights, double[] moved, double[] held, int lesson)
    {
        var (first, next) = (_lessonStart[lesson], _lessonStart[lesson + 1]);
        Span<double> slopes = next - first <= 256 ? stackalloc double[next - first] : new double[next - first];
        Slopes(weights, lesson, slopes);
        for (var option = first; option < next; option++)
        {
            if (Math.Abs(slopes[option - first]) < 1e-6)
            {
                continue;
            }

            for (var at = _optionStart[option]; at < _optionStart[option + 1]; at++)
            {
                var feature = _index[at];
                var slope = slopes[option - first] * _value[at] + held[feature] * (weights[feature] - _prior[feature]);
                moved[feature] += slope * slope;
                weights[feature] -= Step * slope / Math.Sqrt(moved[feature] + 1e-8);
            }
        }
    }

    // The share of the prior that falls to each time a feature is met.
    private double[] Held()
    {
        var met = new int[_strength.Length];
        foreach (var feature in _index)
        {
            met[feature]++;
        }

        return [.. _strength.Select((strength, at) => strength / Math.Max(1, met[at]))];
    }
}

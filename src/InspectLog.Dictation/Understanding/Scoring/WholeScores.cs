namespace InspectLog.Dictation.Understanding.Scoring;

/// <summary>How much speaks for whole readings of one note: what is seen of them as a whole, and what the choices on the way weigh
/// once more where only whole readings are compared.</summary>
internal sealed class WholeScores(WeightTable weights)
{
    // Readings have most of their choices in common.
    private readonly Dictionary<Decision, double> _sums = new(ReferenceEqualityComparer.Instance);

    public double Of(Interpretation reading) => weights.Sum(WholeFeatures.Of(reading)) + Of(reading.State.Last);

    private double Of(Decision? last)
    {
        var open = new Stack<Decision>();
        var sum = 0.0;
        for (var at = last; at is not null; at = at.Before)
        {
            if (_sums.TryGetValue(at, out sum))
            {
                break;
            }

            open.Push(at);
        }

        foreach (var decision in open)
        {
            foreach (var keys in decision.Keys)
            {
                sum += weights.Sum(keys);
            }

            _sums[decision] = sum;
        }

        return sum;
    }
}

using System.Numerics;

namespace InspectLog.Dictation.Understanding.Scoring;

/// <summary>Weights by feature key; a feature without one weighs nothing.</summary>
internal sealed class WeightTable
{
    private readonly uint[] _keys;
    private readonly float[] _weights;
    private readonly uint _mask;

    public WeightTable(IReadOnlyCollection<KeyValuePair<uint, float>> weights)
    {
        var size = (int)BitOperations.RoundUpToPowerOf2((uint)Math.Max(16, weights.Count * 3));
        (_keys, _weights, _mask) = (new uint[size], new float[size], (uint)size - 1);
        foreach (var (key, weight) in weights)
        {
            var at = key & _mask;
            while (_weights[at] != 0)
            {
                at = (at + 1) & _mask;
            }

            (_keys[at], _weights[at]) = (key, weight);
        }

        Count = weights.Count;
    }

    public int Count { get; }

    public float this[uint key]
    {
        get
        {
            for (var at = key & _mask; _weights[at] != 0; at = (at + 1) & _mask)
            {
                if (_keys[at] == key)
                {
                    return _weights[at];
                }
            }

            return 0;
        }
    }

    public double Sum(ReadOnlySpan<uint> keys)
    {
        var sum = 0.0;
        foreach (var key in keys)
        {
            sum += this[key];
        }

        return sum;
    }

    public double Sum(RealFeatures features)
    {
        var sum = 0.0;
        foreach (var (key, value) in features.All)
        {
            sum += this[key] * value;
        }

        return sum;
    }
}

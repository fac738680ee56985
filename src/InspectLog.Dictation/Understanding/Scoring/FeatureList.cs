using System.Numerics;

namespace InspectLog.Dictation.Understanding.Scoring;

/// <summary>Collects the features of one choice. A feature is a kind and some numbers, mixed to one key; keys of different
/// features are as good as never the same among those that have a weight.</summary>
internal sealed class FeatureList
{
    private uint[] _keys = new uint[64];
    private int _count;

    /// <summary>Mixed into every key that is added, so that the same feature weighs differently for other sorts of choice.</summary>
    public int Scope { get; set; }

    public void Add(Feature feature, int a = 0, int b = 0, int c = 0, int d = 0, int e = 0)
    {
        if (_count == _keys.Length)
        {
            Array.Resize(ref _keys, _count * 2);
        }

        _keys[_count++] = Key(Scope, feature, a, b, c, d, e);
    }

    public void AddKeys(ReadOnlySpan<uint> keys)
    {
        while (_count + keys.Length > _keys.Length)
        {
            Array.Resize(ref _keys, _keys.Length * 2);
        }

        keys.CopyTo(_keys.AsSpan(_count));
        _count += keys.Length;
    }

    /// <summary>The keys collected so far.</summary>
    public ReadOnlySpan<uint> Keys => _keys.AsSpan(0, _count);

    /// <summary>Forgets the keys collected so far.</summary>
    public void Clear() => _count = 0;

    /// <summary>The keys collected since the last time.</summary>
    public uint[] Take()
    {
        var keys = _keys.AsSpan(0, _count).ToArray();
        _count = 0;
        return keys;
    }

    public static uint Key(int scope, Feature feature, int a = 0, int b = 0, int c = 0, int d = 0, int e = 0)
    {
        var hash = Step(Step(Step(Step(Step(Step(0x9747b28cu, scope * 4096 + (int)feature), a), b), c), d), e);
        hash ^= hash >> 16;
        hash *= 0x85ebca6bu;
        hash ^= hash >> 13;
        hash *= 0xc2b2ae35u;
        return hash ^ (hash >> 16);
    }

    private static uint Step(uint hash, int value) => BitOperations.RotateLeft(hash ^ (BitOperations.RotateLeft((uint)value * 0xcc9e2d51u, 15) * 0x1b873593u), 13) * 5 + 0xe6546b64u;
}

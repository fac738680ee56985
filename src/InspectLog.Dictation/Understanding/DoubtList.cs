using System.Collections;
using System.Runtime.CompilerServices;
using InspectLog.Doubts;

namespace InspectLog.Dictation.Understanding;

/// <summary>What there is to doubt about one thing, in the order found and each once; none where nothing is. Lists of equal
/// doubts are equal.</summary>
[CollectionBuilder(typeof(DoubtList), nameof(Of))]
public readonly struct DoubtList : IReadOnlyList<Doubt>, IEquatable<DoubtList>
{
    private readonly Doubt[]? _doubts;

    private DoubtList(Doubt[] doubts) => _doubts = doubts.Length == 0 ? null : doubts;

    /// <inheritdoc/>
    public int Count => Doubts.Length;

    /// <summary>Whether nothing is in doubt.</summary>
    public bool IsEmpty => _doubts is null;

    private Doubt[] Doubts => _doubts ?? [];

    /// <inheritdoc/>
    public Doubt this[int index] => Doubts[index];

    /// <summary>One doubt, or none.</summary>
    public static implicit operator DoubtList(Doubt? doubt) => FromDoubt(doubt);

    /// <summary>Whether both hold the same doubts in the same order.</summary>
    public static bool operator ==(DoubtList left, DoubtList right) => left.Equals(right);

    /// <summary>Whether they differ.</summary>
    public static bool operator !=(DoubtList left, DoubtList right) => !left.Equals(right);

    /// <summary>One doubt, or none.</summary>
    public static DoubtList FromDoubt(Doubt? doubt) => doubt is null ? default : new([doubt]);

    /// <summary>Several doubts.</summary>
    public static DoubtList Of(ReadOnlySpan<Doubt> doubts) => new([.. doubts.ToArray().Distinct()]);

    /// <summary>The doubts of several lists together.</summary>
    public static DoubtList Join(params IEnumerable<DoubtList> lists) => new([.. lists.SelectMany(list => list.Doubts).Distinct()]);

    /// <inheritdoc/>
    public IEnumerator<Doubt> GetEnumerator() => Doubts.AsEnumerable().GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <inheritdoc/>
    public bool Equals(DoubtList other) => Doubts.SequenceEqual(other.Doubts);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is DoubtList other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => Doubts.Aggregate(0, HashCode.Combine);
}

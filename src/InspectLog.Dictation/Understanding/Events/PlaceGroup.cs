using InspectLog.Dictation.Understanding.Language;
using InspectLog.Dictation.Understanding.Lattice;

namespace InspectLog.Dictation.Understanding.Events;

/// <summary>A set of places, one bit each.</summary>
internal static class PlaceSets
{
    public const int Most = 62;

    public static long One(int place) => 1L << (place - 1);

    public static long All(int places) => (1L << places) - 1;

    public static long Between(int a, int b, int places)
    {
        var set = 0L;
        for (var place = Math.Max(1, Math.Min(a, b)); place <= Math.Min(places, Math.Max(a, b)); place++)
        {
            set |= One(place);
        }

        return set;
    }

    public static int Count(long set) => System.Numerics.BitOperations.PopCount((ulong)set);

    public static IEnumerable<int> Of(long set)
    {
        for (var place = 1; set != 0; place++, set >>= 1)
        {
            if ((set & 1) != 0)
            {
                yield return place;
            }
        }
    }
}

/// <summary>One number or range of a group, and the words that tie it to the one before.</summary>
internal sealed record PlaceAtom(int First, int Next, long Places, int Tie);

/// <summary>Places named together.</summary>
internal sealed record PlaceGroup(int First, int Next, long Places, Quantifier Kind)
{
    /// <summary>Whether it is taken out of what was named before: "all but three".</summary>
    public bool Excepted { get; init; }

    /// <summary>Whether the place goes by a name.</summary>
    public bool IsNamed { get; init; }

    /// <summary>How many places it speaks of, where which they are depends on what was found before; else 0.</summary>
    public int Count { get; init; }

    /// <summary>The part it stands beside; null where it stands alone.</summary>
    public Phrase<Naming>? Part { get; init; }

    /// <summary>The places in the order they were said.</summary>
    public IReadOnlyList<int> Sequence { get; init; } = [];

    /// <summary>The numbers one by one, where there are several.</summary>
    public IReadOnlyList<PlaceAtom> Atoms { get; init; } = [];

    /// <summary>Whether it names places without their numbers.</summary>
    public bool IsQuantified => Kind != Quantifier.Numbers;

    public bool IsOf(int check) => Part is not null && Part.Meanings.Any(naming => naming.Check == check);
}

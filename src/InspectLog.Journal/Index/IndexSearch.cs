using LiteDB;

namespace InspectLog.Journal.Index;

/// <summary>Looks words up in the index.</summary>
internal static class IndexSearch
{
    // So many are looked through sooner than it is found out how many there are.
    private const int Few = 200;

    /// <summary>Entries that hold every one of some words, or words that begin so.</summary>
    /// <param name="index">The index.</param>
    /// <param name="wanted">Words as <see cref="Words.Of"/> cuts them; at least one.</param>
    public static IReadOnlyList<FoundText> In(IndexDatabase index, IReadOnlyList<string> wanted)
    {
        var names = index.Vehicles.FindAll().ToDictionary(row => row.Id, row => row.Name);
        return
        [
            .. With(index, Rarest(index, wanted)).ToEnumerable()
                .Where(row => wanted.All(word => row.Words.Any(held => Words.Finds(word, held))))
                .Select(row => new FoundText(
                    row.Vehicle, names[row.Vehicle], row.Inspection, row.Sequence, row.Time, row.Actor, row.Text)),
        ];
    }

    /// <summary>The word to look up; what it finds is then held against the others. Of a long record "note 191" is few entries
    /// by the one word and half of all by the other.</summary>
    private static string Rarest(IndexDatabase index, IReadOnlyList<string> wanted) => wanted.Count == 1
        ? wanted[0]
        : wanted.MinBy(word => With(index, word).Limit(Few).ToEnumerable().Count())!;

    private static ILiteQueryable<TextRow> With(IndexDatabase index, string word) =>
        index.Texts.Query().Where("$.Words[*] ANY LIKE @0", word + "%");
}

/// <summary>An entry that was found, before it is known whether it still counts.</summary>
internal sealed record FoundText(
    string Vehicle, string VehicleName, long? Inspection, long Sequence, DateTime Time, string Actor, string Text);

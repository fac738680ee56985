namespace InspectLog.Journal.Index;

/// <summary>Looks words up in the index.</summary>
internal static class IndexSearch
{
    /// <summary>Entries that hold every one of some words, or words that begin so.</summary>
    /// <param name="index">The index.</param>
    /// <param name="wanted">Words as <see cref="Words.Of"/> cuts them; at least one.</param>
    public static IReadOnlyList<FoundText> In(IndexDatabase index, IReadOnlyList<string> wanted)
    {
        var names = index.Vehicles.FindAll().ToDictionary(row => row.Id, row => row.Name);
        var found = wanted.Aggregate(
            index.Texts.Query(), (query, word) => query.Where("$.Words[*] ANY LIKE @0", word + "%"));
        return
        [
            .. found.ToEnumerable()
                .Where(row => wanted.All(word => row.Words.Any(held => Words.Finds(word, held))))
                .Select(row => new FoundText(
                    row.Vehicle, names[row.Vehicle], row.Inspection, row.Sequence, row.Time, row.Actor, row.Text)),
        ];
    }
}

/// <summary>An entry that was found, before it is known whether it still counts.</summary>
internal sealed record FoundText(
    string Vehicle, string VehicleName, long? Inspection, long Sequence, DateTime Time, string Actor, string Text);

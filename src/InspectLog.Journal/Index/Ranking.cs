using InspectLog.Journal.State;

namespace InspectLog.Journal.Index;

/// <summary>Which of the entries found a person means most likely. Pure.</summary>
internal static class Ranking
{
    /// <summary>Puts what was found in order, with what became of it.</summary>
    /// <param name="found">What was found.</param>
    /// <param name="words">The words looked for.</param>
    /// <param name="vehicle">Gives a vehicle as it stands.</param>
    public static IReadOnlyList<SearchHit> Of(
        IReadOnlyList<FoundText> found, string words, Func<string, VehicleState?> vehicle)
    {
        var wanted = Words.Of(words);
        var marks = found.Select(one => one.Vehicle).Distinct()
            .ToDictionary(id => id, id => vehicle(id) is { } state ? EntryMarks.Of(state) : EntryMarks.None);
        return
        [
            .. found
                .Select(one => (Found: one, Mark: marks[one.Vehicle].At(one.Sequence), IsTogether: Together(wanted, one.Text)))
                .OrderBy(one => one.Mark is not null)
                .ThenByDescending(one => one.IsTogether)
                .ThenByDescending(one => one.Found.Time)
                .ThenBy(one => one.Found.Vehicle, StringComparer.Ordinal)
                .ThenByDescending(one => one.Found.Sequence)
                .Select(one => new SearchHit(
                    one.Found.Vehicle,
                    one.Found.VehicleName,
                    one.Found.Inspection,
                    one.Found.Sequence,
                    one.Found.Time,
                    one.Found.Actor,
                    one.Found.Text,
                    one.Mark)),
        ];
    }

    /// <summary>Whether a text holds the words one after the other.</summary>
    private static bool Together(IReadOnlyList<string> wanted, string text)
    {
        var held = Words.Of(text);
        return Enumerable.Range(0, Math.Max(0, held.Count - wanted.Count + 1))
            .Any(at => wanted.Index().All(word => Words.Finds(word.Item, held[at + word.Index])));
    }
}

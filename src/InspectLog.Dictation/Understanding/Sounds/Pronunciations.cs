namespace InspectLog.Dictation.Understanding.Sounds;

/// <summary>How a word sounds: as the dictionary says, or by its endings, or by its letters.</summary>
internal static class Pronunciations
{
    // The words of the trade that the dictionary lacks and the letter rules get wrong.
    private static readonly Dictionary<string, string> OfTheTrade = new(StringComparer.Ordinal)
    {
        ["k"] = "K EY", ["kohm"] = "K EY OW M", ["kilohm"] = "K IH L OW M", ["megohm"] = "M EH G OW M", ["thou"] = "TH AW",
        ["mm"] = "M IH L AH M IY T ER", ["tdc"] = "T IY D IY S IY", ["btdc"] = "B IY T IY D IY S IY",
        ["atdc"] = "EY T IY D IY S IY", ["ht"] = "EY CH T IY", ["reluctor"] = "R IH L AH K T ER", ["verdigris"] = "V ER D IH G R IY",
        ["mil"] = "M IH L", ["deg"] = "D IH G R IY", ["°"] = "D IH G R IY Z",
    };

    /// <summary>The ways a word in lower case may be said, the usual one first. Empty for a word without letters.
    /// </summary>
    public static IReadOnlyList<Phone[]> Of(string word)
    {
        if (OfTheTrade.TryGetValue(word, out var own))
        {
            return [Phones.Parse(own)];
        }

        var listed = PronouncingDictionary.Shipped.Find(word);
        if (listed.Count > 0)
        {
            return listed;
        }

        if (ByEnding(word) is { Count: > 0 } derived)
        {
            return derived;
        }

        var spelt = LetterSounds.Of(word);
        return spelt.Length == 0 ? [] : [spelt];
    }

    // "Gapped" is gap and a T, "towers" tower and a Z, "regapped" re and gapped.
    private static IReadOnlyList<Phone[]> ByEnding(string word)
    {
        foreach (var (ending, sound) in Endings(word))
        {
            var stem = word[..^ending.Length];
            var known = Known(stem) ?? Known(stem + "e") ?? (stem is [.., var a, var b] && a == b ? Known(stem[..^1]) : null);
            if (known is not null)
            {
                return [.. known.Select(phones => phones.Concat(sound(phones[^1])).ToArray())];
            }
        }

        if (word.StartsWith("re", StringComparison.Ordinal) && word.Length > 5)
        {
            return [.. Of(word[2..]).Select(phones => new[] { Phone.R, Phone.IY }.Concat(phones).ToArray())];
        }

        return [];
    }

    private static IReadOnlyList<Phone[]>? Known(string stem) =>
        stem.Length > 1 && PronouncingDictionary.Shipped.Find(stem) is { Count: > 0 } found ? found : null;

    private static IEnumerable<(string Ending, Func<Phone, Phone[]> Sound)> Endings(string word)
    {
        if (word.EndsWith("ed", StringComparison.Ordinal))
        {
            yield return ("ed", Past);
        }

        if (word.EndsWith("ing", StringComparison.Ordinal))
        {
            yield return ("ing", _ => [Phone.IH, Phone.NG]);
        }

        if (word.EndsWith('s'))
        {
            yield return ("s", last => [IsUnvoiced(last) ? Phone.S : Phone.Z]);
        }
    }

    private static Phone[] Past(Phone last) => last switch
    {
        Phone.T or Phone.D => [Phone.IH, Phone.D],
        _ => [IsUnvoiced(last) ? Phone.T : Phone.D],
    };

    private static bool IsUnvoiced(Phone phone) =>
        phone is Phone.P or Phone.T or Phone.K or Phone.F or Phone.TH or Phone.S or Phone.SH or Phone.CH;
}

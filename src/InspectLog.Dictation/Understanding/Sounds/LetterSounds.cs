namespace InspectLog.Dictation.Understanding.Sounds;

/// <summary>Guesses how a word sounds from its letters, for words no dictionary lists. Rules of English spelling from
/// common knowledge, no source; the longest rule that fits at a letter is taken.</summary>
internal static class LetterSounds
{
    private const string Vowels = "aeiouy";

    private static readonly IReadOnlyDictionary<string, Phone[]> Rules = new Dictionary<string, string>
    {
        ["tion"] = "SH AH N", ["sion"] = "ZH AH N", ["ture"] = "CH ER", ["ight"] = "AY T", ["ough"] = "AO", ["augh"] = "AO",
        ["eigh"] = "EY", ["tch"] = "CH", ["dge"] = "JH", ["sch"] = "SH", ["ing"] = "IH NG", ["air"] = "EH R", ["are"] = "EH R",
        ["ear"] = "IH R", ["eer"] = "IH R", ["ore"] = "AO R", ["oor"] = "AO R", ["our"] = "AO R", ["ire"] = "AY ER", ["ure"] = "Y UH R",
        ["igh"] = "AY", ["ch"] = "CH", ["sh"] = "SH", ["th"] = "TH", ["ph"] = "F", ["wh"] = "W", ["ck"] = "K", ["qu"] = "K W",
        ["ng"] = "NG", ["kn"] = "N", ["wr"] = "R", ["gh"] = "", ["ai"] = "EY", ["ay"] = "EY", ["au"] = "AO", ["aw"] = "AO",
        ["ea"] = "IY", ["ee"] = "IY", ["ei"] = "EY", ["ey"] = "IY", ["ew"] = "UW", ["eu"] = "Y UW", ["ie"] = "IY", ["oa"] = "OW",
        ["oe"] = "OW", ["oi"] = "OY", ["oy"] = "OY", ["oo"] = "UW", ["ou"] = "AW", ["ow"] = "OW", ["ui"] = "UW", ["ue"] = "UW",
        ["ar"] = "AA R", ["er"] = "ER", ["ir"] = "ER", ["or"] = "AO R", ["ur"] = "ER", ["al"] = "AO L",
        ["a"] = "AE", ["b"] = "B", ["c"] = "K", ["d"] = "D", ["e"] = "EH", ["f"] = "F", ["g"] = "G", ["h"] = "HH", ["i"] = "IH",
        ["j"] = "JH", ["k"] = "K", ["l"] = "L", ["m"] = "M", ["n"] = "N", ["o"] = "AA", ["p"] = "P", ["q"] = "K", ["r"] = "R",
        ["s"] = "S", ["t"] = "T", ["u"] = "AH", ["v"] = "V", ["w"] = "W", ["x"] = "K S", ["y"] = "IY", ["z"] = "Z",
    }.ToDictionary(rule => rule.Key, rule => Phones.Parse(rule.Value), StringComparer.Ordinal);

    private static readonly int LongestRule = Rules.Keys.Max(letters => letters.Length);

    /// <summary>The likely phones of a word in lower case. Characters that are no letters are silent.</summary>
    public static Phone[] Of(string word)
    {
        var phones = new List<Phone>();
        for (var at = 0; at < word.Length;)
        {
            at += Take(word, at, phones);
        }

        return [.. phones];
    }

    private static int Take(string word, int at, List<Phone> phones)
    {
        if (Special(word, at) is { } special)
        {
            phones.AddRange(special.Phones);
            return special.Length;
        }

        for (var length = Math.Min(LongestRule, word.Length - at); length > 0; length--)
        {
            if (Rules.TryGetValue(word.Substring(at, length), out var found))
            {
                phones.AddRange(found);
                return length;
            }
        }

        return 1;
    }

    // What depends on the letters around: soft c and g, doubled consonants, the silent e and the vowel it lengthens.
    private static (int Length, Phone[] Phones)? Special(string word, int at)
    {
        var letter = word[at];
        var next = at + 1 < word.Length ? word[at + 1] : '\0';
        var last = at + 1 == word.Length;
        return letter switch
        {
            'c' when next is 'e' or 'i' or 'y' => (1, [Phone.S]),
            'g' when next is 'e' or 'i' or 'y' && at > 0 => (1, [Phone.JH]),
            'e' when last && at > 1 => (1, []),
            'y' when at == 0 => (1, [Phone.Y]),
            _ when letter == next && !IsVowel(letter) => (1, []),
            _ when IsVowel(letter) && at + 3 == word.Length && !IsVowel(next) && next != 'r' && word[^1] == 'e' => (1, Long(letter)),
            _ => null,
        };
    }

    private static Phone[] Long(char vowel) => vowel switch
    {
        'a' => [Phone.EY],
        'e' => [Phone.IY],
        'i' or 'y' => [Phone.AY],
        'o' => [Phone.OW],
        _ => [Phone.UW],
    };

    private static bool IsVowel(char letter) => Vowels.Contains(letter, StringComparison.Ordinal);
}

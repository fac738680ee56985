using InspectLog.Checks;

namespace InspectLog.Dictation.Understanding.Words;

/// <summary>A check with how strongly words name it.</summary>
/// <param name="Check">The check.</param>
/// <param name="Subject">Weight of the longest name of the check that was said in full.</param>
/// <param name="Parts">Weight of the parts of it that were said.</param>
/// <param name="Strange">How many of the words occur in no name of the check.</param>
internal readonly record struct Ranked(Check Check, int Subject, int Parts, int Strange)
{
    public int Score => Subject + Parts;
}

/// <summary>A word that names a part or quantity, in the phrase it was said in.</summary>
/// <param name="Stem">The word.</param>
/// <param name="Phrase">The longest known phrase it is part of, such as "spark plug"; itself where it stands alone.
/// </param>
internal readonly record struct NamedWord(string Stem, string Phrase);

/// <summary>Tells which check is spoken of, from the words that name parts and quantities. A name counts when all its
/// words are there, in any order: "blade of the rotor" is the rotor blade. A word inside a longer phrase counts only
/// for checks that know the phrase: the spark plug says nothing of the spark.</summary>
internal sealed class Topics
{
    /// <summary>What a word of a check's own name weighs.</summary>
    public const int SubjectWeight = 10;

    /// <summary>What a word weighs that names a part other checks share.</summary>
    public const int PartWeight = 3;

    private readonly List<Names> _names;

    // The subjects by their first word, so that few of them have to be compared with what was said.
    private sealed record Names(
        Check Check, Dictionary<string, List<string[]>> Subjects, HashSet<string> Parts, HashSet<string> Words, HashSet<string> Phrases);

    public Topics(CheckSheet sheet) => _names = [.. sheet.Checks.Select(NamesOf)];

    /// <summary>The checks the words name, the best named first.</summary>
    public IReadOnlyList<Ranked> Rank(IEnumerable<NamedWord> words)
    {
        var said = words.Distinct().ToList();
        return said.Count == 0 ? [] : [.. _names
            .Select(names => Rank(names, said))
            .Where(ranked => ranked.Score > 0)
            .OrderByDescending(ranked => ranked.Score)];
    }

    /// <summary>Whether one of the words occurs in a name of the check.</summary>
    public bool Touches(Check check, IEnumerable<NamedWord> words) => _names.Exists(names => names.Check == check && words.Any(word => names.Words.Contains(word.Stem)));

    private static Names NamesOf(Check check)
    {
        var subjects = check.Spoken.Subjects.Select(subject => Lexicon.Content(subject).ToArray()).Where(words => words.Length > 0).ToList();
        var parts = check.Spoken.Parts.SelectMany(Lexicon.Content).ToHashSet(StringComparer.Ordinal);
        return new(
            check,
            subjects.GroupBy(words => words[0], StringComparer.Ordinal).ToDictionary(group => group.Key, group => group.ToList(), StringComparer.Ordinal),
            parts,
            [.. subjects.SelectMany(words => words), .. parts],
            [.. check.Spoken.Subjects.Concat(check.Spoken.Parts).Select(phrase => string.Join(' ', PhraseTable<Term>.StemsOf(phrase)))]);
    }

    private static Ranked Rank(Names names, List<NamedWord> said)
    {
        var bag = new HashSet<string>(said.Count, StringComparer.Ordinal);
        var (parts, strange) = (0, 0);
        foreach (var word in said)
        {
            if ((word.Phrase == word.Stem || names.Phrases.Contains(word.Phrase) || IsHead(names, word)) && bag.Add(word.Stem))
            {
                parts += names.Parts.Contains(word.Stem) ? 1 : 0;
                strange += names.Words.Contains(word.Stem) ? 0 : 1;
            }
        }

        return new(names.Check, LongestSubject(names, bag) * SubjectWeight, parts * PartWeight, strange);
    }

    // A plug lead is a lead.
    private static bool IsHead(Names names, NamedWord word) =>
        word.Stem == names.Check.PlaceNoun && names.Parts.Contains(word.Stem) && word.Phrase.EndsWith($" {word.Stem}", StringComparison.Ordinal);

    private static int LongestSubject(Names names, HashSet<string> bag)
    {
        var longest = 0;
        foreach (var word in bag)
        {
            foreach (var subject in names.Subjects.GetValueOrDefault(word) ?? [])
            {
                longest = subject.Length > longest && Array.TrueForAll(subject, bag.Contains) ? subject.Length : longest;
            }
        }

        return longest;
    }
}

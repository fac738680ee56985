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

    private sealed record Names(
        Check Check, IReadOnlyList<IReadOnlyList<string>> Subjects, HashSet<string> Parts, HashSet<string> Phrases);

    public Topics(CheckSheet sheet) => _names = [.. sheet.Checks.Select(check => new Names(
        check,
        [.. check.Spoken.Subjects.Select(Lexicon.Content).Where(words => words.Count > 0)],
        [.. check.Spoken.Parts.SelectMany(Lexicon.Content)],
        [.. check.Spoken.Subjects.Concat(check.Spoken.Parts).Select(phrase => string.Join(' ', PhraseTable<Term>.StemsOf(phrase)))]))];

    /// <summary>The checks the words name, the best named first.</summary>
    public IReadOnlyList<Ranked> Rank(IEnumerable<NamedWord> words)
    {
        var said = words.Distinct().ToList();
        return said.Count == 0 ? [] : [.. _names
            .Select(names => Rank(names, said))
            .Where(ranked => ranked.Score > 0)
            .OrderByDescending(ranked => ranked.Score)];
    }

    private static Ranked Rank(Names names, List<NamedWord> said)
    {
        var bag = said.Where(word => word.Phrase == word.Stem || names.Phrases.Contains(word.Phrase))
            .Select(word => word.Stem).ToHashSet(StringComparer.Ordinal);
        return new(names.Check, LongestSubject(names, bag) * SubjectWeight, bag.Count(names.Parts.Contains) * PartWeight,
            bag.Count(word => !names.Parts.Contains(word) && !names.Subjects.Any(subject => subject.Contains(word))));
    }

    private static int LongestSubject(Names names, HashSet<string> bag)
    {
        var longest = 0;
        foreach (var subject in names.Subjects)
        {
            if (subject.Count > longest && subject.All(bag.Contains))
            {
                longest = subject.Count;
            }
        }

        return longest;
    }
}

using InspectLog.Checks;

namespace InspectLog.Dictation.Understanding.Words;

/// <summary>A check with how strongly words name it.</summary>
/// <param name="Check">The check.</param>
/// <param name="Subject">Weight of the longest name of the check that was said in full.</param>
/// <param name="Parts">Weight of the parts of it that were said.</param>
internal readonly record struct Ranked(Check Check, int Subject, int Parts)
{
    public int Score => Subject + Parts;
}

/// <summary>Tells which check is spoken of, from the words that name parts and quantities. A name counts when all its
/// words are there, in any order: "blade of the rotor" is the rotor blade.</summary>
internal sealed class Topics
{
    /// <summary>What a word of a check's own name weighs.</summary>
    public const int SubjectWeight = 10;

    /// <summary>What a word weighs that names a part other checks share.</summary>
    public const int PartWeight = 3;

    private readonly List<Names> _names;

    private sealed record Names(Check Check, IReadOnlyList<IReadOnlyList<string>> Subjects, HashSet<string> Parts);

    public Topics(CheckSheet sheet) => _names = [.. sheet.Checks.Select(check => new Names(
        check,
        [.. check.Spoken.Subjects.Select(Lexicon.Content).Where(words => words.Count > 0)],
        [.. check.Spoken.Parts.SelectMany(Lexicon.Content)]))];

    /// <summary>The checks the words name, the best named first.</summary>
    public IReadOnlyList<Ranked> Rank(IEnumerable<string> words)
    {
        var bag = words.ToHashSet(StringComparer.Ordinal);
        return bag.Count == 0 ? [] : [.. _names
            .Select(names => new Ranked(
                names.Check, LongestSubject(names, bag) * SubjectWeight, bag.Count(names.Parts.Contains) * PartWeight))
            .Where(ranked => ranked.Score > 0)
            .OrderByDescending(ranked => ranked.Score)];
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

using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Grammar;

/// <summary>Tells which check is spoken of, from the words that name parts and quantities. A name counts when all its
/// words are there, in any order: "blade of the rotor" is the rotor blade.</summary>
internal sealed class Topics
{
    private const int SubjectWeight = 10;
    private const int PartWeight = 3;

    private readonly List<Names> _names;

    private sealed record Names(Check Check, IReadOnlyList<IReadOnlyList<string>> Subjects, HashSet<string> Parts);

    public Topics(CheckSheet sheet) => _names = [.. sheet.Checks.Select(check => new Names(
        check,
        [.. check.Spoken.Subjects.Select(Lexicon.Content).Where(words => words.Count > 0)],
        [.. check.Spoken.Parts.SelectMany(Lexicon.Content)]))];

    /// <summary>How strongly the words name each check; those they do not name are left out.</summary>
    public IReadOnlyList<(Check Check, int Score)> Rank(IEnumerable<string> words)
    {
        var bag = words.ToHashSet(StringComparer.Ordinal);
        return bag.Count == 0 ? [] : [.. _names
            .Select(names => (names.Check, Score: Score(names, bag)))
            .Where(ranked => ranked.Score > 0)
            .OrderByDescending(ranked => ranked.Score)];
    }

    private static int Score(Names names, HashSet<string> bag)
    {
        var longest = 0;
        foreach (var subject in names.Subjects)
        {
            if (subject.Count > longest && subject.All(bag.Contains))
            {
                longest = subject.Count;
            }
        }

        return longest * SubjectWeight + bag.Count(names.Parts.Contains) * PartWeight;
    }
}

using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Numbers;

namespace InspectLog.Dictation.Understanding.Words;

/// <summary>A condition of a check that a phrase can mean.</summary>
internal sealed record ConditionTerm(Check Check, Condition Condition);

/// <summary>Something that was done. A change of setting may be followed by the value it was set to.</summary>
/// <param name="Action">The action word of the sheet.</param>
/// <param name="NeedsValue">Whether it counts only with a new value: "brought it up to ten".</param>
internal sealed record ActionTerm(string Action, bool NeedsValue = false);

/// <summary>What a phrase of the sheet or of everyday speech can mean.</summary>
internal sealed record Term
{
    /// <summary>Whether it names a part or quantity of the sheet.</summary>
    public bool Subject { get; init; }

    public ConditionTerm? Condition { get; init; }

    public ActionTerm? Action { get; init; }

    public Role Role { get; init; }
}

/// <summary>Every phrase the reader knows for one sheet.</summary>
internal sealed class Lexicon
{
    private static readonly HashSet<string> SmallWords = new(StringComparer.Ordinal)
    {
        "of", "the", "at", "on", "in", "to", "a", "and", "is", "plus", "it", "'s",
    };

    private static readonly string[] Ties = ["in", "on", "at", "to"];
    private static readonly string[] Owners = ["the", "its", "their"];

    private readonly PhraseTable<Term> _phrases = new();
    private readonly PhraseTable<Term> _own = new();
    private readonly HashSet<string> _subjectWords = new(StringComparer.Ordinal);
    private readonly HashSet<string> _singleParts = new(StringComparer.Ordinal);
    private readonly HashSet<string> _ofCylinders = new(StringComparer.Ordinal);
    private readonly HashSet<string> _placeNouns = new(StringComparer.Ordinal) { "cylinder", "number" };

    /// <summary>The phrases of a sheet and of everyday speech, with what own words mean of its conditions.</summary>
    public Lexicon(CheckSheet sheet, IEnumerable<OwnWord> ownWords)
    {
        foreach (var check in sheet.Checks)
        {
            AddCheck(check);
        }

        foreach (var (role, phrase) in EverydayWords.All)
        {
            _phrases.Add(phrase, new Term { Role = role });
        }

        foreach (var (term, phrase) in ActionWords.All)
        {
            _phrases.Add(phrase, new Term { Action = term });
        }

        foreach (var phrase in OtherParts.All)
        {
            _phrases.Add(phrase, new Term { Role = Role.OtherPart });
        }

        foreach (var word in ownWords)
        {
            if (sheet.Find(word.Check) is { } check && check.Conditions.FirstOrDefault(known => known.Id == word.Condition) is { } condition)
            {
                _own.Add(word.Phrase, new Term { Condition = new(check, condition) });
                _phrases.Add(word.Phrase, new Term { Condition = new(check, condition) });
            }
        }
    }

    /// <summary>The longest known phrase that starts at a token. A condition that a shorter one means for another
    /// check is among its meanings: "burnt through" is burnt for those that do not know it.</summary>
    public (int Length, IReadOnlyList<Term> Meanings)? Match(IReadOnlyList<Token> tokens, int at)
    {
        var matches = _phrases.Matches(tokens, at).Where(match => !CutsOwn(tokens, at, at + match.Length) && !LacksNumber(tokens, at + match.Length, match.Meanings)).ToList();
        if (matches.Count == 0)
        {
            return null;
        }

        var (length, meanings) = matches[0];
        var known = meanings.Select(term => term.Condition?.Check).ToHashSet();
        var more = meanings.Any(term => term.Condition is not null)
            ? matches.Skip(1).Where(match => match.Meanings.All(term => term.Role != Role.Good)).SelectMany(match => match.Meanings).Where(term => term.Condition is { } other && !known.Contains(other.Check)).ToList()
            : [];
        return (length, more.Count == 0 ? meanings : [.. meanings, .. more]);
    }

    /// <summary>Whether the word occurs in the name of a check or part.</summary>
    public bool IsSubjectWord(string stem) => _subjectWords.Contains(stem);

    /// <summary>Whether the word occurs in the name of a check done for each cylinder.</summary>
    public bool IsOfCylinders(string stem) => _ofCylinders.Contains(stem);

    /// <summary>Whether a number right after the word names a cylinder.</summary>
    public bool IsPlaceNoun(string stem) => _placeNouns.Contains(stem);

    /// <summary>Whether the word names a part of which a car has one: the rotor, the cap, the coil.</summary>
    public bool IsSinglePart(string stem) => _singleParts.Contains(stem);

    /// <summary>Whether words name nothing but a part of the check that is not counted by cylinder: the cap, though
    /// its towers are.</summary>
    public bool NamesWhole(Check check, IEnumerable<NamedWord> words) =>
        check.Measurand is null && words.All(word => check.Spoken.Parts.Contains(word.Stem) && !IsPlaceNoun(word.Stem));

    /// <summary>The words of a phrase that count when it is compared with what was said.</summary>
    public static IReadOnlyList<string> Content(string phrase) =>
        [.. PhraseTable<Term>.StemsOf(phrase).Where(stem => !SmallWords.Contains(stem)).Distinct()];

    // "It started at six" tells where a setting was, "she started at once" that the engine runs.
    private static bool LacksNumber(IReadOnlyList<Token> tokens, int next, IReadOnlyList<Term> meanings) =>
        tokens[next - 1].IsWord("at") && meanings.Any(term => term.Role == Role.Was)
        && !(next < tokens.Count && (tokens[next].Kind == TokenKind.Digits || tokens[next].Stem is "minus" or "point" or "a" or "about" or "around"
            || NumberWords.Unit(tokens[next].Stem) is not null || NumberWords.Teen(tokens[next].Stem) is not null || NumberWords.Tens(tokens[next].Stem) is not null));

    // "Has gone" is a phrase, but not where the workshop's own "gone soft" begins in it.
    private bool CutsOwn(IReadOnlyList<Token> tokens, int at, int next) =>
        !_own.IsEmpty && Enumerable.Range(at + 1, next - at - 1).Any(inside => _own.Match(tokens, inside) is { } own && inside + own.Length > next);

    // A part the sheet also names in the plural is one that is counted: leads, towers, but only one cap.
    private static IEnumerable<string> Counted(string phrase) =>
        Tokenizer.Cut(phrase).Where(token => token.Plural).Select(token => token.Stem);

    // "In the wrong tower", "on the wrong tower", "on its wrong tower": people take one for the other. "Where they belong" is
    // said of each as "where it belongs".
    private static IEnumerable<string> Tied(string phrase) =>
        phrase.StartsWith("in the ", StringComparison.Ordinal) || phrase.StartsWith("on the ", StringComparison.Ordinal)
            ? [phrase, .. Ties.SelectMany(tie => Owners.Select(owner => $"{tie} {owner} {phrase[7..]}"))]
            : [phrase, phrase.Replace("where they ", "where it ", StringComparison.Ordinal)];

    private void AddCheck(Check check)
    {
        foreach (var phrase in check.Spoken.Subjects.Concat(check.Spoken.Parts))
        {
            _phrases.Add(phrase, new Term { Subject = true });
            _subjectWords.UnionWith(Content(phrase));
            _ofCylinders.UnionWith(check.PerCylinder ? Content(phrase) : []);
        }

        if (check.Actions.Contains(PartActions.Replaced) && check.Measurand is not { Gauge: true })
        {
            _singleParts.UnionWith(check.Spoken.Parts.Select(part => PhraseTable<Term>.StemsOf(part)[^1])
                .Except(check.Spoken.Parts.SelectMany(Counted), StringComparer.Ordinal));
        }

        if (check.PlaceNoun is { } noun)
        {
            _placeNouns.Add(noun);
            _placeNouns.UnionWith(check.Spoken.Subjects.Concat(check.Spoken.Parts).SelectMany(Counted));
        }

        foreach (var condition in check.Conditions)
        {
            foreach (var phrase in condition.Phrases.Prepend(condition.Id).SelectMany(Tied).Distinct(StringComparer.Ordinal))
            {
                _phrases.Add(phrase, new Term { Condition = new(check, condition) });
            }
        }
    }
}

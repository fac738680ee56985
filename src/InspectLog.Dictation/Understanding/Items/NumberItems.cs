using InspectLog.Dictation.Understanding.Numbers;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Items;

/// <summary>Reads what stands for a number: runs of them, "the first three", "third", and small words that sound like
/// one.</summary>
/// <param name="phrases">The phrases of the text.</param>
/// <param name="runs">The runs of numbers of the text.</param>
/// <param name="before">The items of the sentence read so far.</param>
internal sealed class NumberItems(PhraseLookup phrases, NumberRuns runs, IReadOnlyList<Item> before)
{
    private readonly IReadOnlyList<Token> _tokens = phrases.Tokens;
    private readonly Lexicon _lexicon = phrases.Lexicon;
    private readonly GroupReader _groups = new(phrases, runs, before);

    private Item? Last => before.Count > 0 ? before[^1] : null;

    /// <summary>The number that starts at a token and ends before another, or nothing.</summary>
    /// <param name="at">The token.</param>
    /// <param name="next">The token after the sentence.</param>
    /// <param name="phrase">How long a phrase is known that starts there: a longer one than a word is no number.</param>
    public Item? At(int at, int next, int phrase) => Size(at) ?? Homophone(at, next) ?? _groups.At(at, next) ?? Run(at, next, phrase);

    /// <summary>"The third lead": the cylinder that starts at a token, or nothing.</summary>
    public Item? Ordinal(int at, int next) =>
        NumberWords.Ordinal(_tokens[at].Stem) is { } ordinal && (IsOfPart(at, next) || StandsForPlace(at, next))
            ? new(at, at + 1, Role.Unknown) { Ordinal = ordinal }
            : null;

    // "The second lead", "the second, fourth and sixth leads".
    private bool IsOfPart(int at, int next)
    {
        var after = at + 1;
        if (after < next && _lexicon.IsPlaceNoun(_tokens[after].Stem))
        {
            return true;
        }

        while (after < next && (_tokens[after].IsMark(',') || _tokens[after].IsWord("and")))
        {
            after++;
        }

        return after > at + 1 && after < next && NumberWords.Ordinal(_tokens[after].Stem) is not null && IsListed(at) && IsOfPart(after, next);
    }

    // "First, second lead is wet" counts what is looked at.
    private bool IsListed(int at) => !_tokens[at].IsWord("first") || at > 0 && _tokens[at - 1].IsWord("the");

    // "All plugs but the third", "every lead is fine, the fourth is chafed".
    private bool StandsForPlace(int at, int next) => at > 0 && _tokens[at - 1].IsWord("the") && !_tokens[at].IsWord("first") && !_tokens[at].Plural
        && before.Any(item => item.Subject && _lexicon.IsPlaceNoun(_tokens[item.Next - 1].Stem))
        && (at + 1 >= next || _tokens[at + 1].Kind == TokenKind.Mark || _tokens[at + 1].IsWord("one")
            || phrases.Means(at + 1, term => term.Role is Role.Verb or Role.Was or Role.And or Role.Or or Role.Not));

    // "A thirteen thou one jams": the feeler of that size.
    private Item? Size(int at) => _tokens[at].Stem == "one" && Last is { Number: true } size && size.Next == at && size.Next > size.First + 1
        && size.First > 0 && _tokens[size.First - 1].Stem is "a" or "an" or "the" or "my" ? new(at, at + 1, Role.Filler) : null;

    // "Lead to is cracked": a small word that sounds like a number, right where a number belongs.
    private Item? Homophone(int at, int next)
    {
        if (_tokens[at].Text is not ("to" or "too" or "for" or "won" or "ate" or "fore") || before.Any(item => item.Actions.Count > 0))
        {
            return null;
        }

        var ends = at + 1 >= next || _tokens[at + 1].Kind == TokenKind.Mark;
        var named = Last is { Subject: true } noun && _lexicon.IsPlaceNoun(_tokens[noun.Next - 1].Stem) && !_tokens[noun.Next - 1].Plural;
        var placed = Last is { Role: Role.PlaceMark } || Last is { Role: Role.Preposition } preposition && _tokens[preposition.First].IsWord("on");
        if (!(named && !ends || placed))
        {
            return null;
        }

        var after = ends ? null : phrases.Match(at + 1)?.Meanings;
        var fits = after?.Any(term => term.Role is Role.Verb or Role.Was or Role.Not || term.Condition is not null) ?? false;
        if (!fits && !(placed && ends) && (placed || !IsValue(at + 1, next)))
        {
            return null;
        }

        var number = _tokens[at].Text switch { "to" or "too" => 2, "won" => 1, "ate" => 8, _ => 4 };
        return new(at, at + 1, Role.Unknown)
        {
            Ordinal = number,
            Doubt = $"'{_tokens[at].Text}' was taken as the number {number}",
        };
    }

    // Whether the number at a token is more than a cylinder's: "lead to 8 k", but not "the lead to four".
    private bool IsValue(int at, int next) =>
        runs.At(at, next) is { } end && (end > at + 1 || _tokens[at].Kind == TokenKind.Digits && _tokens[at].Text.Length > 1);

    private Item? Run(int at, int next, int phrase)
    {
        if (runs.At(at, next) is not { } end || phrase > 1 || end == at + 1 && StandsForNoun(at))
        {
            return null;
        }

        if (_tokens[at].IsWord("one") && _tokens[at].Plural || _tokens[at] is { Stem: "one" or "1", Lead: '\0' } && IsThatOne(at))
        {
            return new(at, at + 1, Role.Filler);
        }

        return new(at, end, Role.Unknown) { Number = true };
    }

    // "This one", "each one", "a new one", "a mu one": one is no number there.
    private bool StandsForNoun(int at) =>
        _tokens[at].IsWord("one") && at > 0 && (_tokens[at - 1].Stem is "only" or "the" && (at + 1 >= _tokens.Count || _tokens[at + 1].Stem is "that" or "which"
                or "who" or "i" or "i've" or "we" or "with" or "without" or "by" or "near" or "." or ",")
            || at > 1 && _tokens[at - 2].Stem is "a" or "an" && phrases.Match(at - 1) is null
            || _tokens[at - 1].Stem is "this" or "that" or "each" or "every" or "other"
            or "another" or "new" or "old" or "which" or "any" or "last" or "next" or "same" or "good" or "bad" or "no");

    // "The one before", "the loose one", "one old one", "in one hand".
    private bool IsThatOne(int at) => at + 2 < _tokens.Count && !(at > 0 && _lexicon.IsPlaceNoun(_tokens[at - 1].Stem)) && _tokens[at + 2].Stem is "one" or "1" && IsDescribed(at + 1) && !GoesOn(at + 1) && !_tokens[at + 1].IsWord("to")
        || at > 0 && (_tokens[at - 1].IsWord("the") && !GoesOn(at + 1) && !(at + 1 < _tokens.Count && NumberWords.Unit(_tokens[at + 1].Stem) is not null)
        || at > 1 && _tokens[at - 2].Stem is "the" or "a" or "an" && IsDescribed(at - 1) && !GoesOn(at + 1)
        || _tokens[at - 1].Stem is "in" or "with" && at + 1 < _tokens.Count && _tokens[at + 1].Kind == TokenKind.Word && phrases.Match(at + 1) is null && !GoesOn(at + 1));

    private bool IsDescribed(int at) => _tokens[at].Kind == TokenKind.Word && !phrases.Means(at, term => term.Subject) && !_lexicon.IsPlaceNoun(_tokens[at].Stem)
        && _tokens[at].Stem is not ("is" or "at" or "on" or "of" or "about" or "in" or "and")
        && !phrases.Means(at, term => term.Role is Role.Verb or Role.Was);

    // "One point two", "one k", "one thou".
    private bool GoesOn(int at) => at < _tokens.Count && (NumberWords.IsPoint(_tokens[at].Stem) || runs.IsUnit(at) || _tokens[at].Kind == TokenKind.Digits);
}

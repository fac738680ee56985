using InspectLog.Dictation.Understanding.Numbers;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Items;

/// <summary>Reads words that name several cylinders without naming each.</summary>
/// <param name="phrases">The phrases of the text.</param>
/// <param name="runs">The runs of numbers of the text.</param>
/// <param name="before">The items of the sentence read so far.</param>
internal sealed class GroupReader(PhraseLookup phrases, NumberRuns runs, IReadOnlyList<Item> before)
{
    private const int MostCounted = 5;

    /// <summary>Why "the front three" is to be looked at.</summary>
    private const string WhichEnd = "the check sheet does not say which cylinders are at which end";

    private const string InTurn = "it may be of those last looked at";

    private const string OneNumber = "the count of cylinders and the value may be one number";

    private readonly IReadOnlyList<Token> _tokens = phrases.Tokens;
    private readonly Lexicon _lexicon = phrases.Lexicon;

    /// <summary>The group that starts at a token and ends before another, or nothing.</summary>
    public Item? At(int at, int next) => Counted(at, next) ?? Parity(at, next) ?? Alternate(at, next) ?? Onwards(at, next) ?? Beyond(at, next);

    // "The first three plugs", "the last two", "on the last 2 point nine".
    private Item? Counted(int at, int next)
    {
        if (_tokens[at].Stem is not ("first" or "last" or "front" or "rear" or "back") || at + 1 >= next || Small(at + 1) is not (>= 2 and <= MostCounted and var count))
        {
            return null;
        }

        var valued = at + 2 < next && (NumberWords.IsPoint(_tokens[at + 2].Stem) || runs.At(at + 2, next) is not null) && OpensRow(at) && IsOfParts(at + 2, next);
        if (!valued && !Ends(at + 2, next) && !IsPart(at + 2, next) && !IsToldOf(at + 2, term => term.Role is Role.And or Role.But))
        {
            return null;
        }

        var kind = _tokens[at].Stem is "first" or "front" ? CylinderGroupKind.First : CylinderGroupKind.Last;
        var doubt = valued ? OneNumber : IsOfTurn(at + 3) ? InTurn : _tokens[at].Stem is "first" or "last" ? null : WhichEnd;
        return Of(at, at + 2, new(kind, count), doubt);
    }

    // "On the last three point nine", "leads, first three six k"; but not "lead two, first five k".
    private bool OpensRow(int at) => at > 0 && _tokens[at - 1].IsWord("the")
        || before.Any(item => item.Subject && _tokens[item.Next - 1].Plural) && (at == 0 || _tokens[at - 1].Kind == TokenKind.Mark);

    // "The last three plugs I did": of those done, not of those on the engine.
    private bool IsOfTurn(int at) => at < _tokens.Count && _tokens[at].Stem is "i" or "we" or "you" or "that" or "which";

    // "The odd ones", "even numbered leads", "the odd plugs". But "the odd plug", "some odd plugs", "even plugs two and three".
    private Item? Parity(int at, int next)
    {
        if (_tokens[at].Stem is not ("odd" or "even") || at > 0 && (Small(at - 1) is not null || _tokens[at - 1].Stem is "some" or "few" or "several" or "couple" or "of" or "make" or "no"))
        {
            return null;
        }

        var kind = _tokens[at].Stem == "odd" ? CylinderGroupKind.Odd : CylinderGroupKind.Even;
        var article = at > 0 && _tokens[at - 1].Stem is "the" or "all" or "both";
        if (_tokens[at].Plural)
        {
            // "The odds are fine, the evens are wet"; but not "the odds are that".
            var other = kind == CylinderGroupKind.Odd ? "even" : "odd";
            return article && (Ends(at + 1, next) || IsToldOf(at + 1)) && _tokens.Any(token => token.IsWord(other)) ? Of(at, at + 1, new(kind), null) : null;
        }

        var after = at + 1;
        var numbered = after < next && _tokens[after].Text is "numbered" or "number" && IsPart(after + 1, next);
        after += numbered ? 1 : 0;
        if (after < next && _tokens[after].Text is "ones" or "numbers" or "cylinders" or "holes" or "pots" && !(after + 1 < next && _tokens[after + 1].IsWord("of")))
        {
            return Of(at, _tokens[after].Text is "cylinders" ? after : after + 1, new(kind), null);
        }

        // "Odd plugs are sooty"; but "odd plugs fitted" may be a mixed set.
        var told = IsToldOf(after + 1) || after + 1 < next && _tokens[after + 1].IsWord("at");
        return IsPart(after, next) && (told || (numbered || article) && (after + 1 >= next || runs.At(after + 1, next) is null))
            ? Of(at, after, new(kind), numbered || article ? null : $"'{_tokens[at].Text}' was taken for {_tokens[at].Text} numbers")
            : null;
    }

    // "Every second lead": from the first or from the second on?
    private Item? Alternate(int at, int next) =>
        _tokens[at].IsWord("second") && at > 0 && _tokens[at - 1].IsWord("every") && at + 1 < next && (_lexicon.IsPlaceNoun(_tokens[at + 1].Stem) || _tokens[at + 1].IsWord("one"))
            ? Of(at, at + 1, new(CylinderGroupKind.Even), "where the count begins was not said")
            : null;

    // "Four onwards", "three and up", "from four on".
    private Item? Onwards(int at, int next)
    {
        if (Small(at) is not { } first || at > 0 && (Small(at - 1) is not null || NumberWords.IsPoint(_tokens[at - 1].Stem)))
        {
            return null;
        }

        var open = at + 1 < next && _tokens[at + 1].IsWord("and") ? at + 2 : at + 1;
        if (open >= next)
        {
            return null;
        }

        var sure = _tokens[open].Text is "onwards" or "onward" or "upwards" or "upward";
        var from = at > 0 && _tokens[at - 1].IsWord("from");
        if (from && open + 2 < next && _tokens[open].IsWord("to") && _tokens[open + 1].IsWord("the") && _tokens[open + 2].Text is "last" or "end" && (Ends(open + 3, next) || IsToldOf(open + 3)))
        {
            // "From two to the last".
            return Of(at, open + 3, new(CylinderGroupKind.From, first), null);
        }

        var opens = from && (at == 1 || _tokens[at - 2].Kind == TokenKind.Mark);
        if (opens && open + 3 < next && _tokens[open].IsWord("on") && _tokens[open + 1].IsWord("the") && IsPart(open + 2, next) && IsToldOf(open + 3))
        {
            // "From three on the plugs are sooty".
            return Of(at, open + 1, new(CylinderGroupKind.From, first), null);
        }

        var goesOn = sure || (open == at + 2 && _tokens[open].Text is "up" or "above" or "over" or "beyond" || from && open == at + 1 && _tokens[open].Text is "on" or "up")
            && (Ends(open + 1, next) || IsToldOf(open + 1, term => term.Role is Role.Pronoun) || _tokens[open + 1].Text is "they");
        return goesOn ? Of(at, open + 1, new(CylinderGroupKind.From, first), IsOfParts(open + 1, next) ? null : "no part was named that is counted") : null;
    }

    // "Everything after three is", "plugs up to three are". But "leads below five k", "fine after three tries".
    private Item? Beyond(int at, int next)
    {
        var kind = _tokens[at].Text switch
        {
            "after" or "beyond" or "past" or "above" => CylinderGroupKind.After,
            "before" or "below" => CylinderGroupKind.Before,
            "up" when at + 1 < next && _tokens[at + 1].IsWord("to") => CylinderGroupKind.First,
            _ => (CylinderGroupKind?)null,
        };
        var number = kind == CylinderGroupKind.First ? at + 2 : at + 1;
        var follows = at > 0 && (_tokens[at - 1].Stem is "everything" or "all" or "those" || _tokens[at - 1].Text is "ones" || _tokens[at - 1].Plural && _lexicon.IsPlaceNoun(_tokens[at - 1].Stem));
        return kind is { } chosen && follows && number < next && Small(number) is { } end && IsToldOf(number + 1)
            ? Of(at, number + 1, new(chosen, end), null)
            : null;
    }

    private static Item Of(int at, int next, CylinderGroup group, string? doubt) => new(at, next, Role.Unknown) { Group = group, Doubt = doubt };

    private int? Small(int at) => _tokens[at] is { Kind: TokenKind.Digits, Lead: '\0', Text.Length: 1 } digit
        ? at + 1 < _tokens.Count && _tokens[at + 1] is { Kind: TokenKind.Digits, Glued: true } ? null : digit.Text[0] - '0'
        : NumberWords.Unit(_tokens[at].Stem);

    private bool Ends(int at, int next) => at >= next || _tokens[at].Kind == TokenKind.Mark;

    // Several of a part that is counted: "leads".
    private bool IsPart(int at, int next) => at < next && _tokens[at].Plural && _lexicon.IsPlaceNoun(_tokens[at].Stem);

    // Whether something is said right after it.
    private bool IsToldOf(int at, Func<Term, bool>? or = null) => at < _tokens.Count && _tokens[at].Text is not "on"
        && (_tokens[at].Text is "'s" or "'re" or "don't" or "doesn't" || phrases.Means(at, term => term.Condition is not null || term.Role is Role.Good or Role.Bad or Role.Nothing or Role.Verb or Role.Was or Role.DoesNot or Role.Does or Role.Not || (or?.Invoke(term) ?? false)));

    private bool IsOfParts(int at, int next) =>
        before.Any(item => item.Subject && Enumerable.Range(item.First, item.Next - item.First).Any(word => _lexicon.IsPlaceNoun(_tokens[word].Stem)) || item.Role == Role.PlaceMark || item.Group is not null)
        || Enumerable.Range(at, next - at).Any(after => _lexicon.IsPlaceNoun(_tokens[after].Stem));
}

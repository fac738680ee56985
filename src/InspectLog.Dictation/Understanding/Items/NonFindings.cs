using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Items;

/// <summary>Finds the stretches of a sentence that speak of no finding: questions, orders, plans, wishes, limits,
/// other cars, earlier times, hearsay, things not done.</summary>
internal sealed class NonFindings
{
    private static readonly PhraseTable<CueReach> Cues = CueTable();

    private readonly PhraseLookup _phrases;
    private readonly IReadOnlyList<Token> _tokens;
    private readonly Func<int, bool> _nounAt;
    private readonly Func<int, bool> _numberAt;
    private readonly int _first;
    private readonly int _next;
    private readonly bool[] _blocked;

    private NonFindings(PhraseLookup phrases, int first, int next, Func<int, bool> nounAt, Func<int, bool> numberAt)
    {
        (_phrases, _tokens, _first, _next, _nounAt, _numberAt) = (phrases, phrases.Tokens, first, next, nounAt, numberAt);
        _blocked = new bool[next - first];
    }

    /// <summary>For each token of a sentence, whether it is part of no finding.</summary>
    /// <param name="phrases">The phrases of the text.</param>
    /// <param name="first">First token of the sentence.</param>
    /// <param name="next">Token after the sentence, its closing mark included.</param>
    /// <param name="nounAt">Whether a part, a number or a pronoun starts at a token.</param>
    /// <param name="numberAt">Whether a number starts at a token.</param>
    public static bool[] Blocked(PhraseLookup phrases, int first, int next, Func<int, bool> nounAt, Func<int, bool> numberAt)
    {
        var scan = new NonFindings(phrases, first, next, nounAt, numberAt);
        if (scan.Asks())
        {
            Array.Fill(scan._blocked, true);
        }
        else
        {
            scan.Orders();
            scan.Generalities();
            scan.FollowCues();
        }

        return scan._blocked;
    }

    private bool Asks()
    {
        if (_next > _first && _tokens[_next - 1].IsMark('?'))
        {
            return true;
        }

        var at = AfterFillers();
        if (at >= _next || _tokens[at].Kind != TokenKind.Word)
        {
            return false;
        }

        return NonFindingCues.QuestionWords.Contains(_tokens[at].Text) && !(_tokens[at].Text is "what" && at + 1 < _next && _tokens[at + 1].Stem is "i" or "we" or "it")
            || NonFindingCues.Askers.Contains(_tokens[at].Text) && at + 1 < _next && AskedOf(at + 1) && !Likewise(at);
    }

    // "So do two and three" says the same of them; a question goes on to what it asks.
    private bool Likewise(int at) => at > _first && _tokens[at - 1].IsWord("so")
        && !Enumerable.Range(at + 1, _next - at - 1).Any(i => _phrases.Means(i, term => term.Condition is not null || term.Role == Role.Good));

    // "Is the", "are they", "does lead": the verb stands before whom it asks about.
    private bool AskedOf(int at) => _tokens[at].IsWord("not") ? at + 1 < _next && AskedOf(at + 1) :
        _tokens[at].Stem is "the" or "it" or "that" or "this" or "there" or "you" or "we" or "i" or "they" or "she" or "he"
            or "any" or "all" or "your" or "my" or "our" or "these" or "those" or "everything" or "anyone"
        || _nounAt(at);

    private void Orders()
    {
        var at = AfterFillers();
        if (at >= _next || _tokens[at].Kind != TokenKind.Word)
        {
            return;
        }

        // "Clean." is how it looks; an order names what to clean.
        if (at + 1 >= _next || _tokens[at + 1].Kind == TokenKind.Mark)
        {
            return;
        }

        var describes = _phrases.Means(at, term => term.Condition is not null);
        if (describes && _tokens[at + 1].Stem is not ("the" or "it" or "them" or "that" or "those" or "these" or "all" or "out" or "up"))
        {
            return;
        }

        // "Let two is cracked" orders nothing: whom to let is missing.
        if (_tokens[at].IsWord("let") && _nounAt(at + 1))
        {
            return;
        }

        if (NonFindingCues.LookOrders.Contains(_tokens[at].Text))
        {
            Block(at, ClauseEnd(at));
        }
        else if (NonFindingCues.Orders.Contains(_tokens[at].Text))
        {
            Block(at, VerblessEnd(at));
        }
    }

    // "A good coil reads about ten k", "a pickup pulled in": of coils in general, or of something else, unless a cylinder
    // tells which.
    private void Generalities()
    {
        var at = AfterFillers();
        if (at + 3 >= _next || _tokens[at].Stem is not ("a" or "an") || _phrases.Match(at + 1) is not { } first
            || !first.Meanings.Any(term => term.Condition is not null || term.Role == Role.Good || term.Subject))
        {
            return;
        }

        var described = first.Meanings.Any(term => term.Condition is not null || term.Role == Role.Good);
        var noun = at + 1 + (described ? first.Length : 0);
        var after = noun;
        while (after < _next && (_phrases.Means(after, term => term.Subject)))
        {
            after += _phrases.Match(after)!.Value.Length;
        }

        var goesOn = after < _next && _tokens[after].Kind == TokenKind.Word
            && !(_phrases.Means(after, term => term.Role is Role.Preposition or Role.And));
        if (after > noun && goesOn)
        {
            Block(at, _next);
        }
    }

    private int AfterFillers()
    {
        var at = _first;
        while (at < _next && (_tokens[at].Kind == TokenKind.Mark
            || _tokens[at].Stem is "so" or "well" or "okay" or "ok" or "right" or "now" or "and" or "um" or "uh" or "er" or "please"
                or "then" or "oh" or "hey" or "just" or "but" or "also" or "next"))
        {
            at++;
        }

        return at;
    }

    // A cue inside a longer phrase that is known ("right at the limit") is no cue.
    private void FollowCues()
    {
        var known = _first;
        for (var at = _first; at < _next; at++)
        {
            var phrase = _phrases.Match(at)?.Length ?? 0;
            if (CueAt(at) is { } cue && cue.Length >= phrase && at + cue.Length > known)
            {
                Apply(cue.Reach, at, at + cue.Length);
            }

            known = Math.Max(known, at + phrase);
        }
    }

    private (int Length, CueReach Reach)? CueAt(int at) =>
        _tokens[at].Text == "'ll" ? (1, CueReach.Forward)
        : ReadsOff(at) || Tries(at) ? null
        : Years.Length(_tokens, at) is > 0 and var year ? (year, CueReach.Clause)
        : Cues.Match(_tokens, at) is { } cue ? (cue.Length, cue.Meanings[0])
        : null;

    // "It says twelve point one": what an instrument says is what it shows.
    private bool ReadsOff(int at) =>
        _tokens[at].IsWord("say") && at > _first && at + 1 < _next && _numberAt(at + 1)
        && _tokens[at - 1].Stem is "it" or "meter" or "multimeter";

    // "Could get the point three in", "can't get point four in": what was tried with a gauge.
    private bool Tries(int at)
    {
        if (_tokens[at].Stem is not ("could" or "can" or "get"))
        {
            return false;
        }

        var number = at + 1;
        while (number < _next && _tokens[number].Stem is "not" or "just" or "only" or "get" or "the" or "a" or "my")
        {
            number++;
        }

        return number < _next && _numberAt(number) && Enumerable.Range(number, _next - number).Any(i => _tokens[i].IsWord("in"));
    }

    private void Apply(CueReach reach, int at, int after)
    {
        switch (reach)
        {
            case CueReach.Forward:
                Block(at, VerblessEnd(after));
                break;
            case CueReach.Looking:
                Block(at, ClauseEnd(after));
                break;
            case CueReach.Clause:
                Block(ClauseStart(at), ClauseEnd(after));
                break;
            default:
                Block(ClauseStart(at), _next);
                break;
        }
    }

    private int ClauseEnd(int at)
    {
        while (at < _next && !EndsClause(at))
        {
            at++;
        }

        return at;
    }

    private int ClauseStart(int at)
    {
        while (at > _first && !EndsClause(at - 1))
        {
            at--;
        }

        return at;
    }

    private bool EndsClause(int at) =>
        _tokens[at].Kind == TokenKind.Mark && _tokens[at].Text[0] is ',' or ':' or ';' or '.' or '!'
        || _tokens[at].Stem is "but" or "because" or "whereas" or "although"
        || _tokens[at].IsWord("and") && at + 1 < _next && OpensClause(at + 1);

    private bool OpensClause(int at) =>
        _tokens[at].Stem is "it" or "it's" or "i" or "i've" or "she" or "that's" or "there's" or "now" or "then" or "the";

    // On over clauses without a verb of their own: "I'll order two leads, three plugs and a cap".
    private int VerblessEnd(int at)
    {
        var end = ClauseEnd(at);
        while (end < _next && _tokens[end].Kind == TokenKind.Mark)
        {
            var clause = ClauseEnd(end + 1);
            if (Enumerable.Range(end + 1, clause - end - 1).Any(HasVerb))
            {
                break;
            }

            end = clause;
        }

        return end;
    }

    private bool HasVerb(int at) => _tokens[at].Text is "'s" or "'re" || (
        _phrases.Match(at)?.Meanings.Any(term =>
            term.Role is Role.Verb or Role.Was or Role.Now or Role.Pronoun or Role.DoesNot || term.Action is not null) ?? false);

    private void Block(int from, int to) => Array.Fill(_blocked, true, from - _first, Math.Max(0, to - from));

    private static PhraseTable<CueReach> CueTable()
    {
        var table = new PhraseTable<CueReach>();
        foreach (var (reach, phrase) in NonFindingCues.All)
        {
            table.Add(phrase, reach);
        }

        return table;
    }
}

using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Numbers;
using InspectLog.Dictation.Understanding.Talk;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Items;

/// <summary>Reads the tokens of one sentence into items: parts, numbers, conditions, actions and the small words that
/// tie them.</summary>
internal sealed class ItemReader
{
    private readonly PhraseLookup _phrases;
    private readonly Lexicon _lexicon;
    private readonly IReadOnlyList<Token> _tokens;
    private readonly NumberLookup _lookup;
    private readonly NumberRuns _runs;
    private readonly NumberItems _numbers;
    private readonly ActionReader _actions;
    private readonly Answers _answers;
    private readonly List<Item> _items = [];
    private readonly HashSet<int> _particles = [];
    private int _next;

    public ItemReader(PhraseLookup phrases, NumberLookup numbers)
    {
        (_phrases, _lexicon, _tokens) = (phrases, phrases.Lexicon, phrases.Tokens);
        (_lookup, _runs) = (numbers, new(numbers));
        _numbers = new(phrases, _runs, _items);
        _actions = new(phrases);
        _answers = new(phrases, _runs);
    }

    /// <summary>The items of the sentence between two tokens.</summary>
    public IReadOnlyList<Item> Read(int first, int next)
    {
        _items.Clear();
        _next = next;
        var blocked = NonFindings.Blocked(_phrases, _lookup, first, next, NounAt, at => _runs.At(at, next) is not null);
        var figures = TalkShapes.Figures(_phrases, _lookup, first, next);
        for (var at = first; at < next;)
        {
            var item = figures.TryGetValue(at, out var figure) ? new(at, figure, Role.Filler) : _particles.Contains(at) ? new(at, at + 1, Role.Preposition) : ItemAt(at);
            if (item.Particle is { } particle)
            {
                _particles.UnionWith(Enumerable.Range(particle.First, particle.Next - particle.First));
            }

            _items.Add(item with { Blocked = blocked[at - first] });
            at = item.Next;
        }

        return [.. _items];
    }

    private bool NounAt(int at) =>
        _runs.At(at, _next) is not null || _phrases.Means(at, term => term.Subject)
        || _lexicon.IsPlaceNoun(_tokens[at].Stem);

    private Item ItemAt(int at)
    {
        var token = _tokens[at];
        if (token.Kind == TokenKind.Mark)
        {
            return token.Text[0] == '−' && _runs.At(at, _next) is { } negative
                ? new(at, negative, Role.Unknown) { Number = true }
                : new(at, at + 1, token.Text[0] is '.' or '?' or '!' ? Role.Filler : Role.Comma);
        }

        if (token.Text[0] == '\'')
        {
            return new(at, at + 1, ShortVerb(at));
        }

        if (token.Text == "others")
        {
            return new(at, at + 1, Role.Rest);
        }

        var match = _phrases.Match(at);
        if (match is { } phrase && at + phrase.Length > _next)
        {
            match = null;
        }

        if (OpensTalk(at, match?.Length ?? 0))
        {
            return new(at, at + match!.Value.Length, Role.Filler);
        }

        return _answers.At(at, _items) ?? NewOne(at) ?? _numbers.At(at, _next, match?.Length ?? 0) ?? _actions.At(at, _next, Last) ?? _numbers.Ordinal(at, _next)
            ?? No(at) ?? (match is { } found ? Phrase(at, found.Length, found.Meanings) : SubjectWord(at));
    }

    // "New one is six k" speaks of the part that was just named.
    private Item? NewOne(int at) =>
        _tokens[at].Text is "new" or "old" or "other" && at + 2 < _next && _tokens[at + 1].Text is "one" or "ones"
            && _phrases.Means(at + 2, term => term.Role is Role.Verb or Role.Was)
            ? new(at, at + 2, Role.Pronoun)
            : null;

    // "Okay, plug three is worn": the word opens the talk and judges nothing.
    private bool OpensTalk(int at, int length) =>
        length > 0 && at + length < _next && _items.TrueForAll(item => item.Role is Role.Filler or Role.Comma)
        && string.Join(' ', Enumerable.Range(at, length).Select(i => _tokens[i].Stem)) is "okay" or "ok" or "right" or "all right" or "allright";

    // "The cap's back" has a verb, "the coil's winding" has none.
    private Role ShortVerb(int at) =>
        _tokens[at].Text is "'s" or "'re" && !(at + 1 < _next && _lexicon.IsSubjectWord(_tokens[at + 1].Stem)) ? Role.Verb : Role.Filler;

    private Item? Last => _items.Count > 0 ? _items[^1] : null;

    // "No" is a number's mark ("lead no 3"), a correction ("no, eleven point seven") or a negation ("no corrosion").
    private Item? No(int at)
    {
        if (!_tokens[at].IsWord("no") || (_phrases.Match(at)?.Length ?? 1) > 1)
        {
            return null;
        }

        var number = at + 1 < _next && _runs.At(at + 1, _next) is not null;
        var tied = Last is { Subject: true } or { Role: Role.Preposition } or null;
        if (number)
        {
            return new(at, at + 1, tied && Last is not null ? Role.PlaceMark : Role.Correct);
        }

        var stands = at + 1 == _next || _tokens[at + 1].Kind == TokenKind.Mark || _tokens[at + 1].Stem is "on" or "at" or "it's"
            or "it" or "that's" or "not";
        return new(at, at + 1, stands ? Role.Correct : Role.Not);
    }

    private Item Phrase(int at, int length, IReadOnlyList<Term> meanings)
    {
        var role = meanings.Select(term => term.Role).FirstOrDefault(role => role != Role.Unknown);
        return new(at, at + length, role)
        {
            Subject = meanings.Any(term => term.Subject) || length == 1 && _lexicon.IsSubjectWord(_tokens[at].Stem) && role == Role.Unknown
                && !meanings.Any(term => term.Condition is not null),
            Conditions = [.. meanings.Select(term => term.Condition).OfType<ConditionTerm>()],
            Actions = [.. meanings.Select(term => term.Action).OfType<ActionTerm>().OrderBy(action => action.NeedsValue ? 0 : 1)],
        };
    }

    private static bool SaysHow(string word) => word.Length > 6 && word.EndsWith("ly", StringComparison.Ordinal)
        && word is not ("assembly" or "monthly" or "butterfly" or "anomaly" or "hourly");

    // "Spark test", "resistance check": it names the check as well as the word before does. But "the lead test lamp" is a lamp.
    private bool IsTest(int at) => _tokens[at].Text is "test" or "check" or "testing" && Last is { Subject: true }
        && (at + 1 >= _next || _tokens[at + 1].Kind == TokenKind.Mark || _runs.At(at + 1, _next) is not null || _lexicon.IsPlaceNoun(_tokens[at + 1].Stem)
            || _phrases.Means(at + 1, term => !term.Subject && term.Role != Role.OtherPart));

    // "Superbly", "suspiciously": such a word only says how.
    private Item SubjectWord(int at) =>
        new(at, at + 1, SaysHow(_tokens[at].Text) || IsTest(at) ? Role.Filler : Role.Unknown)
        {
            Subject = _lexicon.IsSubjectWord(_tokens[at].Stem),
        };
}

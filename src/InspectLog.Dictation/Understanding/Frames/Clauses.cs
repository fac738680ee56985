using InspectLog.Dictation.Understanding.Items;
using InspectLog.Dictation.Understanding.Numbers;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Frames;

/// <summary>Cuts a sentence where a comma or "and" joins two that could stand alone: "secondary nine k and lead two is
/// burnt". Each is then read by itself, so that nothing said in one reaches into the other.</summary>
internal sealed class Clauses(NumberLookup numbers, Lexicon lexicon)
{
    private readonly IReadOnlyList<Token> _tokens = numbers.Tokens;
    private IReadOnlyList<Item> _items = [];

    /// <summary>The items of a sentence, clause by clause.</summary>
    public IEnumerable<IReadOnlyList<Item>> Of(IReadOnlyList<Item> items)
    {
        _items = items;
        var first = 0;
        for (var at = 1; at < items.Count; at++)
        {
            var parted = items[at].Role is Role.Comma or Role.And;
            if (parted ? Whole(first, at) && Opens(first, at) : Abuts(first, at))
            {
                yield return [.. items.Skip(first).Take(at - first)];
                first = parted ? at + 1 : at;
            }
        }

        yield return first == 0 ? items : [.. items.Skip(first)];
    }

    // Whether something was said of something, and it is not being corrected.
    private bool Whole(int first, int next)
    {
        var last = next - 1;
        while (last > first && _items[last].Role is not (Role.Comma or Role.And))
        {
            last--;
        }

        var corrects = Enumerable.Range(last, next - last)
            .Any(i => _items[i].Role is Role.Correct or Role.Retract)
            && !Enumerable.Range(last, next - last).Any(i => Says(i) || Names(i) || _items[i].Number);
        var left = Enumerable.Range(first, next - first);
        return !corrects && (left.Any(Says) || left.Any(i => _items[i].Role == Role.Same) && left.Any(i => _items[i].Subject));
    }

    // "Cap off rotor out", "plug wet lead chafed": nothing parts the two; but "a cracked boot" is one.
    private bool Abuts(int first, int at) =>
        at > first + 1 && (Names(at) && _items[at].Role != Role.OtherPart && !Describes(at) || _items[at].Role == Role.PlaceMark)
        && Says(at - 1) && !(_items[at - 1].Condition && _items[at - 2] is { Role: Role.Filler or Role.Verb or Role.Not or Role.Preposition })
        && Enumerable.Range(first, at - first).Any(i => Names(i) || _items[i].Role == Role.PlaceMark)
        && SubjectThenSaid(at, out var said) && _items[said].Role is not (Role.Comma or Role.And) && !BelongsTogether(first, at, said);

    private bool Opens(int first, int at)
    {
        var next = at + 1;
        while (next < _items.Count && _items[next].Role is Role.Filler or Role.And)
        {
            next++;
        }

        if (next == _items.Count)
        {
            return false;
        }

        var left = Enumerable.Range(first, at - first).ToList();
        if (SubjectThenSaid(next, out var said))
        {
            // "Nine k, lead two and lead three": the value waits for its lead.
            return (left.Exists(Names) || _items[at].Role == Role.And || !left.Exists(i => _items[i].Number)) && !BelongsTogether(first, at, said);
        }

        while (next < _items.Count && _items[next].Role is Role.Person or Role.Verb or Role.Was or Role.Filler or Role.Between)
        {
            next++;
        }

        return next < _items.Count && Leads(next) && NamesAfter(next) && left.Exists(i => _items[i].Subject || _items[i].Role == Role.Pronoun || _items[i] is { Condition: true, Number: false });
    }

    // "Adjusted the gap, the gap is now point three" is one change; "three goes, the four blade doesn't" one bracket; what
    // follows an exception may be said of it.
    private bool BelongsTogether(int first, int at, int said)
    {
        var left = Enumerable.Range(first, at - first).Select(i => _items[i]).ToList();
        var sets = left.Exists(item => item.Actions.Any(action => action.Action == Checks.PartActions.Adjusted)) && !left.Exists(item => item.Number && IsValue(item))
            && Stems(left).Intersect(Stems(_items.Skip(at).Take(said - at))).Any();
        var gauged = left.Exists(item => item.Role is Role.Goes or Role.Stops or Role.DoesNot or Role.Does) && left.Exists(item => item.Number && IsValue(item));
        var excepts = _items[at].Role == Role.Comma && left.Exists(item => item.Role is Role.Except or Role.But);
        var only = _items[at].Role == Role.Comma && at + 1 < _items.Count && _tokens[_items[at + 1].First].Stem is "only" or "just" && left.Exists(item => item.Role == Role.All);
        return only || sets && _items[said].Number || gauged && IsGauge(at, said) || excepts;
    }

    private IEnumerable<string> Stems(IEnumerable<Item> items) =>
        items.Where(item => item.Subject).SelectMany(item => Enumerable.Range(item.First, item.Next - item.First).Select(i => _tokens[i].Stem));

    private bool IsGauge(int at, int said) => Enumerable.Range(at, said - at + 1).Any(i => _items[i].Number
        || _tokens[_items[i].First].Stem is "feeler" or "blade" or "gauge");

    // "The rotor blade is worn", "supply twelve point one", "in the air gap point three goes".
    private bool SubjectThenSaid(int from, out int said)
    {
        var named = false;
        for (said = from; said < _items.Count; said++)
        {
            var item = _items[said];
            if (Names(said) && !Describes(said) || item.Role == Role.PlaceMark || IsNumbered(said, from))
            {
                named = true;
            }
            else if (Says(said) || item.Role is Role.Verb or Role.Was or Role.Not or Role.DoesNot or Role.Does or Role.Goes or Role.Stops)
            {
                return named;
            }
            else if (item.Role == Role.Comma || item.Role == Role.And && !(said + 1 < _items.Count && NamesNext(said + 1)))
            {
                return named && item.Role == Role.Comma && said + 1 < _items.Count && Leads(said + 1);
            }
            else if (item.Role is Role.But or Role.Or or Role.Correct or Role.Retract or Role.Same or Role.Except or Role.To || item.Role == Role.Between && !named)
            {
                return false;
            }
        }

        return false;
    }

    // "Two and three are crossed".
    private bool IsNumbered(int at, int from) => at == from && _items[at].Number && !IsValue(_items[at])
        && at + 1 < _items.Count && _items[at + 1] is { Role: Role.Verb or Role.Was or Role.DoesNot or Role.Not } or { Condition: true, Subject: false };

    private bool NamesNext(int at)
    {
        while (at < _items.Count && _items[at].Role == Role.Filler)
        {
            at++;
        }

        return at < _items.Count && Names(at);
    }

    // Whether something is said before it is told of what: "cleaned the rotor top", "white powder on tower two".
    private bool Leads(int at) => (_items[at].Number ? IsValue(_items[at]) : Says(at)) || _items[at].Role == Role.Not && at + 1 < _items.Count && Says(at + 1);

    private bool NamesAfter(int at)
    {
        for (var i = at + 1; i < _items.Count && _items[i].Role is not (Role.Comma or Role.But or Role.Or or Role.Verb or Role.Was); i++)
        {
            if (_items[i].Role == Role.And && !(i + 1 < _items.Count && _items[i + 1].Actions.Count > 0))
            {
                return false;
            }

            if (Names(i))
            {
                return true;
            }
        }

        return false;
    }

    private bool Names(int at) => _items[at] is { Subject: true, Actions.Count: 0 } or { Role: Role.OtherPart };

    // "Spark on two": the name of the check is what was found, unless a verb follows.
    private bool Describes(int at) => _items[at].Condition && !(at + 1 < _items.Count && _items[at + 1].Role is Role.Verb or Role.Was);

    private bool Says(int at) => _items[at] switch
    {
        { Condition: true } or { Actions.Count: > 0 } => !Names(at) || Describes(at),
        { Number: true } run => IsValue(run) || at > 0 && !Announces(at - 1),
        { Role: Role.Nothing or Role.Yes or Role.Bad or Role.Absent } => true,
        _ => false,
    };

    // Whether a cylinder may follow: "lead", "number", "on".
    private bool Announces(int at) => _items[at] switch
    {
        { Role: Role.PlaceMark or Role.Preposition or Role.All or Role.Except or Role.Filler or Role.Rest or Role.Between } => true,
        { Subject: true } name => lexicon.IsPlaceNoun(_tokens[name.Next - 1].Stem),
        { Role: Role.And or Role.Comma } => at == 0 || Announces(at - 1) || _items[at - 1].Number,
        _ => false,
    };

    // More than cylinders: "twelve", "nine k", "two six k", "point eight".
    private bool IsValue(Item run)
    {
        var apart = true;
        for (var at = run.First; at < run.Next; at++)
        {
            if (IsCylinder(at))
            {
                if (!apart)
                {
                    return true;
                }

                apart = false;
            }
            else if (_tokens[at].Kind == TokenKind.Mark && _tokens[at].Text[0] is ',' or '-' || _tokens[at].Stem is "and" or "or" or "to" or "through" or "thru" or "then")
            {
                apart = true;
            }
            else
            {
                return true;
            }
        }

        return false;
    }

    private bool IsCylinder(int at) => _tokens[at] is { Kind: TokenKind.Digits, Text.Length: 1, Lead: '\0' } || NumberWords.Unit(_tokens[at].Stem) is not null;
}

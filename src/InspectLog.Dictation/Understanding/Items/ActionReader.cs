using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Numbers;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Items;

/// <summary>Reads actions that are said in more than one piece: "pulled the lead off", "the cap is back", "put a new
/// lead on".</summary>
internal sealed class ActionReader(PhraseLookup phrases)
{
    private const int LongestGap = 8;

    private readonly IReadOnlyList<Token> _tokens = phrases.Tokens;

    private static readonly PhraseTable<(string Particles, string Action)> PartedVerbs = Verbs();
    private static readonly Dictionary<string, PhraseTable<string>> Particles = ParticleTables();
    private static readonly PhraseTable<string> States = StateTable();

    /// <summary>The action that starts at a token, or nothing.</summary>
    public Item? At(int at, int next, Item? last) => New(at, next, last) ?? Parted(at, next) ?? State(at, next, last);

    private Item? New(int at, int next, Item? last)
    {
        var match = phrases.Match(at);
        if (match is not { } phrase || phrase.Meanings.All(term => term.Role != Role.New) || last?.Role == Role.Verb || IsAtHand(at))
        {
            return null;
        }

        var end = at + phrase.Length;
        for (var part = end; part < Math.Min(next, end + 4); part++)
        {
            var term = phrases.Match(part);
            // "The new one is six k" tells of a new part, not of fitting it.
            if (_tokens[part].IsWord("one") && part + 1 < next
                && phrases.Means(part + 1, meaning => meaning.Role is Role.Verb or Role.Was))
            {
                return null;
            }

            if (phrases.Lexicon.IsPlaceNoun(_tokens[part].Stem) || _tokens[part].IsWord("one")
                || (term?.Meanings.Any(meaning => meaning.Subject) ?? false))
            {
                return new(at, end, Role.Unknown) { Actions = [new(PartActions.Replaced)] };
            }

            if (_tokens[part].Kind == TokenKind.Mark)
            {
                break;
            }
        }

        return null;
    }

    // "I've got a new cap here": it is there, and not yet on the car.
    private bool IsAtHand(int at)
    {
        var before = at - 1;
        while (before >= 0 && (_tokens[before].Stem is "a" or "got" or "have" or "'ve" or "some" or "and" || NumberWords.Unit(_tokens[before].Stem) is not null
            || phrases.Means(before, term => term.Subject || term.Role == Role.New) || phrases.Lexicon.IsSubjectWord(_tokens[before].Stem)))
        {
            before--;
        }

        return before >= 0 && before < at - 1 && _tokens[before].Stem is "i" or "we" && _tokens[before + 1].Stem is "'ve" or "have";
    }

    private Item? Parted(int at, int next)
    {
        if (PartedVerbs.Match(_tokens, at) is not { } verb)
        {
            return null;
        }

        foreach (var (particles, action) in verb.Meanings)
        {
            var table = Particles[particles];
            for (var i = at + 1; i < Math.Min(next, at + LongestGap) && _tokens[i].Kind != TokenKind.Mark; i++)
            {
                if (table.Match(_tokens, i) is { } particle && i + particle.Length <= next && !Continues(i, next))
                {
                    var done = action == PartActions.Disconnected && Dirt(at + 1, i) ? PartActions.Cleaned : action;
                    return new(at, at + 1, Role.Unknown) { Actions = [new(done)], Particle = (i, i + particle.Length) };
                }
            }
        }

        return null;
    }

    // "Got the corrosion off the terminals": dirt comes off, and the part is clean.
    private bool Dirt(int from, int to)
    {
        while (from < to && (_tokens[from].Stem is "the" or "all" or "some" or "most" or "of" or "that" or "any" or "a" or "white" or "green" or "bit"))
        {
            from++;
        }

        return from < to && phrases.Match(from) is { } match && from + match.Length == to
            && match.Meanings.Any(term => term.Condition is { Condition.Meaning: not ConditionMeaning.Good }) && !match.Meanings.Any(term => term.Subject);
    }

    // "Opened it up to point nine", "put it up to ten": the small word leads on to a value.
    private bool Continues(int particle, int next) =>
        particle + 1 < next && _tokens[particle].Stem is "up" or "down" && _tokens[particle + 1].IsWord("to");

    private Item? State(int at, int next, Item? last)
    {
        if (States.Match(_tokens, at) is not { } state || at + state.Length > next)
        {
            return null;
        }

        var after = at + state.Length;
        var ends = after == next || _tokens[after].Kind == TokenKind.Mark || _tokens[after].Stem is "and" or "now" or "again" or "but";
        var ofPart = last is { Role: Role.Verb or Role.Was or Role.Now or Role.All or Role.Both } or { Subject: true } or { Number: true } && !IsMeasure(last);
        return ends && ofPart ? new(at, after, Role.Unknown) { Actions = [new(state.Meanings[0])] } : null;
    }

    // "Lead six out" tells of the lead, "six volts out" of the voltage.
    private bool IsMeasure(Item number) => number is { Number: true } && number.Next > number.First + 1 && _tokens[number.Next - 1] is { Kind: TokenKind.Word } word
        && NumberWords.Unit(word.Stem) is null && NumberWords.Teen(word.Stem) is null;

    private static PhraseTable<(string, string)> Verbs()
    {
        var table = new PhraseTable<(string, string)>();
        foreach (var (verbs, particles, action) in ActionWords.Parted)
        {
            foreach (var verb in verbs.Split('|'))
            {
                table.Add(verb, (particles, action));
            }
        }

        return table;
    }

    private static Dictionary<string, PhraseTable<string>> ParticleTables()
    {
        var tables = new Dictionary<string, PhraseTable<string>>(StringComparer.Ordinal);
        foreach (var (_, particles, action) in ActionWords.Parted)
        {
            var table = tables[particles] = new PhraseTable<string>();
            foreach (var particle in particles.Split('|'))
            {
                table.Add(particle, action);
            }
        }

        return tables;
    }

    private static PhraseTable<string> StateTable()
    {
        var table = new PhraseTable<string>();
        foreach (var (particles, action) in ActionWords.States)
        {
            foreach (var particle in particles.Split('|'))
            {
                table.Add(particle, action);
            }
        }

        return table;
    }
}

using InspectLog.Dictation.Understanding.Numbers;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Talk;

/// <summary>Tells what is said of a kind of part from what is said of a part of this car: "worn rotor tips are black", "a
/// loose lead will arc", "a nine k coil won't do". Where a cylinder is named it is of this car.</summary>
internal static class Generalities
{
    // Of these one speaks by their measure too: "a gap of twelve thou", "a twelve volt feed", "a ten thou feeler".
    private static readonly HashSet<string> Measured = new(
        "gap|clearance|resistance|voltage|reading|timing|advance|supply|feed|feeler|gauge|blade|secondary|primary|side|winding|circuit|value|figure|drop|gapped|regapped".Split('|'),
        StringComparer.Ordinal);

    // What there is several of in a sheet's words may be one in many cars: "these caps crack".
    private const int MostDescribing = 3;

    private const int MostAround = 15;

    /// <summary>Whether a name is of something that has a value: a gap, the secondary.</summary>
    public static bool IsMeasured(SpokenClause clause, int first, int next) =>
        Enumerable.Range(first, next - first).Any(at => Measured.Contains(clause.Stem(at)));

    /// <summary>The stretches of a clause that are said of a kind.</summary>
    public static IEnumerable<(int First, int Next)> In(SpokenClause clause)
    {
        if (!clause.NamesPlace(clause.First) && (IsOfAnyOne(clause) || IsOfMany(clause) || IsOfPlaceless(clause) || HasNounForVerb(clause) || Becomes(clause)) || IsOfNumbers(clause) || IsInTurn(clause) || IsHabit(clause))
        {
            yield return (clause.First, clause.Next);
        }

        foreach (var size in Sizes(clause).Concat(Tools(clause)))
        {
            yield return size;
        }
    }

    // "A cracked rotor lets", "any lead over twenty k is", "soot on a plug tells you", "corrosion in a tower shows".
    private static bool IsOfAnyOne(SpokenClause clause)
    {
        for (var at = clause.Start; at < clause.Next; at++)
        {
            var opens = at == clause.Start || clause.Stem(at - 1) is "in" or "on" or "of" or "at" or "from" or "inside";
            if (opens && clause.Stem(at) is "a" or "an" or "any" && !IsNew(clause, at) && NameAfter(clause, at + 1) is { } after && after < clause.Next && (clause.IsVerb(after) || clause.Describes(after) && clause.Tokens[after].Plural)
                && !(at > clause.Start && clause.Means(clause.Start, term => term.Role is Role.Verb or Role.Person)))
            {
                return true;
            }
        }

        return false;
    }

    // "A new cap is on" tells what was done.
    private static bool IsNew(SpokenClause clause, int at) => clause.Means(at, term => term.Role == Role.New) || clause.Means(at + 1, term => term.Role == Role.New);

    // The token after the name that follows, with what may describe it: "nine k", "cracked", "good old".
    private static int? NameAfter(SpokenClause clause, int at)
    {
        for (var words = 0; words <= MostDescribing && at < clause.Next; words++)
        {
            var after = clause.AfterName(at);
            if (after > at)
            {
                return after;
            }

            if (clause.Means(at, term => term.Role is Role.Verb or Role.Was or Role.Preposition or Role.And) && !clause.Describes(at))
            {
                return null;
            }

            at += clause.Phrases.Match(at)?.Length ?? 1;
        }

        return null;
    }

    // "Worn rotor tips are black", "oily plugs point to worn rings".
    private static bool IsOfMany(SpokenClause clause)
    {
        var at = clause.Start;
        if (!clause.Describes(at) || clause.Phrases.Match(at) is not { } described)
        {
            return false;
        }

        var after = clause.AfterName(at + described.Length);
        return after > at + described.Length && clause.Tokens[after - 1].Plural && after < clause.Next
            && clause.IsVerb(after) && !clause.Text(after).EndsWith("ed", StringComparison.Ordinal) && clause.Stem(after) is not ("found" or "seen" or "throughout");
    }

    // "These caps crack", "cheap rotors", "ballast resistors run hot": a car has one. But "caps fine" may be "cap's fine".
    private static bool IsOfPlaceless(SpokenClause clause)
    {
        for (var at = clause.Start; at < clause.Next; at++)
        {
            if (clause.Tokens[at].Plural && clause.Phrases.Lexicon.IsSinglePart(clause.Stem(at))
                && !(at == clause.Start && at + 1 < clause.Next && clause.Describes(at + 1)))
            {
                return true;
            }
        }

        return false;
    }

    // "All leads get brittle", "no plug likes oil": what they do, not how they are.
    private static bool Becomes(SpokenClause clause)
    {
        if (clause.Stem(clause.Start) is not ("all" or "every" or "most" or "no" or "some" or "any" or "many" or "few"))
        {
            return false;
        }

        var after = clause.AfterName(clause.Start + 1);
        return after > clause.Start + 1 && (clause.Stem(after) is "get" or "go" or "come" or "need" || clause.IsUnknown(after) && clause.Tokens[after].Plural && !clause.Tokens[after - 1].Plural);
    }

    // "Cylinder six fires when one is on overlap."
    private static bool IsInTurn(SpokenClause clause) => Enumerable.Range(clause.Start, clause.Next - clause.Start).Any(at =>
        clause.Text(at) is "fires" or "sparks" && clause.Stem(at + 1) is "when" or "after" or "before"
        && (clause.IsNumber(at + 2) || clause.Stem(at + 2) is "the" && (clause.AfterName(at + 3) > at + 3 || clause.IsUnknown(at + 3))));

    // "The numbers on the leads are worn off."
    private static bool IsOfNumbers(SpokenClause clause) =>
        clause.Stem(clause.Start) == "the" && clause.Stem(clause.Start + 1) == "number" && clause.Stem(clause.Start + 2) is "on" or "of" or "by" or "for";

    // "Each tower feeds one plug", "wear leads to misfires": what looks like a part is the verb.
    private static bool HasNounForVerb(SpokenClause clause) => Enumerable.Range(clause.Start, clause.Next - clause.Start).Any(at => at > clause.First
        && (clause.Text(at) is "feeds" or "supplies" || clause.Text(at) == "leads" && clause.Stem(at + 1) == "to" && !clause.IsNumber(at + 2))
        && !clause.Tokens[at - 1].Plural && (clause.AfterName(at - 1) > at - 1 || clause.Describes(at - 1) || clause.IsUnknown(at - 1)));

    // "We gap them at point eight", "we lead two one".
    private static bool IsHabit(SpokenClause clause) => Enumerable.Range(clause.First, clause.Next - clause.First).Any(at => at > clause.First
        && clause.Text(at - 1) is "i" or "we" or "you" or "they"
        && clause.Text(at) is "feed" or "supply" or "gap" or "plug" or "lead" or "wire" or "cap" or "mark" or "time" or "coil");

    // "The twelve volt coil", "a nine k coil", "a thirteen millimetre spanner".
    private static IEnumerable<(int First, int Next)> Sizes(SpokenClause clause)
    {
        for (var at = clause.First; at + 1 < clause.Next; at++)
        {
            if (clause.Stem(at) is "a" or "an" or "the" or "any" or "another" or "every" or "no" && Size(clause, at + 1) is { } next
                && (Names(clause, next) || clause.Stem(next) == "one" && !IsTried(clause, at)) && !clause.NamesPlace(next))
            {
                yield return (at + 1, next);
            }
        }
    }

    // "My point three blade is bent": a blade's size is a reading only where it goes or does not.
    private static IEnumerable<(int First, int Next)> Tools(SpokenClause clause)
    {
        for (var at = clause.First; at < clause.Next; at++)
        {
            if (clause.IsNumber(at) && !(at > clause.First && clause.IsNumber(at - 1)) && AfterSize(clause, at).Any(next => clause.Stem(next) is "blade" or "feeler" or "gauge" or "leaf" or "shim") && !IsTried(clause, at))
            {
                yield return (clause.First, clause.Next);
            }
        }
    }

    private static IEnumerable<int> AfterSize(SpokenClause clause, int at) =>
        clause.Numbers.Numbers(at).SelectMany(number => clause.Numbers.Unit(number.Next) is { } unit ? [number.Next, unit.Next] : new[] { number.Next });

    // What was tried may be told before or after.
    private static bool IsTried(SpokenClause clause, int at) => Enumerable.Range(Math.Max(0, at - MostAround), MostAround * 2).TakeWhile(word => word < clause.Tokens.Count).Any(word =>
        clause.Tokens[word].Stem is "in" or "through" or "between" or "gap" or "fit" or "under" or "with"
        || clause.Phrases.Means(word, term => term.Role is Role.Goes or Role.Stops or Role.DoesNot or Role.Does));

    private static int? Size(SpokenClause clause, int at)
    {
        foreach (var number in clause.Numbers.Numbers(at))
        {
            if (clause.Numbers.Unit(number.Next) is { } unit && unit.Next < clause.Next && !clause.Tokens[unit.Next - 1].Plural)
            {
                return unit.Next;
            }
        }

        return null;
    }

    private static bool Names(SpokenClause clause, int at)
    {
        var after = clause.AfterName(at);
        return after > at
            ? !IsMeasured(clause, at, after)
            : clause.IsUnknown(at) && !clause.Tokens[at].Plural && clause.Text(at) is var word
                && !word.EndsWith("ed", StringComparison.Ordinal) && !word.EndsWith("ing", StringComparison.Ordinal) && !word.EndsWith("ly", StringComparison.Ordinal);
    }
}

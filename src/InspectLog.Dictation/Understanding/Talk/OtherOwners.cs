using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Talk;

/// <summary>Tells parts that belong to somebody or something else: "his rotor", "the dog's lead".</summary>
internal static class OtherOwners
{
    private const int MostBetween = 2;

    private const int MostBefore = 4;

    /// <summary>The stretches of a clause that speak of what is another's.</summary>
    public static IEnumerable<(int First, int Next)> In(SpokenClause clause)
    {
        if (Other(clause) is { } other)
        {
            yield return (clause.First, EndOfOther(clause, other));
        }

        if (Actor(clause))
        {
            yield return (clause.First, clause.Next);
        }

        for (var at = clause.First; at < clause.Next; at++)
        {
            if (clause.Stem(at) == "from" && at > clause.First && clause.AfterName(at - 1) == at && clause.Stem(at + 1) is "a" or "an" or "another" or "my" or "his"
                && (clause.IsUnknown(at + 2) || clause.Means(at + 2, term => term.Role == Role.OtherPart)))
            {
                // "A burnt rotor from a racing car."
                yield return (clause.First, clause.Next);
            }

            if (Happened(clause, at))
            {
                yield return (at, clause.Next);
            }

            if (clause.Stem(at) is "his" or "their" && NameWithin(clause, at + 1)
                || clause.Text(at) == "'s" && clause.IsUnknown(at - 1) && clause.AfterName(at + 1) > at + 1)
            {
                yield return (clause.First, clause.Next);
            }
        }
    }

    /// <summary>"The spare cap has a burnt tower"; but "fitted the spare rotor".</summary>
    public static bool IsSpare(SpokenClause clause)
    {
        var words = Enumerable.Range(clause.First, clause.Next - clause.First);
        return words.Any(at => clause.Stem(at) is "spare" or "scrap" && clause.AfterName(at + 1) > at + 1)
            && !words.Any(at => clause.Means(at, term => term.Action is not null) || clause.Stem(at) is "on" or "in" or "back");
    }

    // "I burnt my arm", "he cracked a joke": what a person did to something that is no part.
    private static bool Happened(SpokenClause clause, int at)
    {
        if (clause.Text(at) is not ("i" or "he" or "we" or "they" or "you") || clause.Phrases.Match(at + 1) is not { } did || !clause.Means(at + 1, term => term.Condition is not null))
        {
            return false;
        }

        var to = at + 1 + did.Length;
        return clause.Stem(to) is "my" or "his" or "their" or "your" or "our" || clause.Stem(to) is "a" or "the" && clause.IsUnknown(to + 1);
    }

    // "The alternator gives", "the six cylinder version runs": the token after the name of another part that something is
    // said of.
    private static int? Other(SpokenClause clause)
    {
        for (var at = clause.Start; at < Math.Min(clause.Next, clause.Start + MostBefore); at++)
        {
            if (clause.Means(at, term => term.Role == Role.OtherPart) && clause.Text(at) != "point")
            {
                var after = at + clause.Phrases.Match(at)!.Value.Length;
                return clause.IsVerb(after) || clause.Describes(after) ? after : null;
            }

            if (clause.AfterName(at) > at && clause.Stem(at) != "cylinder" || clause.Means(at, term => term.Role is Role.Verb or Role.Was or Role.Preposition or Role.Person))
            {
                return null;
            }
        }

        return null;
    }

    // Up to what is said of a part of ours: "the hose is split and the cap is cracked".
    private static int EndOfOther(SpokenClause clause, int at)
    {
        while (at < clause.Next && !(clause.Stem(at) == "and" && (clause.Stem(at + 1) is "the" or "it" or "i" or "we" || clause.AfterName(at + 1) > at + 1)))
        {
            at++;
        }

        return at;
    }

    // "The AA man swapped a lead": somebody else did it.
    private static bool Actor(SpokenClause clause)
    {
        var at = clause.Stem(clause.Start) is "the" or "a" or "my" or "our" or "some" ? clause.Start + 1 : clause.Start;
        var first = at;
        while (at < Math.Min(clause.Next, first + MostBefore) && clause.IsUnknown(at) && !clause.Text(at).EndsWith("ly", StringComparison.Ordinal))
        {
            at++;
        }

        return at > first && clause.Means(at, term => term.Action is not null) && clause.Text(at).EndsWith("ed", StringComparison.Ordinal)
            && clause.Phrases.Match(at) is { } did && (clause.Stem(at + did.Length) is "a" or "the" or "his" or "their" or "both" or "all" || clause.AfterName(at + did.Length) > at + did.Length);
    }

    private static bool NameWithin(SpokenClause clause, int at) =>
        Enumerable.Range(at, Math.Max(0, Math.Min(clause.Next - at, MostBetween + 1))).Any(name => clause.AfterName(name) > name);
}

using InspectLog.Dictation.Understanding.Numbers;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Talk;

/// <summary>Tells prices, counts and times of day from values and cylinders by what stands around them: "twelve for the
/// cap", "three pairs of boots", "twenty past four".</summary>
internal static class PricesAndCounts
{
    private static readonly HashSet<string> Measures = new(
        "pair|set|box|bag|pack|packet|roll|kind|sort|type|brand|make|tin|tube|bottle|lot|batch|half|third|quarter|time|go|try|attempt|way".Split('|'), StringComparer.Ordinal);

    /// <summary>The numbers of a clause that are counts or times, and the names of what is not meant.</summary>
    public static IEnumerable<(int First, int Next)> In(SpokenClause clause)
    {
        if (clause.Stem(clause.Start) == "not" && clause.Stem(clause.Start + 1) == "the" && clause.AfterName(clause.Start + 2) == clause.Next && clause.Next > clause.Start + 2)
        {
            // "That was the battery, not the feed, twelve point six."
            yield return (clause.Start, clause.Next);
        }

        for (var at = clause.First; at < clause.Next; at++)
        {
            if (clause.Stem(at) == "past" && clause.IsNumber(at + 1) && at > clause.First && (clause.IsNumber(at - 1) || clause.Stem(at - 1) is "half" or "quarter" or "minute"))
            {
                yield return (at + 1, at + 2);
                if (clause.IsNumber(at - 1))
                {
                    yield return (at - 1, at);
                }
            }
            else if (clause.IsNumber(at) && !Continues(clause, at) && Whole(clause, at) is { } next)
            {
                if (Counts(clause, at, next))
                {
                    yield return (at, next);
                }
                else if (CountsOthers(clause, at, next))
                {
                    yield return (at, next + 1);
                }
            }
        }
    }

    /// <summary>"Six times eleven is sixty six": sums.</summary>
    public static IEnumerable<(int First, int Next)> Sums(SpokenClause clause) =>
        Enumerable.Range(clause.First, clause.Next - clause.First)
            .Where(at => clause.Text(at) is "times" or "divided" or "multiplied" && at > clause.First && clause.IsNumber(at - 1))
            .Select(_ => (clause.First, clause.Next)).Take(1);

    /// <summary>The stretches of a clause that tell a price: from the price on, for what follows is mostly the next.</summary>
    public static IEnumerable<(int First, int Next)> Prices(SpokenClause clause)
    {
        for (var at = clause.First; at < clause.Next; at++)
        {
            if (clause.IsNumber(at) && !Continues(clause, at) && WholeBefore(clause, at, "for") is { } next && PricedAfter(clause, next + 1))
            {
                yield return (at, clause.Next);
            }
        }
    }

    // "Three pairs of", "one cap and one coil": of what a car has one, a number counts.
    private static bool Counts(SpokenClause clause, int at, int next) =>
        Measures.Contains(clause.Stem(next)) && clause.Stem(next + 1) == "of"
        || clause.Stem(at - 1) == "all" && clause.Stem(next) == "to"
        || clause.Stem(next) == "to" && clause.Stem(next + 1) == "go"
        || clause.Stem(at) == "one" && clause.Stem(at - 1) is "found" or "lost" or "want" or "need" or "bring" or "fetch" && next == clause.Next
        || clause.Stem(at) != "one" && clause.Stem(next) is "new" or "old" or "spare" or "good" or "more" or "other" && clause.AfterName(next + 1) is var many && many > next + 1
            && clause.Tokens[many - 1].Plural && !Names(clause, at - 1)
        || clause.Stem(at) is "one" or "1" && next == at + 1 && clause.AfterName(next) is var after && after > next && !clause.Phrases.Lexicon.IsPlaceNoun(clause.Stem(after - 1))
            && !Generalities.IsMeasured(clause, next, after) && (clause.Stem(at - 1) == "and" || !Names(clause, at - 1) || clause.Tokens[at - 1].Plural);

    // "With two clips", "four brackets": but "lead two leaks".
    private static bool CountsOthers(SpokenClause clause, int at, int next) =>
        clause.IsUnknown(next) && NumberWords.Denominator(clause.Stem(next)) is null && clause.Tokens[next].Plural && clause.Text(next).Length > 3 && clause.Stem(at) != "one" && !Names(clause, at - 1)
        && clause.Stem(at - 1) is "with" or "has" or "had" or "have" or "got" or "are" or "were" or "by" or "need" or "the" or "only" or "these" or "those";

    private static bool Names(SpokenClause clause, int at) => at >= clause.First
        && (clause.AfterName(at) > at || clause.Phrases.Lexicon.IsPlaceNoun(clause.Stem(at)) || clause.Stem(at) is "number" or "cylinder" or "on" or "and" or "to" or "or" or "pot");

    private static int? Whole(SpokenClause clause, int at) =>
        clause.Numbers.Numbers(at) is [{ Whole: true } first, ..] && clause.Numbers.Unit(first.Next) is not { Foreign: false } ? first.Next : null;

    private static int? WholeBefore(SpokenClause clause, int at, string word)
    {
        foreach (var reading in clause.Numbers.Numbers(at))
        {
            if (reading.Whole && clause.Stem(reading.Next) == word)
            {
                return reading.Next;
            }
        }

        return null;
    }

    private static bool Continues(SpokenClause clause, int at) => at > clause.First && (clause.IsNumber(at - 1) || clause.Stem(at - 1) == "point");

    // A part, and no cylinder's: one reads a value for lead two, and pays for the leads.
    private static bool PricedAfter(SpokenClause clause, int at)
    {
        if (clause.Stem(at) is "the" or "a" or "each" or "all" or "both" or "that" or "this" or "new")
        {
            at++;
        }

        var after = clause.AfterName(at);
        return after > at && !NamesCylinder(clause, after) && !Generalities.IsMeasured(clause, at, after);
    }

    private static bool NamesCylinder(SpokenClause clause, int at) =>
        clause.IsNumber(at) && clause.Numbers.Numbers(at).Any(number => number.Whole && clause.Stem(number.Next) != "for");
}

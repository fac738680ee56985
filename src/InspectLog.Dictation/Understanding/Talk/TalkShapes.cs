using InspectLog.Dictation.Understanding.Numbers;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Talk;

/// <summary>Finds talk by how a clause is built, where no single phrase gives it away.</summary>
internal static class TalkShapes
{
    /// <summary>The numbers of a sentence that are neither values nor cylinders: each with the token after it, by its first.</summary>
    public static IReadOnlyDictionary<int, int> Figures(PhraseLookup phrases, NumberLookup numbers, int first, int next) =>
        ClauseCuts.Of(phrases.Tokens, first, next)
            .SelectMany(clause => PricesAndCounts.In(new(phrases, numbers, clause.First, clause.Next)))
            .GroupBy(figure => figure.First)
            .ToDictionary(figure => figure.Key, figure => figure.Max(one => one.Next));

    /// <summary>The stretches of a sentence that are no finding of this car.</summary>
    public static IEnumerable<(int First, int Next)> In(PhraseLookup phrases, NumberLookup numbers, int first, int next)
    {
        if (References.Opens(new(phrases, numbers, first, next)))
        {
            yield return (first, next);
        }

        foreach (var (from, to) in ClauseCuts.Of(phrases.Tokens, first, next))
        {
            var clause = new SpokenClause(phrases, numbers, from, to);
            if (OtherOwners.IsSpare(clause) || ProperNames.Compares(clause))
            {
                yield return (from, next);
            }

            foreach (var stretch in Generalities.In(clause).Concat(OtherOwners.In(clause)).Concat(ProperNames.In(clause)).Concat(Requests.In(clause)).Concat(PricesAndCounts.Prices(clause)).Concat(PricesAndCounts.Sums(clause)))
            {
                yield return stretch;
            }
        }
    }
}

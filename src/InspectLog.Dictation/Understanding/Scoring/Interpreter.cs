using InspectLog.Dictation.Understanding.Events;
using InspectLog.Dictation.Understanding.Lattice;

namespace InspectLog.Dictation.Understanding.Scoring;

/// <summary>A finding of the likeliest reading, with its probability.</summary>
/// <param name="Claim">What it says.</param>
/// <param name="Place">Its place; 0 for none.</param>
/// <param name="Found">Where it was said.</param>
/// <param name="Share">How much of the likelihood goes to readings that find it too.</param>
internal sealed record Belief(Claim Claim, int Place, Found Found, double Share);

/// <summary>The likeliest reading of a note.</summary>
/// <param name="Reading">The reading; null for a note without words.</param>
/// <param name="Beliefs">Its findings, in the order said.</param>
/// <param name="Share">How much of the likelihood it has.</param>
/// <param name="Rivals">The other readings with their shares, likeliest first.</param>
internal sealed record Outcome(Interpretation Reading, IReadOnlyList<Belief> Beliefs, double Share, IReadOnlyList<(Interpretation Reading, double Share)> Rivals);

/// <summary>Finds the likeliest reading of a note: those that say the same add up.</summary>
internal static class Interpreter
{
    /// <summary>Sets how much a note, and each of its sentences, sounds like talk.</summary>
    public static void JudgeTalk(Note note, WeightTable talk)
    {
        note.Talk = TalkOf(note, talk, 0, note.Length);
        var first = 0;
        for (var at = 0; at <= note.Length; at++)
        {
            if (at == note.Length || at > first && note.SentenceOf(at) != note.SentenceOf(first))
            {
                note.SetTalk(note.SentenceOf(first), TalkOf(note, talk, first, at));
                first = at;
            }
        }
    }

    /// <summary>The likeliest of some readings.</summary>
    public static Outcome Likeliest(IReadOnlyList<Interpretation> readings, WeightTable wholes)
    {
        var scores = new WholeScores(wholes);
        var shares = Probabilities.LogOf([.. readings.Select(scores.Of)]).Select(Probabilities.Exp).ToList();
        var groups = new Dictionary<string, (double Share, int Best)>(StringComparer.Ordinal);
        var claims = readings.Select(reading => Claims(reading.Found)).ToList();
        var marginal = new Dictionary<(Claim, int), double>();
        for (var at = 0; at < readings.Count; at++)
        {
            var key = string.Join(';', claims[at].Select(one => $"{one.Claim}@{one.Place}").Order(StringComparer.Ordinal));
            var group = groups.GetValueOrDefault(key, (0, at));
            groups[key] = (group.Share + shares[at], shares[at] > shares[group.Best] ? at : group.Best);
            foreach (var one in claims[at].Select(one => (one.Claim, one.Place)).Distinct())
            {
                marginal[one] = marginal.GetValueOrDefault(one) + shares[at];
            }
        }

        var order = groups.Values.OrderByDescending(group => group.Share).ThenBy(group => group.Best).ToList();
        var best = order[0].Best;
        return new(
            readings[best],
            [.. claims[best].Select(one => new Belief(one.Claim, one.Place, one.Found, Math.Min(1, marginal[(one.Claim, one.Place)])))],
            Math.Min(1, order[0].Share),
            [.. order.Skip(1).Select(group => (readings[group.Best], group.Share))]);
    }

    /// <summary>The findings of a reading, place by place, in the order said; conditions and actions once.</summary>
    public static List<(Claim Claim, int Place, Found Found)> Claims(Found? last)
    {
        var claims = new List<(Claim Claim, int Place, Found Found)>();
        foreach (var found in Found.All(last).Reverse())
        {
            foreach (var place in found.Places == 0 ? [0] : PlaceSets.Of(found.Places))
            {
                if (found.Claim.Kind == FindingKind.Reading || !claims.Exists(known => known.Claim == found.Claim && known.Place == place))
                {
                    claims.Add((found.Claim, place, found));
                }
            }
        }

        return claims;
    }

    private static double TalkOf(Note note, WeightTable talk, int first, int next) => talk.Sum(TalkFeatures.Of(note, first, next));
}

using InspectLog.Dictation.Understanding.Events;

namespace InspectLog.Dictation.Understanding.Scoring;

/// <content>What the other likely readings say, and how the finding itself was come to.</content>
internal static partial class DoubtFeatures
{
    private const double LeastLog = -6;
    private const double MostOdds = 4;

    // How much goes to readings that agree in its sentence, and to those that find it at whatever place.
    private static void AddRivals(Outcome outcome, Belief belief, RealFeatures to)
    {
        var (sentence, anywhere) = (outcome.Share, belief.Share);
        var mine = InSentence(outcome.Reading, belief);
        foreach (var (reading, share) in outcome.Rivals)
        {
            sentence += mine.SetEquals(InSentence(reading, belief)) ? share : 0;
            var at = Found.All(reading.Found).Where(found => found.Claim == belief.Claim).Aggregate(0L, (set, found) => set | (found.Places == 0 ? PlaceSets.One(PlaceSets.Most) : found.Places));
            anywhere += at != 0 && (at & (belief.Place == 0 ? PlaceSets.One(PlaceSets.Most) : PlaceSets.One(belief.Place))) == 0 ? share : 0;
        }

        var rival = outcome.Rivals.Count == 0 ? 0 : outcome.Rivals[0].Share;
        to.Add(Feature.DoubtSentenceShare, Probabilities.LogOdds(Math.Min(1, sentence)));
        to.Add(Feature.DoubtAnywhere, Probabilities.LogOdds(Math.Min(1, anywhere)));
        to.Add(Feature.DoubtRival, Probabilities.Log(Math.Max(outcome.Share, 1e-3) / Math.Max(rival, 1e-3)));
        var (shareStep, sentenceStep) = (Step(belief.Share, -1, 8), Step(sentence, -3, 6));
        to.Has(Feature.DoubtShareStep, 0, shareStep);
        to.Has(Feature.DoubtShareStep, 1, sentenceStep);
        to.Has(Feature.DoubtShareStep, 2, sentenceStep, (int)belief.Found.Event.Kind);
        to.Has(Feature.DoubtShareStep, 3, sentenceStep, Math.Min(5, outcome.Beliefs.Select(one => one.Found.Event).Distinct().Count()));
        to.Has(Feature.DoubtShareStep, 4, shareStep, Math.Min(4, outcome.Reading.Scene.Note.Length / 10));
        to.Has(Feature.DoubtShareStep, 5, Step(outcome.Share, -3, 4), Step(anywhere, 0, 6));
    }

    private static int Step(double share, int least, int most) => (int)Math.Clamp(Math.Round(Probabilities.LogOdds(Math.Min(1, share))), least, most);

    // What sort of thing is said, and by which everyday word.
    private static void AddWhat(NoteScene scene, Found found, RealFeatures to)
    {
        var (check, claim) = (scene.Checks[found.Claim.Check], found.Claim);
        to.Has(Feature.DoubtWhat, check.Shape, claim.Negated ? 1 : 0);
        if (claim.Condition >= 0)
        {
            to.Has(Feature.DoubtWhat, -1, (int)check.Check.Conditions[claim.Condition].Meaning, claim.Negated ? 1 : 0);
        }

        if (claim.Action is { } action)
        {
            to.Has(Feature.DoubtWhat, -2, Checks.PartActions.All.ToList().IndexOf(action));
            to.Has(Feature.DoubtWhat, -3, scene.Note.Word(found.Event.First), scene.Note.Word(found.Event.Next - 1));
            to.Has(Feature.DoubtWhat, -4, scene.Note.ShapeAt(found.Event.First - 1));
        }

        if (found.Event.Kind == EventKind.Answer)
        {
            to.Has(Feature.DoubtWhat, -5, (int)found.Event.Role, scene.Note.Word(found.Event.First));
        }
    }

    private static HashSet<(Claim, long)> InSentence(Interpretation reading, Belief belief) =>
        [.. Found.All(reading.Found).Where(found => reading.Scene.InSentence(found.Event.First, belief.Found.Event.First)).Select(found => (found.Claim, found.Places))];

    // How likely its own choices were, and the least likely one of its sentence.
    private static void AddOwnChoices(ReadingState state, Found found, RealFeatures to)
    {
        var (kept, placed, least) = (0.0, 0.0, 0.0);
        for (var decision = state.Last; decision is not null; decision = decision.Before)
        {
            if (decision.At == found.Event.First)
            {
                kept = decision.Kind == ChoiceKind.Keep ? decision.LogProbability : kept;
                placed = decision.Kind == ChoiceKind.Places ? decision.LogProbability : placed;
            }

            least = Math.Min(least, decision.LogProbability);
        }

        to.Add(Feature.DoubtKept, OddsOf(kept));
        to.Add(Feature.DoubtPlaced, OddsOf(placed));
        to.Add(Feature.DoubtSentenceLeast, OddsOf(least));
        to.Has(Feature.DoubtHow, 0, (int)Math.Round(OddsOf(kept)));
        to.Has(Feature.DoubtHow, 1, (int)Math.Round(OddsOf(placed)));
        to.Has(Feature.DoubtHow, 2, (int)Math.Round(OddsOf(kept)), (int)Math.Round(OddsOf(placed)));
        to.Has(Feature.DoubtHow, 3, (int)Math.Round(OddsOf(kept)), (int)found.Event.Kind);
    }

    private static double OddsOf(double log) => Math.Min(MostOdds, Probabilities.LogOdds(Probabilities.Exp(Math.Max(log, LeastLog))));
}

using InspectLog.Dictation.Understanding.Lattice;
using InspectLog.Dictation.Understanding.Scoring;

namespace InspectLog.Dictation.Understanding.Saying;

/// <summary>Whether a finding is marked to be looked at.</summary>
internal static class Marking
{
    /// <summary>Whether it may stand unmarked.</summary>
    public static bool IsPlain(ReaderModel model, Outcome outcome, Belief belief) =>
        SureOf(model, outcome, belief) >= (belief.Claim.Kind == FindingKind.Reading ? model.PlainReading : model.PlainOther) && !IsRuled(outcome, belief);

    /// <summary>How likely it is right.</summary>
    public static double SureOf(ReaderModel model, Outcome outcome, Belief belief) =>
        Probabilities.Logistic(model.Doubt.Sum(DoubtFeatures.Of(outcome, belief)));

    /// <summary>Whether it is marked however likely it is.</summary>
    public static bool IsRuled(Outcome outcome, Belief belief)
    {
        var scene = outcome.Reading.Scene;
        return (belief.Claim.Kind == FindingKind.Reading || DoubtReasons.IsPlaceUnsaid(scene, belief)) && DoubtReasons.UnusedNumbers(outcome, belief.Found).Any()
            || DoubtReasons.IsPlaceImplied(scene, belief)
            || DoubtReasons.LacksPlace(scene, belief)
            || DoubtReasons.IsHedged(scene, belief.Found)
            || belief.Claim.Value is { } value && !scene.Checks[belief.Claim.Check].Measurand!.Plausible.Holds(value)
            || DoubtReasons.Heard(scene, belief.Found).Any();
    }
}

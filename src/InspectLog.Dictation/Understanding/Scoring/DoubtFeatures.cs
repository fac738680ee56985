using InspectLog.Dictation.Understanding.Events;
using InspectLog.Dictation.Understanding.Language;
using InspectLog.Dictation.Understanding.Lattice;

namespace InspectLog.Dictation.Understanding.Scoring;

/// <summary>What speaks for and against one finding, beside its share of the likeliest readings.</summary>
internal static partial class DoubtFeatures
{
    /// <summary>The features of a finding of the likeliest reading.</summary>
    public static RealFeatures Of(Outcome outcome, Belief belief)
    {
        var (reading, found) = (outcome.Reading, belief.Found);
        var (scene, note) = (reading.Scene, reading.Scene.Note);
        var to = new RealFeatures { Scope = found.Claim.Kind == FindingKind.Reading ? 1 : 2 };
        to.Has(Feature.Doubt);
        to.Add(Feature.DoubtShare, Probabilities.LogOdds(belief.Share));
        to.Add(Feature.DoubtWhole, Probabilities.LogOdds(outcome.Share));
        AddRivals(outcome, belief, to);
        AddOwnChoices(reading.State, found, to);
        AddWhat(scene, found, to);
        AddUnused(reading, found, to);
        var (clause, all) = (0, 0);
        for (var at = 0; at < note.Length; at++)
        {
            clause += note.IsUnknown(at) && scene.InClause(at, found.Event.First) ? 1 : 0;
            all += note.IsUnknown(at) ? 1 : 0;
        }

        to.Has(Feature.DoubtUnknown, Math.Min(clause, 2));
        to.Add(Feature.DoubtUnknownAll, Math.Min(all, 5));
        to.Add(Feature.DoubtTalk, Math.Clamp(note.Talk, -4, 4));
        to.Add(Feature.DoubtSentenceTalk, Math.Clamp(note.TalkOf(found.Event.First), -4, 4));
        var naming = note.Names.Exists(name => Evidence.KindOf(name, found.Claim.Check) == true) ? 3
            : note.Names.Exists(name => Evidence.KindOf(name, found.Claim.Check) is not null) ? 2
            : note.Open?.Index == found.Claim.Check ? 1 : 0;
        to.Has(Feature.DoubtNaming, naming);
        to.Has(Feature.DoubtHeard, note.Names.Exists(name => name.Cost > 0 && Evidence.KindOf(name, found.Claim.Check) is not null) || found.Event.Condition is { Cost: > 0 } ? 1 : 0);
        to.Has(Feature.DoubtCorrection, note.Of(SpeechRole.Retraction).Count > 0 ? 1 : 0);
        if (scene.Checks[found.Claim.Check].PerPlace)
        {
            to.Has(Feature.DoubtPlace, found.Places == 0 ? 0 : scene.Groups.Exists(group => group.Kind == Quantifier.Numbers && (group.Places & found.Places) != 0) ? 1 : 2);
        }

        AddValue(scene, found, to);
        to.Add(Feature.DoubtCount, Math.Min(6, Found.All(reading.Found).Count()));
        return to;
    }

    private static void AddUnused(Interpretation reading, Found found, RealFeatures to)
    {
        var scene = reading.Scene;
        var events = Found.All(reading.Found).Select(one => one.Event).ToHashSet();
        var dropped = scene.Events.Count(one => one.Kind == EventKind.Value && !events.Contains(one) && scene.InSentence(one.First, found.Event.First)) - (found.Claim.Bracket is null ? 0 : 1);
        to.Has(Feature.DoubtDropped, Math.Clamp(dropped, 0, 1));
        var beside = scene.Events.Where(one => one.Kind is EventKind.Condition or EventKind.Action && !events.Contains(one) && !events.Any(kept => kept.First == one.First)).ToList();
        to.Has(Feature.DoubtBeside, Math.Min(2, beside.Count(one => scene.InClause(one.First, found.Event.First))));
        to.Has(Feature.DoubtBesideSentence, Math.Min(3, beside.Count(one => scene.InSentence(one.First, found.Event.First))));
        var places = Found.All(reading.Found).Aggregate(0L, (set, one) => set | one.Places);
        to.Has(Feature.DoubtPlaces, scene.Groups.Exists(group => group.Kind == Quantifier.Numbers && (group.Places & ~places) != 0 && scene.InSentence(group.First, found.Event.First)) ? 1 : 0);
        var checks = Found.All(reading.Found).Select(one => one.Claim.Check).ToHashSet();
        to.Has(Feature.DoubtNames, Math.Min(2, scene.Note.Names.Count(name => scene.InSentence(name.First, found.Event.First) && !name.Meanings.Any(naming => checks.Contains(naming.Check)))));
        to.Has(Feature.DoubtLength, Math.Min(6, scene.Note.Length / 8));
        to.Add(Feature.DoubtChoice, LeastChoice(reading.State, found));
        var others = scene.Segments.Where(number => number.Role == NumberRole.Other && number.Form is not (NumberForm.Ordinal or NumberForm.Alike)
            && !scene.Note.Quantifiers.Exists(span => span.First <= number.First && number.First < span.Next)).ToList();
        to.Has(Feature.DoubtNumber, others.Exists(number => scene.InClause(number.First, found.Event.First)) ? 2 : others.Exists(number => scene.InSentence(number.First, found.Event.First)) ? 1 : 0);
        to.Has(Feature.DoubtAlike, scene.Segments.Any(number => number.Form == NumberForm.Alike && number.Role != NumberRole.Other) ? 1 : 0);
    }

    // The least likely choice that has to do with the kind of event.
    private static double LeastChoice(ReadingState state, Found found)
    {
        var least = 0.0;
        for (var decision = state.Last; decision is not null; decision = decision.Before)
        {
            least = decision.EventKind == (int)found.Event.Kind || decision.Kind == ChoiceKind.Numbers ? Math.Min(least, decision.LogProbability) : least;
        }

        return Math.Max(least, -4);
    }

    private static void AddValue(NoteScene scene, Found found, RealFeatures to)
    {
        if (found.Event.Number is not { } number || found.Claim.Value is not { } value)
        {
            to.Has(Feature.DoubtEvent, (int)found.Event.Kind);
            return;
        }

        var check = scene.Checks[found.Claim.Check];
        to.Has(Feature.DoubtForm, (int)number.Form, number.Units is null ? 0 : 1);
        to.Has(Feature.DoubtDistance, ValueMeanings.Distance(check.Measurand!, value));
        if (number.Units is null)
        {
            to.Has(Feature.DoubtFits, Math.Min(3, scene.Checks.Count(other => ValueMeanings.Fits(other, number))));
            to.Has(Feature.DoubtSource, ValueMeanings.Of(check, number).Where(meaning => Math.Abs(Math.Abs(meaning.Value) - Math.Abs(value)) < 1e-6 * Math.Max(1, Math.Abs(value))).Select(meaning => (int)meaning.Source).DefaultIfEmpty(5).First());
        }
    }
}

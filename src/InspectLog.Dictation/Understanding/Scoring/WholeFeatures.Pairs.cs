using InspectLog.Dictation.Understanding.Events;
using InspectLog.Dictation.Understanding.Language;

namespace InspectLog.Dictation.Understanding.Scoring;

/// <content>How two findings go together.</content>
internal sealed partial class WholeFeatures
{
    private void AddPair(Found one, Found other)
    {
        var overlap = one.Places == other.Places ? 2 : (one.Places & other.Places) != 0 ? 1 : 0;
        var sameCheck = one.Claim.Check == other.Claim.Check;
        var boundary = (int)_note.Between(one.Event.Next, other.Event.First);
        _to.Has(Feature.Pair, (int)one.Claim.Kind * 4 + (int)other.Claim.Kind, Flag(sameCheck), overlap);
        if (!sameCheck)
        {
            if (one.Claim.Kind == FindingKind.Reading && other.Claim.Kind == FindingKind.Reading)
            {
                _to.Has(Feature.PairReadings, boundary);
            }

            if (_scene.Checks[one.Claim.Check].NounStem is { } noun && noun == _scene.Checks[other.Claim.Check].NounStem)
            {
                _to.Has(Feature.PairPart, overlap, (int)one.Claim.Kind * 4 + (int)other.Claim.Kind);
            }

            return;
        }

        if (overlap == 0 || one.Claim.Kind != other.Claim.Kind)
        {
            return;
        }

        switch (one.Claim.Kind)
        {
            case FindingKind.Observation:
                var agree = one.Claim.Condition != other.Claim.Condition ? 0 : one.Claim.Negated == other.Claim.Negated ? 1 : 2;
                _to.Has(Feature.PairConditions, agree, boundary);
                var mended = _found.Exists(found => found.Claim.Kind == FindingKind.Action && found.Event.First >= one.Event.Next && found.Event.First <= other.Event.First);
                var clash = IsGood(one.Claim) != IsGood(other.Claim);
                _to.Has(Feature.OneClash, Flag(clash) + 2 * Flag(mended), overlap, Math.Max(0, boundary - 1), Flag(other.Event.Kind == EventKind.Answer));
                if (!one.Claim.Negated && !other.Claim.Negated)
                {
                    _to.Has(Feature.PairMeanings, MeaningOf(one.Claim), MeaningOf(other.Claim));
                }

                break;
            case FindingKind.Reading:
                var corrected = _scene.HasBetween(SpeechRole.Correction, one.Event.Next, other.Event.First + 1);
                var retracted = _scene.HasBetween(SpeechRole.Retraction, one.Event.Next, other.Event.First + 1);
                _to.Has(Feature.PairValues, overlap, Flag(corrected) + 2 * Flag(retracted), Flag(one.Claim.Value == other.Claim.Value), boundary);
                break;
            default:
                _to.Has(Feature.PairActions, Checks.PartActions.All.ToList().IndexOf(one.Claim.Action!), Checks.PartActions.All.ToList().IndexOf(other.Claim.Action!));
                break;
        }
    }

    private bool IsGood(Claim claim) => (_scene.Checks[claim.Check].Check.Conditions[claim.Condition].Meaning == Checks.ConditionMeaning.Good) != claim.Negated;

    private int MeaningOf(Claim claim) => (int)_scene.Checks[claim.Check].Check.Conditions[claim.Condition].Meaning;
}

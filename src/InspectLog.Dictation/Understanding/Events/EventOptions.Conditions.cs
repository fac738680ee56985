using InspectLog.Dictation.Understanding.Language;
using InspectLog.Dictation.Understanding.Lattice;
using InspectLog.Dictation.Understanding.Scoring;
using InspectLog.Dictation.Understanding.Texts;

namespace InspectLog.Dictation.Understanding.Events;

/// <content>Observations.</content>
internal sealed partial class EventOptions
{
    private const int NegationReach = 4;

    private void AddConditionDrop(NoteEvent found, Phrase<Meaning> condition)
    {
        var meanings = condition.Meanings.Aggregate(0, (set, meaning) => set | 1 << (int)Of(meaning).Meaning);
        var general = condition.Meanings.Any(meaning => Note.Lexicon.IsGeneral(Note.PhraseOf(condition.First, condition.Next), meaning.Check));
        var language = Note.Lexicon.Language;
        if (condition.Cost > 0)
        {
            _features.Add(Feature.ConditionHeard, NoteScene.CostStep(condition.Cost), Math.Min(condition.Length, 2));
            _features.Add(Feature.ConditionHeard);
        }

        _features.Add(Feature.ConditionMeanings, meanings);
        _features.Add(Feature.ConditionGeneral, Flag(general));
        _features.Add(Feature.ConditionLength, Math.Min(condition.Length, 3), Flag(language.Small.Contains(Note.Tokens[condition.First].Text)));
        _features.Add(Feature.ConditionEveryday, Flag(language.Actions.Longest(Note.Tokens, condition.First) is not null), Flag(language.Roles.Longest(Note.Tokens, condition.First) is not null));
        _features.Add(Feature.ConditionAnchored, Flag(condition.Meanings.Any(meaning => Note.Names.Exists(name => Evidence.KindOf(name, meaning.Check) is not null && scene.InClause(name.First, found.First)))));
        _features.Add(Feature.ConditionEnding, EndingOf(condition), Note.ShapeAt(condition.First - 1));
        if (general)
        {
            _features.Add(Feature.ConditionPraise, Note.Word(condition.First), Note.Word(condition.Next - 1), condition.Length);
        }
    }

    // How the word is built tells a noun, a state and what goes on apart, without the word.
    private int EndingOf(Phrase<Meaning> condition)
    {
        var text = Note.Tokens[condition.Next - 1].Text;
        return text.Length > 3 ? WordIds.Of(text[^2..]) : 0;
    }

    private void AddConditions(NoteEvent found, Phrase<Meaning> condition, List<EventOption> options)
    {
        var checks = condition.Meanings.Select(meaning => meaning.Check).Distinct().Count();
        var counted = Note.Quantifiers.Exists(span => span.Meanings.Contains(Quantifier.None) && span.First < found.First && scene.InClause(span.First, found.First));
        foreach (var ofCheck in condition.Meanings.GroupBy(meaning => meaning.Check))
        {
            var shared = EvidenceFor(found, scene.Checks[ofCheck.Key]);
            foreach (var meaning in ofCheck)
            {
                foreach (var negated in new[] { false, true })
                {
                    _features.Add(Feature.ConditionChecks, Math.Min(checks, 4));
                    _features.Add(Feature.ConditionIsName, Flag(IsId(condition, meaning)));
                    _features.Add(Feature.ConditionSameCheck, Math.Min(ofCheck.Count(), 3));
                    AddNegation(found, meaning, negated, counted);
                    Keep(options, Claim.Observation(meaning.Check, meaning.Condition, negated), shared);
                }
            }
        }
    }

    private void AddNegation(NoteEvent found, Meaning meaning, bool negated, bool counted)
    {
        var sign = negated ? 2 : 1;
        _features.Add(Feature.Polarity, sign);
        scene.AddRole(_features, Feature.PolarityRole, SpeechRole.Negation, found.First, found.Next, NegationReach, sign);
        scene.AddRole(_features, Feature.PolarityRole, SpeechRole.Exception, found.First, found.Next, NegationReach, sign);
        _features.Add(Feature.PolarityLeft, sign, Note.ShapeAt(found.First - 1));
        _features.Add(Feature.PolarityLeft, sign, Note.ShapeAt(found.First - 1), Note.ShapeAt(found.First - 2));
        _features.Add(Feature.PolarityRight, sign, Note.ShapeAt(found.Next));
        _features.Add(Feature.PolarityNone, sign, Flag(counted));
        _features.Add(Feature.PolarityMeaning, sign, (int)Of(meaning).Meaning);
        _features.Add(Feature.PolarityClause, sign, Flag(Note.Of(SpeechRole.Negation).Any(word => word.Next <= found.First && scene.InClause(word.First, found.First))), (int)Of(meaning).Meaning);
    }

    private Checks.Condition Of(Meaning meaning) => scene.Checks[meaning.Check].Check.Conditions[meaning.Condition];

    private bool IsId(Phrase<Meaning> condition, Meaning meaning) =>
        string.Join(' ', Note.Lexicon.Language.Tokenizer.StemsOf(Of(meaning).Id)) == Note.PhraseOf(condition.First, condition.Next);
}

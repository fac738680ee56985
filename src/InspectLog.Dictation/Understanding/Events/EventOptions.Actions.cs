using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Language;
using InspectLog.Dictation.Understanding.Lattice;
using InspectLog.Dictation.Understanding.Scoring;
using InspectLog.Dictation.Understanding.Texts;

namespace InspectLog.Dictation.Understanding.Events;

/// <content>Actions.</content>
internal sealed partial class EventOptions
{
    private static readonly SpeechRole[] ActionRoles = [SpeechRole.Before, SpeechRole.After, SpeechRole.Negation];

    private static readonly SpeechRole[] TenseRoles = [SpeechRole.Planned, SpeechRole.Supposed, SpeechRole.Question, SpeechRole.Negation, SpeechRole.Elsewhere, SpeechRole.Before];

    private void AddActionDrop(NoteEvent found, Phrase<string> action)
    {
        var (phrase, tense) = (PhraseId(action), TenseOf(action));
        var opens = found.First == 0 || Note.Between(found.First - 1, found.First) >= Boundary.Clause;
        _features.Add(Feature.ActionPhrase, phrase);
        _features.Add(Feature.ActionPhrase, phrase, Note.Word(found.First - 1));
        _features.Add(Feature.ActionPhraseRight, phrase, Note.ShapeAt(found.Next));
        _features.Add(Feature.ActionTense, tense);
        _features.Add(Feature.ActionTense, tense, 1 + Flag(opens));
        _features.Add(Feature.ActionTenseLeft, tense, Note.ShapeAt(found.First - 1));
        _features.Add(Feature.ActionValues, Flag(scene.Events.Exists(other => other.Kind == EventKind.Value)), Flag(scene.Events.Exists(other => other.Kind == EventKind.Value && scene.InClause(other.First, found.First))));
        foreach (var role in TenseRoles.Where(role => Note.Of(role).Any(word => word.Next <= found.First && scene.InSentence(word.First, found.First))))
        {
            _features.Add(Feature.ActionTenseRole, tense, (int)role);
        }

        foreach (var other in scene.Events.Where(other => other.Kind == EventKind.Action && other != found && scene.InSentence(other.First, found.First)))
        {
            var before = Flag(other.First < found.First);
            _features.Add(Feature.ActionBeside, PhraseId(other.Action!), phrase);
            _features.Add(Feature.ActionBesideMeaning, Meanings(other.Action!), phrase, before);
            _features.Add(Feature.ActionBesideMeanings, Meanings(other.Action!), Meanings(action), before, (int)Note.Between(Math.Min(other.Next, found.Next), Math.Max(other.First, found.First)));
        }
    }

    private void AddActions(NoteEvent found, Phrase<string> action, List<EventOption> options)
    {
        foreach (var check in scene.Checks.Where(check => check.Check.Actions.Any(action.Meanings.Contains)))
        {
            var shared = EvidenceFor(found, check);
            foreach (var done in action.Meanings.Where(check.Check.Actions.Contains))
            {
                if (!check.MainForActions && done != PartActions.Adjusted && Note.Open != check && !Note.Names.Exists(name => Evidence.KindOf(name, check.Index) is not null))
                {
                    continue;
                }

                AddDone(found, action, check, PartActions.All.ToList().IndexOf(done));
                Keep(options, Claim.Done(check.Index, done), shared);
            }
        }
    }

    private void AddDone(NoteEvent found, Phrase<string> action, CheckEntry check, int done)
    {
        _features.Add(Feature.Action, done);
        _features.Add(Feature.ActionByPhrase, done, PhraseId(action));
        _features.Add(Feature.ActionMain, Flag(check.MainForActions), done);
        foreach (var role in ActionRoles)
        {
            scene.AddRole(_features, Feature.ActionRole, role, found.First, found.Next, 4, done);
        }

        var value = scene.Events.Exists(other => other.Kind == EventKind.Value && scene.InClause(other.First, found.First)) ? 2
            : scene.Events.Exists(other => other.Kind == EventKind.Value) ? 1 : 0;
        _features.Add(Feature.ActionMeasured, done, Flag(check.Measurand is not null), value);
        _features.Add(Feature.ActionValue, done, value);
        _features.Add(Feature.ActionRight, done, Note.ShapeAt(found.Next));
        var fits = scene.Events.Exists(other => other.Kind == EventKind.Value && scene.InSentence(other.First, found.First) && ValueMeanings.Fits(check, other.Number!));
        _features.Add(Feature.ActionFitsValue, done, Flag(fits), Flag(check.Measurand is not null));
    }

    private int PhraseId(Phrase<string> action) => WordIds.Of(Note.PhraseOf(action.First, action.Next));

    private static int Meanings(Phrase<string> action) => WordIds.Of(string.Join('/', action.Meanings));

    // By its ending, for nothing but the form of a verb: done, doing, or an order.
    private int TenseOf(Phrase<string> action)
    {
        var text = Note.Tokens[action.First].Text;
        return text.Length > 3 ? WordIds.Of(text[^2..]) : Note.Word(action.First);
    }
}

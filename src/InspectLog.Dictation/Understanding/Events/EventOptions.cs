using InspectLog.Dictation.Understanding.Language;
using InspectLog.Dictation.Understanding.Lattice;
using InspectLog.Dictation.Understanding.Scoring;

namespace InspectLog.Dictation.Understanding.Events;

/// <summary>Everything that can be made of an event, with the features that do not depend on what was found before.</summary>
internal sealed partial class EventOptions(NoteScene scene)
{
    private readonly FeatureList _features = new();

    private Note Note => scene.Note;

    public List<EventOption> Of(NoteEvent found)
    {
        var options = new List<EventOption>();
        _features.Scope = (int)found.Kind;
        if (found.Kind == EventKind.Again)
        {
            _features.Add(Feature.Drop);
            options.Add(new(OptionKind.Drop, null, [], _features.Take()));
            options.Add(new(OptionKind.Again, null, [], []));
            return options;
        }

        DropFeatures.Add(scene, found, _features);
        switch (found.Kind)
        {
            case EventKind.Value:
                AddValueDrop(found, found.Number!);
                options.Add(new(OptionKind.Drop, null, [], _features.Take()));
                AddValues(found, found.Number!, options);
                break;
            case EventKind.Condition:
                AddConditionDrop(found, found.Condition!);
                options.Add(new(OptionKind.Drop, null, [], _features.Take()));
                AddConditions(found, found.Condition!, options);
                break;
            case EventKind.Action:
                AddActionDrop(found, found.Action!);
                options.Add(new(OptionKind.Drop, null, [], _features.Take()));
                AddActions(found, found.Action!, options);
                break;
            default:
                _features.Add(Feature.AnswerRole, (int)found.Role);
                _features.Add(Feature.AnswerWord, Note.Word(found.First), found.Next - found.First > 1 ? Note.Word(found.Next - 1) : 0);
                options.Add(new(OptionKind.Drop, null, [], _features.Take()));
                AddAnswers(found, options);
                break;
        }

        return options;
    }

    private uint[] EvidenceFor(NoteEvent found, CheckEntry check)
    {
        Evidence.Add(scene, found, check, _features);
        return _features.Take();
    }

    private void Keep(List<EventOption> options, Claim claim, uint[] shared, OptionKind kind = OptionKind.Keep) =>
        options.Add(new(kind, claim, shared, _features.Take()));

    private static int Flag(bool it) => it ? 1 : 0;
}

using InspectLog.Dictation.Understanding.Lattice;
using InspectLog.Dictation.Understanding.Scoring;
using InspectLog.Dictation.Understanding.Texts;

namespace InspectLog.Dictation.Understanding.Events;

/// <content>Every place, or none.</content>
internal sealed partial class PlaceOptions
{
    private void AddAllAndNone(List<PlaceGroup> groups)
    {
        var (anywhere, placed) = (Anywhere(groups), Flag(_last is { Places: not 0 }));
        var part = groups.Exists(group => group.IsOf(_check.Index) && scene.InClause(group.First, _event.First)) ? 2
            : groups.Exists(group => group.IsOf(_check.Index) && scene.InSentence(group.First, _event.First)) ? 1 : 0;
        Add(For(_all)!, 1);
        Add(For(0, none: true)!, 2);

        void Add(FeatureList to, int which)
        {
            to.Add(Feature.AllOrNone, which);
            to.Add(Feature.AllOrNoneCheck, which, _check.Shape, (int)_claim.Kind, Flag(_claim.Negated));
            to.Add(Feature.AllOrNoneShape, which, _check.Shape, _shortForm, anywhere);
            to.Add(Feature.AllOrNonePart, which, part);
            to.Add(Feature.AllOrNoneForm, which, Kind, _form);
            to.Add(Feature.AllOrNoneWhere, which, Kind, _shortForm, anywhere);
            to.Add(Feature.AllOrNoneWhere, which, -1, 0, anywhere);
            to.Add(Feature.AllOrNoneMeasured, which, Flag(_check.Measurand is not null), (int)_claim.Kind);
            to.Add(Feature.AllOrNoneLast, which, _shortForm, placed);
            to.Add(Feature.AllOrNoneNegated, which, Flag(_claim.Negated), _shortForm);
            to.Add(Feature.AllOrNoneLinked, which, Flag(_last is { Places: 0 }), Flag(_last is not null && _last.Claim.Check == _claim.Check));
            AddWords(to, which);
            if (_claim.Condition >= 0)
            {
                to.Add(Feature.AllOrNoneMeaning, which, (int)_check.Check.Conditions[_claim.Condition].Meaning, _shortForm);
            }

            if (_check.Check.Actions.Count > 0 && _claim.Action is { } action)
            {
                to.Add(Feature.AllOrNoneAction, which, InspectLog.Checks.PartActions.All.ToList().IndexOf(action), _shortForm);
            }
        }
    }

    // The words beside the event and beside the name, and those of the clause.
    private void AddWords(FeatureList to, int which)
    {
        to.Add(Feature.AllOrNoneWord, which, Note.ShapeAt(_event.First - 1), Note.ShapeAt(_event.Next));
        if (_name >= 0)
        {
            to.Add(Feature.AllOrNoneName, which, _shortForm, Note.ShapeAt(_name - 1));
            to.Add(Feature.AllOrNoneName, which, 4 + Kind, Note.ShapeAt(_name - 1));
        }

        for (var at = Note.ClauseFirst(_event.First); at < Note.Length && scene.InClause(at, _event.First); at++)
        {
            if (Note.Shape[at] is not WordIds.None and var word)
            {
                to.Add(Feature.AllOrNoneWord, which, word);
            }
        }
    }
}

using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Frames;

/// <summary>Takes what is said of feeler gauges: which goes, which does not.</summary>
internal sealed class Gauges(Draft draft)
{
    private bool? _ahead;
    private bool _taken;

    /// <summary>What was said of the gauge whose size comes now: "goes at point three".</summary>
    public bool? TakeAhead()
    {
        var ahead = _ahead;
        _ahead = null;
        return ahead;
    }

    /// <summary>The gauge whose size comes next goes or stops.</summary>
    public void Ahead(bool goes) => _ahead = goes;

    public void Reset() => (_ahead, _taken) = (null, false);

    /// <summary>A gauge goes or stops: the one just said, or the one to come.</summary>
    public void Mark(bool goes)
    {
        goes &= !draft.Negated;
        draft.Negated = false;
        if (_taken)
        {
            _taken = false;
            return;
        }

        var predicates = draft.Frame.Predicates;
        if (predicates is [.., ValueSaid { Goes: null } value] && (!draft.Comma || draft.Ahead() is null or { Role: Role.Comma or Role.And or Role.But }))
        {
            predicates[^1] = value with { Goes = goes };
        }
        else if (predicates is not [.., ValueSaid { Goes: not null }] || draft.Separated || SizeNext())
        {
            _ahead = goes;
        }
    }

    /// <summary>"Doesn't", "won't": of a gauge just said, of the verb to come, or of the verb before.</summary>
    public void DoesNot()
    {
        var next = draft.Ahead();
        var alone = next is null or { Role: Role.Comma or Role.And or Role.But };
        if (next is not { Role: Role.Goes } && !alone)
        {
            draft.Negated = true;
        }
        else if (!alone && EndsThere() && draft.Frame.Predicates is [.., ValueSaid { Goes: null } tried])
        {
            // "Tried point four, it wouldn't go".
            draft.Frame.Predicates[^1] = tried with { Goes = false };
            (draft.Negated, _taken) = (false, true);
        }
        else if (draft.Frame.Predicates is [.., ValueSaid])
        {
            draft.Negated = false;
            Mark(goes: false);
        }
        else if (alone)
        {
            draft.Frame.Echo = Echo.DoesNot;
        }
        else
        {
            draft.Negated = true;
        }
    }

    // "No go at point three".
    private bool SizeNext() => draft.Ahead(item => item.Role is not (Role.Filler or Role.Preposition)) is { Number: true };

    // Whether nothing follows the verb that it could be said of.
    private bool EndsThere()
    {
        var verb = draft.Items.Skip(draft.At + 1).SkipWhile(item => item.Role == Role.Filler).Skip(1);
        return verb.FirstOrDefault(item => item.Role is not (Role.Filler or Role.Preposition)) is null or { Role: Role.Comma or Role.But or Role.And };
    }

    /// <summary>"Does": of a gauge just said, or of the verb before.</summary>
    public void Does()
    {
        if (draft.Frame.Predicates is [.., ValueSaid { Goes: null }])
        {
            Mark(goes: true);
        }
        else
        {
            draft.Frame.Echo = Echo.Does;
        }
    }
}

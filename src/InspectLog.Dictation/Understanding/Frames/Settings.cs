using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Items;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Frames;

/// <summary>Takes changes of a setting: "set it to point three", "closed it to point nine", "adjusted the timing".</summary>
internal sealed class Settings(Draft draft, FrameBreaks breaks, IReadOnlyList<Token> tokens)
{
    private ActionDone? _open;
    private bool _needsValue;

    /// <summary>A verb that changes a setting. Returns whether it was taken as one.</summary>
    public bool Start(ActionTerm action)
    {
        var item = draft.Item;
        if (action.NeedsValue && !draft.RestOfClause().Any(later => later.Role == Role.To || later.Number && HoldsTo(later)))
        {
            return false;
        }

        End();
        breaks.Predicate();
        (_open, _needsValue) = (new(item.First, item.Next, action.Action), action.NeedsValue);
        (draft.Separated, draft.Comma, draft.Preposition) = (false, false, false);
        return true;
    }

    /// <summary>Whether a value that it was set to may still come.</summary>
    public bool IsOpen => _open is not null;

    /// <summary>A value was said: it is what was set.</summary>
    public void Value() => Commit();

    /// <summary>No value will come any more: a verb that needs none still says that something was done.</summary>
    public void End()
    {
        if (_needsValue)
        {
            _open = null;
        }

        Commit();
    }

    private void Commit()
    {
        if (_open is not null)
        {
            draft.Frame.Predicates.Add(_open);
        }

        _open = null;
    }

    private bool HoldsTo(Item run) =>
        Enumerable.Range(run.First, run.Next - run.First).Any(i => tokens[i].IsWord("to"));
}

using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Items;
using InspectLog.Dictation.Understanding.Numbers;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Frames;

/// <summary>Takes what is said of a subject: values, conditions, actions.</summary>
internal sealed class Predicates(
    Draft draft, FrameBreaks breaks, Settings settings, Gauges gauges, IReadOnlyList<Token> tokens)
{
    public void Value(Check check, ValueNumber value, bool nameless)
    {
        if (draft.Negated)
        {
            // "Not twelve": the value that it is not.
            draft.Negated = false;
            return;
        }

        breaks.Predicate();
        Replace<ValueSaid>();
        draft.Frame.Predicates.Add(new ValueSaid(value.First, value.Next, check, value)
        {
            Doubt = Doubts.Join(value.Doubt, draft.ValueDoubt),
            Goes = gauges.TakeAhead(),
            Nameless = nameless,
        });
        settings.Value();
        draft.ValueDoubt = null;
        draft.AfterPredicate();
    }

    public void Condition(Item item)
    {
        // "Cleaned the soot off plug two": what was cleaned away.
        if (draft.Frame is { HasSubject: false, Predicates: [.., ActionDone { Action: PartActions.Cleaned }] }
            && draft.Ahead() is { Role: Role.Preposition })
        {
            draft.AfterPredicate();
            return;
        }

        breaks.Predicate();
        Replace<ConditionSaid>();
        draft.Frame.Predicates.Add(
            new ConditionSaid(item.First, item.Next, item.Conditions, item.Role == Role.Good, draft.Negated)
            {
                Doubt = item.Doubt,
                Naming = item.Subject,
            });
        if (item.Subject && !draft.Frame.Mentioned)
        {
            draft.Frame.Mentions.Add(Subjects.NamedWords(tokens, item));
        }

        draft.AfterPredicate();
        draft.Preposition = tokens[item.Next - 1].Stem is "off" or "on" or "from" or "against";
    }

    /// <summary>"Spark is missing on three": what was named is absent.</summary>
    public void Absent()
    {
        if (draft.Frame.Predicates is [.., ConditionSaid { Naming: true } named])
        {
            draft.Frame.Predicates[^1] = named with { Negated = true };
        }
        else
        {
            draft.Negated = true;
        }
    }

    /// <summary>"Plug two is bad": not good, without saying how.</summary>
    public void Bad(Item item)
    {
        // "The wrong lead" says nothing of the lead.
        if (item.First > 0 && tokens[item.First - 1].Stem is "the" or "a")
        {
            return;
        }

        breaks.Predicate();
        draft.Frame.Predicates.Add(new ConditionSaid(item.First, item.Next, [], Good: true, Negated: !draft.Negated)
        {
            Doubt = "what is wrong was not said",
        });
        draft.Negated = false;
        draft.AfterPredicate();
    }

    public void Nothing(Item item)
    {
        breaks.Predicate();
        draft.Frame.Predicates.Add(new NothingSaid(item.First, item.Next));
        draft.AfterPredicate();
    }

    /// <summary>An action word. Returns whether it was taken as one.</summary>
    public bool Action(Item item, ActionTerm action)
    {
        if (IsNoun(item) || IsState(item))
        {
            return false;
        }

        if (action.Action == PartActions.Adjusted)
        {
            return settings.Start(action);
        }

        if (draft.Negated)
        {
            // "Not replaced" is nothing done.
            draft.Negated = false;
            return true;
        }

        settings.End();
        breaks.Predicate();
        draft.Frame.Predicates.Add(new ActionDone(item.First, item.Next, action.Action));
        draft.AfterPredicate();
        return true;
    }

    // "A set of leads", "the gauge set goes": a noun, nothing done. "To set": not done yet.
    private bool IsNoun(Item item) =>
        tokens[item.First].Stem is "set" && draft.Ahead() is { Role: Role.Goes or Role.Verb or Role.Was or Role.DoesNot }
        || item.First > 0 && tokens[item.First - 1].Stem is "a" or "an" or "the" or "full" or "this" or "that" or "to"
        && tokens[item.First].Stem is "set" or "reset" or "change" or "move" or "put" or "turn";

    // "Is set to", "is gapped at": how it stands, not what was done.
    private bool IsState(Item item) =>
        item.First > 0 && tokens[item.First - 1].Stem is "is" or "are" or "was" or "were" or "'s" or "'re"
        && tokens[item.First].Stem is "set" or "gapped";

    private void Replace<T>()
        where T : Predicate
    {
        if (draft is not { Repairing: true, Repair: { } repair })
        {
            return;
        }

        repair.Done = true;
        var last = draft.Frame.Predicates.FindLastIndex(predicate => predicate is T);
        if (last >= 0)
        {
            draft.Frame.Predicates.RemoveAt(last);
        }
    }
}

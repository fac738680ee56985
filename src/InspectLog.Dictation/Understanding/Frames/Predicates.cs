using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Items;
using InspectLog.Dictation.Understanding.Numbers;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Frames;

/// <summary>Takes what is said of a subject: values, conditions, actions.</summary>
internal sealed class Predicates(
    Draft draft, FrameBreaks breaks, Topics topics, Settings settings, Gauges gauges, IReadOnlyList<Token> tokens)
{
    /// <summary>Why a value said as "just under two" is to be looked at.</summary>
    public const string Bounded = "only a bound was said, not the value";

    public void Value(Check check, ValueNumber value, bool nameless)
    {
        if (settings.IsOpen && value.First == draft.Item.First && draft.Before is { Role: Role.Preposition } by && tokens[by.First].IsWord("by"))
        {
            // "Advanced it by two degrees" tells how far, not where to.
            draft.AfterPredicate();
            return;
        }

        if (draft.Negated)
        {
            // "Not twelve": the value that it is not. But "point three goes, not point three five".
            draft.Negated = false;
            var blade = draft.Ahead(later => later.Role != Role.Filler && !later.Subject);
            var tried = check.Measurand!.Gauge && blade is { Role: Role.Preposition } last && tokens[last.First].IsWord("in");
            if (!tried && (draft.Frame.Predicates is not [.., ValueSaid { Goes: true } goes] || goes.Check != check))
            {
                return;
            }

            gauges.Ahead(goes: false);
        }

        breaks.Predicate();
        Replace<ValueSaid>();
        DropBound(check);
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

    /// <summary>"Feed thirteen, twelve I mean": the value before the last is taken back. Returns whether it was so.</summary>
    public bool Corrected()
    {
        if (draft.Ahead() is not null || draft.Frame.Predicates is not [.., ValueSaid wrong, ValueSaid right] || wrong.Check != right.Check)
        {
            return false;
        }

        draft.Frame.Predicates.Remove(wrong);
        return true;
    }

    /// <summary>"Twelve and a bit": the value just said is only a bound.</summary>
    public void Roughly()
    {
        if (draft.Frame.Predicates is [.., ValueSaid value])
        {
            draft.Frame.Predicates[^1] = value with { Doubt = Doubts.Join(value.Doubt, Bounded) };
        }
    }

    // "Just over nine k, nine point one": the value itself goes before its bound.
    private void DropBound(Check check)
    {
        if (draft is { Comma: true, ValueDoubt: null, Frame.Predicates: [.., ValueSaid { Doubt: Bounded } bound] } && bound.Check == check)
        {
            draft.Frame.Predicates.Remove(bound);
        }
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

        if (item is { Role: Role.Good, Conditions.Count: 0 } && draft.Before is { Role: Role.Filler } article && tokens[article.First].Stem is "a" or "an"
            && draft.Ahead() is { Role: Role.Unknown, Subject: false, Number: false })
        {
            // "She's a lovely old thing."
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
            Doubt = draft.Negated ? null : "what is wrong was not said",
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
        if (IsNoun(item) || IsState(item) || HappenedByItself(item, action) || item.Condition && Described(item))
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
        Replace<ActionDone>();
        draft.Frame.Predicates.Add(new ActionDone(item.First, item.Next, action.Action));
        draft.AfterPredicate();
        return true;
    }

    // "A set of leads", "the gauge set goes": a noun, nothing done. "To set": not done yet.
    private bool IsNoun(Item item) =>
        tokens[item.First].Stem is "set" && (draft.Ahead() is { Role: Role.Goes or Role.Verb or Role.Was or Role.DoesNot }
            || item.Next < tokens.Count && tokens[item.Next].IsWord("of"))
        || item.First > 0 && tokens[item.First - 1].Stem is "a" or "an" or "the" or "full" or "this" or "that" or "to"
        && tokens[item.First].Stem is "set" or "reset" or "change" or "move" or "put" or "turn";

    // "The gap has opened up to one point one": nobody set it.
    private bool HappenedByItself(Item item, ActionTerm action) =>
        action.NeedsValue && item.First > 0 && tokens[item.First - 1].Stem is "has" or "have" or "had" or "'s" or "'ve" && draft.Frame is { HasSubject: true, Person: false };

    // "Leads two and four are swapped" tells how they are; "swapped plug two" tells what was done, for a plug cannot be
    // on the wrong tower.
    private bool Described(Item item)
    {
        var names = draft.Frame.Bag.Concat(draft.Items.Skip(draft.At + 1).TakeWhile(later => later.Role is not (Role.Comma or Role.But))
            .Where(later => later.Subject).SelectMany(later => Subjects.NamedWords(tokens, later))).ToList();
        var ranked = topics.Rank(names);
        return ranked.Count == 0 || item.Conditions.Any(term => ranked.Any(named => named.Check == term.Check));
    }

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

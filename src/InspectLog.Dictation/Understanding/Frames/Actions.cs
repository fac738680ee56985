using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Items;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Frames;

/// <summary>Takes what is said to have been done to a subject.</summary>
internal sealed class Actions(Draft draft, FrameBreaks breaks, Topics topics, Settings settings, IReadOnlyList<Token> tokens)
{
    /// <summary>An action word. Returns whether it was taken as one.</summary>
    public bool Take(Item item, ActionTerm action)
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
        draft.Replace<ActionDone>();
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
}

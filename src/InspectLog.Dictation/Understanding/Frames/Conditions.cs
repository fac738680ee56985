using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Items;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Frames;

/// <summary>Takes what is said of how a subject is: conditions, "good", "bad", "nothing".</summary>
internal sealed class Conditions(Draft draft, FrameBreaks breaks, IReadOnlyList<Token> tokens)
{
    /// <summary>Why "no good" is to be looked at.</summary>
    public const string Vague = "what is wrong was not said";

    public void Take(Item item)
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

        if (EndsTalk(item))
        {
            return;
        }

        breaks.Predicate();
        draft.Replace<ConditionSaid>();
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

    // "Lead two is burnt, okay.": the word ends the talk and judges nothing.
    private bool EndsTalk(Item item) => item.Role == Role.Good && draft is { Comma: true, Before.Role: Role.Comma }
        && (draft.Frame.Says || draft.Frame.Echo != Echo.None || draft.Items.Take(draft.At).Any(earlier => earlier.Blocked)) && draft.Ahead() is null && tokens[item.First].Stem is "okay" or "ok" or "right" or "allright" or "all";

    /// <summary>"Spark is missing on three": what was named is absent.</summary>
    public void Absent(Item item)
    {
        if (draft.Frame.Predicates is [.., ConditionSaid { Naming: true } named])
        {
            draft.Frame.Predicates[^1] = named with { Negated = true };
        }
        else if (draft.Frame is { Placed: true, Mentioned: false, Says: false } && draft.Ahead() is null or { Role: Role.Comma or Role.And or Role.But })
        {
            // "Four's missing."
            Nothing(item);
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
            Doubt = draft.Negated ? null : Vague,
        });
        draft.Negated = false;
        draft.AfterPredicate();
    }

    public void Nothing(Item item)
    {
        if (tokens[item.First].Text == "no")
        {
            KeepAsked();
        }

        Presence(item, absent: true);
    }

    /// <summary>"Yes on one": what was asked for is there.</summary>
    public void Yes(Item item)
    {
        KeepAsked();
        Presence(item, absent: false);
    }

    // "Corrosion on the towers: yes on two": a heading, not yet said of any.
    private void KeepAsked()
    {
        var heading = draft.Frame.Says || draft.Frames.Count < 2 ? draft.Frame : draft.Frames[^2];
        if (heading is { Placed: false, Predicates: [.., ConditionSaid { Good: false, Naming: false } asked] } && heading.Sentence == draft.Sentence)
        {
            heading.Predicates.Remove(asked);
            draft.Asked = asked;
        }
    }

    private void Presence(Item item, bool absent)
    {
        breaks.Predicate();
        draft.Frame.Predicates.Add(draft.Asked is { } asked
            ? asked with { First = item.First, Next = item.Next, Negated = absent != asked.Negated }
            : new PresenceSaid(item.First, item.Next, absent));
        draft.AfterPredicate();
    }
}

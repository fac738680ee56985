using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Frames;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Writing;

/// <summary>Chooses the check that something said belongs to: by the names in its frame, else by what was spoken of
/// before, else by the check open on the bench.</summary>
internal sealed class CheckChooser(Topics topics, Memory memory, Check? openCheck)
{
    /// <summary>The checks a frame speaks of, among those that fit; more than one where "and" joins parts.</summary>
    public IReadOnlyList<Check> Named(Frame frame, Func<Check, bool> fits)
    {
        if (frame.Foreign)
        {
            return [];
        }

        if (frame.Mentioned)
        {
            return OwnNames(frame, fits);
        }

        if (frame.Unknown > 0 || memory.Foreign)
        {
            return [];
        }

        if (memory.Check is { } last && fits(last))
        {
            return [last];
        }

        if (Best(memory.Bag, fits) is { } before)
        {
            return [before.Check];
        }

        return openCheck is not null && fits(openCheck) ? [openCheck] : [];
    }

    /// <summary>The checks of a condition.</summary>
    public IReadOnlyList<Check> ForCondition(Frame frame, ConditionSaid said)
    {
        var named = Named(frame, check => Meanings(said, check).Count > 0);
        if (named.Count > 0 || frame.Mentioned || frame.Unknown > 0 || frame.Foreign || frame.Person || said.Good)
        {
            return named;
        }

        // "Two and five are sparking": a condition that only one check has names it.
        var owners = said.Terms.Select(term => term.Check).Distinct().ToList();
        var fitting = owners.Where(check => check.PerCylinder == frame.Placed).ToList();
        return fitting.Count == 1 ? fitting : [];
    }

    /// <summary>The checks of something done: the part's main check, unless another was just spoken of or is named
    /// better.</summary>
    public IReadOnlyList<Check> ForAction(Frame frame, ActionDone done)
    {
        bool Can(Check check) => check.Actions.Contains(done.Action);
        if (done.Action == PartActions.Adjusted && frame.Predicates.OfType<ValueSaid>().FirstOrDefault() is { } value)
        {
            return Can(value.Check) ? [value.Check] : [];
        }

        if (!frame.Mentioned && !frame.Foreign && !memory.Foreign && memory.Check is { } spoken && Can(spoken))
        {
            return [spoken];
        }

        var any = Named(frame, Can);
        if (done.Action == PartActions.Adjusted)
        {
            return any;
        }

        var main = Named(frame, check => Can(check) && check.Spoken.MainForActions);
        return main.Count == 0 || any is [var best] && main is [var mainBest] && Subject(frame, best) > Subject(frame, mainBest) ? any : main;
    }

    /// <summary>The conditions of a check that the words can mean.</summary>
    public static IReadOnlyList<Condition> Meanings(ConditionSaid said, Check check)
    {
        var named = said.Terms.Where(term => term.Check == check).Select(term => term.Condition).ToList();
        if (named.Count > 0 || !said.Good)
        {
            return named;
        }

        var good = check.Conditions.Where(condition => condition.Meaning == ConditionMeaning.Good);
        return [.. good.OrderBy(condition => condition.Id == "good" ? 0 : 1).Take(1)];
    }

    private IReadOnlyList<Check> OwnNames(Frame frame, Func<Check, bool> fits)
    {
        if (Best(frame.Bag, fits) is not { } whole)
        {
            return [];
        }

        if (frame.Mentions.Count > 1)
        {
            // "Cap and rotor" are two; "primary and ballast" is one, since only together they name a check.
            var apart = frame.Mentions.Select(words => Best(words, fits)).OfType<Ranked>().ToList();
            var joint = apart.Where(one => one.Check == whole.Check).Select(one => one.Subject).DefaultIfEmpty(-1).Max() < whole.Subject;
            if (!joint || whole.Check.PerCylinder)
            {
                return [.. apart.Select(one => one.Check).Distinct()];
            }
        }

        return [whole.Check];
    }

    // The checks that what was spoken of before names better with these words than without.
    private IEnumerable<Ranked> Completed(IEnumerable<NamedWord> words)
    {
        var spoken = memory.Bag.Concat(memory.Earlier).ToList();
        var without = topics.Rank(spoken).ToDictionary(one => one.Check, one => one.Subject);
        var with = topics.Rank(spoken.Concat(words)).ToList();
        var better = with.Where(one => one.Subject > without.GetValueOrDefault(one.Check)).ToList();
        return better.Count > 0 ? better : topics.Rank(memory.Bag.Concat(words));
    }

    /// <summary>"The car is fine" says nothing of how it starts: it names no more than a part of a check that is about
    /// something else.</summary>
    public bool OnlyTouches(Frame frame, Check check) =>
        check is { PerCylinder: false, Spoken.MainForActions: false } && frame.Mentioned && Subject(frame, check) == 0;

    /// <summary>Whether what a frame names belongs to no check by itself: "the tip".</summary>
    public bool NamesNone(Frame frame) => topics.Rank(frame.Bag).Count == 0;

    private Ranked? Best(IEnumerable<NamedWord> words, Func<Check, bool> fits)
    {
        var ranked = topics.Rank(words).Where(one => fits(one.Check)).ToList();
        if (ranked.Count == 0)
        {
            // "Pulled the rotor, tip's burnt": of the rotor spoken of before.
            ranked = topics.Rank(words).Count == 0 ? Completed(words).Where(one => fits(one.Check)).ToList() : [];
        }

        if (ranked.Count == 0)
        {
            return null;
        }

        // "Rotor contact" names the rotor: a check that knows all the words goes before one that knows some.
        var strange = ranked.Where(one => one.Score == ranked[0].Score).Min(one => one.Strange);
        var tied = ranked.Where(one => one.Score == ranked[0].Score && one.Strange == strange).ToList();
        if (tied.Count == 1)
        {
            return tied[0];
        }

        var wider = topics.Rank(words.Concat(memory.Bag)).ToDictionary(one => one.Check, one => one.Score);
        return tied.OrderByDescending(one => one.Check == openCheck)
            .ThenByDescending(one => wider.GetValueOrDefault(one.Check))
            .ThenByDescending(one => one.Check.Spoken.MainForActions)
            .ThenBy(one => one.Check.PerCylinder ? 1 : 0)
            .First();
    }

    private int Subject(Frame frame, Check check) =>
        topics.Rank(frame.Bag).Where(one => one.Check == check).Select(one => one.Subject).FirstOrDefault();
}

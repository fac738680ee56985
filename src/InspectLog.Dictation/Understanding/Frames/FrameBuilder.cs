using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Items;
using InspectLog.Dictation.Understanding.Numbers;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Frames;

/// <summary>Sorts the items of a text into frames, from left to right. A frame ends where a new subject begins after
/// something was said of the last one; a correction reaches back into the frame it corrects.</summary>
internal sealed class FrameBuilder
{
    private readonly Draft _draft = new();
    private readonly Subjects _subjects;
    private readonly Conditions _conditions;
    private readonly Actions _actions;
    private readonly Settings _settings;
    private readonly Gauges _gauges;
    private readonly Figures _figures;
    private readonly Ties _ties;
    private readonly Strangers _strangers;
    private readonly Signs _signs;
    private readonly Surroundings _around;
    private readonly IReadOnlyList<Token> _tokens;
    private readonly int _cylinders;

    public FrameBuilder(CheckSheet sheet, Lexicon lexicon, Topics topics, NumberLookup numbers, Check? openCheck)
    {
        var tokens = numbers.Tokens;
        (_tokens, _cylinders) = (tokens, sheet.Cylinders);
        var breaks = new FrameBreaks(_draft, tokens);
        _around = new(_draft, lexicon, tokens);
        _gauges = new(_draft);
        _settings = new(_draft, breaks, tokens);
        _subjects = new(_draft, breaks, lexicon, tokens);
        _conditions = new(_draft, breaks, tokens);
        _actions = new(_draft, breaks, topics, _settings, tokens);
        var values = new Values(_draft, breaks, _settings, _gauges, tokens);
        _figures = new(_draft, _subjects, values, new(sheet, topics, numbers, openCheck, _draft), _around);
        _ties = new(_draft, _subjects, _gauges, _around, tokens);
        _strangers = new(_draft, _subjects, _around);
        _signs = new(_draft, _subjects, values, _conditions, _settings, _gauges, tokens);
    }

    public IReadOnlyList<Frame> Frames => _draft.Frames;

    /// <summary>Adds the frames of one sentence.</summary>
    public void Add(IReadOnlyList<Item> items)
    {
        items = Corrections.InFront(items);
        _gauges.Reset();
        _draft.Begin(items, goesOn: Frames.Count > 0 && OpensWithRepair(items));
        for (; _draft.At < items.Count; _draft.At++)
        {
            Take(_draft.Item);
        }

        _settings.End();
        if (_draft is { Repairing: true, Repair.Retracts: true })
        {
            _draft.Frame.Predicates.Clear();
        }

        _ties.EndNegation();
    }

    private static bool OpensWithRepair(IReadOnlyList<Item> items) =>
        items.FirstOrDefault(item => item.Role is not (Role.Filler or Role.Comma)) is { Role: Role.Correct or Role.Retract };

    private void Take(Item item)
    {
        if (item.Number)
        {
            _figures.Take(item);
        }
        else if (item.Group is { } group)
        {
            _subjects.Place(new(item.First, item.Next, group.Of(_cylinders), item.Doubt));
        }
        else if (item.Ordinal is { } ordinal)
        {
            _subjects.Place(new(item.First, item.Next, [ordinal], item.Doubt));
        }
        else if (!item.Blocked && item.Actions.Any(action => _actions.Take(item, action)))
        {
            if (item.Subject && _draft.Frame is { Mentioned: false, Says: false })
            {
                // "Regapped" names the gap.
                _draft.Frame.Mentions.Add(Subjects.NamedWords(_tokens, item));
            }
        }
        else if (item.Condition && !item.Blocked && !OnlyNames(item))
        {
            _conditions.Take(item);
        }
        else if (item.Subject)
        {
            _subjects.Mention(item);
        }
        else
        {
            TakeSmallWord(item);
        }
    }

    // "Spark" names the check in "number four spark is weak", and is what was found in "spark on two".
    private bool OnlyNames(Item item) =>
        item.Subject && !_draft.Negated && (EndsWithName(item) || _draft.Before is not { Number: true } && IsHeading() || _draft.Ahead() is { Role: Role.Verb or Role.Was }
        && _draft.RestOfClause().Any(later => later.Condition && !later.Subject));

    // "Good on two, nothing on five, that's the spark".
    private bool EndsWithName(Item item)
    {
        var at = item.First - 1;
        at -= at > 1 && _tokens[at].IsWord("the") ? 1 : 0;
        return at > 0 && _draft.Ahead() is null && (_tokens[at].Text is "that's" || _tokens[at].Text is "'s" or "is" && _tokens[at - 1].Text is "that");
    }

    // "Spark: one fine, two nothing", "spark test, one fine", "spark on one fine", "spark: yes on one"; but not "spark on one,
    // two weak".
    private bool IsHeading()
    {
        var rest = _draft.Items.Skip(_draft.At + 1).SkipWhile(item => _tokens[item.First].Text is "test" or "check").ToList();
        if (rest.Find(item => item.Role is not (Role.Comma or Role.Filler)) is { Role: Role.Yes or Role.Nothing })
        {
            return true;
        }

        var upTo = rest.FindIndex(item => !item.Number && item.Role is not (Role.Comma or Role.Preposition or Role.PlaceMark or Role.And or Role.Filler));
        return upTo > 0 && IsAnswered(rest, upTo) || upTo > 0 && rest[upTo - 1].Number && (rest[upTo] is { Condition: true, Subject: false } || rest[upTo].Role is Role.Nothing or Role.Yes or Role.Bad)
            && !(rest[0].Role == Role.Preposition && Enumerable.Range(rest[0].First, rest[upTo].First - rest[0].First) is var list
                && list.Any(at => _tokens[at].IsMark(',')) && !list.Any(at => _tokens[at].IsWord("and")));
    }

    // "Spark on one, yes, on three, no".
    private bool IsAnswered(List<Item> rest, int at) =>
        at > 1 && rest[at - 1].Role == Role.Comma && rest[at - 2].Number && (rest[at].Role == Role.Yes || _tokens[rest[at].First].Text == "no" && rest[at].Role == Role.Nothing)
        && rest.ElementAtOrDefault(at + 1) is null or { Role: Role.Comma or Role.And or Role.Filler };

    private void TakeSmallWord(Item item)
    {
        switch (item.Role)
        {
            case Role.Comma or Role.And or Role.Or or Role.But or Role.Preposition or Role.Between or Role.Verb or Role.Was or Role.PlaceMark:
                _ties.Take(item);
                break;
            case Role.Person or Role.OtherPart or Role.Unknown:
                _strangers.Take(item);
                break;
            case Role.Filler when _around.Likewise(item):
                _draft.Frame.Echo = Echo.Same;
                break;
            default:
                if (!item.Blocked)
                {
                    _signs.Take(item);
                }

                break;
        }
    }
}

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
    private readonly Predicates _predicates;
    private readonly Settings _settings;
    private readonly Gauges _gauges;
    private readonly FrameBreaks _breaks;
    private readonly RunReader _runs;
    private readonly Surroundings _around;
    private readonly IReadOnlyList<Token> _tokens;
    private readonly int _cylinders;

    public FrameBuilder(CheckSheet sheet, Lexicon lexicon, Topics topics, NumberLookup numbers, Check? openCheck)
    {
        var tokens = numbers.Tokens;
        (_tokens, _cylinders) = (tokens, sheet.Cylinders);
        _around = new(_draft, lexicon, tokens);
        _breaks = new(_draft, tokens);
        _gauges = new(_draft);
        _settings = new(_draft, _breaks, tokens);
        _subjects = new(_draft, _breaks, lexicon, tokens);
        _predicates = new(_draft, _breaks, topics, _settings, _gauges, tokens);
        _runs = new(sheet, topics, numbers, openCheck, _draft);
    }

    public IReadOnlyList<Frame> Frames => _draft.Frames;

    /// <summary>Adds the frames of one sentence.</summary>
    public void Add(IReadOnlyList<Item> items)
    {
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

        EndNegation();
    }

    private static bool OpensWithRepair(IReadOnlyList<Item> items) =>
        items.FirstOrDefault(item => item.Role is not (Role.Filler or Role.Comma)) is { Role: Role.Correct or Role.Retract };

    // "Spark on one but not on three": the negation stands for the predicate before.
    private void EndNegation()
    {
        if (_draft is { Negated: true, Frame: { Says: false, Placed: true, Mentioned: false } })
        {
            _draft.Frame.Echo = Echo.DoesNot;
        }
    }

    private void Take(Item item)
    {
        if (item.Number)
        {
            TakeNumbers(item);
        }
        else if (item.Group is { } group)
        {
            var first = group > 0 ? 1 : Math.Max(1, _cylinders + group + 1);
            _subjects.Place(new(item.First, item.Next, [.. Enumerable.Range(first, Math.Min(Math.Abs(group), _cylinders))], item.Doubt));
        }
        else if (item.Ordinal is { } ordinal)
        {
            _subjects.Place(new(item.First, item.Next, [ordinal], item.Doubt));
        }
        else if (!item.Blocked && item.Actions.Any(action => _predicates.Action(item, action)))
        {
            if (item.Subject && _draft.Frame is { Mentioned: false, Says: false })
            {
                // "Regapped" names the gap.
                _draft.Frame.Mentions.Add(Subjects.NamedWords(_tokens, item));
            }
        }
        else if (item.Condition && !item.Blocked && !OnlyNames(item))
        {
            _predicates.Condition(item);
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
        item.Subject && !_draft.Negated && _draft.Ahead() is { Role: Role.Verb or Role.Was }
        && _draft.RestOfClause().Any(later => later.Condition && !later.Subject);

    private void TakeNumbers(Item item)
    {
        if (_runs.CountsAll())
        {
            _draft.Frame.Cover(item.First, item.Next);
            _draft.SubjectJustSaid = true;
            return;
        }

        if (_around.CountsNamed(item) is { } count)
        {
            _draft.Frame.Counted = count;
            _draft.SubjectJustSaid = true;
            return;
        }

        var run = _runs.Read();
        foreach (var role in run.Roles)
        {
            if (role is PlaceNumbers place)
            {
                _subjects.Place(place);
            }
            else if (role is ValueNumber value && !item.Blocked && !_around.CountsParts(value))
            {
                _predicates.Value(run.Check!, value, run.Nameless);
            }
        }

        _draft.Frame.Unknown += run.Roles.Count == 0 ? 1 : 0;
        _draft.Between = false;
    }

    private void TakeSmallWord(Item item)
    {
        switch (item.Role)
        {
            case Role.Comma:
                EndNegation();
                (_draft.Separated, _draft.Comma, _draft.Preposition, _draft.PlaceMarked) = (true, true, false, false);
                _draft.Negated &= ListGoesOn();
                DropTalk();
                break;
            case Role.And or Role.Or:
                (_draft.Separated, _draft.PlaceMarked) = (true, false);
                DropTalk();
                break;
            case Role.But when _subjects.ButExcepts():
                _draft.Excepting = true;
                break;
            case Role.But:
                (_draft.Separated, _draft.Comma, _draft.Negated, _draft.Excepting) = (true, true, false, false);
                _draft.AfterBut = true;
                DropTalk();
                break;
            case Role.Preposition when _around.GoesIn(item):
                _gauges.Mark(goes: true);
                break;
            case Role.Preposition:
                (_draft.Preposition, _draft.PlaceMarked, _draft.Frame.Tied) = (true, false, true);
                break;
            case Role.Between:
                (_draft.Between, _draft.Preposition) = (true, true);
                break;
            case Role.Verb or Role.Was:
                (_draft.VerbSinceSubject, _draft.PlaceMarked) = (true, false);
                _draft.Frame.Was |= item.Role == Role.Was && !item.Blocked;
                break;
            case Role.PlaceMark:
                _draft.PlaceMarked = true;
                break;
            case Role.Person when _draft is { Separated: true, Frame.Says: true, Repairing: false } && !item.Blocked:
                _draft.Open();
                _draft.Frame.Person = true;
                break;
            case Role.Person:
                _draft.Frame.Person = true;
                break;
            case Role.OtherPart:
                _draft.Frame.Foreign |= _around.NamesWhole(item) || _around.CountsOthers(item);
                _subjects.Other();
                break;
            case Role.Unknown:
                if (_draft is { AfterBut: true, Frame.Says: true })
                {
                    // "It fired up but died": of what came before, nothing more.
                    _draft.Open();
                }

                _draft.Frame.Foreign |= _around.NamesWhole(item);
                // "Fourteen millimetre thread": the size of something else.
                _draft.Frame.Foreign |= _draft is { Before.Number: true, Frame: { Mentioned: false, Says: true } };
                _draft.Frame.Unknown++;
                _draft.PlaceMarked = false;
                break;
            case Role.Filler when _around.Likewise(item):
                _draft.Frame.Echo = Echo.Same;
                break;
            default:
                if (!item.Blocked)
                {
                    TakeSign(item);
                }

                break;
        }
    }

    // The words that change what others mean.
    private void TakeSign(Item item)
    {
        switch (item.Role)
        {
            case Role.Not:
                _draft.Negated = true;
                break;
            case Role.DoesNot:
                _gauges.DoesNot();
                break;
            case Role.Does:
                _gauges.Does();
                break;
            case Role.Goes or Role.Stops:
                _gauges.Mark(goes: item.Role == Role.Goes);
                break;
            case Role.Nothing when _draft.Ahead(later => later.Role is not (Role.Filler or Role.Verb or Role.Was)) is { Condition: true }:
                TakeNoneOf(item);
                break;
            case Role.Nothing:
                _predicates.Nothing(item);
                break;
            case Role.Absent:
                _predicates.Absent();
                break;
            case Role.Bad:
                _predicates.Bad(item);
                break;
            case Role.Pronoun when _tokens[item.First].IsWord("it") && !(_draft is { Separated: true, Frame.Says: true, Repairing: false }):
                _draft.Frame.Singular = true;
                break;
            case Role.Pronoun when _draft is { Separated: true, Frame.Says: true, Repairing: false }:
                _draft.Open();
                _draft.Frame.Singular = _tokens[item.First].IsWord("it");
                break;
            case Role.Same:
                TakeSame(item);
                break;
            case Role.Correct when _predicates.Corrected():
                break;
            case Role.Correct or Role.Retract:
                _settings.End();
                _draft.Repair = new Repair { Retracts = item.Role == Role.Retract };
                (_draft.Negated, _draft.Excepting) = (false, false);
                break;
            case Role.All or Role.Any or Role.Both or Role.Rest or Role.Neither:
                _subjects.Set(item.Role, item);
                break;
            case Role.Except:
                _subjects.Except(item);
                break;
            case Role.Now:
                _draft.Frame.Now = true;
                break;
            case Role.Bound when _tokens[item.First].IsWord("and"):
                _predicates.Roughly();
                break;
            case Role.Bound:
                _draft.ValueDoubt = Predicates.Bounded;
                break;
            case Role.Hedge:
                _draft.Frame.Doubt = "said with a doubt";
                break;
            case Role.Looked:
                _draft.Frame.Looked = true;
                break;
        }
    }

    // Words before a comma that are about nothing we know say nothing about what follows it.
    private void DropTalk()
    {
        if (_draft.Frame is { HasSubject: false, Says: false, Unknown: > 0, Foreign: false })
        {
            _draft.Open();
        }
    }

    // "None cracked": of all, not cracked.
    private void TakeNoneOf(Item item)
    {
        if (_tokens[item.First].Stem == "none")
        {
            _subjects.Set(Role.All, item);
        }

        _draft.Negated = true;
    }

    private void TakeSame(Item item)
    {
        if (_draft.Frame.Says)
        {
            _draft.Open();
        }

        _draft.Frame.Echo = Echo.Same;
        _draft.PlaceMarked = _tokens[item.Next - 1].Stem is "on" or "for" or "with" || _draft.Ahead() is { Number: true };
        _draft.Preposition = _draft.PlaceMarked;
    }

    // "No cracks, burns or corrosion": the negation holds for the whole list.
    private bool ListGoesOn()
    {
        var items = _draft.Items;
        var next = _draft.At + 1;
        return next < items.Count && items[next].Condition
            && items.Skip(next + 1).TakeWhile(item => item.Condition || item.Role is Role.Comma or Role.Or or Role.Filler)
                .Any(item => item.Role == Role.Or);
    }
}

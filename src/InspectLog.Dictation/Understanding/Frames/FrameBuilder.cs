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
    private readonly IReadOnlyList<Token> _tokens;
    private readonly int _cylinders;
    private readonly Lexicon _lexicon;

    public FrameBuilder(CheckSheet sheet, Lexicon lexicon, Topics topics, NumberLookup numbers, Check? openCheck)
    {
        var tokens = numbers.Tokens;
        (_tokens, _cylinders, _lexicon) = (tokens, sheet.Cylinders, lexicon);
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

        if (CountsNamed(item) is { } count)
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
            else if (role is ValueNumber value && !item.Blocked && !CountsParts(value))
            {
                _predicates.Value(run.Check!, value, run.Nameless);
            }
        }

        _draft.Frame.Unknown += run.Roles.Count == 0 ? 1 : 0;
        _draft.Between = false;
    }

    // "On three towers", "two of the leads": how many, which are still to be named.
    private int? CountsNamed(Item item)
    {
        if (item.Next != item.First + 1 || _draft.PlaceMarked || _draft.Excepting || _draft.Frame.Placed || SmallNumber(item.First) is not { } count)
        {
            return null;
        }

        var part = _draft.At + 1;
        if (part + 1 < _draft.Items.Count && _tokens[_draft.Items[part].First].IsWord("of"))
        {
            part += _tokens[_draft.Items[part + 1].First].Stem is "the" or "these" or "those" or "my" ? 2 : 1;
        }

        return part < _draft.Items.Count && _draft.Items[part] is { Subject: true } named && _tokens[named.Next - 1].Plural
            && _lexicon.IsPlaceNoun(_tokens[named.Next - 1].Stem) ? count : null;
    }

    private int? SmallNumber(int at)
    {
        var number = NumberWords.Unit(_tokens[at].Stem)
            ?? (_tokens[at] is { Kind: TokenKind.Digits, Lead: '\0', Text.Length: 1 } digit ? digit.Text[0] - '0' : 0);
        return number > 1 ? number : null;
    }

    // "Twelve plugs": how many there are.
    private bool CountsParts(ValueNumber value) =>
        !value.UnitSaid && value.Next == _draft.Item.Next && value.Number == decimal.Truncate(value.Number)
        && _draft.At + 1 < _draft.Items.Count && _draft.Items[_draft.At + 1] is { Subject: true } part && _tokens[part.Next - 1].Plural;

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
            case Role.Preposition when GoesIn(item):
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
                _draft.Frame.Foreign |= NamesWhole(item);
                _subjects.Other();
                break;
            case Role.Unknown:
                if (_draft is { AfterBut: true, Frame.Says: true })
                {
                    // "It fired up but died": of what came before, nothing more.
                    _draft.Open();
                }

                _draft.Frame.Foreign |= NamesWhole(item);
                // "Fourteen millimetre thread": the size of something else.
                _draft.Frame.Foreign |= _draft is { Before.Number: true, Frame: { Mentioned: false, Says: true } };
                _draft.Frame.Unknown++;
                _draft.PlaceMarked = false;
                break;
            case Role.Filler when Likewise(item):
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

    // "I can get point three in": the gauge goes.
    private bool GoesIn(Item item) =>
        _tokens[item.First].IsWord("in") && _draft.Frame.Predicates is [.., ValueSaid { Goes: null, Check.Measurand.Gauge: true }]
        && _draft.Before is { Number: true } or { Subject: true } && _draft.Ahead() is null or { Role: Role.Comma or Role.But or Role.And };

    // "The lead in the pencil": part of something else.
    private bool NamesWhole(Item item) =>
        item.First > 2 && (Role.OtherPart == item.Role && Within(item.First - 1) || Article(item.First - 1) && _tokens[item.First - 2].Stem is "in" or "of"
            || item.First > 3 && (item.Role == Role.OtherPart && Article(item.First - 1) && Within(item.First - 2)
                || _tokens[item.First - 1].Stem is "my" or "his" or "your" or "their" && Within(item.First - 2)))
        && _draft is { SubjectJustSaid: true, Frame: { Mentioned: true, Placed: false, Says: false, Plural: false } };

    private bool Article(int at) => _tokens[at].Stem is "the" or "a" or "front" or "rear";

    private bool Within(int at) => _tokens[at].Stem is "in" or "of" or "on" or "for" or "from";

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

    // "Tower four is dirty and tower six too": what was said before holds for it as well.
    private bool Likewise(Item item) =>
        _tokens[item.Next - 1].Stem is "also" or "too" or "well" && _draft.Frame is { HasSubject: true, Says: false }
        && _draft.Frames.Count > 1 && _draft.Frames[^2].Says && _draft.Ahead() is null or { Role: Role.Comma or Role.And };

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

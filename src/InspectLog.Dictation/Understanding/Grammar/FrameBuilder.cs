using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Numbers;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Grammar;

/// <summary>Sorts the items of a text into frames, from left to right. A frame ends where a new subject begins after
/// something was said of the last one; a correction reaches back into the frame it corrects.</summary>
internal sealed class FrameBuilder
{
    private readonly IReadOnlyList<Token> _tokens;
    private readonly Lexicon _lexicon;
    private readonly RunReader _runs;
    private readonly List<Frame> _frames = [];
    private Frame _frame = new();
    private Repair? _repair;
    private int _sentence;

    // What the words since the last separator or subject did.
    private bool _separated;
    private bool _comma;
    private bool _preposition;
    private bool _subjectJustSaid;
    private bool _verbSinceSubject;
    private bool _negated;
    private bool _excepting;
    private bool _between;
    private bool _placeMark;
    private bool _toSinceAction;
    private string? _valueDoubt;
    private bool? _gaugeAhead;
    private ActionTerm? _settingAhead;
    private (int First, int Next) _settingSpan;

    public FrameBuilder(CheckSheet sheet, Lexicon lexicon, Topics topics, IReadOnlyList<Token> tokens, Check? openCheck)
    {
        (_lexicon, _tokens) = (lexicon, tokens);
        _runs = new(sheet, topics, tokens, openCheck);
    }

    public IReadOnlyList<Frame> Frames => _frames;

    /// <summary>Adds the frames of one sentence.</summary>
    public void Add(IReadOnlyList<Item> items)
    {
        _sentence++;
        Reset();
        var reopened = _frames.Count > 0 && OpensWithRepair(items);
        if (!reopened)
        {
            Open(items);
        }

        for (var i = 0; i < items.Count; i++)
        {
            Take(items, i);
        }

        EndSetting();
        if (_repair is { Retracts: true, Used: false })
        {
            _frame.Predicates.Clear();
        }

        _repair = null;
    }

    private void Reset()
    {
        (_separated, _comma, _preposition, _subjectJustSaid, _verbSinceSubject) = (false, false, false, false, false);
        (_negated, _excepting, _between, _placeMark, _toSinceAction) = (false, false, false, false, false);
        (_valueDoubt, _gaugeAhead, _settingAhead) = (null, null, null);
    }

    private static bool OpensWithRepair(IReadOnlyList<Item> items) =>
        items.FirstOrDefault(item => item.Role is not (Role.Filler or Role.Comma)) is { Role: Role.Correct or Role.Retract };

    private void Open(IReadOnlyList<Item>? items)
    {
        EndSetting();
        _frame = new Frame { Sentence = _sentence };
        _frames.Add(_frame);
        (_excepting, _subjectJustSaid, _verbSinceSubject) = (false, false, false);
        if (items is not null)
        {
            _negated = false;
        }
    }

    private void Take(IReadOnlyList<Item> items, int at)
    {
        var item = items[at];
        if (item.Number)
        {
            TakeNumbers(items, at);
            return;
        }

        if (item.Ordinal is { } ordinal)
        {
            TakePlace(new(item.First, item.Next, [ordinal], item.Doubt));
            return;
        }

        var actsAlone = !item.Blocked && item.Action is not null && TakeAction(items, at);
        if (actsAlone)
        {
            return;
        }

        if (item.Condition && !item.Blocked && !IsNameOnly(items, at))
        {
            TakeCondition(items, at);
        }
        else if (item.Subject)
        {
            TakeMention(items, at);
        }
        else
        {
            TakeSmallWord(items, at);
        }
    }

    // "Spark" names the check in "number four spark is weak" and is the finding in "spark on two".
    private bool IsNameOnly(IReadOnlyList<Item> items, int at)
    {
        if (!items[at].Subject || _negated)
        {
            return false;
        }

        var next = Ahead(items, at + 1, item => item.Role != Role.Filler);
        return next is { Role: Role.Verb or Role.Was } && _subjectJustSaid | true && ConditionFollows(items, at);
    }

    private static bool ConditionFollows(IReadOnlyList<Item> items, int at) =>
        items.Skip(at + 1).TakeWhile(item => item.Role is not (Role.Comma or Role.But)).Any(item => item.Condition && !item.Subject);

    private static Item? Ahead(IReadOnlyList<Item> items, int from, Func<Item, bool> wanted)
    {
        for (var i = from; i < items.Count; i++)
        {
            if (wanted(items[i]))
            {
                return items[i];
            }
        }

        return null;
    }

    private void TakeMention(IReadOnlyList<Item> items, int at)
    {
        var item = items[at];
        BeginSubject(place: false);
        var words = Enumerable.Range(item.First, item.Next - item.First).Select(i => _tokens[i].Stem);
        if (_repair is { Used: false, Opened: false } repair)
        {
            repair.Opened = true;
            if (!words.All(_frame.Bag.Contains))
            {
                _frame.Mentions.Clear();
            }
        }

        if (_frame is { Predicates.Count: > 0, SubjectBefore: true } && _repair is null)
        {
            // "Burnt at the boot": where on the part, not another part.
            EndSubjectWord(item);
            return;
        }

        if (_frame.Mentions.Count == 0 || _separated && _frame.Predicates.Count == 0 && _subjectJustSaid)
        {
            _frame.Mentions.Add([]);
        }

        _frame.Mentions[^1].AddRange(words);
        var last = _tokens[item.Next - 1];
        _frame.Plural |= last.Plural && _lexicon.IsPlaceNoun(last.Stem);
        _frame.Cover(item.First, item.Next);
        EndSubjectWord(item);
    }

    private void EndSubjectWord(Item item)
    {
        _placeMark = _lexicon.IsPlaceNoun(_tokens[item.Next - 1].Stem);
        (_preposition, _separated, _comma, _subjectJustSaid, _verbSinceSubject) = (false, false, false, true, false);
    }

    private void TakePlace(PlaceNumbers place)
    {
        if (_excepting)
        {
            _frame.Except.AddRange(place.Cylinders);
        }
        else if (_repair is { Used: false } repair && _frame.Places.Count > 0)
        {
            repair.Opened = true;
            ReplacePlace(place);
        }
        else
        {
            BeginSubject(place: true);
            _frame.PlaceAfter |= _frame.Predicates.Count > 0;
            _frame.Places.Add(place);
        }

        _frame.Cover(place.First, place.Next);
        (_placeMark, _preposition, _separated, _comma, _subjectJustSaid, _verbSinceSubject) = (false, false, false, false, true, false);
    }

    private void ReplacePlace(PlaceNumbers place)
    {
        if (_frame.Places.Count > 0)
        {
            _frame.Places.RemoveAt(_frame.Places.Count - 1);
        }

        _frame.Places.Add(place);
        for (var i = 0; i < _frame.Predicates.Count; i++)
        {
            if (_frame.Predicates[i] is ValueSaid { Cylinders: not null } value)
            {
                _frame.Predicates[i] = value with { Cylinders = null };
            }
        }
    }

    private void BeginSubject(bool place)
    {
        var repairing = _repair is { Used: false };
        if (_frame.Predicates.Count > 0 && !repairing && !Attaches(place))
        {
            Open(null);
        }

        if (_frame.Predicates.Count == 0)
        {
            _frame.SubjectBefore = true;
        }
        else if (!_frame.SubjectBefore)
        {
            _frame.SubjectAfter = true;
        }
    }

    // Whether a subject belongs to what was just said: "no wear on the rotor tip", "cracked insulator".
    private bool Attaches(bool place)
    {
        if (!_frame.SubjectBefore)
        {
            return !_frame.SubjectAfter || !_comma && (_preposition || _subjectJustSaid || _placeMark);
        }

        return !_comma && (_preposition || place && _placeMark) && (!place || !_frame.Placed);
    }

    private void BeginPredicate(IReadOnlyList<Item> items, int at)
    {
        if (_frame.Predicates.Count == 0 || _repair is { Used: false })
        {
            return;
        }

        if (_frame.Except.Count > 0)
        {
            var exception = _frame;
            exception.ExceptTaken = true;
            Open(null);
            _frame.Places.Add(new(items[at].First, items[at].First, [.. exception.Except], null));
            _frame.SubjectBefore = true;
            _frame.Cover(items[at].First, items[at].Next);
            return;
        }

        var newSubject = _separated && SubjectAhead(items, at);
        var afterSubject = !_frame.SubjectBefore && _frame.SubjectAfter && !_verbSinceSubject;
        if (newSubject || afterSubject || _frame is { SubjectBefore: true, PlaceAfter: true })
        {
            Open(null);
        }
    }

    // Whether a subject of its own follows what is said, before the clause ends.
    private static bool SubjectAhead(IReadOnlyList<Item> items, int at)
    {
        var tied = items[at].Action is { Action: not PartActions.Adjusted };
        for (var i = at + 1; i < items.Count; i++)
        {
            var item = items[i];
            if (item.Role is Role.Comma or Role.And or Role.But or Role.Was || item.Role == Role.Verb && !item.Subject
                || item.Condition && !item.Subject || item.Action is not null)
            {
                return false;
            }

            if (item.Subject || item.Ordinal is not null || item.Number && tied || item.Role is Role.PlaceMark or Role.All or Role.Rest)
            {
                return true;
            }

            tied = item.Role == Role.Preposition || tied && item.Role == Role.Filler;
        }

        return false;
    }

    private void TakeNumbers(IReadOnlyList<Item> items, int at)
    {
        var item = items[at];
        if (_runs.CountsAll(_frame, item, at > 0 ? items[at - 1] : null))
        {
            _frame.Cover(item.First, item.Next);
            _subjectJustSaid = true;
            return;
        }

        var before = at > 0 ? items[at - 1] : null;
        var marked = _placeMark || before is { Role: Role.Preposition } && _tokens[before.First].Stem == "on" || _excepting;
        var placeKnown = _frame.Placed && !(_frame.Predicates.Count > 0 && _frame.SubjectBefore && _separated)
            || _frames.Count > 1 && !_frame.Mentioned && !_frame.Placed && _frames[^2].Placed && _frames[^2].Sentence == _sentence;
        var roles = _runs.Read(_frames, _frame, items, at, new(marked, placeKnown, 0, _between), out var check);
        foreach (var role in roles)
        {
            if (role is PlaceNumbers place)
            {
                TakePlace(place);
            }
            else if (role is ValueNumber value && check is not null && !item.Blocked)
            {
                TakeValue(items, at, check, value);
            }

            _placeMark = false;
        }

        if (roles.Count == 0)
        {
            _frame.Unknown++;
        }

        _between = false;
    }

    private void TakeValue(IReadOnlyList<Item> items, int at, Check check, ValueNumber value)
    {
        if (_negated)
        {
            // "Not twelve": the value that it is not.
            _negated = false;
            return;
        }

        BeginPredicate(items, at);
        if (_repair is { Used: false } repair)
        {
            repair.Used = true;
            var last = _frame.Predicates.FindLastIndex(predicate => predicate is ValueSaid);
            if (last >= 0)
            {
                _frame.Predicates.RemoveAt(last);
            }
        }

        _frame.Predicates.Add(new ValueSaid(value.First, value.Next, check, value)
        {
            Doubt = Doubts.Join(value.Doubt, _valueDoubt),
            Goes = _gaugeAhead,
            Cylinders = _frame.Places is [.., var place] && !_frame.PlaceAfter && _frame.SubjectBefore ? null : null,
        });
        if (_settingAhead is not null && _toSinceAction)
        {
            CommitSetting();
        }

        (_valueDoubt, _gaugeAhead) = (null, null);
        (_separated, _comma, _preposition, _subjectJustSaid, _verbSinceSubject) = (false, false, false, false, false);
    }

    private void TakeCondition(IReadOnlyList<Item> items, int at)
    {
        var item = items[at];
        BeginPredicate(items, at);
        if (_repair is { Used: false } repair)
        {
            repair.Used = true;
            var last = _frame.Predicates.FindLastIndex(predicate => predicate is ConditionSaid);
            if (last >= 0)
            {
                _frame.Predicates.RemoveAt(last);
            }
        }

        _frame.Predicates.Add(new ConditionSaid(item.First, item.Next, item.Conditions, item.Role == Role.Good, _negated)
        {
            Doubt = item.Doubt,
            Naming = item.Subject,
        });
        if (item.Subject && _frame.Mentions.Count == 0)
        {
            _frame.Mentions.Add([.. Enumerable.Range(item.First, item.Next - item.First).Select(i => _tokens[i].Stem)]);
        }

        (_separated, _comma, _preposition, _subjectJustSaid, _verbSinceSubject) = (false, false, false, false, false);
        _placeMark = false;
    }

    // Whether the item was taken as something done.
    private bool TakeAction(IReadOnlyList<Item> items, int at)
    {
        var item = items[at];
        var action = item.Action!;
        var before = at > 0 ? items[at - 1] : null;
        var stative = before?.Role is Role.Verb or Role.Was && _tokens[item.First].Stem is "set" or "gapped";
        if (stative || _negated && action.Action != PartActions.Adjusted || item.Subject && item.Conditions.Count > 0)
        {
            _negated &= !stative;
            return stative || _negated;
        }

        if (action.NeedsValue || action.Action == PartActions.Adjusted)
        {
            return StartSetting(items, at, action);
        }

        BeginPredicate(items, at);
        _frame.Predicates.Add(new ActionDone(item.First, item.Next, action.Action));
        (_separated, _comma, _preposition, _subjectJustSaid, _verbSinceSubject) = (false, false, false, false, false);
        _placeMark = false;
        return true;
    }

    // A setting is done once its value is said; a plain "adjusted" without a value counts as well.
    private bool StartSetting(IReadOnlyList<Item> items, int at, ActionTerm action)
    {
        var item = items[at];
        if (action.NeedsValue && !items.Skip(at + 1).TakeWhile(later => later.Role != Role.Comma)
            .Any(later => later.Role == Role.To || later.Number && ContainsTo(later)))
        {
            return item.Role == Role.Unknown && !item.Subject && !item.Condition;
        }

        BeginPredicate(items, at);
        EndSetting();
        (_settingAhead, _settingSpan, _toSinceAction) = (action, (item.First, item.Next), false);
        if (!action.NeedsValue || items.Skip(at + 1).Any(later => later.Number))
        {
            _toSinceAction = !action.NeedsValue;
        }

        (_separated, _comma, _preposition) = (false, false, false);
        return true;
    }

    private bool ContainsTo(Item run) =>
        Enumerable.Range(run.First, run.Next - run.First).Any(i => _tokens[i].IsWord("to"));

    private void CommitSetting()
    {
        _frame.Predicates.Add(new ActionDone(_settingSpan.First, _settingSpan.Next, _settingAhead!.Action));
        _settingAhead = null;
    }

    private void EndSetting()
    {
        if (_settingAhead is { NeedsValue: false })
        {
            CommitSetting();
        }

        _settingAhead = null;
    }

    private void TakeSmallWord(IReadOnlyList<Item> items, int at)
    {
        var item = items[at];
        switch (item.Role)
        {
            case Role.Comma:
                (_separated, _comma, _preposition, _placeMark) = (true, true, false, false);
                _negated &= ListGoesOn(items, at);
                break;
            case Role.And or Role.Or:
                _separated = true;
                _placeMark = false;
                break;
            case Role.But:
                if (_frame.Set is PlaceSet.All && ExceptionAhead(items, at))
                {
                    _excepting = true;
                }
                else
                {
                    (_separated, _comma, _negated, _excepting) = (true, true, false, false);
                }

                break;
            case Role.Preposition:
                _preposition = true;
                _placeMark = false;
                break;
            case Role.To:
                _toSinceAction = true;
                break;
            case Role.Between:
                (_between, _preposition) = (true, true);
                break;
            case Role.Verb or Role.Was:
                _verbSinceSubject = true;
                _frame.Was |= item.Role == Role.Was && !item.Blocked;
                _placeMark = false;
                break;
            case Role.Now:
                _frame.Now = true;
                break;
            case Role.PlaceMark:
                _placeMark = true;
                break;
            case Role.OtherPart:
                _frame.OtherPart |= _frame.Predicates.Count == 0 || !_frame.Mentioned;
                break;
            case Role.Unknown:
                _frame.Unknown++;
                _placeMark = false;
                break;
            default:
                if (!item.Blocked)
                {
                    TakeSign(items, at);
                }

                break;
        }
    }

    // The words that change what is meant by others.
    private void TakeSign(IReadOnlyList<Item> items, int at)
    {
        var item = items[at];
        switch (item.Role)
        {
            case Role.Not:
                _negated = true;
                break;
            case Role.DoesNot:
                TakeDoesNot(items, at);
                break;
            case Role.Does:
                _frame.Echo = Echo.Does;
                break;
            case Role.Nothing:
                BeginPredicate(items, at);
                _frame.Predicates.Add(new NothingSaid(item.First, item.Next));
                (_separated, _comma, _subjectJustSaid, _verbSinceSubject) = (false, false, false, false);
                break;
            case Role.Same:
                BeginPredicate(items, at);
                _frame.Echo = Echo.Same;
                break;
            case Role.Correct or Role.Retract:
                EndSetting();
                _repair = new Repair { Retracts = item.Role == Role.Retract };
                (_negated, _excepting) = (false, false);
                break;
            case Role.All or Role.Any or Role.Both or Role.Rest or Role.Neither:
                TakeSet(item);
                break;
            case Role.Except:
                _excepting = true;
                if (_tokens[item.First].Stem == "all")
                {
                    TakeSet(item with { Role = Role.All });
                    _excepting = true;
                }

                break;
            case Role.Goes:
                MarkGauge(true);
                break;
            case Role.Stops:
                MarkGauge(false);
                break;
            case Role.Bound:
                _valueDoubt = "only a bound was said, not the value";
                break;
            case Role.Hedge:
                _frame.Doubt = "said with a doubt";
                break;
            case Role.Looked:
                _frame.Looked = true;
                break;
        }
    }

    private void TakeSet(Item item)
    {
        BeginSubject(place: true);
        _frame.PlaceAfter |= _frame.Predicates.Count > 0;
        _frame.Set = item.Role switch
        {
            Role.Any => PlaceSet.Any,
            Role.Both => PlaceSet.Both,
            Role.Rest => PlaceSet.Rest,
            _ => PlaceSet.All,
        };
        _negated |= item.Role == Role.Neither;
        _frame.Cover(item.First, item.Next);
        (_preposition, _separated, _comma, _subjectJustSaid, _verbSinceSubject) = (false, false, false, true, false);
    }

    private void TakeDoesNot(IReadOnlyList<Item> items, int at)
    {
        var next = Ahead(items, at + 1, item => item.Role != Role.Filler);
        if (next is { Role: Role.Goes } || next is null or { Role: Role.Comma or Role.And or Role.But or Role.Filler })
        {
            if (_frame.Predicates.LastOrDefault() is ValueSaid)
            {
                MarkGauge(false);
                return;
            }

            _frame.Echo = next is { Role: Role.Goes } ? Echo.None : Echo.DoesNot;
            return;
        }

        _negated = true;
    }

    // "Point three goes" marks the value before; "goes at point three" the value to come.
    private void MarkGauge(bool goes)
    {
        var last = _frame.Predicates.Count - 1;
        if (last >= 0 && _frame.Predicates[last] is ValueSaid { Goes: null } value && !_comma)
        {
            _frame.Predicates[last] = value with { Goes = goes && !_negated };
        }
        else if (last < 0 || _frame.Predicates[last] is not ValueSaid { Goes: not null } || _comma)
        {
            _gaugeAhead = goes && !_negated;
        }

        _negated = false;
    }

    private static bool ListGoesOn(IReadOnlyList<Item> items, int comma) =>
        comma + 2 < items.Count && items[comma + 1].Condition
        && items.Skip(comma + 2).TakeWhile(item => item.Condition || item.Role is Role.Comma or Role.Or or Role.Filler)
            .Any(item => item.Role == Role.Or);

    private static bool ExceptionAhead(IReadOnlyList<Item> items, int at)
    {
        var next = Ahead(items, at + 1, item => item.Role is not (Role.Filler or Role.PlaceMark or Role.Preposition));
        return next is not null && (next.Number || next.Ordinal is not null || next.Subject && !next.Condition
            && Ahead(items, at + 2, item => item.Number) is not null);
    }

    /// <summary>A correction under way.</summary>
    private sealed class Repair
    {
        public bool Retracts { get; init; }

        /// <summary>Whether the right subject was said.</summary>
        public bool Opened { get; set; }

        /// <summary>Whether the right words were said.</summary>
        public bool Used { get; set; }
    }
}

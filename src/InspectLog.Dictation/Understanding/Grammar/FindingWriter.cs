using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Words;
using InspectLog.Measuring;

namespace InspectLog.Dictation.Understanding.Grammar;

/// <summary>Makes findings from frames: which check, which cylinders, what of what was said before still holds.</summary>
internal sealed class FindingWriter(
    CheckSheet sheet, Topics topics, IReadOnlyList<Token> tokens, string text, Check? openCheck)
{
    private readonly List<Finding> _findings = [];
    private readonly List<Finding> _echoed = [];
    private Frame? _last;
    private IReadOnlyList<string> _bag = [];
    private Check? _check;
    private IReadOnlyList<int> _places = [];
    private string? _placeNoun;
    private ValueSaid? _openGauge;
    private IReadOnlyList<int?> _openGaugePlaces = [];

    public IReadOnlyList<Finding> Write(IReadOnlyList<Frame> frames)
    {
        foreach (var frame in frames.Where(frame => !frame.Empty))
        {
            Add(frame);
        }

        return _findings;
    }

    private void Add(Frame frame)
    {
        var before = _findings.Count;
        if (frame.Echo != Echo.None && frame.Predicates.Count == 0)
        {
            AddEcho(frame);
        }

        AddValues(frame);
        foreach (var predicate in Others(frame))
        {
            AddOther(frame, predicate);
        }

        AddExceptions(frame, before);
        Remember(frame, before);
    }

    // Settings are told after the values they lead to.
    private static IEnumerable<Predicate> Others(Frame frame)
    {
        var naming = frame.Predicates.OfType<ConditionSaid>().Any(condition => !condition.Naming);
        return frame.Predicates
            .Where(predicate => predicate is not ValueSaid && !(predicate is ConditionSaid { Naming: true } && naming))
            .OrderBy(predicate => predicate is ActionDone { Action: PartActions.Adjusted } ? 1 : 0);
    }

    private void Remember(Frame frame, int before)
    {
        if (frame.Mentioned)
        {
            _bag = [.. frame.Bag];
        }

        if (_findings.Count > before)
        {
            _echoed.Clear();
            _echoed.AddRange(_findings.Skip(before));
            _check = sheet.Find(_findings[^1].Check);
        }

        if (frame.Places.Count > 0)
        {
            _places = [.. frame.Places.SelectMany(place => place.Cylinders).Distinct()];
            _placeNoun = frame.Mentioned ? _check?.PlaceNoun : _placeNoun;
        }
        else if (frame.Set == PlaceSet.All || frame.Mentioned && !Carries(frame, _check))
        {
            _places = [];
        }

        _last = frame;
    }

    private bool Carries(Frame frame, Check? check) =>
        !frame.Mentioned || !frame.Plural && check?.PlaceNoun is not null && (_placeNoun is null || check.PlaceNoun == _placeNoun);

    private void AddValues(Frame frame)
    {
        var values = frame.Predicates.OfType<ValueSaid>().ToList();
        if (values.Count == 0)
        {
            return;
        }

        var check = values[0].Check;
        if (!Understood(frame))
        {
            return;
        }

        if (check.Measurand!.Gauge && AddBrackets(frame, check, values))
        {
            return;
        }

        var places = Places(frame, check, out var doubt);
        var ordered = places.Count == 1 && places[0] is null && check.PerCylinder && values.Count == sheet.Cylinders
            ? (places = [.. Enumerable.Range(1, sheet.Cylinders).Cast<int?>()], doubt = "no cylinders were named: taken in order").Item1
            : places;
        AddReadings(frame, check, values, ordered, doubt);
        if (frame is { Was: true, Now: true } && values.Count == 2 && check.Actions.Contains(PartActions.Adjusted)
            && !frame.Predicates.Any(predicate => predicate is ActionDone))
        {
            AddAction(frame, check, PartActions.Adjusted, values[1], ordered, doubt);
        }
    }

    private void AddReadings(Frame frame, Check check, List<ValueSaid> values, IReadOnlyList<int?> places, string? doubt)
    {
        if (check.PerCylinder && places is [null])
        {
            doubt = Doubts.Join(doubt, $"no {check.PlaceNoun} was named");
        }

        var setting = frame.Predicates.Any(predicate => predicate is ActionDone { Action: PartActions.Adjusted });
        if (places.Count > 1 && values.Count > 1 && !setting && !frame.Was)
        {
            var mismatch = places.Count == values.Count ? null : $"{values.Count} values for {places.Count} places";
            for (var i = 0; i < values.Count; i++)
            {
                AddReading(frame, check, values[i], places[Math.Min(i, places.Count - 1)], Doubts.Join(doubt, mismatch));
            }

            return;
        }

        foreach (var value in values)
        {
            foreach (var place in places)
            {
                AddReading(frame, check, value, place, Doubts.Join(doubt, value.Value.RangeEnd && !setting ? "said as a range" : null));
            }
        }
    }

    private void AddReading(Frame frame, Check check, ValueSaid value, int? place, string? doubt) =>
        _findings.Add(Finding(frame, value, FindingKind.Reading, check, place, doubt) with
        {
            Value = Round(value.Value.Value),
            Unit = Units.BaseOf(check.Measurand!.Kind).Symbol,
        });

    private bool AddBrackets(Frame frame, Check check, List<ValueSaid> values)
    {
        if (values.All(value => value.Goes is null))
        {
            return false;
        }

        var places = Places(frame, check, out var doubt);
        foreach (var value in values.Where(value => value.Goes is not null))
        {
            if (_openGauge is { } other && other.Goes != value.Goes && other.Check == check)
            {
                foreach (var place in frame.Placed ? places : _openGaugePlaces)
                {
                    AddBracket(frame, check, value, other, place, doubt);
                }

                _openGauge = null;
            }
            else
            {
                (_openGauge, _openGaugePlaces) = (value, places);
            }
        }

        return true;
    }

    private void AddBracket(Frame frame, Check check, ValueSaid value, ValueSaid other, int? place, string? doubt)
    {
        var (goes, stops) = value.Goes == true ? (value, other) : (other, value);
        var wrong = goes.Value.Value < stops.Value.Value ? null : "the gauge that goes is not smaller than the one that stops";
        var missing = check.PerCylinder && place is null ? $"no {check.PlaceNoun} was named" : null;
        var finding = Finding(frame, value, FindingKind.Reading, check, place, Doubts.Join(doubt, other.Doubt, wrong, missing));
        var start = Math.Min(finding.Start, tokens[other.First].Start);
        _findings.Add(finding with
        {
            Bracket = new(Round(goes.Value.Value), Round(stops.Value.Value)),
            Unit = Units.BaseOf(check.Measurand!.Kind).Symbol,
            Start = start,
            Words = text[start..finding.End],
        });
    }

    private void AddOther(Frame frame, Predicate predicate)
    {
        switch (predicate)
        {
            case ConditionSaid condition:
                AddCondition(frame, condition);
                break;
            case NothingSaid nothing:
                AddNothing(frame, nothing);
                break;
            case ActionDone action:
                foreach (var check in ActionChecks(frame, action))
                {
                    var places = Places(frame, check, out var doubt);
                    AddAction(frame, check, action.Action, action, places, doubt);
                }

                break;
        }
    }

    private void AddCondition(Frame frame, ConditionSaid said)
    {
        if (said.Good && _findings.Count > 0 && _findings[^1].Kind == FindingKind.Reading && !frame.Mentioned
            || frame.Looked && said.Naming)
        {
            return;
        }

        foreach (var check in ConditionChecks(frame, said))
        {
            var meanings = Meanings(said, check);
            if (meanings.Count == 0)
            {
                continue;
            }

            var ambiguous = meanings.Count > 1 ? $"this may mean {meanings[0].Id} or {meanings[1].Id}" : null;
            var places = Places(frame, check, out var doubt);
            foreach (var place in places)
            {
                AddObservation(Finding(frame, said, FindingKind.Observation, check, place, Doubts.Join(doubt, ambiguous)) with
                {
                    Condition = meanings[0].Id,
                    Negated = said.Negated,
                });
            }
        }
    }

    private static List<Condition> Meanings(ConditionSaid said, Check check)
    {
        var named = said.Terms.Where(term => term.Check == check).Select(term => term.Condition).ToList();
        if (named.Count > 0 || !said.Good)
        {
            return named;
        }

        var good = check.Conditions.Where(condition => condition.Meaning == ConditionMeaning.Good).ToList();
        return [.. good.OrderBy(condition => condition.Id == "good" ? 0 : 1).Take(1)];
    }

    private void AddNothing(Frame frame, NothingSaid said)
    {
        if (Named(frame, AbsenceCounts) is not [var check, ..])
        {
            return;
        }

        var good = check.Conditions.First(condition => condition.Meaning == ConditionMeaning.Good);
        foreach (var place in Places(frame, check, out var doubt))
        {
            AddObservation(Finding(frame, said, FindingKind.Observation, check, place, doubt) with
            {
                Condition = good.Id,
                Negated = true,
            });
        }
    }

    // "Nothing on five" says something only where the absence of the good is the fault: no spark, no start.
    private static bool AbsenceCounts(Check check) =>
        check.Conditions.Any(condition => condition.Meaning == ConditionMeaning.Good)
        && check.Conditions.All(condition => condition.Meaning != ConditionMeaning.Bad);

    private void AddObservation(Finding finding)
    {
        var known = _findings.Any(earlier => earlier.Kind == FindingKind.Observation && earlier.Check == finding.Check
            && earlier.Place == finding.Place && earlier.Condition == finding.Condition && earlier.Negated == finding.Negated);
        if (!known)
        {
            _findings.Add(finding);
        }
    }

    private void AddAction(Frame frame, Check check, string action, Predicate said, IReadOnlyList<int?> places, string? doubt)
    {
        foreach (var place in places)
        {
            var known = _findings.Any(earlier => earlier.Kind == FindingKind.Action && earlier.Check == check.Id
                && earlier.Place?.Cylinder == place && earlier.Action == action);
            if (!known)
            {
                _findings.Add(Finding(frame, said, FindingKind.Action, check, place, doubt) with { Action = action });
            }
        }
    }

    private void AddExceptions(Frame frame, int before)
    {
        if (frame.ExceptTaken || frame.Except.Count == 0)
        {
            return;
        }

        foreach (var said in _findings.Skip(before).Where(finding => finding.Kind == FindingKind.Observation)
            .DistinctBy(finding => (finding.Check, finding.Condition)).ToList())
        {
            foreach (var cylinder in frame.Except)
            {
                AddObservation(said with { Place = new(cylinder), Negated = !said.Negated });
            }
        }
    }

    private void AddEcho(Frame frame)
    {
        var places = frame.Places.SelectMany(place => place.Cylinders).Distinct().ToList();
        if (places.Count == 0 || _echoed.Count == 0)
        {
            return;
        }

        var pattern = _echoed.DistinctBy(finding => (finding.Kind, finding.Check, finding.Condition, finding.Action, finding.Value, finding.Bracket)).ToList();
        var span = Span(frame, null);
        foreach (var place in places)
        {
            foreach (var finding in pattern.Where(finding => finding.Place is not null))
            {
                if (frame.Echo != Echo.Same && finding.Kind != FindingKind.Observation)
                {
                    continue;
                }

                _findings.Add(finding with
                {
                    Place = new(place),
                    Negated = frame.Echo switch { Echo.Does => false, Echo.DoesNot => true, _ => finding.Negated },
                    Words = text[span.Start..span.End],
                    Start = span.Start,
                    End = span.End,
                });
            }
        }
    }

    private IEnumerable<Check> ActionChecks(Frame frame, ActionDone done)
    {
        var main = Named(frame, check => check.Actions.Contains(done.Action) && check.Spoken.MainForActions);
        var checks = done.Action == PartActions.Adjusted ? Named(frame, check => check.Actions.Contains(done.Action)) : main;
        var valued = frame.Predicates.OfType<ValueSaid>().FirstOrDefault()?.Check;
        if (done.Action == PartActions.Adjusted && valued is not null)
        {
            return valued.Actions.Contains(done.Action) ? [valued] : [];
        }

        // The rotor's top was just spoken of: what was done was done to it.
        if (_check is { } spoken && !frame.Mentioned && spoken.Actions.Contains(done.Action))
        {
            return [spoken];
        }

        var own = Named(frame, check => check.Actions.Contains(done.Action));
        if (own is [var best, ..] && checks is [var mainBest, ..] && best != mainBest
            && Score(frame, best) > Score(frame, mainBest))
        {
            return [best];
        }

        return checks;
    }

    private int Score(Frame frame, Check check) =>
        topics.Rank(frame.Bag).FirstOrDefault(ranked => ranked.Check == check).Score;

    private IEnumerable<Check> ConditionChecks(Frame frame, ConditionSaid said)
    {
        var named = Named(frame, check => Meanings(said, check).Count > 0);
        if (named.Count > 0 || frame.Mentioned || frame.Unknown > 0 || frame.OtherPart || said.Good)
        {
            return named;
        }

        var owners = said.Terms.Select(term => term.Check).Distinct().ToList();
        var fitting = frame.Placed ? owners.Where(check => check.PerCylinder).ToList() : owners.Where(check => !check.PerCylinder).ToList();
        return fitting.Count == 1 ? fitting : owners.Count == 1 ? owners : [];
    }

    /// <summary>The checks that a frame's words name, among those that fit; by the words before or the open check
    /// where it names none.</summary>
    private IReadOnlyList<Check> Named(Frame frame, Func<Check, bool> fits)
    {
        if (frame.OtherPart && !frame.Mentioned)
        {
            return [];
        }

        if (frame.Mentioned)
        {
            var whole = Best(frame.Bag, fits, carried: _bag);
            if (frame.Mentions.Count > 1 && whole is { } joint)
            {
                var apart = frame.Mentions.Select(words => Best(words, fits, [])).OfType<(Check Check, int Score)>().ToList();
                if (apart.Count > 1 && apart.All(one => one.Score >= joint.Score || joint.Score < 20) && apart.DistinctBy(one => one.Check).Count() > 1)
                {
                    return [.. apart.Select(one => one.Check).Distinct()];
                }
            }

            return whole is { } best ? [best.Check] : [];
        }

        if (frame.Unknown > 0)
        {
            return [];
        }

        if (Best(_bag, fits, []) is { } before)
        {
            return _check is { } spoken && fits(spoken) ? [spoken] : [before.Check];
        }

        if (_check is { } last && fits(last))
        {
            return [last];
        }

        return openCheck is not null && fits(openCheck) ? [openCheck] : [];
    }

    private (Check Check, int Score)? Best(IEnumerable<string> words, Func<Check, bool> fits, IReadOnlyList<string> carried)
    {
        var ranked = topics.Rank(words).Where(one => fits(one.Check)).ToList();
        if (ranked.Count == 0)
        {
            return null;
        }

        var tied = ranked.Where(one => one.Score == ranked[0].Score).ToList();
        if (tied.Count > 1)
        {
            var wider = topics.Rank(words.Concat(carried)).Where(one => tied.Any(tie => tie.Check == one.Check)).ToList();
            var best = tied.OrderByDescending(one => one.Check == openCheck)
                .ThenByDescending(one => wider.FirstOrDefault(wide => wide.Check == one.Check).Score)
                .ThenByDescending(one => one.Check.Spoken.MainForActions)
                .First();
            return best;
        }

        return ranked[0];
    }

    private static bool Understood(Frame frame) =>
        !(frame.OtherPart && !frame.Mentioned) && (frame.Mentioned || frame.Unknown == 0);

    private IReadOnlyList<int?> Places(Frame frame, Check check, out string? doubt)
    {
        doubt = null;
        if (!check.PerCylinder)
        {
            return [null];
        }

        if (frame.Places.Count > 0)
        {
            doubt = Doubts.Join([.. frame.Places.Select(place => place.Doubt)]);
            return [.. frame.Places.SelectMany(place => place.Cylinders).Distinct().Cast<int?>()];
        }

        switch (frame.Set)
        {
            case PlaceSet.All or PlaceSet.Any:
                return Except(frame.Except);
            case PlaceSet.Rest:
                return Except(_findings.Where(finding => finding.Check == check.Id && finding.Place is not null)
                    .Select(finding => finding.Place!.Cylinder));
        }

        if (_places.Count > 0 && Carries(frame, check))
        {
            return [.. _places.Cast<int?>()];
        }

        if (frame.Plural && check.Spoken.MainForActions)
        {
            doubt = $"no numbers were said: taken as all {sheet.Cylinders}";
            return Except(frame.Except);
        }

        return [null];
    }

    private IReadOnlyList<int?> Except(IEnumerable<int> left) =>
        [.. Enumerable.Range(1, sheet.Cylinders).Except(left).Cast<int?>()];

    private Finding Finding(Frame frame, Predicate said, FindingKind kind, Check check, int? place, string? doubt)
    {
        var (start, end) = Span(frame, said);
        return new(kind, check.Id, place is { } cylinder ? new Place(cylinder) : null, null, null, null, null, false, null,
            text[start..end], start, end, Doubts.Join(frame.Doubt, said.Doubt, doubt));
    }

    private (int Start, int End) Span(Frame frame, Predicate? said)
    {
        var subject = frame.SubjectSpan;
        var first = Math.Min(said?.First ?? int.MaxValue, subject?.First ?? int.MaxValue);
        var next = said is null || frame.SubjectAfter && !frame.SubjectBefore
            ? Math.Max(said?.Next ?? 0, subject?.Next ?? 0)
            : said.Next;
        first = Math.Min(first, next - 1);
        return (tokens[first].Start, tokens[next - 1].End);
    }

    private static double Round(decimal value) => (double)decimal.Round(value, 9);
}

using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Frames;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Writing;

/// <summary>Makes findings from frames, in the order spoken.</summary>
internal sealed class FindingWriter
{
    private readonly CheckSheet _sheet;
    private readonly List<Finding> _findings = [];
    private readonly Memory _memory;
    private readonly CheckChooser _checks;
    private readonly PlaceChooser _places;
    private readonly FindingMaker _make;
    private readonly ReadingWriter _readings;
    private readonly ObservationWriter _observations;

    public FindingWriter(CheckSheet sheet, Lexicon lexicon, Topics topics, IReadOnlyList<Token> tokens, string text, Check? openCheck)
    {
        _sheet = sheet;
        _memory = new(lexicon);
        _checks = new(topics, _memory, openCheck);
        _places = new(sheet, lexicon, _memory, _findings);
        _make = new(tokens, text);
        _readings = new(sheet, _memory, _places, _make, openCheck, _findings);
        _observations = new(_checks, _places, _make, _findings, sheet.Cylinders);
    }

    public IReadOnlyList<Finding> Write(IEnumerable<Frame> frames)
    {
        var said = frames.Where(frame => !frame.Empty).ToList();
        for (var i = 0; i < said.Count; i++)
        {
            if (i + 1 < said.Count && IsNothingYet(said[i]))
            {
                // "Nothing on five, the rest spark": of what is named next.
                said[i].Mentions.AddRange(said[i + 1].Mentions);
            }

            Write(said[i]);
        }

        return [.. _findings.Where(finding => !IsSaidBetter(finding))];
    }

    // "Lead six no good, boot torn": what is wrong was said after all.
    private bool IsSaidBetter(Finding vague) => vague.Doubt?.Contains(Frames.Conditions.Vague, StringComparison.Ordinal) == true
        && _findings.Any(other => other.Kind == FindingKind.Observation && !other.Negated && other.Check == vague.Check && other.Place == vague.Place && other.Condition != vague.Condition);

    private bool IsNothingYet(Frame frame) => frame is { Mentioned: false, Placed: true, Unknown: 0, Predicates: [PresenceSaid { Absent: true }] } && !_observations.CanBeNothing(frame);

    private void Write(Frame frame)
    {
        var before = _findings.Count;
        if (frame is { Echo: Echo.Same, Says: false, Mentioned: true } && _memory.Conditions.Count > 0)
        {
            // "And so is the rotor": the words before, said of another part.
            frame.Predicates.AddRange(_memory.Conditions);
        }
        else if (frame.Echo != Echo.None && !frame.Says)
        {
            _observations.WriteEcho(frame, _memory.Last);
        }

        var read = false;
        foreach (var predicate in _observations.WriteRow(frame) ? [] : InOrder(frame))
        {
            if (predicate is not ValueSaid)
            {
                Write(frame, predicate);
            }
            else if (!read)
            {
                _readings.Write(frame);
                read = true;
            }
        }

        _observations.WriteExceptions(frame, before);
        var written = _findings[before..];
        _memory.Keep(frame, written, written.Count > 0 ? _sheet.Find(written[^1].Check) : null, partOnly: frame.Mentioned && _checks.NamesNone(frame));
    }

    // A word that names the part says nothing more where something else is said; a setting comes after its values.
    private static IEnumerable<Predicate> InOrder(Frame frame)
    {
        var more = frame.Predicates.Any(predicate => predicate is PresenceSaid or ConditionSaid { Naming: false });
        return frame.Predicates
            .Where(predicate => predicate is not ConditionSaid { Naming: true } || !more)
            .OrderBy(predicate => predicate is ActionDone { Action: PartActions.Adjusted } ? 1 : 0);
    }

    private void Write(Frame frame, Predicate predicate)
    {
        switch (predicate)
        {
            case ConditionSaid condition:
                _observations.Write(frame, condition);
                break;
            case PresenceSaid presence:
                _observations.Write(frame, presence);
                break;
            case ActionDone action:
                WriteAction(frame, action);
                break;
        }
    }

    private void WriteAction(Frame frame, ActionDone done)
    {
        foreach (var check in _checks.ForAction(frame, done))
        {
            var (cylinders, doubt) = _places.Of(frame, check, ofWhole: !frame.HasSubject && (_memory.Whole || frame.Singular && _memory.MeansWhole(check)));
            foreach (var place in cylinders.Where(place => !IsKnown(check, place, done.Action)))
            {
                _findings.Add(_make.Action(frame, done, check, place, done.Action, doubt));
            }
        }
    }

    private bool IsKnown(Check check, int? place, string action) =>
        _findings.Any(earlier => earlier.Check == check.Id && earlier.Place?.Cylinder == place && earlier.Action == action);
}

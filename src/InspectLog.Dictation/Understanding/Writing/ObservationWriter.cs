using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Doubting;
using InspectLog.Dictation.Understanding.Frames;

namespace InspectLog.Dictation.Understanding.Writing;

/// <summary>Writes the observations of a frame. The same observation is written once.</summary>
internal sealed class ObservationWriter(
    CheckChooser checks, PlaceChooser places, FindingMaker make, List<Finding> findings, int cylinderCount)
{
    /// <summary>"Towers one to six: clean, clean, burnt, clean, clean, corroded": as many conditions as places, one for each.
    /// Returns whether they were.</summary>
    public bool WriteRow(Frame frame)
    {
        var row = frame.Predicates.OfType<ConditionSaid>().ToList();
        var repeats = row.Zip(row.Skip(1)).Any(pair => pair.First.Good == pair.Second.Good && pair.First.Terms.SequenceEqual(pair.Second.Terms));
        var cylinders = Row(frame, row);
        if (row.Count < ShortestRow || row.Count != frame.Predicates.Count || row.Count != cylinders.Count || !repeats)
        {
            return false;
        }

        for (var i = 0; i < row.Count; i++)
        {
            Write(frame, row[i], cylinders[i]);
        }

        return true;
    }

    // "Black, black, tan, tan, black, tan": as many as there are cylinders, in order.
    private List<int> Row(Frame frame, List<ConditionSaid> row)
    {
        if (frame.Placed || frame.Mentioned || row.Count == 0 || checks.ForCondition(frame, row[0]) is not [{ PerCylinder: true }])
        {
            return [.. frame.Places.SelectMany(place => place.Cylinders).Distinct()];
        }

        return row.Count == cylinderCount ? [.. Enumerable.Range(1, cylinderCount)] : [];
    }

    public void Write(Frame frame, ConditionSaid said, int? only = null)
    {
        // "Nine point four k, good" speaks of the limit, and "checked the spark" of no outcome.
        var remark = said.Good && !frame.HasSubject && findings is [.., { Kind: FindingKind.Reading }];
        if (remark || frame.Looked && said.Naming)
        {
            return;
        }

        foreach (var check in checks.ForCondition(frame, said))
        {
            var meanings = CheckChooser.Meanings(said, check);
            if (meanings.Count == 0 || said.Good && !said.Terms.Any(term => term.Check == check) && checks.OnlyTouches(frame, check))
            {
                continue;
            }

            var either = meanings.Count > 1 ? $"this may mean {meanings[0].Id} or {meanings[1].Id}" : null;
            var (cylinders, doubt) = places.Of(frame, check);
            if (cylinders is [null] && (said is { Naming: true, Negated: false } || check.PerCylinder && said is { Good: true, Negated: true, Terms.Count: 0 } && AbsenceCounts(check)))
            {
                // "Spark test" is a heading, and "the light's no good" speaks of no cylinder.
                continue;
            }

            foreach (var place in only is null ? cylinders : [only])
            {
                Add(make.Observation(frame, said, check, place, meanings[0].Id, said.Negated, Doubts.Join(doubt, either)));
            }
        }
    }

    // Of two places, "chafed and burnt" is said of both.
    private const int ShortestRow = 3;

    /// <summary>Whether something was spoken of that "nothing" can be said of.</summary>
    public bool CanBeNothing(Frame frame) => checks.Named(frame, AbsenceCounts).Count > 0;

    public void Write(Frame frame, PresenceSaid said)
    {
        if (checks.Named(frame, AbsenceCounts) is not [var check, ..])
        {
            return;
        }

        var good = check.Conditions.First(condition => condition.Meaning == ConditionMeaning.Good);
        var (cylinders, doubt) = places.Of(frame, check);
        foreach (var place in check.PerCylinder && cylinders is [null] ? [] : cylinders)
        {
            Add(make.Observation(frame, said, check, place, good.Id, said.Absent, doubt));
        }
    }

    /// <summary>The cylinders that "all except" left out, of which nothing else was said, are otherwise.</summary>
    public void WriteExceptions(Frame frame, int from)
    {
        if (frame.ExceptTaken || frame.Except.Count == 0)
        {
            return;
        }

        var said = findings.Skip(from).Where(finding => finding.Kind == FindingKind.Observation)
            .DistinctBy(finding => (finding.Check, finding.Condition)).ToList();
        foreach (var finding in said)
        {
            foreach (var cylinder in frame.Except)
            {
                Add(finding with { Place = new(cylinder), Negated = !finding.Negated });
            }
        }
    }

    /// <summary>"Three doesn't", "same on four": what was said before, of other cylinders.</summary>
    public void WriteEcho(Frame frame, IReadOnlyList<Finding> before)
    {
        var pattern = before
            .Where(finding => finding.Place is not null && (frame.Echo == Echo.Same || finding.Kind == FindingKind.Observation))
            .DistinctBy(finding => (finding.Kind, finding.Check, finding.Condition, finding.Action, finding.Value, finding.Bracket))
            .ToList();
        foreach (var place in frame.Places.SelectMany(place => place.Cylinders).Distinct())
        {
            foreach (var finding in pattern)
            {
                var negated = frame.Echo switch { Echo.Does => false, Echo.DoesNot => true, _ => finding.Negated };
                findings.Add(make.Again(finding, frame, place) with { Negated = negated });
            }
        }
    }

    // "Nothing on five" says something only where the absence of the good is the fault: no spark, no start.
    private static bool AbsenceCounts(Check check) =>
        check.Conditions.Any(condition => condition.Meaning == ConditionMeaning.Good)
        && check.Conditions.All(condition => condition.Meaning != ConditionMeaning.Bad);

    private void Add(Finding finding)
    {
        var known = findings.Any(earlier => earlier.Kind == FindingKind.Observation && earlier.Check == finding.Check
            && earlier.Place == finding.Place && earlier.Condition == finding.Condition && earlier.Negated == finding.Negated);
        if (!known)
        {
            findings.Add(finding);
        }
    }
}

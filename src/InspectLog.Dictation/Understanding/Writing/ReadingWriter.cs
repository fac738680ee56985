using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Doubting;
using InspectLog.Dictation.Understanding.Frames;

namespace InspectLog.Dictation.Understanding.Writing;

/// <summary>Writes the readings of a frame: repeats, one value for many cylinders, values for cylinders in order,
/// gauge brackets.</summary>
internal sealed class ReadingWriter(
    CheckSheet sheet, Memory memory, PlaceChooser places, FindingMaker make, Check? openCheck, List<Finding> findings)
{
    // A gauge that still waits for its counterpart, which may stand in the next frame.
    private ValueSaid? _openGauge;
    private ChosenPlaces _openGaugePlaces;

    public void Write(Frame frame)
    {
        var values = OfOneCheck(frame, [.. frame.Predicates.OfType<ValueSaid>()]);
        if (values.Count == 0 || !Belongs(frame, values[0]))
        {
            return;
        }

        var check = values[0].Check;
        var chosen = Chosen(frame, check, values.Count);
        if (check.Measurand!.Gauge && values.Any(value => value.Goes is not null))
        {
            WriteBrackets(frame, check, values, chosen);
            return;
        }

        if (frame.Was && values is [var earlier] && chosen.Cylinders is [var where] && SetSince(check, where) is { } set)
        {
            // "Set it to ten, it had been six": what was before goes before.
            findings.Insert(set, make.Reading(frame, earlier, check, where, chosen.Doubt));
            return;
        }

        WriteValues(frame, check, values, chosen);
        var before = frame.Was ? values.Count == 2 : memory.Was && memory.Check == check;
        if (frame.Now && before && check.Actions.Contains(PartActions.Adjusted)
            && !frame.Predicates.Any(predicate => predicate is ActionDone))
        {
            foreach (var place in chosen.Cylinders)
            {
                findings.Add(make.Action(frame, values[^1], check, place, PartActions.Adjusted, chosen.Doubt));
            }
        }
    }

    // "Eleven thou, yes, eleven thou in the air gap", "the thirty thou feeler goes in plug two, thirty five doesn't": what
    // was said of the check later holds for the values before.
    private static List<ValueSaid> OfOneCheck(Frame frame, List<ValueSaid> values)
    {
        var named = values.Find(value => !value.Nameless && value.Check.PerCylinder == frame.Placed) ?? values.Find(value => !value.Nameless);
        return named is null ? values : values.ConvertAll(value =>
            value.Check == named.Check || value.Check.Measurand!.Kind != named.Check.Measurand!.Kind || !value.Nameless && value.Goes is null
                ? value : value with { Check = named.Check, Nameless = false });
    }

    // Whether the values are about a check at all, and not about something else that was talked of.
    private bool Belongs(Frame frame, ValueSaid value)
    {
        var plain = openCheck == value.Check && value.Value.UnitSaid && frame.Unknown == 1;
        if (frame.Foreign || !frame.Mentioned && (frame.Unknown > 0 && !plain || memory.Foreign))
        {
            return false;
        }

        var alone = value.Value.UnitSaid && !frame.Tied && sheet.Checks.Count(check => check.Measurand?.Kind == value.Check.Measurand!.Kind) == 1;
        return !value.Nameless || openCheck is not null || value.Value.AngleSaid || alone;
    }

    private ChosenPlaces Chosen(Frame frame, Check check, int values)
    {
        var chosen = places.Of(frame, check);
        return chosen.Cylinders is [null] && check.PerCylinder && values == sheet.Cylinders
            ? new(places.AllBut([]), "no cylinders were named: taken in order")
            : chosen;
    }

    // Where the reading stands that the frame before told as newly set.
    private int? SetSince(Check check, int? where)
    {
        var set = findings.FindLastIndex(finding => finding.Kind == FindingKind.Reading);
        return set >= 0 && memory.Last.Any(finding => finding.Action == PartActions.Adjusted && finding.Check == check.Id) && findings[set].Check == check.Id
            && findings[set].Place?.Cylinder == where ? set : null;
    }

    private void WriteValues(Frame frame, Check check, List<ValueSaid> values, ChosenPlaces chosen)
    {
        var set = frame.Was || frame.Predicates.Any(predicate => predicate is ActionDone { Action: PartActions.Adjusted });
        var (cylinders, doubt) = chosen;
        if (cylinders.Count > 1 && values.Count > 1 && !set && !values.TrueForAll(value => value.Value.RangeEnd))
        {
            var mismatch = cylinders.Count == values.Count ? null : $"{values.Count} values for {cylinders.Count} places";
            for (var i = 0; i < values.Count; i++)
            {
                Add(frame, check, values[i], cylinders[Math.Min(i, cylinders.Count - 1)], Doubts.Join(doubt, mismatch));
            }

            return;
        }

        foreach (var value in values)
        {
            var range = value.Value.RangeEnd && !set ? "said as a range" : null;
            foreach (var place in cylinders)
            {
                Add(frame, check, value, place, Doubts.Join(doubt, range));
            }
        }
    }

    private void Add(Frame frame, Check check, ValueSaid value, int? place, string? doubt)
    {
        var nameless = value is { Nameless: true, Value.AngleSaid: false } ? Doubts.Unnamed("check") : null;
        findings.Add(make.Reading(frame, value, check, place, Doubts.Join(doubt, nameless)));
    }

    // "Point two five goes, point three five doesn't, point three just drags": the bracket is between the closest.
    private static List<ValueSaid> Closest(List<ValueSaid> values)
    {
        var goes = values.Where(value => value.Goes == true).MaxBy(value => value.Value.Value);
        var stops = values.Where(value => value.Goes == false).MinBy(value => value.Value.Value);
        return goes is null || stops is null || values.Count < 3 || goes.Value.Value >= stops.Value.Value || values.Exists(value => value.Goes is null)
            ? values
            : [.. values.Where(value => value == goes || value == stops)];
    }

    private void WriteBrackets(Frame frame, Check check, List<ValueSaid> all, ChosenPlaces chosen)
    {
        var values = Closest(all);
        foreach (var value in values.Where(value => value.Goes is not null))
        {
            if (_openGauge is not { } other || other.Goes == value.Goes || other.Check != check)
            {
                (_openGauge, _openGaugePlaces) = (value, chosen);
                continue;
            }

            var (cylinders, doubt) = frame.Placed ? chosen : _openGaugePlaces;
            foreach (var place in cylinders)
            {
                findings.Add(make.Bracket(frame, other, value, check, place, doubt));
            }

            _openGauge = null;
        }
    }
}

using InspectLog.Dictation.Understanding.Language;
using InspectLog.Dictation.Understanding.Texts;
using InspectLog.Measuring;

namespace InspectLog.Dictation.Understanding.Lattice;

/// <summary>Finds the runs of number words of a text and every way to cut each into numbers with units and roles.</summary>
internal sealed partial class NumberRuns
{
    private const int MostOptions = 40;
    private const int MostSegments = 6;

    private readonly SheetLexicon _lexicon;
    private readonly IReadOnlyList<Token> _tokens;
    private readonly IReadOnlyList<NumberReading>[] _readings;
    private readonly HashSet<QuantityKind> _kinds;
    private readonly HashSet<int> _quantified;
    private readonly HashSet<int> _counting;

    public NumberRuns(SheetLexicon lexicon, IReadOnlyList<Token> tokens, IReadOnlyList<Phrase<Quantifier>> quantifiers)
    {
        (_lexicon, _tokens) = (lexicon, tokens);
        var grammar = new NumberGrammar(lexicon.Language, tokens);
        _readings = [.. Enumerable.Range(0, tokens.Count).Select(at => grammar.At(at))];
        _kinds = [.. lexicon.Checks.Where(check => check.Measurand is not null).Select(check => check.Measurand!.Kind)];
        _counting = [.. quantifiers.Where(span => span.Meanings.Contains(Quantifier.All) || span.Meanings.Contains(Quantifier.Rest)).Select(span => span.Next)];
        _quantified = [.. quantifiers.Where(span => span.Length > 1).SelectMany(span => Enumerable.Range(span.First, span.Length))];
    }

    public List<NumberRun> Find()
    {
        var runs = new List<NumberRun>();
        for (var at = 0; at < _tokens.Count;)
        {
            if (!Readings(at).Any())
            {
                at++;
                continue;
            }

            var next = Reach(at);
            var options = new List<NumberSegment[]>();
            Cut(at, next, [], options);
            runs.Add(new(at, next, options.Count > MostOptions ? options[..MostOptions] : options));
            at = next;
        }

        return runs;
    }

    private IEnumerable<NumberReading> Readings(int at) => at >= _tokens.Count ? [] : _readings[at].Where(reading => reading.Form != NumberForm.Alike || AlikeFits(at));

    private (int Length, IReadOnlyList<SpokenUnit> Meanings)? UnitAt(int at) => at < _tokens.Count ? _lexicon.Language.Units.At(_tokens, at) : null;

    // How far the words go on being numbers and their units.
    private int Reach(int first)
    {
        var reach = End(first);
        for (var at = first + 1; at <= reach && at < _tokens.Count; at++)
        {
            if (_readings[at].Any(reading => reading.Form != NumberForm.Alike))
            {
                reach = Math.Max(reach, End(at));
            }
        }

        return reach;
    }

    private int End(int at)
    {
        var reach = _readings[at].Max(reading => reading.Next);
        if (UnitAt(reach) is not { } unit)
        {
            return reach;
        }

        reach += unit.Length;
        return HalfAfterUnit(reach) is > 0 and var length ? reach + length : reach;
    }

    // "Nine k and a half": how many tokens say so after the unit.
    private int HalfAfterUnit(int at) => at + 2 < _tokens.Count && _lexicon.Language.Numbers.IsAnd(_tokens[at].Text)
        && _lexicon.Language.Numbers.IsOne(_tokens[at + 1].Text) && _lexicon.Language.Numbers.Fraction(_tokens[at + 2].Text) is not null ? 3 : 0;

    private bool AlikeFits(int at)
    {
        var before = at > 0 ? _tokens[at - 1] : null;
        var isPlace = before is not null && _lexicon.Language.Places.Noun.Contains(before.Stem);
        var afterPoint = before is not null && _lexicon.Language.Numbers.IsPoint(before.Text);
        return _lexicon.Language.Numbers.IsWeakAlike(_tokens[at].Text)
            ? isPlace || before is { Plural: false } && _lexicon.IsPlaceNoun(before.Stem) || UnitAt(at + 1) is { } unit && unit.Meanings.Any(one => one.Unit is not null && _kinds.Contains(one.Unit.Kind))
            : isPlace || afterPoint || before is not null && (_lexicon.IsPlaceNoun(before.Stem) || _lexicon.Language.Places.Join.Contains(before.Text))
                || at + 1 < _tokens.Count && _lexicon.Language.Numbers.IsPoint(_tokens[at + 1].Text);
    }

    private void Cut(int at, int end, List<NumberSegment> segments, List<NumberSegment[]> options)
    {
        if (options.Count > MostOptions || segments.Count > MostSegments)
        {
            return;
        }

        if (at >= end)
        {
            Assign(segments, 0, options);
            return;
        }

        var any = false;
        foreach (var reading in Readings(at).Where(reading => reading.Next <= end).OrderByDescending(reading => reading.Next))
        {
            any = true;
            foreach (var segment in WithUnit(at, reading, end))
            {
                Go(segment);
            }
        }

        if (Glued(at, end) is { } glued)
        {
            Go(glued);
        }

        if (!any)
        {
            Cut(at + 1, end, segments, options);
        }

        void Go(params NumberSegment[] more)
        {
            segments.AddRange(more);
            Cut(more[^1].Next, end, segments, options);
            segments.RemoveRange(segments.Count - more.Length, more.Length);
        }
    }

    private IEnumerable<NumberSegment[]> WithUnit(int at, NumberReading reading, int end)
    {
        if (UnitAt(reading.Next) is not { } unit || reading.Next + unit.Length > end)
        {
            yield return [new(at, reading.Next, reading.Value, reading.Form, null, NumberRole.Other)];
            yield break;
        }

        var next = reading.Next + unit.Length;
        yield return [new(at, next, reading.Value, reading.Form, unit.Meanings, NumberRole.Other)];
        if (!double.IsInteger(reading.Value) || unit.Meanings.All(one => one.Unit is null))
        {
            yield break;
        }

        foreach (var decimals in next < end ? _readings[next] : [])
        {
            if (decimals is { Form: NumberForm.Whole, Value: >= 0 and < 100 } && decimals.Next <= end && UnitAt(decimals.Next) is null)
            {
                var value = reading.Value + decimals.Value / (decimals.Value < 10 ? 10 : 100);
                yield return [new(at, decimals.Next, value, NumberForm.UnitAsPoint, unit.Meanings, NumberRole.Other)];
            }
        }

        if (HalfAfterUnit(next) is > 0 and var half && next + half <= end)
        {
            yield return [new(at, next + half, reading.Value + _lexicon.Language.Numbers.Fraction(_tokens[next + 2].Text)!.Value, NumberForm.UnitAsPoint, unit.Meanings, NumberRole.Other)];
        }
    }
}

using InspectLog.Dictation.Understanding.Language;
using InspectLog.Dictation.Understanding.Texts;

namespace InspectLog.Dictation.Understanding.Lattice;

/// <content>What each number of a run can be.</content>
internal sealed partial class NumberRuns
{
    // "Plug 1.8" for plug one, point eight.
    private NumberSegment[]? Glued(int at, int end)
    {
        if (_tokens[at].Kind != TokenKind.Figure || _tokens[at].Text is not [>= '1' and <= '9' and var place, '.', ..] || place - '0' > _lexicon.Places)
        {
            return null;
        }

        var unit = UnitAt(at + 1) is { } said && at + 1 + said.Length <= end ? said : ((int Length, IReadOnlyList<SpokenUnit> Meanings)?)null;
        var value = double.Parse($"0{_tokens[at].Text.AsSpan(1, Math.Min(6, _tokens[at].Text.Length - 1))}", System.Globalization.CultureInfo.InvariantCulture);
        return
        [
            new(at, at + 1, place - '0', NumberForm.Split, null, NumberRole.Place),
            new(at, at + 1 + (unit?.Length ?? 0), value, NumberForm.Split, unit?.Meanings, NumberRole.Value),
        ];
    }

    private void Assign(List<NumberSegment> segments, int index, List<NumberSegment[]> options)
    {
        if (index == segments.Count)
        {
            options.Add([.. segments]);
            return;
        }

        var segment = segments[index];
        foreach (var role in Roles(segment))
        {
            segments[index] = segment with { Role = role };
            Assign(segments, index + 1, options);
        }

        segments[index] = segment;
    }

    private NumberRole[] Roles(NumberSegment segment) => segment switch
    {
        { Form: NumberForm.Split } => [segment.Role],
        { Form: NumberForm.Whole, Units: null, Value: >= 2 } when _counting.Contains(segment.First) => [NumberRole.Other],
        { Units: { } units } when !units.Any(one => one.Unit is not null && _kinds.Contains(one.Unit.Kind)) => [NumberRole.Other],
        _ when _quantified.Contains(segment.First) || segment.Form == NumberForm.Ordinal && segment.Next < _tokens.Count && _readings[segment.Next].Any(next => next.Form == NumberForm.Whole) => [NumberRole.Other],
        { Units: null, Form: NumberForm.Whole or NumberForm.Ordinal or NumberForm.Alike } when segment.Value >= 1 && segment.Value <= _lexicon.Places =>
            segment.Form == NumberForm.Whole ? [NumberRole.Place, NumberRole.Other, NumberRole.Value] : [NumberRole.Place, NumberRole.Other],
        { Form: NumberForm.Ordinal or NumberForm.Alike, Units: null } => [NumberRole.Other],
        _ => [NumberRole.Other, NumberRole.Value],
    };
}

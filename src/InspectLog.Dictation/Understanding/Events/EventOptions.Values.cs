using InspectLog.Dictation.Understanding.Language;
using InspectLog.Dictation.Understanding.Lattice;
using InspectLog.Dictation.Understanding.Scoring;

namespace InspectLog.Dictation.Understanding.Events;

/// <content>Readings.</content>
internal sealed partial class EventOptions
{
    private static readonly SpeechRole[] GaugeRoles = [SpeechRole.Goes, SpeechRole.Stops, SpeechRole.Before, SpeechRole.After];

    private void AddValueDrop(NoteEvent found, NumberSegment number)
    {
        var fits = scene.Checks.Where(check => ValueMeanings.Fits(check, number)).ToList();
        _features.Add(Feature.ValueForm, (int)number.Form);
        _features.Add(Feature.ValueUnit, Flag(number.Units is not null));
        _features.Add(Feature.ValueFits, Math.Min(fits.Count, 3));
        var limits = fits.Exists(check => ValueMeanings.Of(check, number).Any(meaning => ValueMeanings.IsLimit(check.Measurand!, meaning.Value)));
        _features.Add(Feature.ValueIsLimit, Flag(limits), Flag(number.Units is not null));
        _features.Add(Feature.ValueIsLimit, 2 + Flag(limits), Flag(Note.Of(SpeechRole.Limit).Any(word => scene.InClause(word.First, found.First))), Flag(HasOther(found, fits)));
        _features.Add(Feature.ValueFitsNamed, Flag(fits.Exists(check => Note.Names.Exists(name => Evidence.KindOf(name, check.Index) is not null))));
        _features.Add(Feature.ValueFitsInClause, Flag(fits.Exists(check => Note.Names.Exists(name => scene.InClause(name.First, found.First) && Evidence.KindOf(name, check.Index) is not null))));
    }

    // Whether another value of the same sentence may be the reading.
    private bool HasOther(NoteEvent found, List<CheckEntry> checks) => scene.Events.Exists(other => other.Kind == EventKind.Value && other.First != found.First
        && scene.InSentence(other.First, found.First) && checks.Exists(check => ValueMeanings.Fits(check, other.Number!)));

    private void AddValues(NoteEvent found, NumberSegment number, List<EventOption> options)
    {
        var meant = scene.Checks.Where(check => check.Measurand is not null)
            .Select(check => (Check: check, Values: ValueMeanings.Of(check, number).ToList())).Where(one => one.Values.Count > 0).ToList();
        var next = scene.Events.Find(other => other.Kind == EventKind.Value && other.First >= found.Next);
        foreach (var (check, values) in meant)
        {
            var shared = EvidenceFor(found, check);
            foreach (var value in values)
            {
                AddValue(found, check, value, shared, meant.Count, next, options);
            }
        }
    }

    private void AddValue(NoteEvent found, CheckEntry check, ValueMeaning value, uint[] shared, int fits, NoteEvent? next, List<EventOption> options)
    {
        var own = ValueFeatures(found, check, value, fits, next);
        foreach (var sign in check.TwoSided && value.Value > 0 ? new[] { 1, -1 } : [1])
        {
            AddAll(own);
            if (check.TwoSided && value.Value > 0)
            {
                _features.Add(Feature.Sign, sign);
                scene.AddRole(_features, Feature.SignRole, SpeechRole.Late, found.First, found.Next, 3, sign);
            }

            Keep(options, Claim.Reading(check.Index, value.Value * sign), shared);
        }

        if (check.Measurand!.Gauge && next is not null && Stop(found, check, value, next) is { } stop)
        {
            AddAll(own);
            AddBracket(found, next, value.Value, stop);
            Keep(options, Claim.Gauges(check.Index, value.Value, stop), shared, OptionKind.Bracket);
        }
    }

    private uint[] ValueFeatures(NoteEvent found, CheckEntry check, ValueMeaning value, int fits, NoteEvent? next)
    {
        var (source, distance) = ((int)value.Source, ValueMeanings.Distance(check.Measurand!, value.Value));
        _features.Add(Feature.Source, source);
        _features.Add(Feature.SourceForm, source, (int)found.Number!.Form);
        _features.Add(Feature.SourceDistance, source, distance);
        _features.Add(Feature.LimitDistance, distance);
        _features.Add(Feature.SourceIsLimit, source, Flag(ValueMeanings.IsLimit(check.Measurand!, value.Value)));
        _features.Add(Feature.Fits, Math.Min(fits, 3));
        _features.Add(Feature.SourceFits, source, Math.Min(fits, 3));
        if (found.Number.Units is null && next?.Number!.Units is { } units)
        {
            var agrees = units.Any(unit => unit.Unit?.Kind == check.Measurand!.Kind && Math.Abs(unit.ToBase(found.Number.Value) - value.Value) < 1e-9);
            _features.Add(Feature.NextUnit, Flag(agrees), (int)Note.Between(found.Next, next.First));
        }

        if (found.Number.Units is null && scene.Events.FindLast(other => other.Kind == EventKind.Value && other.Next <= found.First)?.Number is { Units: { } before })
        {
            var agrees = before.Any(unit => unit.Unit?.Kind == check.Measurand!.Kind && Math.Abs(unit.ToBase(found.Number.Value) - value.Value) < 1e-9);
            _features.Add(Feature.UnitBefore, Flag(agrees), before.Any(unit => unit.Unit?.Kind == check.Measurand!.Kind) ? 1 : 0);
        }

        return _features.Take();
    }

    // The gauge that stops, in the unit that either number was said with.
    private static double? Stop(NoteEvent found, CheckEntry check, ValueMeaning value, NoteEvent next)
    {
        var (number, other) = (found.Number!, next.Number!);
        var values = number.Units is { } said && other.Units is null
            ? said.Where(unit => unit.Unit?.Kind == check.Measurand!.Kind).Select(unit => unit.ToBase(other.Value))
            : number.Units is null && other.Units is { } later
                ? ValueMeanings.Of(check, other).Where(_ => later.Any(unit => unit.Unit?.Kind == check.Measurand!.Kind && Math.Abs(unit.ToBase(number.Value) - value.Value) < 1e-9)).Select(meaning => meaning.Value)
                : ValueMeanings.Of(check, other).Where(meaning => meaning.Source == value.Source).Select(meaning => meaning.Value);
        foreach (var stop in values)
        {
            return Math.Abs(stop - value.Value) > 1e-9 ? stop : null;
        }

        return null;
    }

    private void AddBracket(NoteEvent found, NoteEvent next, double goes, double stops)
    {
        _features.Add(Feature.Bracket);
        for (var at = found.Next; at < next.First; at++)
        {
            _features.Add(Feature.BracketBetween, Note.Shape[at]);
        }

        for (var at = next.Next; at < Math.Min(Note.Length, next.Next + 5); at++)
        {
            _features.Add(Feature.BracketAfter, Note.Shape[at]);
        }

        for (var at = Math.Max(0, found.First - 4); at < found.First; at++)
        {
            _features.Add(Feature.BracketBefore, Note.Shape[at]);
        }

        foreach (var role in GaugeRoles)
        {
            scene.AddRole(_features, Feature.BracketFirstRole, role, found.First, found.Next, 4);
            scene.AddRole(_features, Feature.BracketSecondRole, role, next.First, next.Next, 4);
        }

        var ratio = Math.Max(goes, stops) / Math.Max(1e-9, Math.Min(goes, stops));
        _features.Add(Feature.BracketRatio, (int)Math.Clamp((ratio - 1) * 8, 0, 4));
        _features.Add(Feature.BracketBoundary, (int)Note.Between(found.Next, next.First));
    }

    private void AddAll(uint[] keys) => _features.AddKeys(keys);
}

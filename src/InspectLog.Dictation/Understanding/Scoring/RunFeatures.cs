using InspectLog.Dictation.Understanding.Events;
using InspectLog.Dictation.Understanding.Language;
using InspectLog.Dictation.Understanding.Lattice;

namespace InspectLog.Dictation.Understanding.Scoring;

/// <summary>What speaks for a way to cut and read a run of numbers.</summary>
internal sealed class RunFeatures(Note note)
{
    /// <summary>Sorts of choice are numbered by the kind of event; the choice of numbers comes after them.</summary>
    private const int ScopeOfRuns = 9;

    private const int Near = 10;
    private readonly FeatureList _features = new() { Scope = ScopeOfRuns };

    /// <summary>The features of one way, after a number of some role.</summary>
    public uint[] Of(int run, NumberSegment[] option, int before)
    {
        var (roles, pattern) = (1, 1);
        for (var at = 0; at < option.Length; at++)
        {
            roles = roles * 4 + (int)option[at].Role;
            pattern = pattern * 64 + (int)option[at].Role * 16 + (int)option[at].Form;
            Add(run, option[at], at, before);
            before = (int)option[at].Role;
        }

        _features.Add(Feature.RunRoles, roles);
        _features.Add(Feature.RunLength, option.Length);
        if (option.Length > 1)
        {
            _features.Add(Feature.RunPattern, pattern);
        }

        return _features.Take();
    }

    private void Add(int run, NumberSegment number, int at, int before)
    {
        var (role, form) = ((int)number.Role, (int)number.Form);
        var unit = number.Units is not { } units ? 0 : units.Any(one => one.Unit is not null && note.Lexicon.Checks.Any(check => check.Measurand?.Kind == one.Unit.Kind)) ? 1 : 2;
        var small = number.Value >= 1 && number.Value <= note.Lexicon.Places && double.IsInteger(number.Value) ? 1 : 0;
        var (left, right) = (note.Word(number.First - 1), note.Word(number.Next));
        var name = NameBefore(number.First);
        var nameAfter = note.Names.Find(one => one.First == number.Next) is { } next ? next.Meanings.Any(naming => naming.Subject) ? 2 : 1 : 0;
        _features.Add(Feature.RunForm, role, form, unit);
        _features.Add(Feature.RunLeft, role, note.ShapeAt(number.First - 1));
        _features.Add(Feature.RunRight, role, note.ShapeAt(number.Next));
        _features.Add(Feature.RunName, role, name, form);
        _features.Add(Feature.RunNameAfter, role, nameAfter);
        _features.Add(Feature.RunNameAfter, role, nameAfter, 1 + form);
        _features.Add(Feature.RunConditionAfter, role, note.Conditions.Exists(one => one.First == number.Next) ? 1 : 0);
        _features.Add(Feature.RunSize, role, form, small, unit);
        _features.Add(Feature.RunLeftTwo, role, note.ShapeAt(number.First - 2), note.ShapeAt(number.First - 1));
        _features.Add(Feature.RunBoth, role, note.ShapeAt(number.First - 1), note.ShapeAt(number.Next));
        _features.Add(Feature.RunTokens, role, number.Next - number.First);
        _features.Add(Feature.RunLeftForm, role, form, note.ShapeAt(number.First - 1));
        _features.Add(Feature.RunRightForm, role, form, note.ShapeAt(number.Next));
        var listed = Math.Min(note.RunsInList[run], 6);
        _features.Add(Feature.RunList, role, listed);
        _features.Add(Feature.RunList, role, listed, note.RunsInList[run] == note.Lexicon.Sheet.Cylinders ? 2 : 1, form, unit);
        var link = at > 0 ? 1 : note.ShapeAt(number.First - 1);
        _features.Add(Feature.RunBefore, role, before, link);
        AddAround(run, number, role, form, unit);
    }

    private int NameBefore(int first)
    {
        var near = note.Names.Find(one => one.Next == first || one.Next == first - 1 && IsLink(first - 1));
        if (near is null)
        {
            return 0;
        }

        var checks = near.Meanings.Select(naming => note.Lexicon.Checks[naming.Check]).ToList();
        return 1 + (near.Meanings.Any(naming => naming.Subject) ? 1 : 0) + (checks.Exists(check => check.Measurand is not null) ? 2 : 0) + (checks.Exists(check => check.PerPlace) ? 4 : 0)
            + (near.Next == first ? 0 : 8);
    }

    private bool IsLink(int at) => note.Lexicon.Language.Places.Noun.Contains(note.Tokens[at].Stem) || note.Lexicon.Language.Small.Contains(note.Tokens[at].Text) || note.Tokens[at].Text == ",";

    private void AddAround(int run, NumberSegment number, int role, int form, int unit)
    {
        if (number.Role == NumberRole.Value)
        {
            var fits = note.Lexicon.Checks.Where(check => ValueMeanings.Fits(check, number)).ToList();
            var near = fits.Where(check => note.Names.Exists(name => Math.Abs(name.First - number.First) < Near + 2 && Evidence.KindOf(name, check.Index) is not null)).ToList();
            _features.Add(Feature.RunFits, Math.Min(3, fits.Count));
            _features.Add(Feature.RunFitsNamed, near.Count > 0 ? 1 : 0, form);
            if (note.Open is { } open)
            {
                _features.Add(Feature.RunFitsOpen, fits.Contains(open) ? 1 : 0);
            }

            if (near.Count > 0 && unit == 0)
            {
                _features.Add(Feature.RunFitsLimits, near.SelectMany(check => ValueMeanings.Of(check, number).Select(meaning => ValueMeanings.Distance(check.Measurand!, meaning.Value))).DefaultIfEmpty(5).Min());
            }
        }
        else if (number.Role == NumberRole.Place)
        {
            _features.Add(Feature.RunPlaceNamed, note.Names.Exists(name => Math.Abs(name.First - number.First) < Near && name.Meanings.Any(naming => note.Lexicon.Checks[naming.Check].PerPlace)) ? 1 : 0,
                note.Open is null ? 0 : note.Open.PerPlace ? 2 : 1);
        }
        else
        {
            _features.Add(Feature.RunOtherNamed, note.Names.Count > 0 ? 1 : 0);
        }

        foreach (var (first, next) in note.Of(SpeechRole.Correction))
        {
            if (number.Next <= first && first <= number.Next + 3)
            {
                _features.Add(Feature.RunCorrected, role, run + 1 < note.Runs.Count ? 1 : 0);
            }

            if (next <= number.First && first >= number.First - 3)
            {
                _features.Add(Feature.RunCorrecting, role);
            }
        }
    }
}

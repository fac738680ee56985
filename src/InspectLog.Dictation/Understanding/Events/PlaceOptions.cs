using InspectLog.Dictation.Understanding.Language;
using InspectLog.Dictation.Understanding.Lattice;
using InspectLog.Dictation.Understanding.Scoring;
using InspectLog.Dictation.Understanding.Texts;

namespace InspectLog.Dictation.Understanding.Events;

/// <summary>Where a claim may be said to be.</summary>
internal sealed partial class PlaceOptions(NoteScene scene)
{
    private const int GroupsTried = 3;

    private readonly List<(long Places, FeatureList Features)> _options = [];
    private readonly Stack<FeatureList> _spare = [];

    // What is being placed.
    private NoteEvent _event = null!;
    private Claim _claim = null!;
    private CheckEntry _check = null!;
    private Found? _last;
    private long _all;
    private int _form;
    private int _shortForm;
    private int _name;

    private Note Note => scene.Note;

    private int Kind => (int)_event.Kind;

    /// <summary>The sets of places, 0 for none, each with its features.</summary>
    public List<(long Places, uint[] Features)> Of(NoteEvent found, Claim claim, Found? last)
    {
        (_event, _claim, _check, _last) = (found, claim, scene.Checks[claim.Check], last);
        _all = PlaceSets.All(_check.Places);
        (_form, _shortForm) = FormOfName();
        var groups = scene.Groups.Where(group => (group.Places != 0 || group.Count > 0) && (!group.IsNamed || _check.HasNamedPlaces)).ToList();
        AddGroups(groups);
        AddParts(groups);
        AddSequence(groups);
        AddNext(groups);
        foreach (var group in groups.Where(group => group.Excepted && group.Kind == Quantifier.Numbers))
        {
            var options = For(_all & ~group.Places);
            options?.Add(Feature.AllBut, _shortForm);
            options?.Add(Feature.AllBut, -1, Flag(group.First >= _event.Next));
            options?.Add(Feature.AllBut, -2, Kind);
        }

        AddRemembered(groups);
        AddAntecedents(groups);
        AddParallel(groups);
        AddUnion(groups);
        AddAllAndNone(groups);
        AddSaid();
        var result = new List<(long, uint[])>(_options.Count);
        foreach (var (places, features) in _options)
        {
            result.Add((places, features.Take()));
            _spare.Push(features);
        }

        _options.Clear();
        return result;
    }

    private FeatureList? For(long places, bool none = false)
    {
        if (places == 0 && !none || (places & ~_all) != 0)
        {
            return null;
        }

        foreach (var option in _options)
        {
            if (option.Places == places)
            {
                return option.Features;
            }
        }

        var features = _spare.Count > 0 ? _spare.Pop() : new() { Scope = ScopeOfPlaces };
        _options.Add((places, features));
        return features;
    }

    /// <summary>Sorts of choice are numbered by the kind of event; the choice of places comes after them.</summary>
    private const int ScopeOfPlaces = 8;

    // How the nearest name of the check is said: in the plural or not, as the noun of the places or another word.
    private (int Form, int Short) FormOfName()
    {
        var (best, form, shortForm) = (int.MaxValue, -1, -1);
        _name = -1;
        foreach (var name in Note.Names)
        {
            if (Evidence.KindOf(name, _check.Index) is null)
            {
                continue;
            }

            var distance = Math.Min(Math.Abs(_event.First - name.Next), Math.Abs(name.First - _event.Next)) * 2
                + (scene.InSentence(name.First, _event.First) ? 0 : 40) + Flag(name.Next > _event.First);
            if (distance < best)
            {
                (best, _name) = (distance, name.First);
                var noun = Enumerable.Range(name.First, name.Length).Any(at => Note.Tokens[at].Stem == _check.NounStem);
                shortForm = Flag(Note.Tokens[name.Next - 1].Plural) * 2 + Flag(noun);
                form = shortForm * 8 + (name.Next <= _event.First ? (int)Note.Between(name.Next, _event.First) : 7);
            }
        }

        return (form, shortForm);
    }

    private static int Flag(bool it) => it ? 1 : 0;
}

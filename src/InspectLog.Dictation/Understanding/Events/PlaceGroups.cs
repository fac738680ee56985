using InspectLog.Dictation.Understanding.Language;
using InspectLog.Dictation.Understanding.Lattice;
using InspectLog.Dictation.Understanding.Texts;

namespace InspectLog.Dictation.Understanding.Events;

/// <summary>Joins the numbers that name places, and the words that count them, to groups.</summary>
internal sealed class PlaceGroups
{
    private const int LongestTie = 5;
    private const int ExceptionReach = 6;

    private readonly Note _note;
    private readonly int _places;
    private readonly PlaceVocabulary _words;
    private readonly bool[] _named;

    public PlaceGroups(Note note)
    {
        (_note, _places, _words) = (note, note.Lexicon.Places, note.Lexicon.Language.Places);
        _named = new bool[note.Length];
        foreach (var name in note.Names)
        {
            Array.Fill(_named, true, name.First, name.Length);
        }
    }

    /// <summary>The groups of a note where its numbers are read in one way, in the order said.</summary>
    public List<PlaceGroup> Of(IReadOnlyList<NumberSegment> segments)
    {
        var numbers = segments.Where(segment => segment.Role == NumberRole.Place).ToList();
        var groups = new List<PlaceGroup>();
        for (var at = 0; at < numbers.Count;)
        {
            groups.Add(Numbered(numbers, ref at));
        }

        groups.AddRange(_note.PlaceNames.Where(name => !groups.Exists(group => group.First < name.Next && name.First < group.Next)).Select(name =>
            new PlaceGroup(name.First, name.Next, PlaceSets.One(name.Meanings[0]), Quantifier.Numbers) { IsNamed = true, Sequence = [name.Meanings[0]] }).ToList());
        groups.AddRange(segments.Where(IsCount).Select(Counted).ToList());
        var taken = groups.SelectMany(group => Enumerable.Range(group.First, group.Next - group.First)).ToHashSet();
        foreach (var span in _note.Quantifiers)
        {
            if (!Enumerable.Range(span.First, span.Length).Any(taken.Contains))
            {
                groups.Add(Quantified(span, groups));
            }
        }

        groups.Sort((a, b) => a.First.CompareTo(b.First));
        return [.. groups.Select(group => group with { Excepted = IsExcepted(group, groups), Part = PartOf(group) })];
    }

    private string Text(int at) => at >= 0 && at < _note.Length ? _note.Tokens[at].Text : "";

    private PlaceGroup Numbered(List<NumberSegment> numbers, ref int at)
    {
        var (first, next, place) = (numbers[at].First, numbers[at].Next, (int)numbers[at].Value);
        if (numbers[at].Form != NumberForm.Ordinal && (_words.First.Contains(Text(first - 1)) || _words.Last.Contains(Text(first - 1))))
        {
            at++;
            var counted = _words.First.Contains(Text(first - 1)) ? PlaceSets.Between(1, place, _places) : PlaceSets.Between(_places - place + 1, _places, _places);
            return new(first - 1, next, counted, Quantifier.Stretch) { Sequence = [.. PlaceSets.Of(counted)] };
        }

        var atoms = new List<PlaceAtom> { new(first, next, PlaceSets.One(place), WordIds.None) };
        var sequence = new List<int> { place };
        for (at++; at < numbers.Count; at++)
        {
            var number = (int)numbers[at].Value;
            if (IsRange(next, numbers[at].First))
            {
                atoms[^1] = atoms[^1] with { Next = numbers[at].Next, Places = atoms[^1].Places | PlaceSets.Between(place, number, _places) };
                sequence.AddRange(place < number ? Enumerable.Range(place + 1, number - place) : Enumerable.Range(number, place - number).Reverse());
            }
            else if (IsJoined(next, numbers[at].First))
            {
                atoms.Add(new(numbers[at].First, numbers[at].Next, PlaceSets.One(number), numbers[at].First == next ? WordIds.None : _note.Word(numbers[at].First - 1)));
                sequence.Add(number);
            }
            else
            {
                break;
            }

            (next, place) = (numbers[at].Next, number);
        }

        var places = atoms.Aggregate(0L, (set, atom) => set | atom.Places);
        return Stretched(first, next, places, sequence, place) ?? new(first, next, places, Quantifier.Numbers) { Sequence = sequence, Atoms = atoms.Count > 1 ? atoms : [] };
    }

    // "Four onwards", "up to three", "after two".
    private PlaceGroup? Stretched(int first, int next, long places, List<int> sequence, int last)
    {
        var from = _words.From.Contains(Text(first - 1));
        var onward = _words.Onward(_note.Tokens, next);
        if (onward > 1 || onward == 1 && (Text(next).Length > 2 || from && !_note.Lexicon.Language.Articles.Contains(Text(next + 1))))
        {
            return Stretch(PlaceSets.Between(sequence[0], _places, _places), next + onward);
        }

        if (_words.UpToBefore(_note.Tokens, first))
        {
            return Stretch(PlaceSets.Between(1, sequence[0], _places), next);
        }

        return sequence.Count == 1 && _words.Past.Contains(Text(first - 1)) ? Stretch(PlaceSets.Between(last + 1, Math.Max(last + 1, _places), _places), next) : null;

        PlaceGroup Stretch(long set, int end) => new(first, end, set == 0 ? places : set, Quantifier.Stretch) { Sequence = [.. PlaceSets.Of(set == 0 ? places : set)] };
    }

    private bool IsRange(int first, int next)
    {
        if (_words.IsRange(_note.Tokens, first, next))
        {
            return true;
        }

        var core = Enumerable.Range(first, next - first).Where(at => !_named[at] && !_words.Noun.Contains(_note.Tokens[at].Stem) && !_note.Lexicon.Language.Articles.Contains(Text(at))).ToList();
        return core.Count > 0 && core[^1] - core[0] == core.Count - 1 && _words.IsRange(_note.Tokens, core[0], core[^1] + 1);
    }

    private bool IsJoined(int first, int next)
    {
        if (first == next)
        {
            return true;
        }

        var (joins, named, and) = (next - first <= LongestTie, false, false);
        for (var at = first; at < next; at++)
        {
            joins &= _named[at] || _words.Join.Contains(Text(at)) || _words.Noun.Contains(_note.Tokens[at].Stem);
            named |= _named[at];
            and |= _note.Tokens[at].Kind == TokenKind.Word && _words.Join.Contains(Text(at)) && !_note.Lexicon.Language.Small.Contains(Text(at)) || _note.Lexicon.Language.Numbers.IsAnd(Text(at));
        }

        return joins && (and || !named);
    }

    private bool IsCount(NumberSegment number) => number is { Role: NumberRole.Other, Form: NumberForm.Whole, Units: null } && number.Value >= 2 && number.Value <= _places;

    // "All six", "the other two", "those three": with the words that count them.
    private PlaceGroup Counted(NumberSegment number)
    {
        var before = _note.Quantifiers.Find(span => span.Next == number.First);
        var rest = before is not null && before.Meanings.Contains(Quantifier.Rest);
        return new(before?.First ?? number.First, number.Next, 0, rest ? Quantifier.Rest : Quantifier.Counted) { Count = (int)number.Value };
    }

    private PlaceGroup Quantified(Phrase<Quantifier> span, List<PlaceGroup> groups)
    {
        var kind = span.Meanings.Contains(Quantifier.Both) && span.Meanings.Count > 1
            ? groups.Exists(group => PlaceSets.Count(group.Places) == 2) ? Quantifier.Both : span.Meanings.First(meaning => meaning != Quantifier.Both)
            : span.Meanings[0];
        var all = PlaceSets.All(_places);
        var odd = PlaceSets.Of(all).Where(place => place % 2 == 1).Aggregate(0L, (set, place) => set | PlaceSets.One(place));
        var places = kind switch
        {
            Quantifier.Odd => odd,
            Quantifier.Even => all & ~odd,
            Quantifier.Both => groups.Where(group => group.First < span.First && group.Kind == Quantifier.Numbers).Select(group => group.Places).LastOrDefault() is var pair && PlaceSets.Count(pair) == 2 ? pair : 0,
            _ => all,
        };
        return new(span.First, span.Next, places, kind) { Sequence = [.. PlaceSets.Of(places)], Count = kind == Quantifier.Both && places == 0 ? 2 : 0 };
    }

    private bool IsExcepted(PlaceGroup group, List<PlaceGroup> groups) => _note.Of(SpeechRole.Exception)
        .Any(word => group.First >= word.Next && group.First - word.Next <= ExceptionReach && !groups.Exists(other => other.First >= word.Next && other.First < group.First));

    private Phrase<Naming>? PartOf(PlaceGroup group) => _note.Names.Find(name =>
        name.Next <= group.First && group.First - name.Next <= 1 || name.First >= group.Next && name.First - group.Next <= 1 && Text(group.Next) != ",");
}

using InspectLog.Dictation.Understanding.Numbers;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Frames;

/// <summary>A subject and what is said of it: the unit from which findings are made.</summary>
internal sealed class Frame
{
    /// <summary>The sentence it stands in, counted from 1.</summary>
    public required int Sentence { get; init; }

    /// <summary>The names of parts and quantities, in the groups that "and" joins: "cap and rotor".</summary>
    public List<List<NamedWord>> Mentions { get; } = [];

    /// <summary>All words that name parts and quantities.</summary>
    public IEnumerable<NamedWord> Bag => Mentions.SelectMany(words => words);

    /// <summary>The cylinders named by number.</summary>
    public List<PlaceNumbers> Places { get; } = [];

    /// <summary>The cylinders named without a number.</summary>
    public PlaceSet Set { get; set; }

    /// <summary>The cylinders left out of "all".</summary>
    public List<int> Except { get; } = [];

    /// <summary>Whether the cylinders left out are spoken of by a frame of their own.</summary>
    public bool ExceptTaken { get; set; }

    /// <summary>Whether its numbers are values in a row, one for each cylinder.</summary>
    public bool Row { get; set; }

    /// <summary>The frame whose "all" leaves out the cylinders of this one.</summary>
    public Frame? ExceptOf { get; set; }

    /// <summary>Whether the place was called a cylinder, so that it holds for every part: "cylinder three: plug wet,
    /// lead chafed".</summary>
    public bool PlaceIsCylinder { get; set; }

    /// <summary>Whether the parts are named in the plural, as in "the leads".</summary>
    public bool Plural { get; set; }

    /// <summary>How many of its parts are spoken of, where they were counted and not named: "three towers".</summary>
    public int Counted { get; set; }

    /// <summary>Whether what it names is in the plural, part or quantity: "the gaps".</summary>
    public bool PluralName { get; set; }

    public List<Predicate> Predicates { get; } = [];

    /// <summary>Whether the subject comes before what is said of it.</summary>
    public bool SubjectBefore { get; set; }

    /// <summary>Whether the subject comes after what is said of it.</summary>
    public bool SubjectAfter { get; set; }

    /// <summary>Whether cylinders are named after what is said of them.</summary>
    public bool PlaceAfter { get; set; }

    /// <summary>How many words nobody told the program about.</summary>
    public int Unknown { get; set; }

    /// <summary>Whether it is tied to something by a preposition.</summary>
    public bool Tied { get; set; }

    /// <summary>Whether it speaks of a part or a person that no check is about.</summary>
    public bool Foreign { get; set; }

    /// <summary>Whether "it" stands for what is spoken of.</summary>
    public bool Singular { get; set; }

    /// <summary>Whether a part is named as one of what was spoken of: "its lead".</summary>
    public bool Its { get; set; }

    /// <summary>Whether "them" stands for what is spoken of.</summary>
    public bool Them { get; set; }

    /// <summary>Whether people are spoken of, who start and stop as engines do.</summary>
    public bool Person { get; set; }

    /// <summary>Whether something was said to have been otherwise before.</summary>
    public bool Was { get; set; }

    /// <summary>Whether something is said to be so now.</summary>
    public bool Now { get; set; }

    /// <summary>Whether it was only looked at.</summary>
    public bool Looked { get; set; }

    /// <summary>"Three does", "four doesn't", "same on five": what stands for the predicate before.</summary>
    public Echo Echo { get; set; }

    /// <summary>Why a person should look twice at all of it.</summary>
    public string? Doubt { get; set; }

    /// <summary>The tokens of its subject.</summary>
    public (int First, int Next)? SubjectSpan { get; private set; }

    public bool Mentioned => Mentions.Count > 0;

    public bool Placed => Places.Count > 0 || Set != PlaceSet.None;

    public bool HasSubject => Mentioned || Placed;

    public bool Says => Predicates.Count > 0;

    public bool Empty => !HasSubject && !Says && Unknown == 0 && !Foreign && Echo == Echo.None;

    public void Cover(int first, int next) => SubjectSpan = SubjectSpan is { } span
        ? (Math.Min(span.First, first), Math.Max(span.Next, next))
        : (first, next);
}

/// <summary>Cylinders named without a number.</summary>
internal enum PlaceSet
{
    None,
    All,
    Any,
    Both,
    Rest,
}

/// <summary>Words that stand for the predicate before.</summary>
internal enum Echo
{
    None,
    Same,
    Does,
    DoesNot,
}

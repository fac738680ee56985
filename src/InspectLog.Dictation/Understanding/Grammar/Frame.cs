using InspectLog.Dictation.Understanding.Numbers;

namespace InspectLog.Dictation.Understanding.Grammar;

/// <summary>A subject and what is said of it: the unit from which findings are made.</summary>
internal sealed class Frame
{
    /// <summary>The names of parts and quantities, in the groups that "and" joins: "cap and rotor".</summary>
    public List<List<string>> Mentions { get; } = [];

    /// <summary>All words that name parts and quantities.</summary>
    public IEnumerable<string> Bag => Mentions.SelectMany(words => words);

    /// <summary>The cylinders named.</summary>
    public List<PlaceNumbers> Places { get; } = [];

    /// <summary>The cylinders left out of "all".</summary>
    public List<int> Except { get; } = [];

    /// <summary>Whether the cylinders left out are spoken of by a frame of their own.</summary>
    public bool ExceptTaken { get; set; }

    /// <summary>How the cylinders are counted, where they are not numbered.</summary>
    public PlaceSet Set { get; set; }

    /// <summary>Whether the parts are named in the plural, as in "the leads".</summary>
    public bool Plural { get; set; }

    public List<Predicate> Predicates { get; } = [];

    /// <summary>Whether the subject comes before what is said of it.</summary>
    public bool SubjectBefore { get; set; }

    /// <summary>Whether the subject comes after what is said of it.</summary>
    public bool SubjectAfter { get; set; }

    /// <summary>Whether cylinders are named after what is said of them.</summary>
    public bool PlaceAfter { get; set; }

    /// <summary>Words nobody told the program about.</summary>
    public int Unknown { get; set; }

    /// <summary>Whether a part that no check is about is spoken of.</summary>
    public bool OtherPart { get; set; }

    /// <summary>Whether something was said to have been otherwise before: was, and then now or set to.</summary>
    public bool Was { get; set; }

    public bool Now { get; set; }

    /// <summary>"Three does", "four doesn't", "same on five": what stands for the predicate before.</summary>
    public Echo Echo { get; set; }

    /// <summary>Whether it was only looked at.</summary>
    public bool Looked { get; set; }

    /// <summary>Why a person should look twice at all of it.</summary>
    public string? Doubt { get; set; }

    /// <summary>The sentence it stands in.</summary>
    public int Sentence { get; init; }

    /// <summary>The tokens of its subject.</summary>
    public (int First, int Next)? SubjectSpan { get; set; }

    public bool Mentioned => Mentions.Count > 0;

    public bool Placed => Places.Count > 0 || Set != PlaceSet.None;

    public bool Empty => !Mentioned && !Placed && Predicates.Count == 0 && Unknown == 0 && Echo == Echo.None;

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

using InspectLog.Dictation.Understanding.Items;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Frames;

/// <summary>The frames built so far, and where the reading of the sentence stands: what the words since the last
/// subject or predicate did.</summary>
internal sealed class Draft
{
    private readonly List<Frame> _frames = [];

    public IReadOnlyList<Frame> Frames => _frames;

    public Frame Frame { get; private set; } = new() { Sentence = 0 };

    public IReadOnlyList<Item> Items { get; private set; } = [];

    public int At { get; set; }

    public Item Item => Items[At];

    public Item? Before => At > 0 ? Items[At - 1] : null;

    public int Sentence { get; private set; }

    /// <summary>A comma, "and" or "or" was the last thing of weight.</summary>
    public bool Separated { get; set; }

    /// <summary>That separator was a comma.</summary>
    public bool Comma { get; set; }

    /// <summary>It was "but", and nothing of weight has come since.</summary>
    public bool AfterBut { get; set; }

    public bool Preposition { get; set; }

    public bool SubjectJustSaid { get; set; }

    public bool VerbSinceSubject { get; set; }

    /// <summary>What comes is said to be absent.</summary>
    public bool Negated { get; set; }

    /// <summary>A number here would be a cylinder.</summary>
    public bool PlaceMarked { get; set; }

    /// <summary>The cylinders that come are left out of "all".</summary>
    public bool Excepting { get; set; }

    public bool Between { get; set; }

    /// <summary>Why the value to come is to be looked at twice.</summary>
    public string? ValueDoubt { get; set; }

    /// <summary>The value to come was read before the one just said: "is ten, was twelve".</summary>
    public bool ValueWas { get; set; }

    /// <summary>The condition that "yes" and "no" answer for: "corrosion on the towers: yes on two".</summary>
    public ConditionSaid? Asked { get; set; }

    /// <summary>The correction under way.</summary>
    public Repair? Repair { get; set; }

    public bool Repairing => Repair is { Done: false };

    /// <summary>Starts on the items of the next sentence, with a fresh frame unless it goes on with the last one.</summary>
    public void Begin(IReadOnlyList<Item> items, bool goesOn)
    {
        (Items, At, Repair, Negated, Between, ValueDoubt, ValueWas) = (items, 0, null, false, false, null, false);
        Sentence++;
        Asked = null;
        AfterSubject();
        SubjectJustSaid = false;
        Excepting = false;
        if (!goesOn)
        {
            Open();
        }
    }

    public void Open()
    {
        Frame = new Frame { Sentence = Sentence };
        _frames.Add(Frame);
        (Excepting, SubjectJustSaid, VerbSinceSubject) = (false, false, false);
    }

    public void AfterSubject() =>
        (PlaceMarked, Preposition, Separated, Comma, AfterBut, SubjectJustSaid, VerbSinceSubject) = (false, false, false, false, false, true, false);

    public void AfterPredicate() =>
        (PlaceMarked, Preposition, Separated, Comma, AfterBut, SubjectJustSaid, VerbSinceSubject) = (false, false, false, false, false, false, false);

    /// <summary>Where a correction is under way, what was last said of that kind gives way to what is said now.</summary>
    public void Replace<T>()
        where T : Predicate
    {
        if (!Repairing)
        {
            return;
        }

        Repair!.Done = true;
        var last = Frame.Predicates.FindLastIndex(predicate => predicate is T);
        if (last >= 0)
        {
            Frame.Predicates.RemoveAt(last);
        }
    }

    /// <summary>The next item of weight after the current one.</summary>
    public Item? Ahead(Func<Item, bool>? wanted = null)
    {
        wanted ??= item => item.Role != Role.Filler;
        for (var i = At + 1; i < Items.Count; i++)
        {
            if (wanted(Items[i]))
            {
                return Items[i];
            }
        }

        return null;
    }

    /// <summary>The items from the current one to the end of its clause.</summary>
    public IEnumerable<Item> RestOfClause() =>
        Items.Skip(At + 1).TakeWhile(item => item.Role is not (Role.Comma or Role.But));
}

/// <summary>A correction under way: what comes replaces what was said before.</summary>
internal sealed class Repair
{
    /// <summary>Whether the words before are taken back even if none replace them.</summary>
    public bool Retracts { get; init; }

    /// <summary>Whether the right subject was said.</summary>
    public bool SubjectSaid { get; set; }

    /// <summary>Whether the right words were said.</summary>
    public bool Done { get; set; }
}

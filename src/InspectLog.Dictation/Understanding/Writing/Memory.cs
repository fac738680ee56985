using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Frames;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Writing;

/// <summary>What was spoken of so far, which later words may mean without naming it.</summary>
internal sealed class Memory(Lexicon lexicon)
{
    private readonly HashSet<Check> _wholes = [];

    /// <summary>The words that last named a part or quantity.</summary>
    public IReadOnlyList<NamedWord> Bag { get; private set; } = [];

    /// <summary>The words that named one before that.</summary>
    public IReadOnlyList<NamedWord> Earlier { get; private set; } = [];

    /// <summary>The check of the last finding.</summary>
    public Check? Check { get; private set; }

    /// <summary>The cylinders last named.</summary>
    public IReadOnlyList<int> Places { get; private set; } = [];

    /// <summary>What those cylinders were called; null where they were called cylinders or only numbered.</summary>
    public string? PlaceNoun { get; private set; }

    /// <summary>Whether a part was spoken of that is not counted by cylinder, such as the cap, so that cylinders only
    /// say where on it.</summary>
    public bool Whole { get; private set; }

    /// <summary>Whether the talk turned to something no check is about.</summary>
    public bool Foreign { get; private set; }

    /// <summary>Whether the last frame told how something was before.</summary>
    public bool Was { get; private set; }

    /// <summary>The findings of the frame that last gave any.</summary>
    public IReadOnlyList<Finding> Last { get; private set; } = [];

    /// <summary>The conditions that frame told, where it told nothing else.</summary>
    public IReadOnlyList<ConditionSaid> Conditions { get; private set; } = [];

    /// <summary>Whether "it" means the whole part where several of its places were named last: the cap, cracked between
    /// towers three and four.</summary>
    public bool MeansWhole(Check check) => Places.Count > 1 && _wholes.Contains(check);

    /// <summary>Keeps what a frame spoke of.</summary>
    /// <param name="frame">The frame.</param>
    /// <param name="findings">The findings made of it.</param>
    /// <param name="check">The check of the last of them.</param>
    /// <param name="partOnly">Whether it only named a part of what was spoken of before.</param>
    public void Keep(Frame frame, IReadOnlyList<Finding> findings, Check? check, bool partOnly)
    {
        Foreign = frame.Foreign || Foreign && !frame.Mentioned;
        if (frame.Mentioned && !frame.Foreign)
        {
            // A quantity of the part just spoken of goes on with that part: "lead one off, resistance seven k".
            Earlier = partOnly ? Earlier : Bag;
            Bag = partOnly ? [.. Bag] : frame.Placed || frame.Plural ? [.. frame.Bag] : [.. frame.Bag.Concat(Places.Count > 0 ? Bag : []).Distinct()];
            Whole = check is not null && lexicon.NamesWhole(check, frame.Bag);
            if (Whole)
            {
                _wholes.Add(check!);
            }
        }

        if (findings.Count == 0 && frame is { Mentioned: true, Foreign: false } && !partOnly)
        {
            // "Rotor's pitted, then I did the leads, one to five are fine".
            Check = null;
        }

        if (findings.Count > 0)
        {
            (Last, Check) = ([.. findings], check);
            Conditions = frame.Predicates.TrueForAll(predicate => predicate is ConditionSaid) ? [.. frame.Predicates.OfType<ConditionSaid>()] : [];
        }

        Was = frame.Was && findings.Any(finding => finding.Kind == FindingKind.Reading);
        KeepPlaces(frame);
    }

    private void KeepPlaces(Frame frame)
    {
        if (frame.Places.Count > 0)
        {
            Places = [.. frame.Places.SelectMany(place => place.Cylinders).Distinct()];
            PlaceNoun = frame.PlaceIsCylinder || Check?.PlaceNoun == "cylinder" ? null : frame.Mentioned ? Check?.PlaceNoun : PlaceNoun;
        }
        else if (frame.Set == PlaceSet.All || frame.Mentioned && !Carries(frame, Check))
        {
            Places = [];
        }
    }

    /// <summary>Whether the cylinders last named hold for a frame that names none.</summary>
    public bool Carries(Frame frame, Check? check) =>
        !frame.Mentioned || frame.Its && check?.PlaceNoun is not null
        || !frame.Plural && check?.PlaceNoun is not null && (PlaceNoun is null || check.PlaceNoun == PlaceNoun || check.PlaceNoun == "cylinder");
}

using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Doubting;
using InspectLog.Dictation.Understanding.Frames;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Writing;

/// <summary>The cylinders something holds for.</summary>
/// <param name="Cylinders">One for each finding; a single null where it holds for no cylinder by itself.</param>
/// <param name="Doubt">Why a person should look twice.</param>
internal readonly record struct ChosenPlaces(IReadOnlyList<int?> Cylinders, string? Doubt);

/// <summary>Chooses the cylinders that something said of a check holds for.</summary>
internal sealed class PlaceChooser(CheckSheet sheet, Lexicon lexicon, Memory memory, IReadOnlyList<Finding> findings)
{
    /// <param name="frame">Where it was said.</param>
    /// <param name="check">The check.</param>
    /// <param name="ofWhole">Whether it was done to the whole part, whichever cylinders told where on it.</param>
    public ChosenPlaces Of(Frame frame, Check check, bool ofWhole = false)
    {
        if (!check.PerCylinder || ofWhole || NamesWhole(frame, check))
        {
            return new([null], null);
        }

        if (frame.Places.Count > 0)
        {
            return new(
                [.. frame.Places.SelectMany(place => place.Cylinders).Except(frame.Except).Cast<int?>()],
                Doubts.Join([.. frame.Places.Select(place => place.Doubt)]));
        }

        switch (frame.Set)
        {
            case PlaceSet.Any when frame.Predicates.OfType<ConditionSaid>().Any(said => !said.Negated):
                return new(AllBut(frame.Except), "'any' was said without a 'no' or 'not'");
            case PlaceSet.All or PlaceSet.Any when IsOfOrder(check) && frame.Except.Count == 0:
                // "All leads are in the right order" says one thing of them together.
                return new([null], null);
            case PlaceSet.All or PlaceSet.Any:
                return new(AllBut(frame.Except), null);
            case PlaceSet.Both when LastTwo(check) is { Count: 2 } two:
                return new([.. two.Cast<int?>()], null);
            case PlaceSet.Rest:
                return new(AllBut(Named(check)), null);
        }

        if (frame.Except.Count > 0)
        {
            return new(AllBut(frame.Except), null);
        }

        if (memory.Places.Count > 0 && memory.Carries(frame, check))
        {
            return new([.. memory.Places.Cast<int?>()], null);
        }

        if (!frame.HasSubject && frame.Counted == 0 && memory.Last.Count > 0 && memory.Last.All(finding => finding.Check == check.Id && check.Measurand is null
                || frame.Them && sheet.Find(finding.Check)?.PlaceNoun == check.PlaceNoun) && WasOfAll())
        {
            // "Removed all the plugs and cleaned them."
            return new(IsOfOrder(check) ? [null] : AllBut([]), null);
        }

        if (frame.Counted > 0 && frame.Counted < sheet.Cylinders)
        {
            return new([], null);
        }

        return frame.Plural && check.Spoken.MainForActions || frame is { PluralName: true, Plural: false } && check.Measurand is not null
            ? new(AllBut(frame.Except), Doubts.TakenAsAll(sheet.Cylinders))
            : new([null], SingularDoubt(frame, check));
    }

    // The last two cylinders spoken of: "plug one gap point eight, plug two gap point nine, both sooty".
    private List<int> LastTwo(Check check)
    {
        var places = memory.Places.Count == 2 ? memory.Places : findings.Select(finding => finding.Place?.Cylinder).OfType<int>();
        return check.PerCylinder ? [.. places.Reverse().Distinct().Take(2).Order()] : [];
    }

    public IReadOnlyList<int?> AllBut(IEnumerable<int> left) =>
        [.. Enumerable.Range(1, sheet.Cylinders).Except(left).Cast<int?>()];

    // Whether what was found last holds of every cylinder, each by itself or all together.
    private bool WasOfAll() =>
        memory.Last.Select(finding => finding.Place?.Cylinder).OfType<int>().Distinct().Count() == sheet.Cylinders
        || memory.Last.All(finding => finding.Place is null && sheet.Find(finding.Check) is { } check && IsOfOrder(check));

    /// <summary>Whether a check is about how its places stand to each other: what is seen of the leads that is neither how
    /// each of them is nor what its cylinder does.</summary>
    private static bool IsOfOrder(Check check) =>
        check is { PerCylinder: true, Measurand: null, Spoken.MainForActions: false } && check.PlaceNoun != "cylinder";

    // "The cap is clean" is of no tower.
    private bool NamesWhole(Frame frame, Check check) =>
        frame.Mentioned && (!frame.Placed || frame.Mentions.Count > 1) && frame.Mentions.Any(words => lexicon.NamesWhole(check, words))
        && !frame.Bag.Any(word => check.Spoken.Parts.Contains(word.Stem) && lexicon.IsPlaceNoun(word.Stem));

    // "The lead is burnt", "spark is weak" and "both leads are swapped" leave open which; "the cap is cracked" does not.
    private string? SingularDoubt(Frame frame, Check check) =>
        frame.Set == PlaceSet.Both || check.Measurand is not null || check.PlaceNoun == "cylinder" || check.Spoken.MainForActions && frame.Bag.Any(word => lexicon.IsPlaceNoun(word.Stem))
            ? Doubts.Unnamed(check.PlaceNoun!)
            : null;

    private IEnumerable<int> Named(Check check) =>
        findings.Where(finding => finding.Check == check.Id && finding.Place is not null && finding.Kind != FindingKind.Action).Select(finding => finding.Place!.Cylinder);
}

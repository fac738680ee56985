using System.Globalization;
using InspectLog.Checks;
using InspectLog.Journal.State;

namespace InspectLog.Inspecting.Recording;

/// <summary>Loose ends that are put right together: those of one part at several places, or a single one.</summary>
/// <param name="Text">What is undone: "Plug leads 1, 2 and 3 off".</param>
/// <param name="Tie">What puts it right.</param>
/// <param name="Ends">The ends, at least one, in the order of their places.</param>
public sealed record LooseEndGroup(string Text, string Tie, IReadOnlyList<LooseEnd> Ends);

/// <summary>Puts the loose ends of one part together, so that six leads are put back in one press. Pure.</summary>
public static class LooseEndGroups
{
    /// <summary>The groups, in the order of their oldest ends.</summary>
    /// <param name="ends">The loose ends.</param>
    /// <param name="sheet">The inspection's sheet.</param>
    public static IReadOnlyList<LooseEndGroup> Of(IEnumerable<LooseEnd> ends, CheckSheet sheet) =>
        [.. ends.GroupBy(Key).Select(group => Group([.. group.OrderBy(end => end.What.Cylinder)], sheet))];

    /// <summary>Ends without a part or a place stand alone.</summary>
    private static (string? Part, long Alone) Key(LooseEnd end) => end.What is { Part: { } part, Cylinder: not null }
        ? (part, 0)
        : (null, end.Sequence);

    private static LooseEndGroup Group(IReadOnlyList<LooseEnd> ends, CheckSheet sheet)
    {
        var disturbance = Disturbance(ends, sheet);
        if (ends.Count == 1 || disturbance?.Part is not { Name: { Length: > 0 } name })
        {
            return new(
                string.Join("; ", ends.Select(end => end.What.Text)),
                string.Join("; ", ends.Select(end => end.What.Tie)),
                ends);
        }

        var places = Listed([.. ends.Select(end => end.What.Cylinder!.Value).Distinct()]);
        return new($"{Capital(name)}s {places} {HowItIs(disturbance, name)}", $"{disturbance.Tie}: {places}", ends);
    }

    /// <summary>What the sheet says of the part; of several, that of the check the first end came with.</summary>
    private static Disturbance? Disturbance(IReadOnlyList<LooseEnd> ends, CheckSheet sheet)
    {
        var ofPart = sheet.Checks.SelectMany(check => check.Disturbs).Where(one => one.Part?.Id == ends[0].What.Part).ToList();
        return ofPart.Find(one => ends.Any(end => end.What.Disturbance == one.Id)) ?? ofPart.FirstOrDefault();
    }

    /// <summary>"off" of "Plug lead off".</summary>
    private static string HowItIs(Disturbance disturbance, string name) =>
        disturbance.Text.StartsWith(name, StringComparison.OrdinalIgnoreCase) ? disturbance.Text[name.Length..].Trim() : "off";

    private static string Listed(IReadOnlyList<int> places)
    {
        var texts = places.Select(place => place.ToString(CultureInfo.InvariantCulture)).ToList();
        return texts.Count == 1 ? texts[0] : $"{string.Join(", ", texts.SkipLast(1))} and {texts[^1]}";
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}

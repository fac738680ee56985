using InspectLog.Checks;
using InspectLog.Inspecting.Standing;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.Inspecting.Recording;

/// <summary>Which loose ends open and close by themselves when something is recorded. A loose end knows its part and its
/// place: what one check took off can be put back under another that shares the part, and putting back number 2 leaves
/// number 3 off. Pure.</summary>
public static class LooseEndRules
{
    /// <summary>Records, each followed by the loose ends it opens or ties; in a closed inspection nothing follows.</summary>
    /// <param name="scene">The inspection they are about to join.</param>
    /// <param name="records">The records, in order.</param>
    public static IReadOnlyList<EntryBody> WithWhatFollows(BenchScene scene, IReadOnlyList<EntryBody> records)
    {
        if (scene.Inspection.IsClosed)
        {
            return records;
        }

        var made = new List<EntryBody>();
        foreach (var record in records)
        {
            var sequence = scene.Vehicle.NextSequence + made.Count;
            made.Add(record);
            made.AddRange([.. Following(scene, record, sequence).Where(end => !IsAmong(made, end))]);
        }

        return made;
    }

    /// <summary>The entries that follow from a record: measuring or looking at a check leaves what it takes apart
    /// undone; disconnecting a part leaves it off; reconnecting it ties the end.</summary>
    /// <param name="scene">The inspection.</param>
    /// <param name="record">The record.</param>
    /// <param name="sequence">Sequence of its first entry.</param>
    public static IEnumerable<EntryBody> Following(BenchScene scene, EntryBody record, long sequence) =>
        Following(scene, scene.Inspection.LooseEnds, record, sequence);

    /// <summary>The same where other loose ends are taken to be there than the inspection has.</summary>
    internal static IEnumerable<EntryBody> Following(
        BenchScene scene, IReadOnlyList<LooseEnd> ends, EntryBody record, long sequence) => record switch
    {
        ReadingDecided reading => Disturbed(scene, ends, reading.Check, reading.Cylinder, sequence),
        ObservationMade seen => Disturbed(scene, ends, seen.Check, seen.Cylinder, sequence),
        ActionDone { Action: PartActions.Disconnected } done => Off(scene, ends, done, sequence),
        ActionDone { Action: PartActions.Reconnected } done => BackOn(scene, ends, done, sequence),
        _ => [],
    };

    /// <summary>A loose end for something the sheet says a check disturbs.</summary>
    /// <param name="scene">The inspection.</param>
    /// <param name="check">The check.</param>
    /// <param name="disturbance">What it disturbs.</param>
    /// <param name="cylinder">The place it was done at; counts where the part is one of several.</param>
    public static LooseEndOpened Of(BenchScene scene, Check check, Disturbance disturbance, int? cylinder)
    {
        var place = PlaceOf(disturbance, cylinder);
        var where = place is { } number && check.Places is { } places ? $", {places.NameOf(number)}" : "";
        return new(scene.Inspection.Number, disturbance.Text + where, disturbance.Tie + where, check.Id, place, disturbance.Id)
        {
            Part = disturbance.Part?.Id,
        };
    }

    /// <summary>The open end of what a check disturbs, at a place; null while there is none.</summary>
    public static LooseEnd? OpenEnd(InspectionState inspection, Disturbance disturbance, int? cylinder) =>
        inspection.OpenLooseEnds.FirstOrDefault(end => IsOf(end, disturbance, PlaceOf(disturbance, cylinder)));

    private static int? PlaceOf(Disturbance disturbance, int? cylinder) => disturbance.Part?.PerPlace == true ? cylinder : null;

    /// <summary>Opened once an inspection for each part and place: a part put back stays put back until somebody says
    /// otherwise. Checks that share a disturbance share its loose end.</summary>
    private static IEnumerable<EntryBody> Disturbed(
        BenchScene scene, IReadOnlyList<LooseEnd> ends, string checkId, int? cylinder, long sequence) =>
        scene.Sheet.Find(checkId) is { } check
            ? check.Disturbs
                .Where(disturbance => !ends.Any(end => IsKnown(end, disturbance, PlaceOf(disturbance, cylinder))))
                .Select(disturbance => Of(scene, check, disturbance, cylinder) with { Record = sequence })
            : [];

    private static IEnumerable<EntryBody> Off(BenchScene scene, IReadOnlyList<LooseEnd> ends, ActionDone done, long sequence)
    {
        var check = scene.Sheet.Find(done.Check);
        var part = check?.Parts.Count > 0 ? check.Parts[0] : null;
        var place = part?.PerPlace == false ? null : done.Cylinder;
        if (part is not null && ends.Any(end => end.IsOpen && end.What.Part == part.Id && end.What.Cylinder == place))
        {
            return [];
        }

        var name = check is null ? done.Check : Places.NameOf(check, done.Cylinder);
        var end = new LooseEndOpened(
            scene.Inspection.Number, $"{name} disconnected", $"Reconnect {name.ToLowerInvariant()}", done.Check, place, null)
        {
            Part = part?.Id,
            Record = sequence,
        };
        return [end];
    }

    private static IEnumerable<EntryBody> BackOn(BenchScene scene, IReadOnlyList<LooseEnd> ends, ActionDone done, long sequence)
    {
        var parts = scene.Sheet.Find(done.Check)?.Parts ?? [];
        return ends
            .Where(end => end.IsOpen && end.Sequence < sequence && IsAbout(end.What) && IsThere(end.What)) // not what came off later
            .Select(end => new LooseEndTied(end.Sequence) { Record = sequence });

        // Ends from before sheets named parts go by their check.
        bool IsAbout(LooseEndOpened end) =>
            end.Part is null ? end.Check == done.Check : parts.Any(part => part.Id == end.Part);

        bool IsThere(LooseEndOpened end) =>
            end.Cylinder is null || done.Cylinder is null || end.Cylinder == done.Cylinder;
    }

    /// <summary>Whether the end of a disturbance was opened already, or its part is off under another name.</summary>
    private static bool IsKnown(LooseEnd end, Disturbance disturbance, int? place) =>
        IsOf(end, disturbance, place)
        || (end.IsOpen && disturbance.Part is { } part && end.What.Part == part.Id && end.What.Cylinder == place);

    private static bool IsOf(LooseEnd end, Disturbance disturbance, int? place) =>
        end.What.Disturbance == disturbance.Id && end.What.Cylinder == place;

    /// <summary>Whether an entry of the same write opens or ties the same already.</summary>
    private static bool IsAmong(List<EntryBody> made, EntryBody end) => end switch
    {
        LooseEndOpened opened => made.OfType<LooseEndOpened>().Any(one =>
            (one.Part, one.Disturbance, one.Cylinder, one.Text) == (opened.Part, opened.Disturbance, opened.Cylinder, opened.Text)),
        LooseEndTied tied => made.OfType<LooseEndTied>().Any(one => one.LooseEnd == tied.LooseEnd),
        _ => false,
    };
}

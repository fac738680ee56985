using System.Globalization;
using InspectLog.Checks;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.App.Bench;

/// <summary>Which loose ends open and close by themselves when something is recorded. Pure.</summary>
public static class LooseEndRules
{
    /// <summary>The entries that follow from a record: measuring or looking at a check leaves what it takes apart
    /// undone; disconnecting a part leaves it off; reconnecting it ties the end.</summary>
    public static IEnumerable<EntryBody> Following(InspectionState inspection, CheckSheet sheet, EntryBody record) =>
        record switch
        {
            ReadingDecided reading => Disturbed(inspection, sheet, reading.Check),
            ObservationMade seen => Disturbed(inspection, sheet, seen.Check),
            ActionDone { Action: "disconnected" } done => [Off(inspection, sheet, done)],
            ActionDone { Action: "reconnected" } done => BackOn(inspection, done),
            _ => [],
        };

    /// <summary>A loose end for something the sheet says a check disturbs.</summary>
    public static LooseEndOpened Of(InspectionState inspection, Check check, Disturbance disturbance) =>
        new(inspection.Number, disturbance.Text, disturbance.Tie, check.Id, null, disturbance.Id);

    /// <summary>Opened once an inspection for each disturbance: a part put back stays put back until somebody says
    /// otherwise. Checks that share a disturbance share its loose end.</summary>
    private static IEnumerable<EntryBody> Disturbed(InspectionState inspection, CheckSheet sheet, string checkId) =>
        sheet.Find(checkId) is { } check
            ? check.Disturbs
                .Where(disturbance => !inspection.LooseEnds.Exists(end => end.What.Disturbance == disturbance.Id))
                .Select(disturbance => Of(inspection, check, disturbance))
            : [];

    private static LooseEndOpened Off(InspectionState inspection, CheckSheet sheet, ActionDone done)
    {
        var part = sheet.Find(done.Check) is { } check ? Standings.NameOf(check, done.Cylinder) : done.Check;
        return new(
            inspection.Number,
            $"{part} disconnected",
            $"Reconnect {part.ToLower(CultureInfo.InvariantCulture)}",
            done.Check,
            done.Cylinder,
            null);
    }

    private static IEnumerable<EntryBody> BackOn(InspectionState inspection, ActionDone done) =>
        inspection.OpenLooseEnds
            .Where(end => end.What.Check == done.Check
                && (end.What.Cylinder is null || done.Cylinder is null || end.What.Cylinder == done.Cylinder))
            .Select(end => new LooseEndTied(end.Sequence));
}

using InspectLog.App.Bench;
using InspectLog.App.Ui;
using InspectLog.Checks;
using InspectLog.Inspecting;
using InspectLog.Inspecting.Standing;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.App.Wear;

/// <summary>What an inspection recorded as replaced that a watched part does not know of yet: a proposal, which counts
/// once a person records the fitting, and goes when a person says that no new one was fitted. Pure.</summary>
/// <param name="Entry">Sequence of the entry that recorded it, the last one where it took several.</param>
/// <param name="On">The day it was recorded.</param>
/// <param name="Odometer">Odometer of that inspection; null when not noted.</param>
/// <param name="OdometerUnit">km or mi; null when not noted.</param>
public sealed record Replacement(long Entry, DateOnly On, double? Odometer, string? OdometerUnit)
{
    /// <summary>The last whole replacement after the part was fitted; null when there is none. Of a check with
    /// several places each of them counts: one new lead is no new set.</summary>
    public static Replacement? Of(VehicleState vehicle, SheetLibrary sheets, WearPart part)
    {
        var since = part.Fitted.On;
        var settled = part.NotRenewed?.Body.UpTo ?? 0;
        var done =
            from inspection in vehicle.Inspections
            let sheet = sheets.Of(inspection)
            where sheet is not null
            from action in inspection.ActionsOf(PartActions.Replaced)
            where action.Sequence > settled && Times.DayOf(action.Time) > since
            let check = sheet.Find(action.Body.Check)
            where check is not null && IsNamed(part.Name, check)
            select new Done(action, inspection, BuiltInSheets.FamilyOf(sheet.Id), check, Places.Of(sheet, check).Count());
        return done.GroupBy(one => (one.Family, one.Check.Id)).Where(IsWhole).Select(Last).MaxBy(one => one.Entry);
    }

    private static bool IsWhole(IEnumerable<Done> done)
    {
        var all = done.ToList();
        return !all[0].Check.PerCylinder
            || all.Exists(one => one.Action.Body.Cylinder is null)
            || all.DistinctBy(one => one.Action.Body.Cylinder).Count() >= all[^1].Places;
    }

    private static Replacement Last(IEnumerable<Done> done)
    {
        var last = done.MaxBy(one => one.Action.Sequence)!;
        var how = last.Inspection.How;
        return new(last.Action.Sequence, Times.DayOf(last.Action.Time), how.Odometer, how.OdometerUnit);
    }

    // The part goes by a name the sheet has for what the check looks at.
    private static bool IsNamed(string part, Check check) =>
        check.Spoken.Parts.Concat(check.Spoken.Subjects).Any(name => Plain(name) == Plain(part));

    private static string Plain(string name) => string.Join(' ', name
        .Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)
        .Select(word => word.ToLowerInvariant() is [.. var one, 's'] ? one : word.ToLowerInvariant()));

    private sealed record Done(Recorded<ActionDone> Action, InspectionState Inspection, string Family, Check Check, int Places);
}

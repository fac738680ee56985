using System.Globalization;
using InspectLog.Checks;
using InspectLog.Inspecting.Recording;
using InspectLog.Inspecting.Standing;
using InspectLog.Inspecting.Words;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.Inspecting.Proposals;

/// <summary>Puts the proposals of a note together as a person settles them. Pure.</summary>
public static class ProposalCards
{
    /// <summary>The cards of a note, in the order spoken.</summary>
    public static IReadOnlyList<ProposalCard> Of(WordedNote note, BenchScene scene, WorkshopState workshop)
    {
        var groups = ProposalGroups.Of(note)
            .Select(group => (Group: group, ReadOff: ReadOffOf(group, scene, workshop)))
            .Select(one => (one.Group, one.ReadOff, Would: Would(one.Group, scene, one.ReadOff)))
            .ToList();

        // What is open in a note is shown as it would be once all of it is confirmed: the battery with the supply.
        var open = groups.Where(one => one is { Would: not null, Group: [{ State: ProposalState.Open }, ..] }).Select(one => one.Would!).ToList();
        var settled = Comparing.Settled(scene, open);
        return
        [
            .. groups.Select(one => Card(
                one.Group, scene.Sheet, one.ReadOff, one.Would is { } would && open.IndexOf(would) is >= 0 and var at ? (ReadingDecided)settled[at] : one.Would)),
        ];
    }

    private static ProposalCard Card(
        IReadOnlyList<Proposal> group, CheckSheet sheet, ReadOff? readOff, ReadingDecided? would)
    {
        var finding = group[0].Finding;
        var check = sheet.Find(finding.Check);
        var title = check is null ? finding.Check : Places.Under(check, finding.Cylinder);
        var doubt = DoubtWords.Of(group.SelectMany(one => one.Finding.Doubts), sheet);
        return new ProposalCard(group, check, title, Words(group, check), would?.Conformity, doubt) { Would = would, ReadOff = readOff };
    }

    private static string Words(IReadOnlyList<Proposal> group, Check? check)
    {
        var finding = group[0].Finding;
        return finding switch
        {
            { Goes: { } goes, Stops: { } stops } => $"{In(check, goes)} goes, {In(check, stops)} stops",
            { Value: not null } => string.Join(" and ", group.Select(one => In(check, one.Finding.Value!.Value))),
            { Condition: { } condition } => finding.Negated ? $"not {condition}" : condition,
            { Action: { } action } => action,
            _ => finding.Words,
        };
    }

    private static string In(Check? check, double value) => check?.Measurand is { } measurand
        ? Printed.Value(value, measurand.DisplayUnit)
        : value.ToString(CultureInfo.InvariantCulture);

    private static ReadOff? ReadOffOf(IReadOnlyList<Proposal> group, BenchScene scene, WorkshopState workshop) =>
        scene.Sheet.Find(group[0].Finding.Check) is { } check
            ? Confirming.ReadOffOf(group, check, workshop, Confirming.LastUsed(scene.Inspection, check))
            : null;

    private static ReadingDecided? Would(IReadOnlyList<Proposal> group, BenchScene scene, ReadOff? readOff) =>
        scene.Sheet.Find(group[0].Finding.Check) is { Measurand: not null } check && group[0].Finding.Kind == "reading"
            && Confirming.Given(group, check, readOff) is { } given
            ? ReadingRecords.Decide(scene, given)
            : null;
}

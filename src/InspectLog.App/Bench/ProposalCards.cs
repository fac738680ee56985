using System.Globalization;
using InspectLog.App.Instruments;
using InspectLog.Checks;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.App.Bench;

/// <summary>Puts the proposals of a voice note together as a person settles them. Pure.</summary>
public static class ProposalCards
{
    /// <summary>The cards of a voice note, in the order spoken.</summary>
    public static IReadOnlyList<ProposalCard> Of(
        VoiceNote note, CheckSheet sheet, WorkshopState workshop) =>
        [.. ProposalGroups.Of(note).Select(group => Card(group, sheet, workshop))];

    private static ProposalCard Card(IReadOnlyList<Proposal> group, CheckSheet sheet, WorkshopState workshop)
    {
        var finding = group[0].Finding;
        var check = sheet.Find(finding.Check);
        var title = check is null ? finding.Check
            : check.PerCylinder && finding.Cylinder is not null ? $"{check.ShortTitle}, {Standings.NameOf(check, finding.Cylinder).ToLowerInvariant()}"
            : check.ShortTitle;
        return new ProposalCard(group, check, title, Words(group, check), Preview(group, check, workshop, sheet.Rule));
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

    private static Conformity? Preview(
        IReadOnlyList<Proposal> group, Check? check, WorkshopState workshop, DecisionRule rule) =>
        check is { Measurand: not null } && group[0].Finding.Kind == "reading"
            ? ReadingRecords.Decide(0, rule, Confirming.Given(group, check, workshop, null)).Conformity
            : null;
}

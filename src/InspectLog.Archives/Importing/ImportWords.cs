using System.Globalization;
using InspectLog.Archives.Checking;
using InspectLog.Journal.Record;

namespace InspectLog.Archives.Importing;

/// <summary>What an archive does to a garage, in sentences for people. Pure.</summary>
public static class ImportWords
{
    /// <summary>What taking it in would do.</summary>
    public static string Of(ImportPlan plan, ArchiveFacts archive) => plan switch
    {
        ImportPlan.Adds => $"{archive.Vehicle.Name} is not in this garage yet. It is added, with {Entries(archive.Entries.Count)}.",
        ImportPlan.Continues(_, var further) =>
            $"{archive.Vehicle.Name} is in this garage, and this is a newer state of the same journal. {Count(further, "entry is", "entries are")} added to it; what is here stays as it is.{Withheld(plan)}",
        ImportPlan.Known(_, 0) =>
            $"All of this is here already: the journal of {archive.Vehicle.Name} ends with the same entry. Nothing is changed.{Withheld(plan)}",
        ImportPlan.Known(_, var behind) =>
            $"This is an earlier state of {archive.Vehicle.Name}: the journal here has {Count(behind, "entry", "entries")} more. Nothing is changed.{Withheld(plan)}",
        ImportPlan.Parted(_, var here, var there) =>
            $"This journal of {archive.Vehicle.Name} and the one here began as one and parted at entry {here.Sequence.ToString(CultureInfo.InvariantCulture)}: both were gone on with. "
            + $"Here it is {Words(here)}; in the archive it is {Words(there)}. Two that parted cannot be made one, so nothing is changed. "
            + "To keep both, take the archive into a garage of its own.",
        _ => throw new InvalidOperationException($"Unknown plan {plan}."),
    };

    private static string Withheld(ImportPlan plan) => plan.StayWithheld == 0 ? ""
        : $" {Count(plan.StayWithheld, "entry", "entries")} of which this garage has only the hash stay that way.";

    private static string Words(JournalEntry entry) =>
        string.Create(CultureInfo.InvariantCulture, $"“{entry.Kind}” by {entry.Actor} of {entry.LocalTime:d MMMM yyyy, HH:mm}");

    private static string Entries(int count) => Count(count, "entry", "entries");

    private static string Count(int count, string one, string many) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} {(count == 1 ? one : many)}");
}

using InspectLog.App.Bench;
using InspectLog.Inspecting;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.State;

namespace InspectLog.App.Vehicles;

/// <summary>Where what an entry of the journal says can be mended.</summary>
/// <param name="Href">Where it can be put right, or stands in its inspection.</param>
/// <param name="Verb">What the link does: "Change", "Show".</param>
public sealed record MendLink(string Href, string Verb)
{
    /// <summary>The link of an entry that records or captures something; null for any other.</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="sheets">The sheets of its inspections; what cannot be read cannot be mended.</param>
    /// <param name="entry">The entry.</param>
    public static MendLink? Of(VehicleState vehicle, SheetLibrary sheets, JournalEntry entry)
    {
        var first = (entry.Body as AmendableBody)?.Amends ?? entry.Sequence;
        var inspection = vehicle.InspectionWith(first);
        if (entry.Body is EntryWithdrawn or EntryRestored || inspection?.Find(first) is not { } kept || sheets.Of(inspection) is null)
        {
            return null;
        }

        var bench = Links.Inspection(vehicle.Id, inspection.Number);
        return kept.Says is PhotoMarked marked ? new($"{Links.Photo(vehicle.Id, inspection.Number, marked.Photo)}#marks", "Show")
            : AmendedEntry.IsReadFromForms(kept)
            ? new(FormattableString.Invariant($"{bench}/entries/{first}/amend"), "Change")
            : new(FormattableString.Invariant($"{bench}#item-{first}"), "Show");
    }
}

using InspectLog.App.Bench;
using InspectLog.Inspecting;
using InspectLog.Journal;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.App.Vehicles;

/// <summary>An inspection whose check sheet is missing: what is missing, and what was recorded as far as it can be read
/// without it.</summary>
/// <param name="Vehicle">The vehicle.</param>
/// <param name="Inspection">The inspection.</param>
/// <param name="Missing">Which sheet, and what to do.</param>
/// <param name="Lines">What was recorded, oldest first, with the number of its entry.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record MissingSheetView(
    VehicleState Vehicle,
    InspectionState Inspection,
    string Missing,
    IReadOnlyList<(long Sequence, string Text)> Lines,
    IReadOnlyList<GarageProblem> Problems)
{
    public static MissingSheetView Of(Garage garage, SheetLibrary sheets, VehicleState vehicle, InspectionState inspection)
    {
        var entries = garage.Entries(vehicle.Id);
        var withdrawn = entries.Select(entry => entry.Body).OfType<EntryWithdrawn>().Select(one => one.Entry).ToHashSet();
        return new(
            vehicle,
            inspection,
            sheets.WhatIsMissing(inspection.How),
            [
                .. entries.Where(entry => EntrySheets.IsOf(entry, inspection.Number) && !withdrawn.Contains(entry.Sequence))
                    .Select(entry => (entry.Sequence, EntryWords.Of(entry, _ => null))),
            ],
            garage.Problems);
    }
}

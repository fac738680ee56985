using InspectLog.App.Bench;
using InspectLog.Checks;
using InspectLog.Inspecting;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.State;

namespace InspectLog.App.Vehicles;

/// <summary>Which sheet an entry of a vehicle's journal is read with: that of its inspection, and no other.</summary>
public sealed class EntrySheets(VehicleState vehicle, SheetLibrary sheets)
{
    /// <summary>The sheet that has a check an entry names; null where it is missing.</summary>
    public CheckSheet? Of(JournalEntry entry, string check) => entry.Body switch
    {
        LimitsSet { Sheet: { } id } => BuiltInSheets.Find(id),
        LimitsCleared { Sheet: { } id } => BuiltInSheets.Find(id),
        LimitsSet or LimitsCleared => BuiltInSheets.All.FirstOrDefault(sheet => sheet.Find(check) is not null),
        { } body when AboutInspection.Of(body) is { } number && vehicle.Inspection(number) is { } inspection => sheets.Of(inspection),
        _ => null,
    };

    /// <summary>Where an entry is shown on its inspection's bench; null where it is only to be read in the journal.
    /// </summary>
    public EntryAddress? PlaceOf(JournalEntry entry) =>
        EntryAddress.Of(vehicle, sheets, entry) is { IsJournal: false } place ? place : null;

    /// <summary>What to say of an inspection that begins with this entry and whose sheet is missing; null otherwise.
    /// </summary>
    public string? MissingAt(JournalEntry entry) =>
        entry.Body is InspectionStarted started && vehicle.Inspection(entry.Sequence) is { } inspection && sheets.Of(inspection) is null
            ? sheets.WhatIsMissing(started)
            : null;

    /// <summary>Whether an entry says something of an inspection: what was captured and recorded in it.</summary>
    public static bool IsOf(JournalEntry entry, long inspection) =>
        entry.Sequence == inspection || AboutInspection.Of(entry.Body) == inspection;
}

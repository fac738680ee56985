using System.Collections.Concurrent;
using InspectLog.Checks;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Journal.Storage;

namespace InspectLog.Inspecting;

/// <summary>The check sheets inspections are read with: each found by the very hash the inspection pinned, among those
/// kept in the data folder and those built in. Safe for use by many threads.</summary>
/// <param name="kept">The sheets kept in the data folder; null where there is no such folder.</param>
public sealed class SheetLibrary(SheetStore? kept)
{
    private readonly ConcurrentDictionary<string, CheckSheet> _read = new(StringComparer.Ordinal);

    /// <summary>A library of the built-in sheets only.</summary>
    public static SheetLibrary BuiltIn => new(null);

    /// <summary>The sheet an inspection was started with, with the places it was started with; null when it is missing.
    /// </summary>
    public CheckSheet? Of(InspectionState inspection) => Find(inspection.How.SheetSha256) is { } sheet
        ? sheet with { Cylinders = inspection.How.Cylinders ?? sheet.Cylinders }
        : null;

    /// <summary>The very sheet with a hash; null when it is neither built in nor kept whole.</summary>
    public CheckSheet? Find(string sha256) =>
        BuiltInSheets.FindExact(sha256) ?? _read.GetValueOrDefault(sha256) ?? ReadKept(sha256);

    /// <summary>Keeps a sheet that an inspection is about to be started with; it is on disk when this returns.</summary>
    /// <exception cref="Journal.JournalReadOnlyException">Nothing can be written at present.</exception>
    public void Keep(CheckSheet sheet)
    {
        if (BuiltInSheets.FileOf(sheet.Sha256) is { } file)
        {
            kept?.Keep(file.Span);
        }
    }

    /// <summary>Says which sheet is missing and what to do, for people.</summary>
    public string WhatIsMissing(InspectionStarted how) =>
        $"This inspection was started with the check sheet {how.Sheet}, version {how.SheetVersion}, and that very sheet is not there: "
        + $"no file {how.SheetSha256}.json with its bytes in the folder {kept?.Folder ?? "sheets of the data folder"}. "
        + "No other version is put in its place. Copy the file back from a copy of the data folder, and open this page again.";

    // What is not there now may be put back while the program runs, so only what was found is remembered.
    private CheckSheet? ReadKept(string sha256)
    {
        try
        {
            return kept?.Read(sha256) is { } file ? _read.GetOrAdd(sha256, CheckSheetFile.Parse(file)) : null;
        }
        catch (Exception unreadable) when (unreadable is CheckSheetFormatException or IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }
}

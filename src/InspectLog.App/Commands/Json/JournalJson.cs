using InspectLog.Journal.Record;
using InspectLog.Journal.Storage;
using InspectLog.Journal.Verification;

namespace InspectLog.App.Commands.Json;

/// <summary>What <c>verify --json</c> writes for each journal.</summary>
/// <param name="Withheld">How many entries are withheld.</param>
/// <param name="WithheldEntries">Which.</param>
/// <param name="Head">The head of the record, as reports print it.</param>
/// <param name="Broken">The first line that is not sound; null when all are.</param>
/// <param name="Damage">Every line that is not sound.</param>
/// <param name="Unreadable">Why the file could not be read; null where it could.</param>
/// <param name="FilesChecked">How many recordings and photos were looked at; null when their folder is not there.</param>
/// <param name="BadFiles">Those of them that are missing or damaged.</param>
/// <param name="SheetsChecked">How many check sheets were looked at; null when their folder is not there.</param>
/// <param name="BadSheets">Those of them that are missing or damaged.</param>
internal sealed record JournalJson(
    string Journal,
    bool Intact,
    int Entries,
    int Withheld,
    IReadOnlyList<long> WithheldEntries,
    int Unread,
    string LastHash,
    string Head,
    BrokenLine? Broken,
    IReadOnlyList<BrokenLine> Damage,
    string? Unreadable,
    int? FilesChecked,
    IReadOnlyList<BadFileJson> BadFiles,
    int? SheetsChecked,
    IReadOnlyList<BadFileJson> BadSheets)
{
    /// <summary>The seals beside it, the newest last.</summary>
    public IReadOnlyList<SealJson> Seals { get; init; } = [];

    /// <summary>The tombstones of erasures.</summary>
    public IReadOnlyList<ErasureJson> Erasures { get; init; } = [];

    public static JournalJson From(JournalReport report) => new(
        report.File,
        report.IsIntact,
        report.Entries,
        report.Withheld.Count,
        report.Withheld,
        report.Unread,
        report.LastHash,
        report.Head,
        report.Damage is [var first, ..] ? first : null,
        report.Damage,
        report.Unreadable,
        report.Media?.Count,
        [.. report.BadFiles().Select(file => new BadFileJson(file.Sequence, file.File.Sha256, file.Condition))],
        report.Sheets?.Count,
        [.. report.BadSheets().Select(sheet => new BadFileJson(sheet.Sequence, sheet.Pinned.SheetSha256, sheet.Condition))])
    {
        Seals = [.. report.Seals.Seals.Select(SealJson.From)],
        Erasures = [.. report.Erasures.Select(one => new ErasureJson(one.Entry, one.Time, one.By, one.Says.AskedBy, one.Says.Reason, report.ErasedBy(one.Entry), one.Says.Nameless?.Count ?? 0, one.Says.Media))],
    };
}

/// <summary>That what was known of a person was erased.</summary>
/// <param name="Entry">The entry that says so.</param>
/// <param name="Entries">The entries whose bodies are gone by it.</param>
/// <param name="Nameless">How many entries no longer say who made them.</param>
/// <param name="Media">How many recordings and photos are gone.</param>
internal sealed record ErasureJson(long Entry, DateTimeOffset Time, string By, string AskedBy, string Reason, IReadOnlyList<long> Entries, int Nameless, int Media);

/// <summary>A recording, photo or check sheet that is not what the journal names.</summary>
/// <param name="Sequence">The first entry that names it.</param>
internal sealed record BadFileJson(long Sequence, string Sha256, MediaCondition Condition);

/// <summary>What <c>verify --json</c> writes last for a data folder.</summary>
/// <param name="Noted">How many vehicles are noted; null where none were yet.</param>
/// <param name="Losses">What is missing, or other than noted.</param>
internal sealed record FolderJson(string Folder, bool Whole, int? Noted, IReadOnlyList<LossJson> Losses, bool MediaMissing, bool ErasureUnfinished)
{
    public static FolderJson From(FolderReport report) => new(
        report.Path,
        report.IsWhole,
        report.Noted,
        [.. report.Losses.Select(loss => new LossJson(loss.VehicleId, loss.Entries, loss.Head, loss.Found, loss.WhatIsWrong))],
        report.IsMediaMissing,
        report.IsErasureUnfinished);
}

/// <summary>What a journal lacks of what was noted of it.</summary>
/// <param name="Vehicle">The vehicle; null for the workshop's own journal.</param>
internal sealed record LossJson(string? Vehicle, long Entries, string Head, long? Found, string Problem);

using System.Globalization;
using InspectLog.App.Ui;
using InspectLog.Journal.Erasing;
using InspectLog.Journal.Record;

namespace InspectLog.App.Erasing;

/// <summary>What goes, and what was erased, in words. Pure.</summary>
public static class ErasureWords
{
    /// <summary>Who asked, where nothing else is said.</summary>
    public const string AskedBy = "the person concerned";

    /// <summary>Why, where nothing else is said.</summary>
    public const string Reason = "their right to have their data erased";

    /// <summary>What erasing does and what it cannot do.</summary>
    public static readonly IReadOnlyList<string> Meaning =
    [
        "The hashes of what goes stay, so that the journal can still be verified and its seals hold. What was said cannot be worked out of them.",
        "A person is found by the whole name, by the contact that was noted with it, and by who recorded something. Look for short names and for photos that show the person yourself: leave such a note or photo out of the report, or amend it, before you erase.",
        "Files are taken away as the system does it: what the disk keeps in its free space until it is written over is not in this program's hands. Archives and reports that were handed on are with whoever has them.",
    ];

    /// <summary>One line for each thing that goes of a journal.</summary>
    public static IEnumerable<string> Of(JournalErasure journal) =>
    [
        .. journal.Gone.Select(entry => $"{Named(entry)}: {What(entry.Part)}. What it says goes."),
        .. journal.Restated.Select(entry => $"{Named(entry)}: names the person. It is said again without the name."),
        .. Nameless(journal),
        .. journal.Media.Count > 0 ? new[] { $"{Count(journal.Media.Count, "recording or photo", "recordings and photos")} of these entries, with all copies" } : [],
        .. journal.Staying > 0 ? new[] { $"{Count(journal.Staying, "entry goes", "entries go")} on saying that the person worked here" } : [],
    ];

    /// <summary>How much it is, in a sentence.</summary>
    public static string Sum(ErasurePlan plan) => plan.IsEmpty
        ? $"Nothing goes: {Count(plan.Staying, "entry says", "entries say")} that the person worked here, and that stays unless it is asked for as well."
        : $"{Count(plan.Bodies, "entry", "entries")} and {Count(plan.Media, "recording or photo", "recordings and photos")} go.";

    /// <summary>What stays, and what is to be done elsewhere, each in a sentence.</summary>
    public static IEnumerable<string> Elsewhere(ErasurePlan plan) =>
    [
        .. plan.Shared.Select(file => $"The file {file.Sha256[..12]}… stays, as another entry names it too."),
        .. plan.Remarks,
        .. plan.Backups.Select(backup => backup.WhatToDo),
        .. plan.Backups.Count == 0 ? new[] { "No backup of this garage is known here. If there is one elsewhere, back up into it again, or destroy it." } : [],
    ];

    private static IEnumerable<string> Nameless(JournalErasure journal) => journal.Nameless.Count == 0 ? [] :
        [$"{Count(journal.Nameless.Count, "entry", "entries")} by the person, {Runs(journal.Nameless)}: no longer {(journal.Nameless.Count == 1 ? "says" : "say")} by whom and with which device; the rest stays"];

    private static string Runs(IReadOnlyList<ErasedEntry> entries) => string.Join(", ", entries.Take(20).Select(entry => $"#{entry.Sequence}")) + (entries.Count > 20 ? ", …" : "");

    private static string Named(ErasedEntry entry) => string.Create(
        CultureInfo.InvariantCulture, $"#{entry.Sequence}, {entry.Kind.Replace('-', ' ')}, {Times.DateAndClock(entry.Time)}");

    private static string What(ErasedPart part) => part switch
    {
        ErasedPart.OwnerFacts => "owner, contact and vehicle number",
        ErasedPart.Recording => "the person speaks in it, or is named",
        ErasedPart.SaidOfIt => "tells of something that goes",
        ErasedPart.LeftOutOfReport => "kept out of the report, and the person's or naming them",
        _ => "names the person",
    };

    private static string Count(int count, string one, string many) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} {(count == 1 ? one : many)}");
}

using InspectLog.App.Ui;
using InspectLog.Journal.Storage;
using InspectLog.Journal.Verification;

namespace InspectLog.App.Commands;

/// <summary>What verifying found, as text for people.</summary>
internal static class JournalText
{
    private const int MostNumbers = 20;

    public static IEnumerable<MediaReport> BadFiles(this JournalReport report) =>
        (report.Media ?? []).Where(file => file.Condition is not MediaCondition.Whole and not MediaCondition.Withheld);

    public static IEnumerable<SheetReport> BadSheets(this JournalReport report) =>
        (report.Sheets ?? []).Where(sheet => sheet.Condition != MediaCondition.Whole);

    public static void WriteJournal(this TextWriter output, JournalReport report)
    {
        output.WriteLine($"{report.File}: {(report.IsIntact ? "intact" : "NOT INTACT")}");
        if (report.Unreadable is { } why)
        {
            output.WriteLine($"  It cannot be read: {why}");
            output.WriteLine("  Look after the file, or put it back from a copy.");
            return;
        }

        output.WriteDamage(report);
        foreach (var file in report.BadFiles())
            output.WriteLine($"  Entry {file.Sequence} names a file that is {(file.Condition == MediaCondition.Missing ? "missing" : "damaged")}: {file.File.Sha256}");
        foreach (var sheet in report.BadSheets())
            output.WriteLine($"  Entry {sheet.Sequence} was made with a check sheet that is {(sheet.Condition == MediaCondition.Missing ? "missing" : "damaged")}: {sheet.Pinned.Sheet}, version {sheet.Pinned.SheetVersion}, {sheet.Pinned.SheetSha256}");
        output.WriteLine($"  Sound entries: {report.Entries}{Hidden(report)}. {Files(report)}");
        if (Sheets(report) is { } sheets)
            output.WriteLine($"  {sheets}");
        foreach (var tombstone in report.Erasures)
            output.WriteLine($"  Erased: {Numbers(report.ErasedBy(tombstone.Entry))}. {TombstoneWords.Of(tombstone)}");
        if (report.Entries > 0)
            output.WriteLine($"  Hash of the last: {report.LastHash}");
        if (report.Head.Length > 0)
            output.WriteLine($"  {HeadWords.Of(isDamaged: report.Damage.Count > 0)}: {report.Head}");
    }

    public static void WriteFolder(this TextWriter output, FolderReport report)
    {
        output.WriteLine($"{report.Path}: {(report.IsWhole ? Noted(report) : "NOT WHOLE")}");
        foreach (var loss in report.Losses)
            output.WriteLine($"  {loss.WhatIsWrong}");
        if (report.IsMediaMissing)
            output.WriteLine("  The folder media is missing, and journals name recordings or photos in it.");
        if (report.IsErasureUnfinished)
            output.WriteLine("  The erasing of a person's data was begun here and is not done. Start InspectLog on this folder: it is gone on with then.");
        if (report.Losses.Count > 0 || report.IsMediaMissing)
            output.WriteLine("  Put what is missing back from a copy of the data folder.");
    }

    private static string Noted(FolderReport report) => report.Noted switch
    {
        null => "nothing is noted yet of which vehicles there should be. The next start of InspectLog notes it.",
        1 => "1 vehicle is noted, and it is there",
        { } count => $"{count} vehicles are noted, and all are there",
    };

    private static void WriteDamage(this TextWriter output, JournalReport report)
    {
        foreach (var line in report.Damage)
            output.WriteLine($"  Line {line.Line}: {line.Reason}{(line.HoldsEntry ? ". The entry itself is sound; the chain is broken before it" : "")}");
        if (report.Damage is [{ IsUnfinished: true }])
            output.WriteLine("  It is the end of a write that was never acknowledged. The next start of InspectLog sets it aside.");
        else if (report.Damage.Count > 0)
            output.WriteLine("  Put the file back from a copy. Until then the sound entries are shown and nothing is added to this journal.");
    }

    private static string? Sheets(JournalReport report) => report.Sheets switch
    {
        null => "Check sheets were not checked: their folder is not beside the journal.",
        { Count: 0 } => null,
        { } sheets => $"Check sheets checked: {sheets.Count}.",
    };

    private static string Hidden(JournalReport report)
    {
        var withheld = report.Withheld.Count > 0 ? $", {report.Withheld.Count} of them withheld ({Numbers(report.Withheld)})" : "";
        var unread = report.Unread > 0 ? $", {report.Unread} of kinds this version does not know" : "";
        return withheld + unread;
    }

    private static string Numbers(IReadOnlyList<long> sequences) =>
        string.Join(", ", sequences.Take(MostNumbers).Select(one => $"#{one}")) + (sequences.Count > MostNumbers ? ", …" : "");

    private static string Files(JournalReport report) => report.Media is { } media
        ? $"Recordings and photos checked: {media.Count}{(media.Count(file => file.Condition == MediaCondition.Withheld) is > 0 and var withheld ? $", {withheld} of them withheld" : "")}."
        : "Recordings and photos were not checked: their folder is not beside the journal.";
}

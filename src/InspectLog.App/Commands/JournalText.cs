using InspectLog.Journal.Storage;
using InspectLog.Journal.Verification;

namespace InspectLog.App.Commands;

/// <summary>What verifying found, as text for people.</summary>
internal static class JournalText
{
    public static IEnumerable<MediaReport> BadFiles(this JournalReport report) =>
        (report.Media ?? []).Where(file => file.Condition != MediaCondition.Whole);

    public static void WriteJournal(this TextWriter output, JournalReport report)
    {
        output.WriteLine($"{report.File}: {(report.IsIntact ? "intact" : "NOT INTACT")}");
        if (report.Broken is { } broken)
            output.WriteLine($"  Line {broken.Line}: {broken.Reason}");
        foreach (var file in report.BadFiles())
            output.WriteLine($"  Entry {file.Sequence} names a file that is {(file.Condition == MediaCondition.Missing ? "missing" : "damaged")}: {file.File.Sha256}");
        output.WriteLine($"  Sound entries: {report.Entries}{Hidden(report)}. {Files(report)}");
        if (report.Entries > 0)
            output.WriteLine($"  Hash of the last: {report.LastHash}");
    }

    private static string Hidden(JournalReport report)
    {
        var withheld = report.Withheld > 0 ? $", {report.Withheld} of them withheld" : "";
        var unread = report.Unread > 0 ? $", {report.Unread} of kinds this version does not know" : "";
        return withheld + unread;
    }

    private static string Files(JournalReport report) => report.Media is { } media
        ? $"Recordings and photos checked: {media.Count}."
        : "Recordings and photos were not checked: their folder is not beside the journal.";
}

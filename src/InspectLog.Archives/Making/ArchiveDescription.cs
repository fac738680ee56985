using System.Globalization;
using System.Text;
using InspectLog.Archives.BagIt;

namespace InspectLog.Archives.Making;

/// <summary>What an archive says of itself: to programs in bag-info.txt, to people in a text beside it. Pure.</summary>
internal static class ArchiveDescription
{
    /// <summary>The text for people.</summary>
    public const string FileName = "READ-ME.txt";

    /// <summary>For programs.</summary>
    public static BagInfo Info(ArchiveContents contents, PayloadOxum oxum, DateOnly today)
    {
        var withheld = contents.Entries.Where(entry => entry.IsWithheld).Select(entry => entry.Sequence).ToList();
        return new(
        [
            ("Bagging-Date", today.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)),
            ("Bag-Software-Agent", "InspectLog"),
            ("External-Description", $"Inspection journal of {contents.Vehicle.Name}"),
            ("External-Identifier", contents.Entries[0].Hash),
            (PayloadOxum.Label, oxum.ToString()),
            (ArchiveFields.Version, ArchiveLayout.Version),
            (ArchiveFields.Vehicle, contents.Source.Id),
            (ArchiveFields.Profile, contents.Profile.Id),
            (ArchiveFields.Entries, contents.Entries.Count.ToString(CultureInfo.InvariantCulture)),
            (ArchiveFields.Head, contents.Entries[^1].Hash),
            .. withheld.Count > 0 ? [(ArchiveFields.WithheldEntries, ArchiveFields.Numbers(withheld))] : Array.Empty<(string, string)>(),
            .. contents.VinEnding is { } ending ? [(ArchiveFields.VinEnding, ending)] : Array.Empty<(string, string)>(),
        ]);
    }

    /// <summary>For people.</summary>
    /// <param name="contents">What is in it.</param>
    /// <param name="isSealed">Whether the archive itself is sealed.</param>
    public static byte[] Text(ArchiveContents contents, bool isSealed)
    {
        var text = new StringBuilder()
            .AppendLine(CultureInfo.InvariantCulture, $"Inspection journal of {OneLine(contents.Vehicle.Name)}")
            .AppendLine()
            .AppendLine("data/reports       the report of each closed inspection: open it in any browser")
            .AppendLine("data/readings.csv  every reading as a table, for any spreadsheet")
            .AppendLine("data/media         recordings and photos, each named by the SHA-256 of its bytes")
            .AppendLine("data/copies        upright copies of photos whose originals were withheld, named by the original's SHA-256")
            .AppendLine("data/sheets        the very check sheets the inspections were made with")
            .AppendLine("data/journal.jsonl the journal: one entry a line, each with the hash of the one before")
            .AppendLine("seal               the seal of all this, and the seals the journal had before")
            .AppendLine()
            .AppendLine("To check it with InspectLog:    inspectlog verify FOLDER-OR-ZIP")
            .AppendLine("To check it without InspectLog: sh verify.sh (in a shell that has sha256sum and openssl)")
            .AppendLine("To check its files alone:       sha256sum -c manifest-sha256.txt tagmanifest-sha256.txt")
            .AppendLine()
            .AppendLine(isSealed
                ? "It is sealed. Anybody can make a key: compare the fingerprint of the key with one that came to you another way, such as a printed report."
                : "It is not sealed: its workshop had no key, or made it without.")
            .AppendLine()
            .AppendLine(CultureInfo.InvariantCulture, $"The journal has {contents.Entries.Count} entries. The hash of the last one is")
            .AppendLine(contents.Entries[^1].Hash)
            .AppendLine("Compare it with the hash on a printed report, or with one you were sent: by itself an archive does not show whether it was made anew from its beginning.")
            .AppendLine()
            .AppendLine(CultureInfo.InvariantCulture, $"What it holds: {contents.Profile.Title.ToLowerInvariant()}.");
        foreach (var left in contents.Profile.LeavesOut)
        {
            text.AppendLine(CultureInfo.InvariantCulture, $"Left out: {left}");
        }

        if (contents.VinEnding is { } ending)
        {
            text.AppendLine(CultureInfo.InvariantCulture, $"The vehicle number ends in {ending}.");
        }

        return Encoding.UTF8.GetBytes(text.ToString().ReplaceLineEndings("\n"));
    }

    private static string OneLine(string text) => text.ReplaceLineEndings(" ");
}

using InspectLog.Archives.BagIt;
using InspectLog.Journal.Entries;

namespace InspectLog.Archives.Checking;

/// <summary>Holds the files of an archive against its journal: each one that is named is there under its hash, or listed as
/// withheld; and none is there that nothing names. Pure.</summary>
internal static class ArchivePayload
{
    private const string Payload = "data/";

    public static IEnumerable<BagFault> Faults(ArchiveFacts facts, BagReading bag) =>
        FaultsOfInfo(facts)
            .Concat(facts.Named.SelectMany(file => FaultsOfMedia(facts, bag, file)))
            .Concat(facts.Sheets.SelectMany(pinned => FaultsOfSheet(bag, pinned)))
            .Concat(facts.Withheld.SelectMany(one => FaultsOfWithheld(facts, bag, one)))
            .Concat(Strangers(facts, bag));

    private static IEnumerable<BagFault> FaultsOfInfo(ArchiveFacts facts)
    {
        if (facts.Info[ArchiveFields.Head] != facts.Head
            || facts.Info[ArchiveFields.Entries] != FormattableString.Invariant($"{facts.Entries.Count}"))
        {
            yield return new(BagInfo.FileName, "tells of another journal than the one here: its number of entries or the hash of its last one differs");
        }

        var withheld = facts.WithheldEntries.Select(entry => entry.Sequence);
        if (ArchiveFields.Numbers(facts.Info[ArchiveFields.WithheldEntries] ?? "") is not { } said || !said.SequenceEqual(withheld))
        {
            yield return new(BagInfo.FileName, "lists other entries as withheld than those whose bodies are not there");
        }
    }

    private static IEnumerable<BagFault> FaultsOfMedia(ArchiveFacts facts, BagReading bag, MediaFile file)
    {
        if (!IsHash(file.Sha256))
        {
            yield return new(Payload + ArchiveLayout.Journal, "names a recording or photo by something that is no hash");
            yield break;
        }

        var path = Payload + ArchiveLayout.Media(file);
        var isWithheld = facts.IsWithheld(file);
        if (!bag.Sums.TryGetValue(path, out var sums))
        {
            if (!isWithheld)
            {
                yield return new(path, "is missing: the journal names it, and nothing says that it was withheld");
            }
        }
        else if (isWithheld)
        {
            yield return new(path, "is there though it is listed as withheld");
        }
        else if (sums.Sha256 != file.Sha256 || sums.Length != file.Bytes)
        {
            yield return new(path, "is not the file that the journal names");
        }
    }

    private static IEnumerable<BagFault> FaultsOfSheet(BagReading bag, InspectionStarted pinned)
    {
        if (!IsHash(pinned.SheetSha256))
        {
            yield return new(Payload + ArchiveLayout.Journal, "names a check sheet by something that is no hash");
            yield break;
        }

        var path = Payload + ArchiveLayout.Sheet(pinned.SheetSha256);
        if (!bag.Sums.TryGetValue(path, out var sums))
        {
            yield return new(path, "is missing: an inspection was made with this check sheet");
        }
        else if (sums.Sha256 != pinned.SheetSha256)
        {
            yield return new(path, "is not the check sheet its name says");
        }
    }

    private static IEnumerable<BagFault> FaultsOfWithheld(ArchiveFacts facts, BagReading bag, Journal.Storage.WithheldMedia one)
    {
        if (!facts.Names(one.File))
        {
            yield return new(Payload + ArchiveLayout.Withheld, "lists a file that the journal does not name");
        }
        else if (one.Copy is { } copy)
        {
            var path = Payload + ArchiveLayout.Copy(one.File);
            if (!IsHash(copy.Sha256))
            {
                yield return new(Payload + ArchiveLayout.Withheld, "names a copy by something that is no hash");
            }
            else if (!bag.Sums.TryGetValue(path, out var sums))
            {
                yield return new(path, "is missing: it is listed as the copy of a photo");
            }
            else if (sums.Sha256 != copy.Sha256 || sums.Length != copy.Bytes)
            {
                yield return new(path, "is not the copy that is listed");
            }
        }
    }

    /// <summary>Files that are in the manifests and belong to nothing.</summary>
    private static IEnumerable<BagFault> Strangers(ArchiveFacts facts, BagReading bag)
    {
        var known = new HashSet<string>(StringComparer.Ordinal)
        {
            ArchiveLayout.Journal, ArchiveLayout.Readings,
        };
        known.UnionWith(facts.Named.Select(ArchiveLayout.Media));
        known.UnionWith(facts.Sheets.Select(pinned => ArchiveLayout.Sheet(pinned.SheetSha256)));
        known.UnionWith(facts.Withheld.Where(one => one.Copy is not null).Select(one => ArchiveLayout.Copy(one.File)));
        if (facts.Withheld.Count > 0)
        {
            known.Add(ArchiveLayout.Withheld);
        }

        return bag.Sums.Keys
            .Where(path => path.StartsWith(Payload, StringComparison.Ordinal))
            .Select(path => path[Payload.Length..])
            .Where(path => !known.Contains(path) && !ArchiveLayout.IsReport(path))
            .Order(StringComparer.Ordinal)
            .Select(path => new BagFault(Payload + path, "does not belong here: nothing in the journal names it"));
    }

    private static bool IsHash(string text) => text.Length == 64 && text.All(char.IsAsciiHexDigitLower);
}

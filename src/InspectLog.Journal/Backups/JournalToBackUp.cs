using InspectLog.Journal.Storage;
using System.Security.Cryptography;
using InspectLog.Journal.Record;
using InspectLog.Journal.Verification;

namespace InspectLog.Journal.Backups;

/// <summary>How far a journal is at the beginning of a backup: so far it is copied, whatever comes meanwhile.</summary>
/// <param name="Path">Its path below the folder.</param>
/// <param name="Bytes">Length of what is copied.</param>
/// <param name="Sha256">SHA-256 of that, lower-case hex.</param>
/// <param name="Damage">What is wrong with it, in a sentence; null where nothing is. A damaged one is not copied.</param>
/// <param name="Refusal">Why it cannot follow the one in the backup, in a sentence; null where it can.</param>
internal sealed record JournalToBackUp(string Path, long Bytes, string Sha256, string? Damage, string? Refusal)
{
    /// <summary>Names of the recordings and photos that the backup's journal names, in entries that were erased here since.</summary>
    public IReadOnlyList<string> Erased { get; init; } = [];

    /// <summary>Whether something was erased here since it was backed up.</summary>
    public bool IsErasedSince { get; init; }

    /// <summary>Looks at a journal and at its backup, if there is one. Journals only ever grow: one that is shorter than its
    /// backup, or another, must not take its place.</summary>
    /// <exception cref="IOException">The backup's cannot be read.</exception>
    public static JournalToBackUp Of(string path, string file, string? backup)
    {
        if (Read(file, out var why) is not { } bytes)
        {
            return new(path, 0, "", $"{path} cannot be read ({why}), so its backup stays as it was. Look after the file, or put it back from a copy.", null);
        }

        var length = SoundLength(bytes, out var broken);
        var sound = bytes.AsMemory(0, length);
        var here = new JournalToBackUp(path, length, Convert.ToHexStringLower(SHA256.HashData(sound.Span)), null, null);
        if (broken is { IsUnfinished: false })
        {
            return here with { Damage = $"{path} is damaged at line {broken.Line} ({broken.Reason}), so its backup stays as it was. Put the journal back from a copy." };
        }

        if (backup is null || ReadOnlyScan.Read(backup) is var there && sound.Span.StartsWith(there))
        {
            return here;
        }

        var (now, then) = (JournalScan.Of(sound), JournalScan.Of(there));
        return Refused(path, now, then) is { } refusal ? here with { Refusal = refusal } : here with
        {
            IsErasedSince = Tombstones(now) > Tombstones(then),
            Erased = [.. ErasedSince(now, then).SelectMany(NamedMedia.Of).Select(file => file.Sha256)],
        };
    }

    private static int Tombstones(JournalScan journal) => journal.Entries.Count(entry => entry.Body is Entries.PersonErased);

    private static IEnumerable<JournalEntry> ErasedSince(JournalScan here, JournalScan there) => there.Entries
        .Where(entry => !entry.IsWithheld && here.Entries.At(entry.Sequence) is { ErasedBy: not null, IsRestated: false });

    private static byte[]? Read(string file, out string why)
    {
        why = "";
        try
        {
            return ReadOnlyScan.Read(file);
        }
        catch (Exception problem) when (DiskFailure.Is(problem))
        {
            why = problem.Message.TrimEnd('.');
            return null;
        }
    }

    /// <summary>How many bytes are lines that are whole; the remains of a write that is under way are not.</summary>
    private static int SoundLength(byte[] bytes, out BrokenLine? broken)
    {
        broken = null;
        if (QuickScan.Of(bytes) is not null)
        {
            return bytes.Length;
        }

        var scan = JournalScan.Of(bytes);
        broken = scan.Broken;
        return broken is { IsUnfinished: true } ? scan.SoundBytes : bytes.Length;
    }

    /// <summary>Compares by hashes where the bytes differ: bodies may have been erased since, which changes no hash, and lines
    /// of the backup may have been damaged, which are then made good from here.</summary>
    private static string? Refused(string path, JournalScan here, JournalScan there)
    {
        foreach (var entry in there.Entries)
        {
            if (here.Entries.At(entry.Sequence) is not { } same)
            {
                return $"{path} has {here.Entries.Count} entries, and its backup has at least {entry.Sequence}: it was cut since. Restore it from the backup, or back up into another folder.";
            }

            if (same.Hash != entry.Hash)
            {
                return $"{path} is another journal than its backup from entry {entry.Sequence} on: it was written anew, or both were gone on with. Back up into another folder, and find out which is the right one.";
            }
        }

        return null;
    }
}

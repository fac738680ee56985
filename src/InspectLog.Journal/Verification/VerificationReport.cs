using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.Storage;

namespace InspectLog.Journal.Verification;

/// <summary>What verifying found.</summary>
/// <param name="Journals">One report a journal.</param>
public sealed record VerificationReport(IReadOnlyList<JournalReport> Journals)
{
    /// <summary>Whether every journal is sound to its end and every file it names is there and unchanged.</summary>
    public bool IsIntact => Journals.All(journal => journal.IsIntact);
}

/// <summary>What verifying one journal found.</summary>
/// <param name="File">The journal file.</param>
/// <param name="Entries">How many entries are sound, counted from the first.</param>
/// <param name="Withheld">How many of them have had their bodies withheld or erased.</param>
/// <param name="Unread">How many of them are of a kind or version this program does not know.</param>
/// <param name="LastHash">Hash of the last sound entry, lower-case hex; empty when there is none. Compare it with one
/// noted earlier: a journal that was cut short, or written anew from its start, looks sound by itself.</param>
/// <param name="Broken">The first line that is not sound; null when all are.</param>
/// <param name="Media">Files the sound entries name, each once, and what became of them; null when the media folder
/// is not beside the journal, and nothing was looked at.</param>
public sealed record JournalReport(
    string File,
    int Entries,
    int Withheld,
    int Unread,
    string LastHash,
    BrokenLine? Broken,
    IReadOnlyList<MediaReport>? Media)
{
    /// <summary>Whether the journal is sound to its end and every file that was looked at is whole.</summary>
    public bool IsIntact => Broken is null && (Media ?? []).All(media => media.Condition == MediaCondition.Whole);
}

/// <summary>A file a journal names.</summary>
/// <param name="Sequence">The first entry that names it.</param>
/// <param name="File">The file.</param>
/// <param name="Condition">What became of it.</param>
public sealed record MediaReport(long Sequence, MediaFile File, MediaCondition Condition);

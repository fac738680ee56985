using InspectLog.Journal.Entries;
using InspectLog.Journal.Noted;
using InspectLog.Journal.Record;
using InspectLog.Journal.Sealing;
using InspectLog.Journal.State;
using InspectLog.Journal.Storage;

namespace InspectLog.Journal.Verification;

/// <summary>What verifying found.</summary>
/// <param name="Journals">One report a journal.</param>
public sealed record VerificationReport(IReadOnlyList<JournalReport> Journals)
{
    /// <summary>What the data folder as a whole lacks; null where a single journal was verified.</summary>
    public FolderReport? Folder { get; init; }

    /// <summary>Whether every journal is sound to its end, every file it names is there and unchanged, and nothing is
    /// missing that is noted.</summary>
    public bool IsIntact => Journals.All(journal => journal.IsIntact) && Folder is not { IsWhole: false };
}

/// <summary>What a data folder as a whole lacks.</summary>
/// <param name="Path">The folder.</param>
/// <param name="Noted">How many vehicles the workshop's journal has noted; null where it has noted none yet.</param>
/// <param name="Losses">What journals lack of what was noted of them.</param>
/// <param name="IsMediaMissing">Whether the folder of recordings and photos is missing while journals name some.</param>
public sealed record FolderReport(string Path, int? Noted, IReadOnlyList<JournalLoss> Losses, bool IsMediaMissing)
{
    /// <summary>Whether the erasing of a person's data was begun in it and is not done.</summary>
    public bool IsErasureUnfinished { get; init; }

    /// <summary>Whether nothing is missing, and nothing half done.</summary>
    public bool IsWhole => Losses.Count == 0 && !IsMediaMissing && !IsErasureUnfinished;
}

/// <summary>What verifying one journal found.</summary>
/// <param name="File">The journal file.</param>
/// <param name="Entries">How many entries are sound, those after damage among them.</param>
/// <param name="Withheld">Sequences of those whose bodies were withheld or erased.</param>
/// <param name="Unread">How many of them are of a kind or version this program does not know.</param>
/// <param name="LastHash">Hash of the last sound entry, lower-case hex; empty when there is none. Compare it with one
/// noted earlier: a journal that was cut short, or written anew from its start, looks sound by itself.</param>
/// <param name="Damage">The lines that are not sound, in order; none when all are.</param>
/// <param name="Media">Files the sound entries name, each once, and what became of them; null when the media folder
/// is not beside the journal, and nothing was looked at.</param>
public sealed record JournalReport(
    string File,
    int Entries,
    IReadOnlyList<long> Withheld,
    int Unread,
    string LastHash,
    IReadOnlyList<BrokenLine> Damage,
    IReadOnlyList<MediaReport>? Media)
{
    /// <summary>Check sheets the sound entries pin, each once, and what became of them; null when some are not built in
    /// and the folder of the sheets is not beside the journal, and nothing was looked at.</summary>
    public IReadOnlyList<SheetReport>? Sheets { get; init; } = [];

    /// <summary>The tombstones of erasures.</summary>
    public IReadOnlyList<Tombstone> Erasures { get; init; } = [];

    /// <summary>Which entries' bodies were taken out, by the entry that says so.</summary>
    internal IReadOnlyDictionary<long, long> Erased { get; init; } = new Dictionary<long, long>();

    /// <summary>Sequences of the entries whose bodies were taken out by an erasure, rising.</summary>
    /// <param name="tombstone">The entry that says so.</param>
    public IReadOnlyList<long> ErasedBy(long tombstone) => [.. Erased.Where(one => one.Value == tombstone).Select(one => one.Key).Order()];

    /// <summary>What the seals beside the journal say about it.</summary>
    public SealsReport Seals { get; init; } = SealsReport.None;

    /// <summary>What further seals and printed pages can be held against.</summary>
    public JournalChain Chain { get; init; } = JournalChain.Of([]);

    /// <summary>The head of the record, as reports print it; of a damaged journal that of the entries that can be read. Empty
    /// where there is none.</summary>
    public string Head => Chain.Record;

    /// <summary>Looks for the entry at which a head was printed; null where none has it, and in a damaged journal.</summary>
    /// <param name="head">The head, 64 lower-case hex digits.</param>
    public HeadComparison? Find(string head) => Chain.Find(head);

    /// <summary>Why the file could not be read at all; null where it could.</summary>
    public string? Unreadable { get; init; }

    /// <summary>Whether the journal is sound to its end, is what its seals stand for, and every file that was
    /// looked at is whole.</summary>
    public bool IsIntact => Unreadable is null && Damage.Count == 0
        && Seals.IsIntact()
        && (Media ?? []).All(media => media.Condition is MediaCondition.Whole or MediaCondition.Withheld)
        && (Sheets ?? []).All(sheet => sheet.Condition == MediaCondition.Whole);
}

/// <summary>A check sheet a journal pins.</summary>
/// <param name="Sequence">The first entry that pins it.</param>
/// <param name="Pinned">The entry.</param>
/// <param name="Condition">What became of it; whole where it is built in and no file in its place says otherwise.</param>
public sealed record SheetReport(long Sequence, InspectionStarted Pinned, MediaCondition Condition);

/// <summary>A file a journal names.</summary>
/// <param name="Sequence">The first entry that names it.</param>
/// <param name="File">The file.</param>
/// <param name="Condition">What became of it.</param>
public sealed record MediaReport(long Sequence, MediaFile File, MediaCondition Condition);

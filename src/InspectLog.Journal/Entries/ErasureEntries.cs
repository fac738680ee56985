using System.Text.Json;

namespace InspectLog.Journal.Entries;

/// <summary>The tombstone of an erasure: what was known of one person was taken out of this journal. It says nothing of who that
/// was. Written to every journal of which something was taken.</summary>
/// <param name="AskedBy">Who asked for it, in words that do not name the person.</param>
/// <param name="Reason">Why, in words that do not name the person.</param>
/// <param name="Entries">The entries of this journal whose bodies and salts are gone: runs of sequences [first, last],
/// rising.</param>
/// <param name="Media">How many recordings and photos of theirs are gone.</param>
[EntryKind("person-erased")]
public sealed record PersonErased(string AskedBy, string Reason, IReadOnlyList<IReadOnlyList<long>> Entries, int Media) : EntryBody
{
    /// <summary>The entries that no longer say who made them; null where none.</summary>
    public IReadOnlyList<NamelessEntry>? Nameless { get; init; }

    /// <summary>Whether the body of an entry was taken out by it.</summary>
    public bool Took(long sequence) => Entries.Any(run => run is [var first, var last] && first <= sequence && sequence <= last);

    /// <summary>How many entries' bodies were taken out by it.</summary>
    public long CountTaken() => Entries.Sum(run => run is [var first, var last] ? last - first + 1 : 0);
}

/// <summary>An entry that no longer says who made it, so that its hash cannot be worked out again.</summary>
/// <param name="Entry">Its sequence.</param>
/// <param name="Rest">SHA-256 of the canonical form of what is left of its line without body, salt and hash, lower-case hex:
/// it stands for that from now on.</param>
public sealed record NamelessEntry(long Entry, string Rest);

/// <summary>What an entry whose body was taken out said, without the person. It follows the tombstone and is read in the
/// entry's place.</summary>
/// <param name="Entry">The entry; the body is of its kind and version.</param>
/// <param name="Says">The body.</param>
[EntryKind("entry-restated")]
public sealed record EntryRestated(long Entry, JsonElement Says) : EntryBody;

using System.Collections.Immutable;

namespace InspectLog.Journal.Record;

/// <summary>Follows a journal's chain from line to line and goes on after damage. An entry is taken where it follows from
/// the one before it. Where it does not, no later line does either, and its number is higher, the chain is broken: it
/// begins a run of its own, and how it hangs together with what stands before it can no longer be shown.</summary>
/// <param name="lines">The lines of the file, each read by itself.</param>
internal sealed class Salvage(IReadOnlyList<ScannedLine> lines)
{
    private readonly ImmutableList<JournalEntry>.Builder _entries = ImmutableList.CreateBuilder<JournalEntry>();
    private readonly ImmutableList<BrokenLine>.Builder _damage = ImmutableList.CreateBuilder<BrokenLine>();
    private readonly Lazy<Dictionary<(long Sequence, string Previous), int>> _lastThatFollows = new(() => LastThatFollows(lines));
    private long _last;
    private string _lastHash = EntryLine.NoPrevious;
    private int _damagedSince;

    /// <summary>The sound entries so far.</summary>
    public ImmutableList<JournalEntry> Entries => _entries.ToImmutable();

    /// <summary>The lines so far that are not sound.</summary>
    public ImmutableList<BrokenLine> Damage => _damage.ToImmutable();

    /// <summary>Where the first line begins that is not sound, bytes; null when all were.</summary>
    public int? SoundBytes { get; private set; }

    /// <summary>Takes the next line: as an entry, as damage, or as both where the chain is broken before it.</summary>
    public void Take(int at)
    {
        var entry = lines[at].Entry;
        var isEntry = entry is not null && (Follows(entry) || Begins(entry, at));
        if (WhatIsWrongAt(at) is { } reason)
        {
            SoundBytes ??= lines[at].Start;
            _damage.Add(new(at + 1, reason, IsUnfinished: false) { HoldsEntry = isEntry });
        }

        if (isEntry)
        {
            _entries.Add(entry!);
            (_last, _lastHash, _damagedSince) = (entry!.Sequence, entry.Hash, 0);
        }
        else
        {
            _damagedSince++;
        }
    }

    /// <summary>Ends with the remains of a write that never finished.</summary>
    public void EndUnfinished(int at)
    {
        // Where there is damage before, the remains are one more line of it: nothing is cut off a damaged journal.
        SoundBytes ??= lines[at].Start;
        _damage.Add(new(at + 1, lines[at].Problem!, IsUnfinished: _damage.Count == 0));
    }

    private long Expected => _last + _damagedSince + 1;

    /// <summary>What is wrong with a line where it stands; null where nothing is.</summary>
    private string? WhatIsWrongAt(int at) => lines[at] switch
    {
        { Problem: { } problem } => problem,
        { Entry: { } entry } when Follows(entry) || BeginsAfterDamage(entry, at) => null,
        { Entry: { } entry } when entry.Sequence != Expected => $"it is numbered {entry.Sequence}, and should be {Expected}",
        _ => "it does not follow from the line before",
    };

    private bool Follows(JournalEntry entry) => entry.Sequence == _last + 1 && entry.Previous == _lastHash;

    /// <summary>A run of its own. Where a later line follows from what stands before, this one is a stranger in between.
    /// </summary>
    private bool Begins(JournalEntry entry, int at) =>
        entry.Sequence > _last && !(_lastThatFollows.Value.TryGetValue((_last + 1, _lastHash), out var later) && later > at);

    // The damaged lines are told already, and account for every number that is missing.
    private bool BeginsAfterDamage(JournalEntry entry, int at) =>
        _damagedSince > 0 && entry.Sequence <= Expected && Begins(entry, at);

    private static Dictionary<(long Sequence, string Previous), int> LastThatFollows(IReadOnlyList<ScannedLine> lines)
    {
        var last = new Dictionary<(long, string), int>();
        foreach (var (at, line) in lines.Index())
        {
            if (line.Entry is { } entry)
            {
                last[(entry.Sequence, entry.Previous)] = at;
            }
        }

        return last;
    }
}

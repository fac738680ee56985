using System.Collections.Immutable;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.Storage;

namespace InspectLog.Journal;

/// <summary>One journal: its file, and what its entries say. Appends are made one after the other; reading needs
/// no lock. What is in memory was read back from the very bytes that are on disk.</summary>
internal sealed class OpenJournal<TState>
    where TState : class
{
    private readonly Lock _appending = new();
    private readonly JournalFile _file;
    private readonly Func<TState, JournalEntry, TState> _apply;
    private readonly TimeProvider _time;
    private readonly int _soundBytes;
    private volatile Snapshot _now;

    /// <summary>Reads a journal.</summary>
    /// <param name="file">Its file; may not exist yet.</param>
    /// <param name="before">The state before the first entry.</param>
    /// <param name="apply">The state after one more entry.</param>
    /// <param name="time">The clock.</param>
    public OpenJournal(JournalFile file, TState before, Func<TState, JournalEntry, TState> apply, TimeProvider time)
    {
        _file = file;
        _apply = apply;
        _time = time;
        var scan = JournalScan.Of(file.Read());
        Broken = scan.Broken;
        _soundBytes = scan.SoundBytes;
        _now = new(scan.Entries.Aggregate(before, apply), scan.Entries);
    }

    /// <summary>What the journal says now.</summary>
    public Snapshot Now => _now;

    /// <summary>The first line that could not be read; what follows it is not in <see cref="Now"/>.</summary>
    public BrokenLine? Broken { get; private set; }

    /// <summary>Appends the entries a function decides on, and calls another when they are on disk.</summary>
    /// <exception cref="JournalReadOnlyException">Nothing can be written.</exception>
    public TState Append(
        string actor, Func<TState, IReadOnlyList<EntryBody>> decide, Action<Snapshot, IReadOnlyList<JournalEntry>> kept)
    {
        lock (_appending)
        {
            ThrowIfDamaged();
            var bodies = decide(_now.State);
            if (bodies.Count > 0)
            {
                var record = NewEntries.Of(actor, bodies, _now.Entries, _time.GetLocalNow());
                _file.Append(record.Bytes);
                _now = new(record.Entries.Aggregate(_now.State, _apply), _now.Entries.AddRange(record.Entries));
                kept(_now, record.Entries);
            }

            return _now.State;
        }
    }

    /// <summary>Sets the remains of an unfinished write aside, and says so in the journal.</summary>
    /// <param name="into">The file that takes the bytes.</param>
    /// <exception cref="JournalReadOnlyException">They could not be set aside.</exception>
    public void SetTailAside(string into)
    {
        var bytes = _file.SetAside(_soundBytes, into);
        Broken = null;
        Append(JournalEntry.Program, _ => [new TailSetAside(Path.GetFileName(into), bytes)], (_, _) => { });
    }

    /// <summary>Returns when no append is under way.</summary>
    public void WaitForAppend()
    {
        lock (_appending)
        {
            // Nothing to do but to have waited.
        }
    }

    private void ThrowIfDamaged()
    {
        if (Broken is { } broken)
        {
            throw new JournalReadOnlyException(
                $"This journal can only be read, because line {broken.Line} of {_file.Path} is damaged: {broken.Reason}.");
        }
    }

    /// <summary>A journal at one moment.</summary>
    /// <param name="State">What it says as a whole.</param>
    /// <param name="Entries">All its entries.</param>
    internal sealed record Snapshot(TState State, ImmutableList<JournalEntry> Entries);
}

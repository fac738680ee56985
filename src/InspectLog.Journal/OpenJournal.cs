using System.Collections.Immutable;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.Storage;

namespace InspectLog.Journal;

/// <summary>One journal: where it is kept, and what its entries say. Appends are made one after the other; reading needs
/// no lock. What is in memory was read back from the very bytes that are on disk; entries of a sound journal are read from there
/// when they are asked for.</summary>
internal sealed class OpenJournal<TState> : IHeldJournal
    where TState : class
{
    private readonly Lock _appending = new();
    private readonly IEntryLog _log;
    private readonly Func<TState, JournalEntry, TState> _apply;
    private readonly TimeProvider _time;
    private readonly Func<TState> _before;
    private readonly long _soundBytes;
    private readonly Func<TState, bool, JournalContent<TState>> _read;
    private volatile Snapshot _now;

    /// <summary>Reads a journal. Whatever is wrong with it is told by <see cref="Damage"/>.</summary>
    /// <param name="log">Where it is kept; may be empty yet.</param>
    /// <param name="before">The state before the first entry.</param>
    /// <param name="apply">The state after one more entry.</param>
    /// <param name="time">The clock.</param>
    /// <param name="mustHoldEntries">Whether a journal without an entry is damage.</param>
    /// <param name="cache">Entries that were read lately; null for a cache of its own.</param>
    /// <param name="reading">Gives the state before the first entry a way to read entries again; null where it needs none.</param>
    /// <param name="anew">Gives the state before the first entry where it is read again; null where it is always the same.</param>
    public OpenJournal(
        IEntryLog log,
        TState before,
        Func<TState, JournalEntry, TState> apply,
        TimeProvider time,
        bool mustHoldEntries = false,
        EntryCache? cache = null,
        Func<TState, EntryPlaces, TState>? reading = null,
        Func<TState>? anew = null)
    {
        _log = log;
        _apply = apply;
        _time = time;
        _before = anew ?? (() => before);
        _read = (first, mustHold) => JournalContent.Of(log, first, apply, mustHold, cache, reading);
        var journal = _read(before, mustHoldEntries);
        Damage = journal.Damage;
        _soundBytes = journal.SoundBytes;
        _now = new(journal.State, journal.Entries);
    }

    /// <summary>What the journal says now.</summary>
    public Snapshot Now => _now;

    /// <summary>What is wrong with the journal; null when it is sound.</summary>
    public JournalDamage? Damage { get; private set; }

    /// <summary>Which write to it failed, so that nothing more is written to it; null while none did.</summary>
    public GarageProblem? FailedWrite => Latch.Problem;

    /// <summary>Closes the journal, and what stands beside it, to writing.</summary>
    public WriteLatch Latch => _log.Latch;

    /// <summary>Appends the entries a function decides on, and calls another when they are on disk.</summary>
    /// <exception cref="JournalReadOnlyException">Nothing can be written.</exception>
    public TState Append(
        Author author, Func<TState, IReadOnlyList<EntryBody>> decide, Action<Snapshot, IReadOnlyList<JournalEntry>> kept)
    {
        lock (_appending)
        {
            ThrowIfDamaged();
            var bodies = decide(_now.State);
            if (bodies.Count > 0)
            {
                var record = NewEntries.Of(author, bodies, _now.Entries, _time.GetLocalNow());
                _log.Append(record.Bytes);
                var entries = Longer(_now.Entries, record.Entries, record.Lengths); // first: one may have those before it read again
                _now = new(record.Entries.Aggregate(_now.State, _apply), entries);
                kept(_now, record.Entries);
            }

            return _now.State;
        }
    }

    /// <summary>Adds the entries that a newer state of this journal has more.</summary>
    /// <param name="newer">All its entries.</param>
    /// <param name="linesAfter">Its lines after so many, in bytes.</param>
    /// <param name="before">Called before they are written, where there are any; gives the state they join.</param>
    /// <param name="kept">Called when they are on disk.</param>
    /// <exception cref="FormatException">It is not the same journal as far as both go.</exception>
    /// <exception cref="JournalReadOnlyException">Nothing can be written.</exception>
    public TState Continue(
        ImmutableList<JournalEntry> newer,
        Func<int, ReadOnlyMemory<byte>> linesAfter,
        Func<TState, TState> before,
        Action<Snapshot, IReadOnlyList<JournalEntry>> kept)
    {
        lock (_appending)
        {
            ThrowIfDamaged();
            var known = _now.Entries;
            if (!newer.Take(known.Count).Index().All(one => known.HashAt(one.Index) == one.Item.Hash))
            {
                throw new FormatException("it is another journal than the one here");
            }

            if (newer.Count > known.Count)
            {
                var further = newer.GetRange(known.Count, newer.Count - known.Count);
                var state = before(_now.State);
                var lines = linesAfter(known.Count);
                _log.Continue(lines.Span);
                var entries = Longer(known, further, JournalLines.LengthsOf(lines.Span));
                _now = new(further.Aggregate(state, _apply), entries);
                if (further.Exists(Erased.IsSaidBy))
                {
                    ReadAnew(); // what it says changes how entries before it are read
                }

                kept(_now, further);
            }

            return _now.State;
        }
    }

    /// <summary>Sets the remains of an unfinished write aside, and says so in the journal.</summary>
    /// <param name="into">The file that takes the bytes.</param>
    /// <exception cref="JournalReadOnlyException">They could not be set aside.</exception>
    public void SetTailAside(string into)
    {
        var bytes = _log.SetAside(_soundBytes, into);
        if (_read(_before(), false) is { Damage: null } sound)
        {
            _now = new(sound.State, sound.Entries); // from now on they stay on the disk, as those of any sound journal
        }

        Damage = null;
        Append(JournalEntry.Program, _ => [new TailSetAside(Path.GetFileName(into), bytes)], (_, _) => { });
    }

    /// <inheritdoc/>
    public void Hold() => _appending.Enter();

    /// <inheritdoc/>
    public void Release() => _appending.Exit();

    /// <inheritdoc/>
    public byte[] Bytes()
    {
        using var stream = _log.OpenAfresh();
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }

    /// <inheritdoc/>
    public void ReadAnew()
    {
        var journal = _read(_before(), false);
        Damage = journal.Damage;
        _now = new(journal.State, journal.Entries);
    }

    /// <summary>Returns when no append is under way.</summary>
    public void WaitForAppend()
    {
        lock (_appending)
        {
            // Nothing to do but to have waited.
        }
    }

    private static IReadOnlyList<JournalEntry> Longer(
        IReadOnlyList<JournalEntry> before, IReadOnlyList<JournalEntry> further, IReadOnlyList<int> lengths) =>
        before is StoredEntries stored ? stored.With(further, lengths) : before.ToImmutableList().AddRange(further);

    private void ThrowIfDamaged()
    {
        if (Damage is { } damage)
        {
            throw new JournalReadOnlyException(damage.Refusal);
        }
    }

    /// <summary>A journal at one moment.</summary>
    /// <param name="State">What it says as a whole.</param>
    /// <param name="Entries">All its entries.</param>
    internal sealed record Snapshot(TState State, IReadOnlyList<JournalEntry> Entries);
}

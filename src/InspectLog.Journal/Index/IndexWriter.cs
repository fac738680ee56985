using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.State;

namespace InspectLog.Journal.Index;

/// <summary>Brings entries into the index. Bringing the last ones in again changes nothing.</summary>
internal static class IndexWriter
{
    /// <summary>Brings entries of a vehicle's journal in.</summary>
    /// <param name="index">The index.</param>
    /// <param name="state">The vehicle after the last of them.</param>
    /// <param name="entries">The entries; never none.</param>
    /// <param name="wording">What they say to people.</param>
    public static void Write(
        IndexDatabase index, VehicleState state, IReadOnlyList<JournalEntry> entries, IEntryWording wording)
    {
        foreach (var entry in entries)
        {
            WriteText(index, state, entry, wording);
            WriteWaiting(index, state, entry);
        }

        var last = entries[^1];
        index.Vehicles.Upsert(new VehicleRow
        {
            Id = state.Id,
            Name = state.Name,
            Description = state.Description,
            Picture = state.Picture?.Sha256,
            LastChanged = last.Time.UtcDateTime,
        });
        index.Positions.Upsert(new PositionRow
        {
            Id = state.Id, Sequence = last.Sequence, Hash = last.Hash,
        });
    }

    private static void WriteText(IndexDatabase index, VehicleState state, JournalEntry entry, IEntryWording wording)
    {
        // Private facts can be emptied or withheld and must not live on in the index, whoever words it.
        if (entry.Body is not null and not PrivateFactsNoted && Worded(wording, state, entry) is { } text)
        {
            string[] held = [text.Shown, .. text.FoundBy, entry.Actor == JournalEntry.Program ? "" : entry.Actor];
            index.Texts.Upsert(new TextRow
            {
                Id = Key(state.Id, entry.Sequence),
                Vehicle = state.Id,
                Sequence = entry.Sequence,
                Inspection = InspectionOf(entry, state),
                Time = entry.Time.UtcDateTime,
                Actor = entry.Actor,
                Text = text.Shown,
                Words = [.. held.SelectMany(Words.Of).Distinct()],
            });
        }
    }

    /// <summary>What an entry says to people; null where the wording fails on it: then it costs itself a place in the
    /// search, and not the garage its start.</summary>
    private static EntryText? Worded(IEntryWording wording, VehicleState state, JournalEntry entry)
    {
        try
        {
            return wording.Of(state, entry);
        }
        catch (Exception)
        {
            return null;
        }
    }

    private static void WriteWaiting(IndexDatabase index, VehicleState state, JournalEntry entry)
    {
        switch (entry.Body)
        {
            case RecordingKept kept:
                Wait(entry.Sequence, kept.Inspection);
                break;
            case TranscriptAsked asked when WithRecording(asked.Recording, state) is { } inspection:
                Wait(asked.Recording, inspection);
                break;
            case TranscriptMade made:
                index.Waiting.Delete(Key(state.Id, made.Recording));
                break;
            case TranscriptFailed failed:
                index.Waiting.Delete(Key(state.Id, failed.Recording));
                break;
            case TranscriptCancelled cancelled:
                index.Waiting.Delete(Key(state.Id, cancelled.Recording));
                break;
        }

        void Wait(long recording, long inspection) => index.Waiting.Upsert(new WaitingRow
        {
            Id = Key(state.Id, recording),
            Vehicle = state.Id,
            Recording = recording,
            Inspection = inspection,
            Kept = entry.Time.UtcDateTime,
        });
    }

    private static long? InspectionOf(JournalEntry entry, VehicleState state) => entry.Body switch
    {
        InspectionStarted => entry.Sequence,
        PhotoMarked m => state.InspectionWith(m.Photo)?.Number,
        TranscriptMade t => WithRecording(t.Recording, state),
        WordsCorrected c => WithRecording(c.Recording, state),
        LooseEndWaived w => state.Inspections.Find(i => i.FindLooseEnd(w.LooseEnd) is not null)?.Number,
        EntryWithdrawn w => (state.InspectionWith(w.Entry) ?? state.Inspections.Find(i => i.FindLooseEnd(w.Entry) is not null))?.Number,
        _ => AboutInspection.Of(entry.Body),
    };

    // Also of a recording that was added after the inspection was closed.
    private static long? WithRecording(long recording, VehicleState state) =>
        state.InspectionWith(recording) is { } inspection && inspection.Find(recording) is VoiceNote ? inspection.Number : null;

    private static string Key(string vehicle, long sequence) => $"{vehicle}:{sequence}";
}

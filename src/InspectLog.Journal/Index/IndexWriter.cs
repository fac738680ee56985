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
    public static void Write(IndexDatabase index, VehicleState state, IReadOnlyList<JournalEntry> entries)
    {
        foreach (var entry in entries)
        {
            WriteText(index, state, entry);
            WriteWaiting(index, state, entry);
        }

        index.Vehicles.Upsert(new VehicleRow
        {
            Id = state.Id,
            Name = state.Name,
            Description = state.Description,
            Picture = state.Picture?.Sha256,
            LastChanged = entries[^1].Time.UtcDateTime,
        });
        index.Positions.Upsert(new PositionRow
        {
            Id = state.Id, Sequence = entries[^1].Sequence, Hash = entries[^1].Hash,
        });
    }

    private static void WriteText(IndexDatabase index, VehicleState state, JournalEntry entry)
    {
        if (SearchText.Of(entry.Body) is { } text)
        {
            index.Texts.Upsert(new TextRow
            {
                Id = Key(state.Id, entry.Sequence),
                Vehicle = state.Id,
                Sequence = entry.Sequence,
                Inspection = InspectionOf(entry.Body, state),
                Time = entry.Time.UtcDateTime,
                Text = text,
                Words = [.. Words.Of(text).Distinct()],
            });
        }
    }

    private static void WriteWaiting(IndexDatabase index, VehicleState state, JournalEntry entry)
    {
        switch (entry.Body)
        {
            case RecordingKept kept:
                Wait(entry.Sequence, kept.Inspection);
                break;
            case TranscriptAsked asked when InspectionOf(asked.Recording, state) is { } inspection:
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

    private static long? InspectionOf(EntryBody? body, VehicleState state) => body switch
    {
        NoteWritten n => n.Inspection,
        ReadingDecided r => r.Inspection,
        ObservationMade o => o.Inspection,
        ActionDone a => a.Inspection,
        CheckLeftOut c => c.Inspection,
        LooseEndOpened l => l.Inspection,
        TranscriptMade t => InspectionOf(t.Recording, state),
        LooseEndWaived w => state.Inspections.Find(i => i.LooseEnds.Exists(end => end.Sequence == w.LooseEnd))?.Number,
        _ => null,
    };

    private static long? InspectionOf(long recording, VehicleState state) =>
        state.Inspections.Find(one => one.FindVoiceNote(recording) is not null)?.Number;

    private static string Key(string vehicle, long sequence) => $"{vehicle}:{sequence}";
}

using InspectLog.Journal.Entries;

namespace InspectLog.Journal.Record;

/// <summary>Of which inspection an entry says something by its own words. Pure.</summary>
public static class AboutInspection
{
    /// <summary>The number of the inspection that a body names; null where it names none.</summary>
    public static long? Of(EntryBody? body) => body switch
    {
        ReadingDecided reading => reading.Inspection,
        ObservationMade seen => seen.Inspection,
        ActionDone done => done.Inspection,
        PhotoKept photo => photo.Inspection,
        NoteWritten note => note.Inspection,
        RecordingKept kept => kept.Inspection,
        LooseEndOpened opened => opened.Inspection,
        CheckLeftOut left => left.Inspection,
        UrgencyJudged judged => judged.Inspection,
        InspectionClosed closed => closed.Inspection,
        _ => null,
    };
}

using InspectLog.Checks;
using InspectLog.Inspecting.Recording;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.Inspecting.Words;

/// <summary>What was recorded and what became of it, in words. Pure.</summary>
public static class KeptWords
{
    /// <summary>What a record says, in short: "Lead resistance, lead 4: 9.40 kΩ".</summary>
    public static string Of(CheckSheet sheet, EntryBody body) => body switch
    {
        NoteWritten note => $"“{note.Text}”",
        RecordingKept => "the words of the voice note",
        TranscriptMade heard => $"“{heard.Text}”",
        WordsCorrected words => $"“{words.Text}”",
        PhotoKept { Check: null } photo => Captioned("photo", photo),
        PhotoKept { Check: { } check } photo => Captioned($"photo of {RecordWords.Heading(sheet, check, photo.Cylinder)}", photo),
        PhotoMarked marked => $"marks in the photo: {MarkWords.Of(marked)}",
        _ => $"{Heading(sheet, body)}: {Value(sheet, body)}",
    };

    /// <summary>Where a record belongs: "Lead resistance, lead 4"; empty for what is no record.</summary>
    public static string Heading(CheckSheet sheet, EntryBody body) => body switch
    {
        ReadingDecided reading => RecordWords.Heading(sheet, reading.Check, reading.Cylinder),
        ObservationMade seen => RecordWords.Heading(sheet, seen.Check, seen.Cylinder),
        ActionDone done => RecordWords.Heading(sheet, done.Check, done.Cylinder),
        _ => "",
    };

    /// <summary>What a record says of its place, with its decision where it has one.</summary>
    public static string Sentence(CheckSheet sheet, EntryBody body) => body switch
    {
        ReadingDecided reading when sheet.Find(reading.Check) is { } check => RecordWords.Sentence(reading, check),
        _ => Value(sheet, body),
    };

    /// <summary>What it said before, as far as it was another: the value alone where it was of the same place.</summary>
    public static string Was(CheckSheet sheet, EntryBody before, EntryBody after) =>
        Heading(sheet, before) is { Length: > 0 } heading && heading == Heading(sheet, after)
            ? Value(sheet, before) + Before(before, after)
            : Of(sheet, before);

    /// <summary>", decided otherwise: fail" where the same reading was decided with another than now, or by itself; empty
    /// otherwise.</summary>
    public static string Before(EntryBody before, EntryBody after) =>
        (before, after) is (ReadingDecided { Conformity.Decision: var decision } was, ReadingDecided now)
        && !IsWithTheSame(was.With, now.With) && Amending.SameReading(was.Reading, now.Reading)
            ? $", decided {(was.With is null ? "by itself" : "with another reading")}: {decision.Words()}"
            : "";

    private static bool IsWithTheSame(DecidedWith? one, DecidedWith? other) => (one, other) is ({ } was, { } now)
        ? was.Record == now.Record && Amending.SameReading(was.Reading, now.Reading)
        : one is null && other is null;

    /// <summary>What it said each time, oldest first, each with what took its place.</summary>
    public static IEnumerable<(PastWording Past, EntryBody Next)> Versions(IKept kept)
    {
        var past = kept.History.Past;
        return past.Select((one, index) => (one, index + 1 < past.Count ? past[index + 1].Says : kept.Says));
    }

    private static string Value(CheckSheet sheet, EntryBody body) => body switch
    {
        ReadingDecided reading when sheet.Find(reading.Check) is { } check => RecordWords.Value(reading, check),
        ReadingDecided reading => reading.AsGiven,
        ObservationMade seen => RecordWords.Seen(seen),
        ActionDone done => done.Action,
        _ => "",
    };

    private static string Captioned(string what, PhotoKept photo) => photo.Caption is { Length: > 0 } caption ? $"{what}, “{caption}”" : what;
}

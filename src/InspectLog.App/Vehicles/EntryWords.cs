using InspectLog.App.Bench;
using InspectLog.App.Wear;
using InspectLog.Checks;
using InspectLog.Inspecting.ByVoice;
using InspectLog.Inspecting.Words;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using System.Globalization;
using InspectLog.Measuring;

namespace InspectLog.App.Vehicles;

/// <summary>Journal entries in a sentence each.</summary>
public static class EntryWords
{
    /// <summary>What an entry says.</summary>
    /// <param name="entry">The entry.</param>
    /// <param name="sheetOf">The sheet that has a check, by the check's id; null where none has.</param>
    public static string Of(JournalEntry entry, Func<string, CheckSheet?> sheetOf)
    {
        string Where(string check, int? cylinder) =>
            sheetOf(check) is { } sheet ? RecordWords.Heading(sheet, check, cylinder) : check;

        var amends = entry.Body is AmendableBody { Amends: { } first } ? string.Create(CultureInfo.InvariantCulture, $"Entry {first} put right. ") : "";
        return amends + entry.Body switch
        {
            VehicleAdded v => $"Vehicle added: {v.Name}",
            VehicleDescribed v => $"Described: {v.Name}{(v.Description.Length > 0 ? $", {v.Description}" : "")}",
            VehiclePictured => "A picture was set",
            PrivateFactsNoted => "Private facts noted",
            LimitsSet l => $"Limits of its own for {Where(l.Check, null)}, from {l.Source}",
            LimitsCleared l => $"Limits of the sheet again for {Where(l.Check, null)}",
            WearPartAdded p => $"Part watched: {p.Name}, fitted {WearWords.Fitted(p.Fitting)}; lasts {WearWords.Interval(p.Interval)}",
            WearPartFitted p => $"A new one of part {p.Part} fitted {WearWords.Fitted(p.Fitting)}",
            WearPartIntervalSet p => $"Part {p.Part} lasts {WearWords.Interval(p.Interval)}, as set anew",
            WearPartNotRenewed p => $"What was recorded as replaced up to entry {p.UpTo} was no new one of part {p.Part}: {p.Reason}",
            WearPartRetired p => $"Part {p.Part} is no longer watched",
            InspectionStarted s => $"Inspection started by {s.Technician} with the sheet {s.Sheet}, version {s.SheetVersion}{(s.Cylinders is { } count ? $", for {count} cylinders" : "")}",
            UtteranceKept u => $"Voice note of {Seconds(u.Seconds)} kept, heard hands-free",
            RecordingKept r => $"Voice note of {Seconds(r.Seconds)} kept",
            TranscriptMade t => t.SpeechFound ? $"Voice note {t.Recording} was read as: {t.Text}" : $"Voice note {t.Recording} holds no speech",
            WordsCorrected w => $"Words of voice note {w.Recording} put right: {w.Text}",
            TranscriptFailed t => $"Voice note {t.Recording} could not be read: {t.Problem}",
            TranscriptCancelled t => $"Voice note {t.Recording} stays unread, as asked",
            TranscriptAsked t => $"Voice note {t.Recording} is to be read after all",
            FindingsProposed f => $"Note {f.Recording} gave {Count(f.Findings.Count, "finding", "findings")}",
            FindingDropped f => $"Finding {f.Finding.Index + 1} of note {f.Finding.Recording} dropped",
            FindingReopened f => $"Finding {f.Finding.Index + 1} of note {f.Finding.Recording} waits to be settled again",
            CommandHeard { Doubt: null } c => $"Voice note {c.Recording} was heard as a command: {SpokenCommands.Phrase(c.Command)}",
            CommandHeard c => $"Voice note {c.Recording} sounded like a command and was asked for again",
            CommandDone c => $"Command of voice note {c.Recording}: {c.Answer}",
            PhotoKept { Amends: not null } p => $"Photo filed under {(p.Check is null ? "the inspection as a whole" : Where(p.Check, p.Cylinder))}{(p.Caption is { } caption ? $", with the caption “{caption}”" : "")}{(p.Shows is { } shows ? $", as evidence of entry {shows}" : "")}",
            PhotoKept p => p.Check is null ? "Photo kept" : $"Photo kept: {Where(p.Check, p.Cylinder)}",
            PhotoMarked m => $"Photo {m.Photo} marked: {MarkWords.Of(m)}",
            NoteWritten n => $"Note: {n.Text}",
            ReadingDecided r => $"{Where(r.Check, r.Cylinder)}: {Reading(r, sheetOf)}",
            ObservationMade o => $"{Where(o.Check, o.Cylinder)}: {RecordWords.Seen(o)}",
            ActionDone a => $"{Where(a.Check, a.Cylinder)}: {a.Action}",
            LooseEndOpened l => $"Loose end: {l.Text}",
            LooseEndTied l => $"Loose end {l.LooseEnd} put right",
            LooseEndWaived l => $"Loose end {l.LooseEnd} stays: {l.Reason}",
            CheckLeftOut c => $"{Where(c.Check, null)} left out: {c.Reason}",
            UrgencyJudged u => $"{Where(u.Check, null)} is to be seen to {u.Urgency}",
            WorkshopNamed { Name: "", Address: "" } => "Reports have no name of the workshop any more",
            WorkshopNamed w => $"The workshop is called {w.Name} in reports",
            EntryWithdrawn w => $"Entry {w.Entry} withdrawn: {w.Reason}",
            EntryRestored r => $"Entry {r.Entry} counts again",
            ReportChoice c => $"Entry {c.Entry} {(c.Shown ? "stands in the report again" : "is left out of the report")}",
            InspectionClosed => "Inspection closed",
            WorkshopNoted n => $"Noted that the workshop’s own journal has {Count((int)n.Entries, "entry", "entries")}",
            TailSetAside t => $"The journal ended in a line that was not whole; its {t.Bytes} bytes were set aside in {t.File}",
            PersonErased e => $"What was known of one person was erased: {Count((int)e.CountTaken(), "entry", "entries")} and {Count(e.Media, "recording or photo", "recordings and photos")}{(e.Nameless is { Count: > 0 and var names } ? $", and the name in {Count(names, "entry", "entries")}" : "")}. Asked by {e.AskedBy}. Reason: {e.Reason}",
            EntryRestated r => $"What entry {r.Entry} said, said again without the person that was erased",
            null when entry.ErasedBy is { } by => $"Erased, as entry {by} says ({entry.Kind})",
            null when entry.IsWithheld => $"Withheld ({entry.Kind})",
            _ => $"An entry of the kind {entry.Kind}, which this version of the program cannot read",
        };
    }

    private static string Reading(ReadingDecided reading, Func<string, CheckSheet?> sheetOf) =>
        sheetOf(reading.Check)?.Find(reading.Check) is { } check
            ? RecordWords.Sentence(reading, check)
            : reading.Conformity is { Decision: var decision } ? $"{reading.AsGiven}: {decision.Words()}" : reading.AsGiven;

    private static string Seconds(double seconds) => string.Create(CultureInfo.InvariantCulture, $"{seconds:0.0} seconds");

    private static string Count(int count, string one, string many) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} {(count == 1 ? one : many)}");
}

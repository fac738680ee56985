using InspectLog.Checks;
using InspectLog.Journal;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.State;
using InspectLog.Journal.Storage;
using InspectLog.Measuring;
using System.Globalization;

namespace InspectLog.Inspecting.Words;

/// <summary>Words entries for search as pages show them: checks by their titles, places by the sheet's noun for them, values
/// with their units. Each is read with the sheet of its inspection; where that is missing, entries are worded as they
/// stand in the journal. Pure.</summary>
/// <param name="sheets">The sheets, as inspections pin them.</param>
public sealed class SheetWording(SheetLibrary sheets) : IEntryWording
{
    /// <summary>The wording of a garage with these sheets and the built-in ones.</summary>
    public static IEntryWording Of(SheetStore kept) => new SheetWording(new SheetLibrary(kept));

    /// <inheritdoc/>
    /// <remarks>The number goes up whenever an entry is worded otherwise than before.</remarks>
    public string Version => "sheets 3";

    /// <inheritdoc/>
    public EntryText? Of(VehicleState vehicle, JournalEntry entry) => entry.Body switch
    {
        VehicleAdded v => Plain(Described(v.Name, v.Description)),
        VehicleDescribed v => Plain(Described(v.Name, v.Description)),
        WearPartAdded p => Plain($"Part watched: {p.Name}"),
        WearPartNotRenewed p => Plain($"Not a new part: {p.Reason}"),
        LimitsSet l => Plain($"Limits of its own for {Named(l)}, from {l.Source}"),
        InspectionStarted s => new(
            $"Inspection started by {s.Technician}", sheets.Find(s.SheetSha256) is { } sheet ? [sheet.Title] : [s.Sheet]),
        TranscriptMade { Text.Length: > 0 } t => new(t.Text, [SaidBy(vehicle, t.Recording)]),
        WordsCorrected c => new(c.Text, [SaidBy(vehicle, c.Recording)]),
        NoteWritten n => At(vehicle, n.Inspection, n.Check, null, place => new(n.Text, place.Names)),
        PhotoKept p => At(vehicle, p.Inspection, p.Check, p.Cylinder, place => Photo(p, place)),
        PhotoMarked m => Marked(vehicle, m),
        ReadingDecided r => At(vehicle, r.Inspection, r.Check, r.Cylinder, place => Reading(r, place)),
        ObservationMade o => At(vehicle, o.Inspection, o.Check, o.Cylinder, place => place.Says(RecordWords.Seen(o))),
        ActionDone a => At(vehicle, a.Inspection, a.Check, a.Cylinder, place => place.Says(a.Action)),
        CheckLeftOut c => At(vehicle, c.Inspection, c.Check, null, place => place.Says($"left out, {c.Reason}")),
        LooseEndOpened l => At(vehicle, l.Inspection, l.Check, l.Cylinder, place => new($"Loose end: {l.Text}", [l.Tie, .. place.Names])),
        LooseEndWaived l => Plain($"{EndOf(vehicle, l.LooseEnd)} stays as it is: {l.Reason}"),
        EntryWithdrawn w => Plain($"Entry {Number(w.Entry)} withdrawn: {w.Reason}"),
        _ => null,
    };

    private static EntryText Plain(string text) => new(text, []);

    private static string Described(string name, string description) =>
        description.Length == 0 ? name : $"{name}: {description}";

    private static string Named(LimitsSet limits) =>
        (limits.Sheet is { } id ? BuiltInSheets.Find(id) : BuiltInSheets.All.FirstOrDefault(sheet => sheet.Find(limits.Check) is not null))
        ?.Find(limits.Check)?.ShortTitle ?? limits.Check;

    /// <summary>Who kept a recording: its transcript is the program's, and its words are theirs.</summary>
    private static string SaidBy(VehicleState vehicle, long recording) =>
        vehicle.Inspections.Select(one => one.Find(recording)).OfType<VoiceNote>().FirstOrDefault()?.History.By ?? "";

    private static string EndOf(VehicleState vehicle, long looseEnd) =>
        vehicle.Inspections.Select(one => one.FindLooseEnd(looseEnd)).OfType<LooseEnd>().FirstOrDefault()?.What.Text ?? "A loose end";

    private static EntryText Photo(PhotoKept photo, NamedPlace place)
    {
        var what = place.Heading.Length > 0 ? $"Photo, {place.Heading}" : "Photo";
        return new(photo.Caption is { Length: > 0 } caption ? $"{what}: {caption}" : what, place.Names);
    }

    // What is marked belongs where the photo is filed.
    private EntryText? Marked(VehicleState vehicle, PhotoMarked marked) =>
        vehicle.InspectionWith(marked.Photo)?.Find(marked.Photo) is PhotoCapture { Photo: var photo } && MarkWords.Of(marked) is { Length: > 0 } words
            ? At(vehicle, photo.Inspection, photo.Check, photo.Cylinder, place => new(place.Heading.Length > 0 ? $"Marked in a photo, {place.Heading}: {words}" : $"Marked in a photo: {words}", place.Names))
            : null;

    private static EntryText Reading(ReadingDecided reading, NamedPlace place)
    {
        var value = place.Check is { } check ? RecordWords.Value(reading, check) : reading.AsGiven;
        var decision = reading.Conformity is { } conformity ? $", {conformity.Decision.Words()}" : "";
        return new($"{place.Heading}: {value}{decision}", [reading.AsGiven, reading.Instrument?.Name ?? "", .. place.Names]);
    }

    private EntryText At(VehicleState vehicle, long number, string? check, int? cylinder, Func<NamedPlace, EntryText> worded) =>
        worded(NamedPlace.Of(vehicle.Inspection(number) is { } inspection ? sheets.Of(inspection) : null, check, cylinder));

    private static string Number(long number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>Where something belongs, by all the names people have for it.</summary>
    private sealed record NamedPlace(string Heading, Check? Check, IReadOnlyList<string> Names)
    {
        public static NamedPlace Of(CheckSheet? sheet, string? checkId, int? cylinder)
        {
            var check = checkId is null ? null : sheet?.Find(checkId);
            var heading = checkId is null ? ""
                : sheet is not null ? RecordWords.Heading(sheet, checkId, cylinder)
                : cylinder is null ? checkId
                : $"{checkId}, cylinder {Number(cylinder.Value)}";
            return new(heading, check, [heading, check?.Title ?? "", cylinder is { } place && check?.Places is not { Own: not null } ? $"cylinder {Number(place)}" : ""]);
        }

        public EntryText Says(string what) => new($"{Heading}: {what}", Names);
    }
}

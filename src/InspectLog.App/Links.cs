using System.Globalization;
using InspectLog.Inspecting.Workings;
using InspectLog.Checks;

namespace InspectLog.App;

/// <summary>Addresses of pages, built in one place.</summary>
public static class Links
{
    public const string Garage = "/";
    public const string NewVehicle = "/vehicles/new";
    public const string Find = "/find";
    public const string Instruments = "/instruments";

    /// <summary>One instrument of the workshop, to be changed.</summary>
    public static string Instrument(string id) => $"{Instruments}/{Uri.EscapeDataString(id)}";
    public const string Sheets = "/sheets";
    public const string Words = "/words";

    public const string Letterhead = "/letterhead";
    public const string Person = "/person";
    public const string Devices = "/devices";
    public const string Pair = "/pair";

    /// <summary>What journals lack of what was noted of them.</summary>
    public const string Losses = "/losses";

    /// <summary>Erases what is known of one person.</summary>
    public const string Erase = "/erase";

    /// <summary>Lists what would go.</summary>
    public const string ErasureList = "/erase/list";

    /// <summary>Backups of the garage.</summary>
    public const string Backup = "/backup";

    /// <summary>Makes one at once.</summary>
    public const string BackUpNow = "/backup/now";

    /// <summary>The key of the workshop's seals.</summary>
    public const string SealKey = "/seal-key";

    /// <summary>Shows the key as digits to be printed.</summary>
    public const string RecoverySheet = "/seal-key/sheet";
    public const string OfflineFiles = "/offline-files";

    /// <summary>The inspection that is open.</summary>
    public const string Now = "/now";
    /// <summary>Switches the colours for bright sunlight on or off in this browser.</summary>
    public const string Sunlight = "/sunlight";

    public const string About = "/about";
    public const string Notices = "/about/notices";

    /// <summary>A code that waits for its device.</summary>
    public static string PairingCode(string id) => $"{Devices}/codes/{id}";

    public static string RevokeDevice(long access) => string.Create(CultureInfo.InvariantCulture, $"{Devices}/{access}/revoke");

    /// <summary>A link to a report for somebody outside.</summary>
    public static string ShareReport(string vehicleId, long number) => $"{Report(vehicleId, number)}/links";

    /// <summary>What is found by some words, with so many shown.</summary>
    public static string Found(string words, int show) =>
        string.Create(CultureInfo.InvariantCulture, $"{Find}?words={Uri.EscapeDataString(words)}&show={show}");

    /// <summary>How many later entries a stretch of the journal shows beside the one that is meant.</summary>
    public const int EntriesAfter = 20;

    public static string Vehicle(string id) => $"/vehicles/{id}";

    /// <summary>The stretch of a vehicle's inspections that ends before one of them.</summary>
    public static string InspectionsBefore(string vehicleId, long number) =>
        string.Create(CultureInfo.InvariantCulture, $"{Vehicle(vehicleId)}?before={number}#inspections");

    public static string Inspection(string vehicleId, long number) =>
        string.Create(CultureInfo.InvariantCulture, $"/vehicles/{vehicleId}/inspections/{number}");

    public static string Check(string vehicleId, long number, string checkId, int? cylinder = null) =>
        $"{Inspection(vehicleId, number)}?check={Uri.EscapeDataString(checkId)}"
        + (cylinder is { } place ? string.Create(CultureInfo.InvariantCulture, $"&place={place}") : "");

    public static string Report(string vehicleId, long number) => $"{Inspection(vehicleId, number)}/report";

    /// <summary>Seals the record of the vehicle.</summary>
    public static string Seal(string vehicleId, long number) => $"{Report(vehicleId, number)}/seal";

    /// <summary>The report as a PDF file.</summary>
    public static string ReportPdf(string vehicleId, long number) => $"{Report(vehicleId, number)}/pdf";

    /// <summary>The report as one HTML file.</summary>
    public static string ReportHtml(string vehicleId, long number) => $"{Report(vehicleId, number)}/html";

    /// <summary>The running head of the printed report.</summary>
    public static string ReportHead(string vehicleId, long number) => $"{Report(vehicleId, number)}/head.css";

    /// <summary>Whether a note or photo stands in the report.</summary>
    public static string Urgency(string vehicleId, long number) => $"{Inspection(vehicleId, number)}/urgency";

    public static string ReportChoice(string vehicleId, long number, long entry) =>
        string.Create(CultureInfo.InvariantCulture, $"{Inspection(vehicleId, number)}/entries/{entry}/report");

    /// <summary>What is added to a closed inspection.</summary>
    public static string Addendum(string vehicleId, long number) => $"{Inspection(vehicleId, number)}/addendum";

    /// <summary>What was added later, in the report.</summary>
    public static string AddedLater(string vehicleId, long number) => $"{Report(vehicleId, number)}#later";

    /// <summary>A photo of an inspection, large.</summary>
    public static string Photo(string vehicleId, long number, long photo) =>
        string.Create(CultureInfo.InvariantCulture, $"{Inspection(vehicleId, number)}/photos/{photo}");

    /// <summary>Where a photo is marked and measured in.</summary>
    public static string Marks(string vehicleId, long number, long photo) => $"{Photo(vehicleId, number, photo)}/marks";

    /// <summary>The place of a photo then and now.</summary>
    public static string Then(string vehicleId, long number, long photo, long? with = null) =>
        $"{Photo(vehicleId, number, photo)}/then" + (with is { } other ? string.Create(CultureInfo.InvariantCulture, $"?with={other}") : "");

    /// <summary>Takes a photo for an inspection from the stand of an earlier one.</summary>
    public static string PhotoAgain(string vehicleId, long number, long like) =>
        string.Create(CultureInfo.InvariantCulture, $"{Inspection(vehicleId, number)}/photos/again?like={like}");

    public static string Close(string vehicleId, long number) => $"{Inspection(vehicleId, number)}/close";

    /// <summary>The workings of an inspection, at the first that belongs to its sheet.</summary>
    public static string Workings(string vehicleId, long number) => $"{Inspection(vehicleId, number)}/workings";

    public static string Working(string vehicleId, long number, string kind) =>
        $"{Inspection(vehicleId, number)}/workings/{kind}";

    /// <summary>A working opened from a check, which it then begins with where it has several to choose from.</summary>
    public static string Working(string vehicleId, long number, WorkingKind kind, Checks.Check check) =>
        Working(vehicleId, number, kind.Id)
        + (kind == SpreadWorking.Kind ? $"?check={Uri.EscapeDataString(check.Title)}" : "");

    public static string Journal(string vehicleId) => $"/vehicles/{vehicleId}/journal";

    /// <summary>The stretch of the journal that ends with an entry.</summary>
    public static string Journal(string vehicleId, long upTo) => $"{Journal(vehicleId)}?upto={upTo}";

    /// <summary>An entry in the journal, with some of those after it.</summary>
    public static string Entry(string vehicleId, long sequence) => $"{Journal(vehicleId, sequence + EntriesAfter)}#entry-{sequence}";

    /// <summary>What of a vehicle's record can be given away, as one file.</summary>
    public static string Archive(string vehicleId) => $"/vehicles/{vehicleId}/archive";

    /// <summary>An archive that was asked for.</summary>
    public static string MadeArchive(string vehicleId, string archive) => $"{Archive(vehicleId)}/{archive}";

    /// <summary>The file of an archive.</summary>
    public static string ArchiveFile(string vehicleId, string archive) => $"{MadeArchive(vehicleId, archive)}/file";

    /// <summary>Takes archives in.</summary>
    public const string Import = "/import";

    /// <summary>An archive that was sent, before it is taken in.</summary>
    public static string Imported(string archive) => $"{Import}/{archive}";

    /// <summary>All photos of a vehicle, or those of one part.</summary>
    public static string Wall(string vehicleId, string? part = null) =>
        $"/vehicles/{vehicleId}/photos" + (part is null ? "" : $"?part={Uri.EscapeDataString(part)}");

    public static string Describe(string vehicleId) => $"/vehicles/{vehicleId}/describe";

    /// <summary>The vehicle's own limits for a check of a sheet, and of those that go on from it.</summary>
    public static string Limits(string vehicleId, CheckSheet sheet, string checkId) =>
        $"/vehicles/{vehicleId}/limits/{checkId}?sheet={Family(sheet)}";

    /// <summary>The wear parts on the vehicle's page.</summary>
    public static string WearParts(string vehicleId) => $"{Vehicle(vehicleId)}#parts";

    /// <summary>The trend of a check at a place, by date or by odometer.</summary>
    public static string Trend(string vehicleId, CheckSheet sheet, string checkId, string axis, int? cylinder) =>
        $"/vehicles/{vehicleId}/trends/{Uri.EscapeDataString(checkId)}?sheet={Family(sheet)}&by={axis}" + (cylinder is null ? "" : $"&place={Place(cylinder)}");

    /// <summary>A place as addresses name it; empty for a check done once.</summary>
    public static string Place(int? cylinder) => cylinder?.ToString(CultureInfo.InvariantCulture) ?? "";

    public static string NewWearPart(string vehicleId) => $"/vehicles/{vehicleId}/parts/new";

    public static string WearPart(string vehicleId, long part) =>
        string.Create(CultureInfo.InvariantCulture, $"/vehicles/{vehicleId}/parts/{part}");

    /// <summary>The form that adds a word, with the phrase where it was typed already.</summary>
    public static string AddWord(string phrase = "") => phrase.Length == 0 ? $"{Words}#add" : $"{Words}?phrase={Uri.EscapeDataString(phrase)}#add";

    public static string RemoveWord(long number) => string.Create(CultureInfo.InvariantCulture, $"{Words}/{number}/remove");

    public static string Sheet(string id) => $"/sheets/{id}";

    /// <summary>The very sheet, which may be an earlier one than the id stands for now.</summary>
    public static string Sheet(CheckSheet sheet) =>
        BuiltInSheets.Find(sheet.Id)?.Sha256 == sheet.Sha256 ? Sheet(sheet.Id) : $"{Sheet(sheet.Id)}?sha256={sheet.Sha256}";

    /// <summary>How readings are decided by a sheet.</summary>
    public static string SheetRule(CheckSheet sheet) => $"{Sheet(sheet)}#rule";

    // Sheets that go on from each other share their limits and trends under one id.
    private static string Family(CheckSheet sheet) => Uri.EscapeDataString(BuiltInSheets.FamilyOf(sheet.Id));

    public static string Media(string sha256) => $"/media/{sha256}";

    public static string Display(string sha256) => $"/photos/{sha256}/display";

    public static string Thumbnail(string sha256) => $"/photos/{sha256}/thumbnail";
}

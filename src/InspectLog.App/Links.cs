using System.Globalization;

namespace InspectLog.App;

/// <summary>Addresses of pages, built in one place.</summary>
public static class Links
{
    public const string Garage = "/";
    public const string NewVehicle = "/vehicles/new";
    public const string Find = "/find";
    public const string Instruments = "/instruments";
    public const string Sheets = "/sheets";
    public const string Words = "/words";
    public const string About = "/about";

    public static string Vehicle(string id) => $"/vehicles/{id}";

    public static string Inspection(string vehicleId, long number) =>
        string.Create(CultureInfo.InvariantCulture, $"/vehicles/{vehicleId}/inspections/{number}");

    public static string Check(string vehicleId, long number, string checkId, int? cylinder = null) =>
        $"{Inspection(vehicleId, number)}?check={Uri.EscapeDataString(checkId)}"
        + (cylinder is { } place ? string.Create(CultureInfo.InvariantCulture, $"&place={place}") : "");

    public static string Report(string vehicleId, long number) => $"{Inspection(vehicleId, number)}/report";

    public static string Close(string vehicleId, long number) => $"{Inspection(vehicleId, number)}/close";

    public static string Working(string vehicleId, long number, string kind) =>
        $"{Inspection(vehicleId, number)}/workings/{kind}";

    /// <summary>A working opened from a check, which it then begins with where it has several to choose from.</summary>
    public static string Working(string vehicleId, long number, Workings.WorkingKind kind, Checks.Check check) =>
        Working(vehicleId, number, kind.Id)
        + (kind == Workings.SpreadWorking.Kind ? $"?check={Uri.EscapeDataString(check.Title)}" : "");

    public static string Journal(string vehicleId) => $"/vehicles/{vehicleId}/journal";

    /// <summary>The stretch of the journal that ends with an entry.</summary>
    public static string Journal(string vehicleId, long upTo) => $"{Journal(vehicleId)}?upto={upTo}";

    /// <summary>An entry in the journal, with some of those after it.</summary>
    public static string Entry(string vehicleId, long sequence) => $"{Journal(vehicleId, sequence + 20)}#entry-{sequence}";

    public static string Describe(string vehicleId) => $"/vehicles/{vehicleId}/describe";

    public static string Limits(string vehicleId, string checkId) => $"/vehicles/{vehicleId}/limits/{checkId}";

    /// <summary>The wear parts on the vehicle's page.</summary>
    public static string WearParts(string vehicleId) => $"{Vehicle(vehicleId)}#parts";

    /// <summary>The trend of a check at a place, by date or by odometer.</summary>
    public static string Trend(string vehicleId, string checkId, string axis, int? cylinder) =>
        $"/vehicles/{vehicleId}/trends/{Uri.EscapeDataString(checkId)}?by={axis}" + (cylinder is null ? "" : $"&place={Place(cylinder)}");

    /// <summary>A place as addresses name it; empty for a check done once.</summary>
    public static string Place(int? cylinder) => cylinder?.ToString(CultureInfo.InvariantCulture) ?? "";

    public static string NewWearPart(string vehicleId) => $"/vehicles/{vehicleId}/parts/new";

    public static string WearPart(string vehicleId, long part) =>
        string.Create(CultureInfo.InvariantCulture, $"/vehicles/{vehicleId}/parts/{part}");

    /// <summary>The form that adds a word, with the phrase where it was typed already.</summary>
    public static string AddWord(string phrase = "") => phrase.Length == 0 ? $"{Words}#add" : $"{Words}?phrase={Uri.EscapeDataString(phrase)}#add";

    public static string RemoveWord(long number) => string.Create(CultureInfo.InvariantCulture, $"{Words}/{number}/remove");

    public static string Sheet(string id) => $"/sheets/{id}";

    /// <summary>How readings are decided by a sheet.</summary>
    public static string SheetRule(string id) => $"{Sheet(id)}#rule";

    public static string Media(string sha256) => $"/media/{sha256}";

    public static string Display(string sha256) => $"/photos/{sha256}/display";

    public static string Thumbnail(string sha256) => $"/photos/{sha256}/thumbnail";
}

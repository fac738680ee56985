using InspectLog.Checks;

namespace InspectLog.Inspecting.Standing;

/// <summary>The places of a check and their names. Pure.</summary>
public static class Places
{
    /// <summary>The places of a check: each cylinder or place of its own, or the one place of a check done once.</summary>
    public static IEnumerable<int?> Of(CheckSheet sheet, Check check) =>
        check.PerCylinder ? sheet.PlacesOf(check).Select(number => (int?)number) : [null];

    /// <summary>Name of a place: "Lead 4", "Front left wheel", or the check's short title where it is done once.</summary>
    public static string NameOf(Check check, int? cylinder) => cylinder is { } number && check.Places is { } places
        ? Capital(places.NameOf(number))
        : check.ShortTitle;

    /// <summary>The same within a sentence: "lead 4", "front left wheel".</summary>
    public static string WithinSentence(Check check, int? cylinder) => cylinder is { } number && check.Places is { } places
        ? places.NameOf(number)
        : check.ShortTitle.ToLowerInvariant();

    /// <summary>Where something belongs, for a heading: "Lead resistance, lead 4", or the short title alone.</summary>
    public static string Under(Check check, int? cylinder) => cylinder is { } number && check.Places is { } places
        ? $"{check.ShortTitle}, {places.NameOf(number)}"
        : check.ShortTitle;

    /// <summary>What a place shows where its noun stands beside it: "4", "front left".</summary>
    public static string LabelOf(Check check, int? cylinder) => cylinder is { } number && check.Places is { } places
        ? places.LabelOf(number)
        : "";

    /// <summary>What to choose where a place is missing or is none: "Choose a cylinder from 1 to 6."</summary>
    public static string Asked(CheckSheet sheet, Check check) => check.Places is { } places
        ? $"Choose {(places.Noun[0] is 'a' or 'e' or 'i' or 'o' or 'u' ? "an" : "a")} {places.Choice(sheet.Cylinders)}."
        : $"{check.ShortTitle} is recorded once, without a place.";

    private static string Capital(string text) => $"{char.ToUpperInvariant(text[0])}{text[1..]}";
}

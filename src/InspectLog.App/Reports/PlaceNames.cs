using InspectLog.Checks;
using InspectLog.Inspecting.Standing;

namespace InspectLog.App.Reports;

/// <summary>Names of several places of a check together.</summary>
public static class PlaceNames
{
    /// <summary>"Lead 4", "Cylinders 1, 2 and 3"; empty for a check done once.</summary>
    public static string Of(Check check, IReadOnlyList<PlaceView> places)
    {
        var numbers = places.Select(place => place.Cylinder).OfType<int>().ToList();
        return check.Places is { } set && numbers.Count > 0 ? Phrases.Capital(set.NameOf(numbers)) : "";
    }

    /// <summary>Places in a sentence after their check: "cap contacts, tower 3", "Coil circuit".</summary>
    public static string Under(Check check, IReadOnlyList<PlaceView> places) => check.PerCylinder
        ? $"{check.ShortTitle}, {Phrases.Lower(Of(check, places))}"
        : check.ShortTitle;
}

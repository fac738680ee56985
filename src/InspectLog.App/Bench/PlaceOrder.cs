using InspectLog.Inspecting.Standing;

namespace InspectLog.App.Bench;

/// <summary>Which place a form proposes next, so that lead after lead can be entered without choosing each.</summary>
public static class PlaceOrder
{
    /// <summary>The place in front while it has no reading, else the next one without; the place in front when all
    /// have one.</summary>
    public static int? NextToMeasure(OpenCheck open) => Next(open, place => place.Reading is not null);

    /// <summary>The place in front while nothing was seen there, else the next one.</summary>
    public static int? NextToSee(OpenCheck open) => Next(open, place => place.Observations.Count > 0);

    /// <summary>Whether any place still lacks a reading.</summary>
    public static bool HasMoreToMeasure(OpenCheck open) => open.Progress.Places.Any(place => place.Reading is null);

    private static int? Next(OpenCheck open, Func<PlaceView, bool> isFilled)
    {
        var from = open.Progress.Places.SkipWhile(place => place.Cylinder != open.Place.Cylinder);
        return from.Concat(open.Progress.Places).FirstOrDefault(place => !isFilled(place))?.Cylinder ?? open.Place.Cylinder;
    }
}

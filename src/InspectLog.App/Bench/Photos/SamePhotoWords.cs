using InspectLog.App.Media;
using InspectLog.App.Ui;
using InspectLog.Inspecting;
using InspectLog.Journal.State;

namespace InspectLog.App.Bench.Photos;

/// <summary>That a photo is used elsewhere too, in words. Pure.</summary>
public static class SamePhotoWords
{
    /// <summary>So many places are named; of more it is said how many.</summary>
    public const int Most = 3;

    /// <summary>"The same picture was kept for lead condition, lead 2 of Teasel on 4 May 2026."</summary>
    /// <param name="vehicleId">The vehicle the photo at hand belongs to.</param>
    /// <param name="photo">The photo at hand.</param>
    /// <param name="use">Where it is used too.</param>
    /// <param name="sheets">The sheets.</param>
    public static string Sentence(string vehicleId, PhotoCapture photo, PhotoUse use, SheetLibrary sheets)
    {
        var what = use.Photo.Photo.Media.Sha256 == photo.Photo.Media.Sha256 ? "The same file was kept" : "The same picture was kept";
        var whose = use.Vehicle.Id == vehicleId ? "" : $" of {use.Vehicle.Name}";
        return $"{what} for {Place(use, sheets)}{whose} on {Times.Date(use.Photo.Time)}.";
    }

    /// <summary>How many more places there are; null where all were named.</summary>
    /// <param name="uses">All of them.</param>
    public static string? Further(int uses) => uses > Most ? $"And in {uses - Most} more {(uses == Most + 1 ? "place" : "places")}." : null;

    private static string Place(PhotoUse use, SheetLibrary sheets)
    {
        if (use.Photo.Photo.Check is null || sheets.Of(use.Inspection) is not { } sheet)
        {
            return "an inspection as a whole";
        }

        var words = PhotoWords.FiledUnder(sheet, use.Photo.Photo);
        return string.Concat(words[..1].ToLowerInvariant(), words[1..]);
    }
}

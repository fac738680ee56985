using InspectLog.App.Ui;
using InspectLog.Checks;
using InspectLog.Inspecting;
using InspectLog.Inspecting.Recording;
using InspectLog.Inspecting.Standing;
using InspectLog.Inspecting.Words;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.App.Bench.Photos;

/// <summary>Photos in words.</summary>
public static class PhotoWords
{
    /// <summary>Reasons to take a photo back, to be chosen in one press.</summary>
    public static IReadOnlyList<string> Reasons { get; } = ["taken by mistake", NotSharp, "taken twice"];

    /// <summary>The reason to take back a photo that does not show what it should.</summary>
    public const string NotSharp = "not sharp";

    /// <summary>Where a photo is filed, by the name that stands on the sheet: "Lead condition, lead 2".</summary>
    public static string FiledUnder(CheckSheet sheet, PhotoKept photo) =>
        photo.Check is { } check ? RecordWords.Heading(sheet, check, photo.Cylinder) : "The inspection as a whole";

    /// <summary>Where a photo is filed, for a person with a check open: "lead 2" there, "Lead condition, lead 2" elsewhere.
    /// </summary>
    public static string FiledUnder(CheckSheet sheet, PhotoKept photo, Check open) =>
        photo.Check == open.Id && photo.Cylinder is not null
            ? Places.WithinSentence(open, photo.Cylinder)
            : FiledUnder(sheet, photo) is var words && photo.Check is null ? words.ToLowerInvariant() : words;

    /// <summary>What a photo is, for people who do not see it.</summary>
    public static string Alternative(BenchScene scene, PhotoCapture photo)
    {
        var where = photo.Photo.Check is null ? "" : $": {FiledUnder(scene.Sheet, photo.Photo)}";
        var shows = PhotoEvidence.Words(scene, photo.Photo) is { } words ? $". Shows {words}" : "";
        return $"Photo of {Times.Clock(photo.Time)}{where}{shows}{Caption(photo.Photo)}";
    }

    /// <summary>What a photo of a check is, for people who do not see it.</summary>
    public static string Alternative(Check check, PhotoCapture photo) => photo.Photo.Cylinder is null
        ? $"Photo of {Times.Clock(photo.Time)}: {check.Title}{Caption(photo.Photo)}"
        : $"Photo of {Times.Clock(photo.Time)}: {check.Title}, {Places.NameOf(check, photo.Photo.Cylinder)}{Caption(photo.Photo)}";

    /// <summary>Tells a photo from the others: "the photo of 12:41:07".</summary>
    public static string Named(this PhotoCapture photo) => $"the photo of {Times.ClockSeconds(photo.Time)}";

    private static string Caption(PhotoKept photo) => photo.Caption is { } caption ? $". {caption}" : "";
}

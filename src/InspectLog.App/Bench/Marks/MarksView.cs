using System.Globalization;
using System.Text.Json;
using InspectLog.App.Bench.Photos;
using InspectLog.App.Forms;
using InspectLog.Checks;
using InspectLog.Inspecting;
using InspectLog.Inspecting.Standing;
using InspectLog.Inspecting.Words;
using InspectLog.Journal;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.App.Bench.Marks;

/// <summary>The page on which a photo is marked.</summary>
/// <param name="Scene">Its inspection.</param>
/// <param name="Photo">The photo.</param>
/// <param name="Back">Where one came from to the photo.</param>
/// <param name="Form">The form that was refused; null when none was.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record MarksView(BenchScene Scene, PhotoCapture Photo, PhotoBack Back, RefusedForm? Form, IReadOnlyList<GarageProblem> Problems)
{
    /// <summary>The photo's page.</summary>
    public string PhotoAddress => Links.Photo(Scene.Vehicle.Id, Scene.Inspection.Number, Photo.Sequence) + Back.Query;

    /// <summary>The marks as they stand; none where they were withdrawn, so that what is drawn is drawn anew.</summary>
    public IReadOnlyList<PhotoMark> Marks => MarksOver.Of(Scene.Inspection, Photo);

    /// <summary>Which marks a form was opened on, for the field <c>seen</c>.</summary>
    public string Seen => Scene.Inspection.MarksOf(Photo.Sequence) is { } kept ? SeenEntry.Of(kept) : "";

    /// <summary>Width and height of the copy that is shown, pixels.</summary>
    public (int Width, int Height) Copy => MarksOver.CopyOf(Photo.Photo);
}

/// <summary>What is marked over photos. Pure.</summary>
public static class MarksOver
{
    /// <summary>The marks that are drawn over a photo; none where it was not marked, or they were withdrawn.</summary>
    public static IReadOnlyList<PhotoMark> Of(InspectionState inspection, PhotoCapture photo) =>
        inspection.MarksOf(photo.Sequence) is { History.Withdrawn: null } kept ? kept.Body.Marks : [];

    /// <summary>Size of the copy of a photo that pages show, pixels.</summary>
    public static (int Width, int Height) CopyOf(PhotoKept photo)
    {
        var scale = Math.Min(1, InspectLog.Photos.PhotoIntake.DisplayEdge / (double)Math.Max(photo.Width, photo.Height));
        return (Math.Max(1, (int)Math.Round(photo.Width * scale)), Math.Max(1, (int)Math.Round(photo.Height * scale)));
    }

    /// <summary>The checks and places of a sheet that a length can be a reading of, for the field <c>where</c>.</summary>
    public static IReadOnlyList<(string Value, string Text)> LengthPlaces(CheckSheet sheet) =>
    [
        .. from check in sheet.Checks
           where check.Measurand?.Kind == QuantityKind.Length
           from place in Places.Of(sheet, check)
           select (place is null ? check.Id : string.Create(CultureInfo.InvariantCulture, $"{check.Id}/{place}"), RecordWords.Heading(sheet, check.Id, place)),
    ];

    /// <summary>A mark as a form carries it, to be changed by the script and read again by <see cref="PostedMarks"/>.</summary>
    public static string Carried(PhotoMark mark) => JsonSerializer.Serialize(PostedMark.Of(mark), PostedMarks.Options);
}

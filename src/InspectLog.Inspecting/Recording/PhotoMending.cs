using InspectLog.Inspecting.Standing;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.Inspecting.Recording;

/// <summary>The entries that put a photo right: where it is filed, what is written below it, what it shows. Pure.</summary>
public static class PhotoMending
{
    /// <summary>The entries that file photos elsewhere; none for one that is filed there already, unless nobody said so:
    /// a photo of a check as a whole is then said to be one. A photo that is moved away from what it showed no longer
    /// shows it.</summary>
    /// <param name="scene">The inspection.</param>
    /// <param name="photos">Sequences of their first entries; unknown ones are passed over.</param>
    /// <param name="check">The check; null for the inspection as a whole.</param>
    /// <param name="cylinder">The place; null for the check as a whole.</param>
    public static IReadOnlyList<EntryBody> Move(BenchScene scene, IEnumerable<long> photos, string? check, int? cylinder) =>
    [
        .. photos.Select(scene.Inspection.Find).OfType<PhotoCapture>().SelectMany(photo =>
        {
            var moved = photo.Photo with
            {
                Check = check,
                Cylinder = cylinder,
                Shows = PhotoEvidence.PlaceOf(scene.Inspection, photo.Photo) == (check, cylinder) ? photo.Photo.Shows : null,
            };
            return LacksPlace(scene, photo) && (photo.Photo.Check, photo.Photo.Cylinder) == (check, cylinder)
                ? [moved with { Amends = photo.Sequence }]
                : Amending.Bodies(scene, photo.Sequence, moved);
        }),
    ];

    /// <summary>The entries that write something below a photo; empty text takes it away.</summary>
    public static IReadOnlyList<EntryBody> Caption(BenchScene scene, PhotoCapture photo, string text) =>
        Amending.Bodies(scene, photo.Sequence, photo.Photo with { Caption = text.Length > 0 ? text : null });

    /// <summary>The entries that make a photo the evidence of a record, and file it there; of none, and leave it where it
    /// is.</summary>
    public static IReadOnlyList<EntryBody> Attach(BenchScene scene, PhotoCapture photo, IKept? record) =>
        Amending.Bodies(scene, photo.Sequence, record is not null && PhotoEvidence.PlaceOf(record.Says) is { } place
            ? photo.Photo with { Shows = record.Sequence, Check = place.Check, Cylinder = place.Cylinder }
            : photo.Photo with { Shows = null });

    /// <summary>The entries that file the photos taken after something was said where it was said to be, once it is read.
    /// A photo that a person has put right meanwhile stays where it is.</summary>
    /// <param name="scene">The inspection.</param>
    /// <param name="read">What was read.</param>
    public static IReadOnlyList<EntryBody> Follow(BenchScene scene, FindingsProposed read) =>
        read.Findings.LastOrDefault(finding => scene.Sheet.Find(finding.Check) is not null) is { } finding
            ? [.. scene.Inspection.Photos
                .Where(photo => photo.Photo.Shows == read.Recording && photo.History.Past.Count == 0)
                .SelectMany(photo => Amending.Bodies(scene, photo.Sequence, photo.Photo with
                {
                    Check = finding.Check, Cylinder = PlaceOr(scene, finding.Check, finding.Cylinder),
                }))]
            : [];

    /// <summary>Whether a photo is filed under a check that is done for each place, and nobody said which or that it is of
    /// all.</summary>
    public static bool LacksPlace(BenchScene scene, PhotoCapture photo) =>
        photo is { Photo: { Cylinder: null, Check: { } id }, History.Past.Count: 0 } && scene.Sheet.Find(id) is { PerCylinder: true };

    /// <summary>A place where a check has it; null otherwise.</summary>
    internal static int? PlaceOr(BenchScene scene, string check, int? cylinder) =>
        scene.Sheet.Find(check) is { } found && Places.Of(scene.Sheet, found).Contains(cylinder) ? cylinder : null;
}

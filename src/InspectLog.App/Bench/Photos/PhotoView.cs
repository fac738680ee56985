using InspectLog.App.Forms;
using InspectLog.Inspecting;
using InspectLog.Inspecting.Recording;
using InspectLog.Journal;
using InspectLog.Journal.State;

namespace InspectLog.App.Bench.Photos;

/// <summary>A photo, large.</summary>
/// <param name="Scene">Its inspection.</param>
/// <param name="Photo">The photo.</param>
/// <param name="Back">Where one came from.</param>
/// <param name="Position">Its position among the photos, from 1; 0 for one that was taken back.</param>
/// <param name="Count">How many photos there are.</param>
/// <param name="Previous">The photo before it; null where there is none.</param>
/// <param name="Next">The photo after it; null where there is none.</param>
/// <param name="Records">What it could show: records that count, those of its own place first.</param>
/// <param name="Form">The form that was refused; null when none was.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record PhotoView(
    BenchScene Scene,
    PhotoCapture Photo,
    PhotoBack Back,
    int Position,
    int Count,
    PhotoCapture? Previous,
    PhotoCapture? Next,
    IReadOnlyList<IKept> Records,
    RefusedForm? Form,
    IReadOnlyList<GarageProblem> Problems)
{
    /// <summary>What the press before did; null where there was none.</summary>
    public string? Did { get; init; }

    /// <summary>Where the way back leads.</summary>
    public string BackAddress => Back.Address(Scene.Vehicle.Id, Scene.Inspection.Number).Split('#') is [var page, var part]
        ? $"{StreamStretch.Reaching(Scene.Inspection, page, part)}#{part}"
        : Back.Address(Scene.Vehicle.Id, Scene.Inspection.Number);

    /// <summary>Address of another photo, with the same way back.</summary>
    public string AddressOf(PhotoCapture photo) =>
        Links.Photo(Scene.Vehicle.Id, Scene.Inspection.Number, photo.Sequence) + Back.Query;

    /// <summary>Gathers what the page shows. Pure.</summary>
    public static PhotoView Of(
        BenchScene scene, PhotoCapture photo, PhotoBack back, RefusedForm? form, IReadOnlyList<GarageProblem> problems)
    {
        var all = InOrder(scene);
        var at = all.FindIndex(one => one.Sequence == photo.Sequence);
        return new(
            scene,
            photo,
            back,
            at + 1,
            all.Count,
            at > 0 ? all[at - 1] : null,
            at >= 0 && at < all.Count - 1 ? all[at + 1] : null,
            Choices(scene, photo),
            form,
            problems);
    }

    /// <summary>So many records are offered beside a photo among many other things.</summary>
    private const int Near = 24;

    /// <summary>What a photo could show, where little room is: what it shows, and the newest of its own place, of its check, and
    /// of the rest.</summary>
    public static IReadOnlyList<IKept> NearChoices(BenchScene scene, PhotoCapture photo)
    {
        var shown = PhotoEvidence.Record(scene.Inspection, photo.Photo)?.Sequence;
        return
        [
            .. Candidates(scene)
                .OrderBy(kept => kept.Sequence == shown ? 0 : 1)
                .ThenBy(kept => Distance(kept, photo))
                .ThenByDescending(kept => kept.Sequence)
                .Take(Near),
        ];
    }

    /// <summary>What a photo could show, those of its own place first, then of its check, each in the order recorded.
    /// </summary>
    public static IReadOnlyList<IKept> Choices(BenchScene scene, PhotoCapture photo) =>
        [.. Candidates(scene).OrderBy(kept => Distance(kept, photo))];

    private static IEnumerable<IKept> Candidates(BenchScene scene) =>
        scene.Inspection.Everything.Where(kept => kept.History.Withdrawn is null && PhotoEvidence.PlaceOf(kept.Says) is not null);

    private static int Distance(IKept kept, PhotoCapture photo)
    {
        var place = PhotoEvidence.PlaceOf(kept.Says)!.Value;
        return place == (photo.Photo.Check, photo.Photo.Cylinder) ? 0 : place.Check == photo.Photo.Check ? 1 : 2;
    }

    /// <summary>Every photo that counts: check by check as on the sheet, then those of the inspection as a whole.</summary>
    private static List<PhotoCapture> InOrder(BenchScene scene)
    {
        var checks = scene.Sheet.Checks.Select(check => check.Id).ToList();
        return
        [
            .. scene.Inspection.Everything.OfType<PhotoCapture>()
                .Where(photo => photo.History.Withdrawn is null)
                .OrderBy(photo => photo.Photo.Check is { } check && checks.IndexOf(check) is >= 0 and var at ? at : checks.Count),
        ];
    }
}

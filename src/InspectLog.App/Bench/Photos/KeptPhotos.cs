using InspectLog.Checks;
using InspectLog.Inspecting;
using InspectLog.Inspecting.Recording;
using InspectLog.Journal.State;

namespace InspectLog.App.Bench.Photos;

/// <summary>The photos that were kept last, as long as nothing was captured or recorded since: what they were filed under
/// is said in view, and can be changed there.</summary>
/// <param name="Photos">The photos of one capture, oldest first; at least one.</param>
/// <param name="LackPlace">Whether it still has to be said of which place they are.</param>
public sealed record KeptPhotos(IReadOnlyList<PhotoCapture> Photos, bool LackPlace)
{
    /// <summary>The last of them, which speaks for all.</summary>
    public PhotoCapture Last => Photos[^1];

    /// <summary>Whether they were taken back.</summary>
    public bool AreWithdrawn => Last.History.Withdrawn is not null;

    /// <summary>The photos kept last; null where something else came after them. Pure.</summary>
    public static KeptPhotos? Of(BenchScene scene)
    {
        var newest = scene.Inspection.Everything.Reverse().TakeWhile(kept => kept is PhotoCapture).Cast<PhotoCapture>().ToList();
        return newest is not [{ } last, ..] || IsOldNews(scene, last)
            ? null
            : new([.. newest.TakeWhile(photo => IsOfOneCapture(photo, last)).Reverse()], PhotoMending.LacksPlace(scene, last));
    }

    /// <summary>Whether a photo was taken back and something else was put right or withdrawn since: the way back that is
    /// offered last must be that of what was done last.</summary>
    private static bool IsOldNews(BenchScene scene, PhotoCapture photo) =>
        photo.History.Withdrawn is { } withdrawn
        && scene.Inspection.Everything.Any(kept => kept.Sequence != photo.Sequence
            && (kept.History.Withdrawn?.At > withdrawn.At || kept.History.LastChange?.At > withdrawn.At));

    /// <summary>What became of them, in a sentence: "Photo kept: lead 2."</summary>
    public string Sentence(CheckSheet sheet, Check open) =>
        $"{(Photos.Count == 1 ? "Photo" : $"{Photos.Count} photos")} {(AreWithdrawn ? "taken back" : "kept")}: {PhotoWords.FiledUnder(sheet, Last.Photo, open)}.";

    private static bool IsOfOneCapture(PhotoCapture photo, PhotoCapture last) =>
        photo.Sequence == last.Sequence
        || (CaptureOf(photo) is { } capture && capture == CaptureOf(last)
            && (photo.Photo.Check, photo.Photo.Cylinder, photo.History.Withdrawn is null) == (last.Photo.Check, last.Photo.Cylinder, last.History.Withdrawn is null));

    /// <summary>The stamp of the form it came with: that of its entry without the part of it that names the photo.</summary>
    private static string? CaptureOf(PhotoCapture photo)
    {
        var first = photo.History.Past.Count > 0 ? photo.History.Past[0].Says : photo.Says;
        return first.Stamp?.Id is { } id && id.LastIndexOf('.') is > 0 and var end ? id[..end] : null;
    }
}

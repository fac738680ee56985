using InspectLog.App.Forms;
using InspectLog.App.Media;
using InspectLog.Inspecting;
using InspectLog.Journal.Entries;
using InspectLog.Photos;

namespace InspectLog.App.Bench.Photos;

/// <summary>Keeps the photos a form brings. Each is on disk before it is answered.</summary>
public static class SentPhotos
{
    /// <summary>Photos taken at once; more are sent in a second go.</summary>
    private const int Most = 12;

    /// <summary>Room for a form with as many photos.</summary>
    public static RequestSizeLimit Limit { get; } = new((long)Most * PhotoIntake.LargestFile);

    /// <summary>Keeps the photos of a good form, each once, and makes their copies: when this returns it is known which of
    /// them cannot be shown. What is wrong with one of them is noted on the form, and the others of the batch are kept all
    /// the same.</summary>
    /// <param name="context">The request.</param>
    /// <param name="desk">The desk.</param>
    /// <param name="form">The form.</param>
    /// <param name="like">What each of their entries says, but for the photo itself.</param>
    /// <param name="afterClosing">Whether they are added to a closed inspection.</param>
    /// <returns>The inspection with them.</returns>
    public static async Task<BenchScene> KeepAsync(
        HttpContext context, BenchDesk desk, PostedForm form, PhotoKept like, bool afterClosing = false)
    {
        var pieces = context.RequestServices.GetRequiredService<PhotoPieces>();
        var sent = Sent(form, pieces).ToList();
        if (sent.Count is 0 or > Most)
        {
            form.Refuse("photo", sent.Count == 0 ? "Choose at least one photo." : $"Send at most {Most} photos at once.");
        }

        var scene = desk.Scene;
        var showing = new List<Task>();
        var kept = new HashSet<string>();
        foreach (var one in form.IsValid ? sent : [])
        {
            if (await TakeAsync(context, form, one) is { } photo)
            {
                scene = kept.Add(photo.Sha256) ? Keep(desk, scene, like, photo, afterClosing) : scene;
                showing.Add(photo.ShowAsync());
            }
        }

        await Task.WhenAll(showing);
        foreach (var name in form.IsValid ? form.All(PhotoPieces.Field) : [])
        {
            pieces.Forget(name);
        }

        return scene;
    }

    private static IEnumerable<SentPhoto> Sent(PostedForm form, PhotoPieces pieces)
    {
        foreach (var file in form.Files)
        {
            yield return new(FileNames.Shown(file.FileName), stop => Body.ReadAsync(file, PhotoIntake.LargestFile, stop)!);
        }

        foreach (var name in form.All(PhotoPieces.Field))
        {
            yield return new("Photo", _ => Task.FromResult(PhotoPieces.IsName(name) ? pieces.Whole(name) : null));
        }
    }

    private static Task<IncomingPhoto?> TakeAsync(HttpContext context, PostedForm form, SentPhoto sent) =>
        context.RequestServices.GetRequiredService<IncomingPhotos>().TakeAsync(
            sent.Read,
            message => form.Refuse("photo", $"{sent.Name}: {message}"),
            context.RequestAborted);

    /// <summary>The original is kept inside the journal's lock, so that a closed inspection, or a photo that was sent before,
    /// leaves nothing in the media store that no entry names.</summary>
    private static BenchScene Keep(BenchDesk desk, BenchScene scene, PhotoKept like, IncomingPhoto photo, bool afterClosing)
    {
        try
        {
            return desk.Record(scene, _ => [Kept()], part: photo.Sha256[..12], afterClosing);
        }
        catch
        {
            photo.Dispose();
            throw;
        }

        PhotoKept Kept() => like with
        {
            Media = photo.Keep(desk.Garage.Media), Width = photo.Facts.Width, Height = photo.Facts.Height,
        };
    }

    /// <param name="Name">What it is called, to be shown.</param>
    /// <param name="Read">Reads it; null where it did not arrive whole.</param>
    private sealed record SentPhoto(string Name, Func<CancellationToken, Task<byte[]?>> Read);
}

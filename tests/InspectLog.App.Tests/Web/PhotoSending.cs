using InspectLog.Journal.State;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;

namespace InspectLog.App.Tests.Web;

/// <summary>Sends photos as the forms of the program do.</summary>
internal static class PhotoSending
{
    /// <summary>Sends one photo with the fields of the form; an empty check is the inspection as a whole.</summary>
    public static Task<HttpResponseMessage> SendPhotoAsync(
        this TestApp app, string bench, byte[] photo, params IReadOnlyList<(string Name, string Value)> fields) =>
        app.SendPhotosAsync(bench, [("photo.jpg", photo)], fields);

    public static async Task<HttpResponseMessage> SendPhotosAsync(
        this TestApp app, string bench, IReadOnlyList<(string Name, byte[] Bytes)> photos, params IReadOnlyList<(string Name, string Value)> fields)
    {
        using var form = new MultipartFormDataContent();
        foreach (var (name, value) in fields)
        {
            form.Add(new StringContent(value), name);
        }

        foreach (var (name, bytes) in photos)
        {
            form.Add(new ByteArrayContent(bytes), "photo", name);
        }

        return await app.Client.PostAsync($"{bench}/photos", form, TestContext.Current.CancellationToken);
    }

    /// <summary>Sends one photo and returns what became of it.</summary>
    public static async Task<PhotoCapture> KeepPhotoAsync(
        this TestApp app, string bench, string check = "", string cylinder = "", int width = 64)
    {
        var before = app.Inspection().Everything.Count;
        await app.SendPhotoAsync(bench, Picture(width, 48), ("check", check), ("cylinder", cylinder));
        Assert.Equal(before + 1, app.Inspection().Everything.Count);
        return Assert.IsType<PhotoCapture>(app.Inspection().Everything[^1]);
    }

    /// <summary>A JPEG of one colour; another size is another photo.</summary>
    public static byte[] Picture(int width = 64, int height = 48)
    {
        using var image = new Image<Rgb24>(width, height, new Rgb24(120, 90, 60));
        using var bytes = new MemoryStream();
        image.SaveAsJpeg(bytes);
        return bytes.ToArray();
    }

    /// <summary>The photo as it stands now.</summary>
    public static PhotoCapture Photo(this TestApp app, long sequence) => Assert.IsType<PhotoCapture>(app.Inspection().Find(sequence));

    /// <summary>Names of the files in the media store.</summary>
    public static IReadOnlyList<string> MediaFiles(this TestApp app) =>
        [.. Directory.EnumerateFiles(Path.Combine(app.Folder, "media"), "*", SearchOption.AllDirectories).Select(file => Path.GetFileName(file))];
}

using InspectLog.Journal.State;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats.Jpeg;
using SixLabors.ImageSharp.PixelFormats;

namespace InspectLog.App.Tests.Web;

/// <summary>The same photo twice: said where it is used, asked about when it comes in, never refused.</summary>
public sealed class SamePhotoTests
{
    [Fact]
    public async Task Same_file_again_is_kept_asked_about_at_once_and_the_page_leads_to_the_other()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var first = await KeepAsync(app, bench, Scene(1, 90), "lead-condition", "2");

        var second = await KeepAsync(app, bench, Scene(1, 90), "lead-condition", "3");

        var asked = (await app.PageAsync(bench)).QuerySelector("#photo-kept [data-same]")!;
        Assert.StartsWith("The same file was kept for lead condition, lead 2 on ", asked.TextContent, StringComparison.Ordinal);
        Assert.Contains("Is it meant here too?", asked.TextContent, StringComparison.Ordinal);
        Assert.Equal($"{bench}/photos/{first.Sequence}", asked.QuerySelector("a")!.GetAttribute("href"));
        var told = (await app.PageAsync($"{bench}/photos/{first.Sequence}")).QuerySelector("[data-same]")!;
        Assert.DoesNotContain("meant", told.TextContent, StringComparison.Ordinal);
        Assert.Equal($"{bench}/photos/{second.Sequence}", told.QuerySelector("a")!.GetAttribute("href"));
    }

    [Fact]
    public async Task Picture_saved_again_is_found_on_another_vehicle_which_is_named()
    {
        await using var app = await TestApp.StartAsync();
        var first = await app.StartInspectionAsync();
        await KeepAsync(app, first, Scene(2, 95));
        var other = await app.PostForRedirectAsync($"{await app.AddVehicleAsync("Teasel")}/inspections", ("technician", "Tess Okafor"));

        await app.SendPhotoAsync(other, Scene(2, 40));

        var asked = (await app.PageAsync(other)).QuerySelector("#photo-kept [data-same]")!.TextContent;
        Assert.StartsWith("The same picture was kept for an inspection as a whole of Marigold on ", asked, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nothing_is_said_of_another_picture_or_of_one_that_was_taken_back()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var first = await KeepAsync(app, bench, Scene(3, 90));
        await app.PostForRedirectAsync($"{bench}/photos/{first.Sequence}/withdraw", ("reason", "taken by mistake"));
        await KeepAsync(app, bench, Scene(4, 90));
        Assert.Null((await app.PageAsync(bench)).QuerySelector("[data-same]"));

        await app.SendPhotoAsync(bench, Scene(3, 90));

        Assert.Null((await app.PageAsync(bench)).QuerySelector("[data-same]"));
    }

    private static async Task<PhotoCapture> KeepAsync(TestApp app, string bench, byte[] file, string check = "", string cylinder = "")
    {
        await app.SendPhotoAsync(bench, file, ("check", check), ("cylinder", cylinder));
        return Assert.IsType<PhotoCapture>(app.Inspection().Everything[^1]);
    }

    /// <summary>A picture of discs, by a seed.</summary>
    private static byte[] Scene(int seed, int quality)
    {
        var random = new Random(seed);
        using var image = new Image<Rgb24>(320, 240, new Rgb24(90, 90, 80));
        for (var disc = 0; disc < 12; disc++)
        {
            var (x, y, radius, level) = (random.Next(320), random.Next(240), random.Next(10, 50), (byte)random.Next(20, 230));
            for (var row = 0; row < 240; row++)
            {
                for (var column = 0; column < 320; column++)
                {
                    if (((column - x) * (column - x)) + ((row - y) * (row - y)) < radius * radius)
                    {
                        image[column, row] = new Rgb24(level, level, level);
                    }
                }
            }
        }

        using var file = new MemoryStream();
        image.Save(file, new JpegEncoder { Quality = quality });
        return file.ToArray();
    }
}

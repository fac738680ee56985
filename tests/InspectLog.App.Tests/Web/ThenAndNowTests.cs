using System.Globalization;
using System.Net;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using InspectLog.Checks;
using InspectLog.Journal.State;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;

namespace InspectLog.App.Tests.Web;

/// <summary>A place then and now: which photos are compared, how one is laid over the other, and the wall of all photos.</summary>
public sealed partial class ThenAndNowTests
{
    private const int Width = 640;
    private const int Height = 480;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Earlier_photo_of_the_same_view_is_laid_where_the_camera_moved_from()
    {
        await using var app = await TestApp.StartAsync();
        var first = await ClosedAsync(app, ("lead-condition", "2", Scene(1, 40, 40)));
        var second = await NextAsync(app, ("lead-condition", "2", Scene(1, 64, 28)));

        var page = await app.PageAsync($"{second.Address}/photos/{second.Photos[0]}/then");

        var move = Move().Match(page.QuerySelector("[data-over] g[transform]")!.GetAttribute("transform")!);
        var numbers = move.Groups.Values.Skip(1).Select(group => double.Parse(group.Value, CultureInfo.InvariantCulture)).ToList();
        Assert.Equal(500 - (1000 * 24.0 / Width), numbers[0], 2.0); // two thousandths of the width
        Assert.Equal((1000.0 * Height / Width / 2) + (1000 * 12.0 / Width), numbers[1], 2.0);
        Assert.InRange(numbers[2], -0.2, 0.2);
        Assert.InRange(numbers[3], 0.99, 1.01);
        Assert.Contains("shifted by 4 % of the width", page.QuerySelector("[data-over]")!.TextContent, StringComparison.Ordinal);
        var pair = page.QuerySelectorAll(".then-pair a").Select(link => link.GetAttribute("href")).ToList();
        Assert.Equal([$"{first.Address}/photos/{first.Photos[0]}", $"{second.Address}/photos/{second.Photos[0]}"], pair);

        // From the earlier photo the same two are compared, the same one of them as then.
        var back = await app.PageAsync($"{first.Address}/photos/{first.Photos[0]}/then");
        Assert.Equal(pair, back.QuerySelectorAll(".then-pair a").Select(link => link.GetAttribute("href")));
    }

    [Fact]
    public async Task Other_view_is_shown_beside_it_and_not_laid_over()
    {
        await using var app = await TestApp.StartAsync();
        await ClosedAsync(app, ("lead-condition", "2", Scene(1, 40, 40)));
        var second = await NextAsync(app, ("lead-condition", "2", Scene(9, 40, 40)));

        var page = await app.PageAsync($"{second.Address}/photos/{second.Photos[0]}/then");

        Assert.Null(page.QuerySelector("[data-over]"));
        Assert.Equal(2, page.QuerySelectorAll(".then-pair img").Length);
        Assert.Contains("do not show the same view", page.Body!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Only_photos_of_the_same_place_of_other_inspections_that_count_are_offered()
    {
        await using var app = await TestApp.StartAsync();
        var first = await ClosedAsync(
            app,
            ("lead-condition", "2", Scene(1, 40, 40)),
            ("lead-condition", "3", Scene(2, 40, 40)),
            ("cap-contacts", "2", Scene(3, 40, 40)),
            ("lead-condition", "2", Scene(4, 40, 40)),
            ("lead-condition", "2", Scene(5, 40, 40)));
        await app.PostForRedirectAsync($"{first.Address}/photos/{first.Photos[4]}/withdraw", ("reason", "not sharp"), ("viewer", ""));
        var second = await NextAsync(app, ("lead-condition", "2", Scene(1, 50, 40)), ("lead-condition", "2", Scene(6, 50, 40)));

        var photo = $"{second.Address}/photos/{second.Photos[0]}";
        Assert.Contains("2 photos of this place from other inspections", (await app.PageAsync(photo)).Body!.TextContent, StringComparison.Ordinal);
        var page = await app.PageAsync($"{photo}/then?with={first.Photos[0]}");

        var offered = page.QuerySelectorAll(".then-others a").ToList();
        Assert.Equal([first.Photos[3], first.Photos[0]], offered.Select(link => long.Parse(link.GetAttribute("href")!.Split('=')[1], CultureInfo.InvariantCulture)));
        Assert.Equal([null, "true"], offered.Select(link => link.GetAttribute("aria-current")));
        Assert.Equal(HttpStatusCode.NotFound, await StatusAsync(app, $"{photo}/then?with={first.Photos[1]}"));
        Assert.Equal(HttpStatusCode.NotFound, await StatusAsync(app, $"{photo}/then?with={second.Photos[1]}"));
        Assert.Equal(HttpStatusCode.NotFound, await StatusAsync(app, $"{second.Address}/photos/1/then"));
    }

    [Fact]
    public async Task Photo_that_stands_alone_offers_nothing_and_its_page_says_what_to_do()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var photo = $"{bench}/photos/{(await app.KeepPhotoAsync(bench, "lead-condition", "2")).Sequence}";

        Assert.Null((await app.PageAsync(photo)).QuerySelector("a[href$='/then']"));
        Assert.Contains("Photograph it again at the next one", (await app.PageAsync($"{photo}/then")).Body!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Wall_has_every_photo_that_counts_part_by_part()
    {
        await using var app = await TestApp.StartAsync();
        var first = await ClosedAsync(app, ("cap-contacts", "2", Scene(1, 40, 40)), ("", "", Scene(2, 40, 40)), ("lead-condition", "2", Scene(3, 40, 40)));
        var many = Enumerable.Range(10, 7).Select(seed => ("lead-condition", "2", Scene(seed, 40, 40)));
        var second = await NextAsync(app, [.. many]);

        var wall = await app.PageAsync("/vehicles/marigold/photos");

        Assert.Equal(["Lead condition, lead 2", "Cap contacts, tower 2", "The inspections as a whole"], wall.QuerySelectorAll("main h2").Select(title => title.TextContent));
        Assert.Equal([6, 1, 1], wall.QuerySelectorAll(".wall").Select(part => part.Children.Length));
        Assert.Equal($"{second.Address}/photos/{second.Photos[6]}/then", wall.QuerySelector("a[href$='/then']")!.GetAttribute("href"));
        var all = await app.PageAsync(wall.QuerySelector("a[href*='?part=']")!.GetAttribute("href")!);
        Assert.Equal(
            [.. second.Photos.Reverse().Select(photo => $"{second.Address}/photos/{photo}"), $"{first.Address}/photos/{first.Photos[2]}"],
            all.QuerySelectorAll(".wall a").Select(link => link.GetAttribute("href")));
        Assert.Equal(HttpStatusCode.NotFound, await StatusAsync(app, "/vehicles/marigold/photos?part=nothing"));
        Assert.Equal(HttpStatusCode.NotFound, await StatusAsync(app, "/vehicles/nobody/photos"));
        Assert.NotNull((await app.PageAsync("/vehicles/marigold")).QuerySelector("a[href='/vehicles/marigold/photos']"));
    }

    private static async Task<HttpStatusCode> StatusAsync(TestApp app, string address) => (await app.Client.GetAsync(address, Stop)).StatusCode;

    private static async Task<Inspected> ClosedAsync(TestApp app, params (string Check, string Place, byte[] File)[] photos)
    {
        var bench = await app.StartInspectionAsync();
        var kept = await KeepAsync(app, bench, photos);
        await app.PostForRedirectAsync($"{bench}/close", [.. BuiltInSheets.Find(BuiltInSheets.IgnitionBreakerless)!.Checks.Select(check => ($"reason-{check.Id}", "Not today"))]);
        return kept;
    }

    private static async Task<Inspected> NextAsync(TestApp app, params (string Check, string Place, byte[] File)[] photos) =>
        await KeepAsync(app, await app.PostForRedirectAsync("/vehicles/marigold/inspections", ("technician", "Tess Okafor")), photos);

    private static async Task<Inspected> KeepAsync(TestApp app, string bench, (string Check, string Place, byte[] File)[] photos)
    {
        foreach (var (check, place, file) in photos)
        {
            await app.SendPhotoAsync(bench, file, ("check", check), ("cylinder", place));
        }

        return new(bench, [.. app.Garage.FindVehicle("marigold")!.Inspections[^1].Everything.OfType<PhotoCapture>().Select(photo => photo.Sequence)]);
    }

    /// <summary>A picture of discs by a seed, seen through a window that begins at a place.</summary>
    private static byte[] Scene(int seed, int left, int top)
    {
        var random = new Random(seed);
        using var image = new Image<Rgb24>(Width, Height, new Rgb24(90, 90, 80));
        for (var disc = 0; disc < 40; disc++)
        {
            var (x, y, radius, level) = (random.Next(Width + 80) - left, random.Next(Height + 80) - top, random.Next(12, 60), (byte)random.Next(20, 230));
            for (var row = Math.Max(0, y - radius); row < Math.Min(Height, y + radius); row++)
            {
                for (var column = Math.Max(0, x - radius); column < Math.Min(Width, x + radius); column++)
                {
                    if (((column - x) * (column - x)) + ((row - y) * (row - y)) < radius * radius)
                    {
                        image[column, row] = new Rgb24(level, level, level);
                    }
                }
            }
        }

        using var file = new MemoryStream();
        image.SaveAsJpeg(file);
        return file.ToArray();
    }

    [GeneratedRegex(@"^translate\((\S+) (\S+)\) rotate\((\S+)\) scale\((\S+)\)$")]
    private static partial Regex Move();

    private sealed record Inspected(string Address, IReadOnlyList<long> Photos);
}

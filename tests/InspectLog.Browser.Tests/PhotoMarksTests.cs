using InspectLog.Browser.Tests.Support;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace InspectLog.Browser.Tests;

/// <summary>A photo marked and measured in: by mouse, by finger, by keys, and without scripts.</summary>
public sealed class PhotoMarksTests(BrowserFixture fixture)
{
    [Fact]
    public async Task Arrow_by_mouse_and_words_by_keys_are_saved_and_seen_on_the_report()
    {
        await using var place = await PlaceAsync();
        var page = place.Page;
        await page.Button("Arrow").ClickAsync();
        await DrawAsync(page, (0.7, 0.7), (0.2, 0.15));
        await page.GetByLabel("What it marks").FillAsync("Hairline crack");
        await Expect(List(page)).ToHaveTextAsync(["Arrow to the upper left: Hairline crack"]);

        await page.Button("Words").ClickAsync();
        await Stage(page).FocusAsync();
        await page.Keyboard.PressAsync("Shift+ArrowRight");
        await page.Keyboard.PressAsync("ArrowDown");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.GetByLabel("What it marks")).ToBeFocusedAsync();
        await page.Keyboard.TypeAsync("Oil");
        await page.Button("Save the marks").ClickAsync();

        await Expect(page.Locator("#marks > ul > li")).ToHaveTextAsync(["Arrow to the upper left: Hairline crack.", "Words at the middle: Oil."]);
        await Expect(page.Locator(".photo-large svg.marked image")).ToBeVisibleAsync();
        await page.GotoAsync(place.Report);
        await Expect(page.Locator(".report-shots svg.marked")).ToBeVisibleAsync();
        await Expect(page.Locator(".report-shots figcaption")).ToContainTextAsync("Marked: arrow to the upper left: Hairline crack; words at the middle: Oil");
        Assert.Empty(place.Visit.Watch.Complaints);
    }

    [Fact]
    public async Task All_is_drawn_picked_moved_deleted_and_undone_by_keys_alone()
    {
        await using var place = await PlaceAsync();
        var page = place.Page;
        await page.Button("Arrow").FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await Stage(page).FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        for (var step = 0; step < 4; step++)
        {
            await page.Keyboard.PressAsync("Shift+ArrowRight");
        }

        await page.Keyboard.PressAsync("Enter");
        await Expect(List(page)).ToHaveTextAsync(["Arrow to the right side"]);
        for (var step = 0; step < 6; step++)
        {
            await page.Keyboard.PressAsync("Shift+ArrowUp"); // the tip, which is picked
        }

        await Expect(List(page)).ToHaveTextAsync(["Arrow to the upper right"]);
        await page.Keyboard.PressAsync("Delete");
        await Expect(List(page)).ToHaveCountAsync(0);
        await page.Keyboard.PressAsync("Control+z");
        await Expect(List(page)).ToHaveTextAsync(["Arrow to the upper right"]);

        await List(page).First.FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await Expect(Stage(page)).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("Enter"); // on to its tip
        await page.Keyboard.PressAsync("Enter"); // on to the whole of it
        for (var step = 0; step < 5; step++)
        {
            await page.Keyboard.PressAsync("Shift+ArrowLeft");
        }

        await Expect(List(page)).ToHaveTextAsync(["Arrow to the upper part"]);
        await page.Button("Save the marks").FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("#marks > ul > li")).ToHaveTextAsync(["Arrow to the upper part."]);
        Assert.Empty(place.Visit.Watch.Complaints);
    }

    [Fact]
    public async Task Line_and_ring_are_drawn_by_finger_and_a_line_keeps_few_points()
    {
        await using var place = await PlaceAsync(new() { HasTouch = true });
        var page = place.Page;
        await page.SetViewportSizeAsync(390, 844);
        await page.Button("Ring").ClickAsync();
        await DrawAsync(page, (0.1, 0.1), (0.3, 0.3));
        await page.Button("Line").ClickAsync();
        await DrawAsync(page, (0.4, 0.8), (0.9, 0.75));
        await Expect(List(page)).ToHaveTextAsync(["Ring round the upper left", "Line along the lower part"]);
        await page.Button("Save the marks").ClickAsync();
        await Expect(page.Locator("#marks > ul > li")).ToHaveCountAsync(2);

        var marks = Bench.Entries(place.Data, "photo-marked").Single().GetProperty("body").GetProperty("marks");
        Assert.InRange(marks[1].GetProperty("points").GetArrayLength(), 2, 20);
        Assert.Empty(place.Visit.Watch.Complaints);
    }

    // The photo has a bar of 400 pixels, 40 mm, and one of 160: 16 mm; in a second a sheet that was seen at a slant.
    [Fact]
    public async Task Length_is_measured_by_a_known_one_with_a_glass_about_the_point()
    {
        await using var place = await PlaceAsync();
        var page = place.Page;
        await page.Button("Measure").ClickAsync();
        await page.GetByLabel("Known length").FillAsync("40");
        await page.GetByLabel("It may be off by ±").FillAsync("0.1");
        await PressAsync(page, (0.1, 0.2), page.Locator(".marks-glass"));
        await PressAsync(page, (0.6, 0.2), page.Locator(".marks-glass"));
        await PressAsync(page, (0.3, 0.6), page.Locator(".marks-glass"));
        await PressAsync(page, (0.5, 0.6), page.Locator(".marks-glass"));

        await Expect(page.Locator("[data-marks-says]")).ToContainTextAsync("mm ±");
        await Expect(page.Locator("[data-marks-says]")).ToContainTextAsync("as if both lay flat in one plane");
        var first = await List(page).First.TextContentAsync();
        Assert.Matches("^Measured at the middle: (15\\.[5-9]|16\\.[0-5])", first);
        await Stage(page).FocusAsync();
        for (var step = 0; step < 5; step++)
        {
            await page.Keyboard.PressAsync("Shift+ArrowRight"); // ten pixels of eight hundred: half a millimetre and more
        }

        await Expect(List(page).First).Not.ToHaveTextAsync(first!);
        await Expect(List(page).First).ToContainTextAsync("mm ±");
        await page.Button("Save the marks").ClickAsync();
        await Expect(page.Locator("#marks > ul > li")).ToContainTextAsync(["Measured at the middle"]);
        await page.GetByLabel("as a reading of").SelectOptionAsync(new SelectOptionValue { Label = "Plug gap, plug 3" });
        await page.Button("Enter as reading").ClickAsync();
        await Expect(page.Locator("#check-title")).ToHaveTextAsync("Plug gap");
        Assert.Contains("measured in a photo", Bench.Entries(place.Data, "reading-decided").Single().GetProperty("body").GetProperty("asGiven").GetString(), StringComparison.Ordinal);
        Assert.Empty(place.Visit.Watch.Complaints);
    }

    [Fact]
    public async Task Slant_is_corrected_by_the_four_corners_of_a_rectangle()
    {
        await using var place = await PlaceAsync();
        var page = place.Page;
        await page.Button("Measure").ClickAsync();
        await page.GetByLabel("A rectangle, which corrects a slanted view").CheckAsync();
        await page.GetByLabel("Known length").FillAsync("40");
        await page.GetByLabel("Its other side").FillAsync("30");
        foreach (var corner in new[] { (0.3, 0.2), (0.7, 0.2), (0.9, 0.8), (0.1, 0.8), (0.3, 0.2), (0.9, 0.8) })
        {
            await PressAsync(page, corner, null);
        }

        // From corner to corner across a rectangle of 40 by 30 mm, however it is seen.
        await Expect(page.Locator("[data-marks-says]")).ToContainTextAsync("mm ±");
        Assert.Matches("^Measured at the middle: (49\\.[5-9]|50\\.[0-5])", await List(page).First.TextContentAsync());
        Assert.Empty(place.Visit.Watch.Complaints);
    }

    [Fact]
    public async Task What_was_not_sent_stays_through_a_reload_and_is_saved_once_there_is_a_connection()
    {
        await using var place = await PlaceAsync();
        var page = place.Page;
        await page.Button("Ring").ClickAsync();
        await DrawAsync(page, (0.4, 0.4), (0.6, 0.6));
        await page.Context.SetOfflineAsync(true);
        await page.Button("Save the marks").ClickAsync();
        await Expect(page.GetByText("There is no connection, so the marks were not saved.")).ToBeVisibleAsync();
        await page.Context.SetOfflineAsync(false);
        await page.ReloadAsync();
        await Expect(page.GetByText("Marks that were not saved yet are here again.")).ToBeVisibleAsync();
        await page.Button("Save the marks").ClickAsync();

        await Expect(page.Locator("#marks > ul > li")).ToHaveTextAsync(["Ring round the middle."]);
        Assert.Single(Bench.Entries(place.Data, "photo-marked"));
    }

    [Fact]
    public async Task Page_is_accessible_in_every_look_and_without_scripts_marks_are_typed()
    {
        await using var place = await PlaceAsync();
        var page = place.Page;
        await page.Button("Arrow").ClickAsync();
        await DrawAsync(page, (0.7, 0.7), (0.2, 0.15));
        await page.GetByLabel("What it marks").FillAsync("Hairline crack where the bracket holds it");
        await page.Button("Ring").ClickAsync();
        await DrawAsync(page, (0.55, 0.3), (0.8, 0.55));
        await page.Button("Measure").ClickAsync();
        foreach (var look in Look.All)
        {
            await look.TakeOnAsync(page);
            await ShotAsync(page, $"marking-{look.Width}-{look.Scheme}");
            Assert.Equal((look, ""), (look, string.Join("; ", await PressTargets.FaultsAsync(page))));
            Assert.Equal((look, ""), (look, string.Join("\n", await Accessibility.FaultsAsync(page))));
            Assert.Equal((look, 0), (look, await page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth")));
        }

        await page.Button("Save the marks").ClickAsync();
        await Expect(page.Locator("#marks > ul > li")).ToHaveCountAsync(2);
        foreach (var look in Look.All)
        {
            await look.TakeOnAsync(page);
            await ShotAsync(page, $"photo-{look.Width}-{look.Scheme}");
            Assert.Equal((look, ""), (look, string.Join("\n", await Accessibility.FaultsAsync(page))));
        }

        var photo = page.Url;
        await page.GotoAsync(place.Report);
        foreach (var look in Look.All)
        {
            await look.TakeOnAsync(page);
            await page.Locator(".report-shots svg.marked").ScrollIntoViewIfNeededAsync();
            await ShotAsync(page, $"report-{look.Width}-{look.Scheme}");
            Assert.Equal((look, ""), (look, string.Join("\n", await Accessibility.FaultsAsync(page))));
        }

        await using var plain = await Visit.OpenAsync(fixture.Browser, place.Program, new() { JavaScriptEnabled = false });
        await plain.Page.GotoAsync(photo);
        await plain.Page.GetByRole(AriaRole.Link, new() { Name = "Change the marks" }).ClickAsync();
        await Expect(plain.Page.Locator("svg.marked")).ToBeVisibleAsync();
        await plain.Page.GetByLabel("What is drawn").SelectOptionAsync("text");
        await plain.Page.Locator("#marks-x1").FillAsync("50");
        await plain.Page.Locator("#marks-y1").FillAsync("90");
        await plain.Page.Locator("#marks-words").FillAsync("Typed");
        await plain.Page.Button("Save the marks").ClickAsync();
        await Expect(plain.Page.Locator("#marks > ul > li")).ToHaveCountAsync(3);
    }

    private static ILocator Stage(IPage page) => page.Locator("[data-stage]");

    private static ILocator List(IPage page) => page.Locator("[data-marks-list] button");

    private static async Task DrawAsync(IPage page, (double X, double Y) from, (double X, double Y) to)
    {
        var box = await BoxAsync(page);
        await page.Mouse.MoveAsync(At(box, from).X, At(box, from).Y);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(At(box, to).X, At(box, to).Y, new() { Steps = 30 });
        await page.Mouse.UpAsync();
    }

    private static async Task PressAsync(IPage page, (double X, double Y) at, ILocator? seenMeanwhile)
    {
        var box = await BoxAsync(page);
        await page.Mouse.MoveAsync(At(box, at).X, At(box, at).Y);
        await page.Mouse.DownAsync();
        if (seenMeanwhile is not null)
        {
            await Expect(seenMeanwhile).ToBeVisibleAsync();
        }

        await page.Mouse.UpAsync();
    }

    private static (float X, float Y) At(LocatorBoundingBoxResult box, (double X, double Y) share) =>
        ((float)(box.X + (box.Width * share.X)), (float)(box.Y + (box.Height * share.Y)));

    /// <summary>Where the photo is, brought into view first.</summary>
    private static async Task<LocatorBoundingBoxResult> BoxAsync(IPage page)
    {
        await page.Locator("[data-stage] svg.marked").EvaluateAsync("picture => picture.scrollIntoView({ block: 'center' })");
        return (await page.Locator("[data-stage] svg.marked").BoundingBoxAsync())!;
    }

    /// <summary>For a person to look at, where a folder is named.</summary>
    private static async Task ShotAsync(IPage page, string name)
    {
        if (Environment.GetEnvironmentVariable("INSPECTLOG_SHOTS") is { Length: > 0 } folder)
        {
            await page.ScreenshotAsync(new() { Path = Path.Combine(folder, $"{name}.png"), FullPage = true });
        }
    }

    /// <summary>The marking page of a photo of a check.</summary>
    private async Task<Place> PlaceAsync(BrowserNewContextOptions? options = null)
    {
        var folder = new TempFolder();
        var data = Path.Combine(folder.Path, "data");
        var program = await RunningProgram.ServeAsync(data);
        var visit = await Visit.OpenAsync(fixture.Browser, program, options);
        await visit.Page.StartFirstInspectionAsync();
        await visit.Page.OpenCheckAsync("Rotor blade", "Rotor blade");
        var bench = new Uri(visit.Page.Url).AbsolutePath;
        await visit.Page.Locator("#photo-photo").SetInputFilesAsync(Pictures.TakePhoto(folder.Path, new Random(1), 1000, 750));
        await visit.Page.Locator("#check .shots a").First.ClickAsync();
        await visit.Page.GetByRole(AriaRole.Link, new() { Name = "Mark or measure in the photo" }).ClickAsync();
        await Expect(visit.Page.Button("Arrow")).ToBeVisibleAsync();
        return new(folder, data, program, visit, $"{bench}/report");
    }

    private sealed record Place(TempFolder Folder, string Data, RunningProgram Program, Visit Visit, string Report) : IAsyncDisposable
    {
        public IPage Page => Visit.Page;

        public async ValueTask DisposeAsync()
        {
            await Visit.DisposeAsync();
            await Program.DisposeAsync();
            Folder.Dispose();
        }
    }
}

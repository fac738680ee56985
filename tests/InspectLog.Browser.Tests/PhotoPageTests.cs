using InspectLog.Browser.Tests.Support;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace InspectLog.Browser.Tests;

/// <summary>The page of a photo: by keyboard, by touch, and back to where one came from.</summary>
public sealed class PhotoPageTests(BrowserFixture fixture)
{
    [Fact]
    public async Task Arrow_keys_turn_the_photos_and_Escape_leads_back_to_where_one_came_from()
    {
        await using var place = await PlaceAsync();
        var page = place.Visit.Page;
        var here = page.Url;
        await page.Locator("#check .shots a").First.FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.GetByText("Photo 1 of 2")).ToBeVisibleAsync();
        await Expect(page.Locator(".photo-large img")).Not.ToHaveJSPropertyAsync("naturalWidth", 0);

        await IsAtAsync(page, "Photo 1 of 2");
        await page.Keyboard.PressAsync("ArrowLeft");
        await page.Keyboard.PressAsync("ArrowRight");
        await IsAtAsync(page, "Photo 2 of 2");
        await page.Keyboard.PressAsync("ArrowLeft");
        await IsAtAsync(page, "Photo 1 of 2");

        // In a field the keys belong to the words.
        await page.Locator("summary", new() { HasText = "Caption" }).ClickAsync();
        await page.GetByLabel("Words below it").FillAsync("Rubbed");
        await page.Keyboard.PressAsync("ArrowRight");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("figcaption")).ToHaveTextAsync("Rubbed");
        await IsAtAsync(page, "Photo 1 of 2");

        await page.Keyboard.PressAsync("Escape");
        await Expect(page.Locator("#bench")).ToBeVisibleAsync();
        Assert.StartsWith(here.Split('#')[0], page.Url, StringComparison.Ordinal);
        await Expect(page.Locator("#check .shots a").First).ToBeInViewportAsync();
        Assert.Empty(place.Visit.Watch.Complaints);
    }

    [Fact]
    public async Task Finger_turns_the_photos()
    {
        await using var place = await PlaceAsync();
        var page = place.Visit.Page;
        await page.Locator("#check .shots a").First.ClickAsync();
        await IsAtAsync(page, "Photo 1 of 2");

        await SwipeAsync(page, from: 300, to: 250, down: 0);
        await SwipeAsync(page, from: 300, to: 200, down: 90);
        await Expect(page.GetByText("Photo 1 of 2")).ToBeVisibleAsync();
        await SwipeAsync(page, from: 300, to: 120, down: 10);

        await Expect(page.GetByText("Photo 2 of 2")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Page_works_without_scripts_and_in_every_look()
    {
        await using var place = await PlaceAsync(scripts: false);
        var page = place.Visit.Page;
        await page.Locator("#check .shots a").First.ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { NameRegex = new("^Next") }).ClickAsync();

        await page.Locator("summary", new() { HasText = "Remove" }).ClickAsync();
        foreach (var look in Look.All)
        {
            await look.TakeOnAsync(page);
            Assert.Empty(await PressTargets.FaultsAsync(page));
            Assert.Equal((look, 0), (look, await page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth")));
        }

        await page.GetByRole(AriaRole.Button, new() { Name = "Taken twice" }).ClickAsync();
        await Expect(page.GetByText("Taken back: taken twice")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Expect(page.GetByText("Photo 2 of 2")).ToBeVisibleAsync();
        await page.GetByText("Back to the inspection").ClickAsync();
        await Expect(page.Locator("#check .shots")).ToBeVisibleAsync();
    }

    /// <summary>A bench with two photos of the check that is open.</summary>
    private async Task<Place> PlaceAsync(bool scripts = true)
    {
        var folder = new TempFolder();
        var program = await RunningProgram.ServeAsync(Path.Combine(folder.Path, "data"));
        var visit = await Visit.OpenAsync(fixture.Browser, program, new() { JavaScriptEnabled = scripts, HasTouch = true });
        await visit.Page.StartFirstInspectionAsync();
        await visit.Page.OpenCheckAsync("Rotor blade", "Rotor blade");
        for (var count = 1; count <= 2; count++)
        {
            // A browser tells nobody of the very file that is chosen already, as while the first is on its way.
            var photo = Path.Combine(folder.Path, $"photo-{count}.jpg");
            File.Move(Pictures.TakePhoto(folder.Path), photo);
            await visit.Page.Locator("#photo-photo").SetInputFilesAsync(photo);
            if (!scripts)
            {
                await visit.Page.Button("Send").ClickAsync();
            }

            await Expect(visit.Page.Locator("#check .shots img")).ToHaveCountAsync(count);
        }

        return new(folder, program, visit);
    }

    private static Task SwipeAsync(IPage page, int from, int to, int down) => page.EvaluateAsync(
        """
        ([from, to, down]) => {
          const picture = document.querySelector(".photo-large");
          const event = (kind, x, y) => new PointerEvent(kind, { pointerType: "touch", isPrimary: true, clientX: x, clientY: y, bubbles: true });
          picture.dispatchEvent(event("pointerdown", from, 200));
          picture.dispatchEvent(event("pointerup", to, 200 + down));
        }
        """,
        new[] { from, to, down });

    private sealed record Place(TempFolder Folder, RunningProgram Program, Visit Visit) : IAsyncDisposable
    {
        public async ValueTask DisposeAsync()
        {
            await Visit.DisposeAsync();
            await Program.DisposeAsync();
            Folder.Dispose();
        }
    }

    /// <summary>Sees that a photo is shown, and that the page has its scripts: they are what listens.</summary>
    private static async Task IsAtAsync(IPage page, string words)
    {
        await Assertions.Expect(page.GetByText(words)).ToBeVisibleAsync();
        await page.UntilAsync("document.readyState === 'complete'");
    }
}

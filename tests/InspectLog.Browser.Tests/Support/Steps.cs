using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace InspectLog.Browser.Tests.Support;

/// <summary>What a technician does on the pages, found by what the pages say.</summary>
internal static class Steps
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(1);

    private static readonly TimeSpan BetweenLooks = TimeSpan.FromMilliseconds(50);

    public static ILocator Button(this IPage page, string name) => page.GetByRole(AriaRole.Button, new() { Name = name, Exact = true });

    /// <summary>From the empty garage to the bench: names the first vehicle and starts an inspection.</summary>
    public static async Task StartFirstInspectionAsync(this IPage page, string vehicle = "Marigold", string technician = "Tess Okafor")
    {
        await page.GetByLabel("What do you call the first vehicle?").FillAsync(vehicle);
        await page.Button("Add it").ClickAsync();
        await page.GetByLabel("Who inspects").FillAsync(technician);
        await page.Button("Start with 6 cylinders").ClickAsync();
        await Expect(page.Locator("#bench")).ToBeVisibleAsync();

        // The scripts are there once the page has loaded; no person is faster than that. The page is asked itself: on a
        // machine under load the driver has been seen to miss the event.
        await page.UntilAsync("document.readyState === 'complete'");
    }

    /// <summary>Waits until an expression is true in the page.</summary>
    /// <remarks>The waiting is done here, not in the page: where scripts are switched off a page has no timers, so that
    /// a wait in it never ends. The driver's own way evaluates text anew each time it looks, which the page's security
    /// policy forbids unless the first look is enough.</remarks>
    public static async Task UntilAsync(this IPage page, string condition)
    {
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        patience.CancelAfter(Patience);
        while (!await page.EvaluateAsync<bool>($"Boolean({condition})"))
        {
            Assert.False(patience.IsCancellationRequested, $"It never came true that {condition}");
            await Task.Delay(BetweenLooks, TestContext.Current.CancellationToken);
        }
    }

    /// <summary>Pairs a phone as a person does who types the code.</summary>
    /// <param name="phone">A page of the phone.</param>
    /// <param name="program">The program.</param>
    /// <param name="workshop">A page of the workshop's computer.</param>
    /// <param name="person">Whose phone it is.</param>
    /// <param name="role">What they may do, in the words of the page; null leaves what stands there.</param>
    public static async Task PairAsync(this IPage phone, RunningProgram program, IPage workshop, string person, string? role = null)
    {
        await workshop.GotoAsync(new Uri(program.Address, "/devices").ToString());
        await workshop.GetByLabel("Whose phone is it?").FillAsync(person);
        if (role is not null)
        {
            await workshop.GetByLabel("What may they do?").SelectOptionAsync(role);
            await workshop.GetByLabel("For a student: which vehicle?").SelectOptionAsync("marigold");
        }

        await workshop.Button("Show the code").ClickAsync();
        var code = await workshop.Locator(".pairing-code").TextContentAsync();
        await phone.GotoAsync(new Uri(program.Phones!, "/pair").ToString());
        await phone.GetByLabel("Code").FillAsync(code!);
        await phone.Button("Pair").ClickAsync();
        await phone.WaitForURLAsync(address => new Uri(address).AbsolutePath != "/pair", new() { WaitUntil = WaitUntilState.Commit });
    }

    /// <summary>Opens a check from the list of the sheet.</summary>
    public static async Task OpenCheckAsync(this IPage page, string shortTitle, string title)
    {
        await page.Locator("#sheet").GetByRole(AriaRole.Link).Filter(new() { HasText = shortTitle }).First.ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync(title);
    }

    public static Task OpenCoilSecondaryAsync(this IPage page) => page.OpenCheckAsync("Coil secondary", "Coil secondary resistance");

    /// <summary>Opens the number field and types a value.</summary>
    public static async Task MeasureAsync(this IPage page, string value)
    {
        await page.Locator("#measure > summary").ClickAsync();
        await page.GetByLabel("Value", new() { Exact = true }).FillAsync(value);
        await page.Locator("#measure").GetByRole(AriaRole.Button, new() { Name = "Keep reading" }).ClickAsync();
    }
}

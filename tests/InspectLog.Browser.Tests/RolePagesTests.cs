using InspectLog.Browser.Tests.Support;
using Microsoft.Playwright;

namespace InspectLog.Browser.Tests;

/// <summary>The pages of the demo garage as each role sees them: nothing for axe-core to find, nothing too small to press, no
/// sideways scrolling, on a phone in light colours and on a laptop in dark ones.</summary>
public sealed class RolePagesTests(BrowserFixture fixture, ITestOutputHelper output) : IAsyncLifetime
{
    private static readonly Look[] Looks = [Look.All[0], Look.All[^1]];

    private readonly TempFolder _folder = new();
    private readonly List<string> _faults = [];
    private RunningProgram _program = null!;
    private Visit _workshop = null!;

    public async ValueTask InitializeAsync()
    {
        _program = await RunningProgram.DemoForPhonesAsync(_folder.Path);
        _workshop = await Visit.OpenAsync(fixture.Browser, _program);
    }

    public async ValueTask DisposeAsync()
    {
        await _workshop.DisposeAsync();
        await _program.DisposeAsync();
        _folder.Dispose();
    }

    [Fact]
    public async Task Every_role_finds_its_pages_accessible()
    {
        var looked = 0;
        await _workshop.Page.GotoAsync("/vehicles/marigold");
        var closed = (await _workshop.Page.GetByRole(AriaRole.Link, new() { Name = "Look at it again" }).First.GetAttributeAsync("href"))!;
        foreach (var role in await RolesAsync())
        {
            var page = await NewPhoneAsync();
            await page.PairAsync(_program, _workshop.Page, "Ines Vale", role);
            foreach (var address in new[] { "/", "/now", "/vehicles/marigold", "/vehicles/marigold/journal", closed, $"{closed}/report", "/vehicles/new" })
            {
                looked += await LookAtAsync(page, role, address);
            }

            await page.Context.CloseAsync();
        }

        var reader = await NewPhoneAsync();
        await reader.GotoAsync(await LinkAsync(closed));
        await reader.WaitForURLAsync(address => new Uri(address).AbsolutePath.EndsWith("/report", StringComparison.Ordinal), new() { WaitUntil = WaitUntilState.Commit });
        looked += await LookAtAsync(reader, "link", new Uri(reader.Url).PathAndQuery);
        looked += await LookAtAsync(reader, "link", "/vehicles/marigold");
        await reader.Context.CloseAsync();

        output.WriteLine($"{looked} looks.");
        Assert.True(_faults.Count == 0, string.Join("\n\n", _faults));
        Assert.InRange(looked, 40, 80);
    }

    private async Task<int> LookAtAsync(IPage page, string role, string address)
    {
        await page.GotoAsync(new Uri(_program.Phones!, address).ToString());
        foreach (var look in Looks)
        {
            await look.TakeOnAsync(page);
            var overhang = await page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth");
            _faults.AddRange(
                from fault in (await Accessibility.FaultsAsync(page)).Concat(await PressTargets.FaultsAsync(page)).Concat(overhang > 0 ? ["it is wider than the window"] : [])
                select $"{role}, {address} at {look}: {fault}");
        }

        return Looks.Length;
    }

    private async Task<IPage> NewPhoneAsync()
    {
        // That the certificate is trusted is not in question here.
        var context = await fixture.Browser.NewContextAsync(new() { IgnoreHTTPSErrors = true, HasTouch = true });
        context.SetDefaultTimeout(60_000);
        return await context.NewPageAsync();
    }

    private async Task<IReadOnlyList<string>> RolesAsync()
    {
        await _workshop.Page.GotoAsync("/devices");
        return await _workshop.Page.GetByLabel("What may they do?").EvaluateAsync<string[]>("one => [...one.options].map(option => option.value)");
    }

    private async Task<string> LinkAsync(string closed)
    {
        var page = _workshop.Page;
        await page.GotoAsync($"{closed}/report/links");
        await page.GetByLabel("Who is it for?").FillAsync("Ines Vale");
        await page.Button("Make the link").ClickAsync();
        return (await page.Locator(".fingerprint").TextContentAsync())!.Trim();
    }
}

using InspectLog.Browser.Tests.Support;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace InspectLog.Browser.Tests;

/// <summary>A phone beside the car and the workshop's computer, over real HTTPS with the made authority in the phone's own
/// store: pairing, capture, the network gone and back.</summary>
public sealed class PhoneTests(BrowserFixture fixture) : IAsyncLifetime
{
    private readonly TempFolder _folder = new();
    private RunningProgram _program = null!;
    private Visit _workshop = null!;
    private Phone _phone = null!;

    private IPage Page => _phone.Page;

    public async ValueTask InitializeAsync()
    {
        _program = await RunningProgram.ServePhonesAsync(_folder.Path);
        _workshop = await Visit.OpenAsync(fixture.Browser, _program);
        await _workshop.Page.StartFirstInspectionAsync();
        _phone = await Phone.StartAsync(fixture.Playwright, _folder.Path);
    }

    public async ValueTask DisposeAsync()
    {
        await _phone.DisposeAsync();
        await _workshop.DisposeAsync();
        await _program.DisposeAsync();
        _folder.Dispose();
    }

    [Fact]
    public async Task Picture_pairs_the_phone_and_what_it_captures_stands_on_the_workshops_screen_without_a_reload()
    {
        var bench = _workshop.Page.Url;
        var offers = await _workshop.Page.Context.NewPageAsync();
        await offers.GotoAsync(new Uri(_program.Address, "/devices").ToString());
        await offers.GetByLabel("Whose phone is it?").FillAsync("Ines Vale");
        await offers.Button("Show the code").ClickAsync();
        var code = (await offers.Locator(".pairing-code").TextContentAsync())!.Replace(" ", "", StringComparison.Ordinal);

        // What the picture holds is the address with a secret; its typed code goes the same way here.
        await Page.GotoAsync(new Uri(_program.Phones!, $"/pair#{code}").ToString());
        await Page.WaitForURLAsync(address => new Uri(address).AbsolutePath == "/");
        await Expect(offers.GetByText("is paired.")).ToBeVisibleAsync();

        await OpenBenchAsync("plug-condition");
        await Page.Locator("button[name=condition][value=wet]").First.TapAsync();
        await Expect(_workshop.Page.Locator("#captures > li")).ToHaveCountAsync(1);

        Assert.Equal(bench, _workshop.Page.Url);
        Assert.Equal("Ines Vale’s phone", Assert.Single(Bench.Entries(_folder.Path, "observation-made")).GetProperty("device").GetString());
        Assert.Empty(_phone.Watch.Complaints);
    }

    [Fact]
    public async Task What_is_captured_while_the_computer_is_gone_is_on_the_phone_and_then_in_the_journal_exactly_once()
    {
        await _phone.PairAsync(_program, await _workshop.Page.Context.NewPageAsync());
        await OpenBenchAsync("coil-secondary-resistance");
        await _phone.UntilKeptAsync("check=plug-condition&fragment");
        var port = _program.Phones!.Port;
        await _program.DisposeAsync();

        await Page.Locator("#measure > summary").TapAsync();
        await Page.GetByLabel("Value", new() { Exact = true }).FillAsync("9.4k");
        await Page.Locator("#measure").GetByRole(AriaRole.Button, new() { Name = "Keep reading" }).TapAsync();
        await Expect(Page.Locator("#unsent-count")).ToHaveTextAsync("1 only on this device");
        await Page.ReloadAsync();
        await Expect(Page.Locator("#unsent li")).ToContainTextAsync("“9.4k”, Coil secondary resistance: between the limits (8 to 13\u00a0kΩ); decided when it is sent");
        await Page.Locator("#sheet a[href*='plug-condition']").First.DispatchEventAsync("click");
        await Expect(Page.Locator("#check-title")).ToHaveTextAsync("Plug condition");
        await Page.Locator("button[name=condition][value=wet]").First.TapAsync();
        await Page.Locator("#photo-photo").SetInputFilesAsync(Pictures.TakePhoto(_folder.Path));
        await Expect(Page.Locator("#unsent-count")).ToHaveTextAsync("3 only on this device");

        _program = await RunningProgram.ServePhonesAsync(_folder.Path, port);

        await Expect(Page.Locator("#unsent li")).ToHaveCountAsync(0, new() { Timeout = 60_000 });
        await Expect(Page.Locator("#unsent-count")).ToBeHiddenAsync();
        Assert.All(["reading-decided", "observation-made", "photo-kept"], kind => Assert.Single(Bench.Entries(_folder.Path, kind)));
    }

    [Fact]
    public async Task Check_that_was_gone_to_without_the_network_is_shown_again_after_a_reload()
    {
        await _phone.PairAsync(_program, await _workshop.Page.Context.NewPageAsync());
        await OpenBenchAsync("coil-secondary-resistance");
        await _phone.UntilKeptAsync("check=plug-condition&fragment");
        await _program.DisposeAsync();
        await Page.Locator("#sheet a[href*='plug-condition']").First.DispatchEventAsync("click");
        await Expect(Page.Locator("#check-title")).ToHaveTextAsync("Plug condition");

        // Shown is another page, which then opens the check: that the driver counts as two ways.
        await Page.ReloadAsync(new() { WaitUntil = WaitUntilState.Commit });

        await Expect(Page.Locator("#check-title")).ToHaveTextAsync("Plug condition");
        await Page.UntilAsync("location.search.includes('check=plug-condition') && location.hash === ''");
        await Expect(Page.Locator("button[name=condition][value=wet]").First).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Photo_goes_on_where_the_line_broke()
    {
        await _phone.PairAsync(_program, await _workshop.Page.Context.NewPageAsync());
        using var line = new FailingLine(_program.Phones!.Port);
        await Page.GotoAsync(new Uri(line.Address, "/now").ToString());
        await Page.UntilAsync("document.readyState === 'complete'");
        var pieces = new List<string>();
        Page.Request += (_, request) =>
        {
            if (request.Url.Contains("/photos/pieces/", StringComparison.Ordinal))
            {
                pieces.Add(request.Url.Split("at=")[1]);
            }
        };
        var photo = Pictures.TakePhoto(_folder.Path, new Random(11), 2400, 1800);
        var size = new FileInfo(photo).Length;
        Assert.InRange(size, 2_000_000, 8_000_000);
        line.BreakAfter(100_000, long.MaxValue);
        await Page.Locator("#photo-photo").SetInputFilesAsync(photo);
        await Expect(Page.Locator("#unsent-count")).ToHaveTextAsync("1 only on this device");

        await NextBreakAsync(700_000);
        await NextBreakAsync(700_000);
        line.Mend();
        await Page.Locator("#unsent-fold").EvaluateAsync("fold => fold.open = true");
        await Page.Locator("#unsent").GetByRole(AriaRole.Button, new() { Name = "Send again" }).ClickAsync(new() { Force = true });

        await Expect(Page.Locator("#unsent li")).ToHaveCountAsync(0, new() { Timeout = 90_000 });
        Assert.Single(Bench.Entries(_folder.Path, "photo-kept"));
        Assert.Empty(Directory.GetFiles(Path.Combine(_folder.Path, "pieces")));

        // Asked how much is there after each break; no piece went more often than the line broke within it.
        var sent = pieces.Where(at => at != "0").GroupBy(at => at).ToList();
        Assert.NotEmpty(sent);
        Assert.True(sent.Sum(one => one.Count()) <= (size / (256 * 1024)) + 8, string.Join(' ', pieces));

        async Task NextBreakAsync(long after)
        {
            var before = pieces.Count;
            line.Mend();
            line.BreakAfter(after, long.MaxValue);
            await Page.Locator("#unsent-fold").EvaluateAsync("fold => fold.open = true");
            var again = Page.Locator("#unsent").GetByRole(AriaRole.Button, new() { Name = "Send again" });
            await again.DispatchEventAsync("click");
            for (var looks = 0; pieces.Count < before + 2 && looks < 600; looks++)
            {
                await Task.Delay(100, TestContext.Current.CancellationToken);
            }

            Assert.True(pieces.Count >= before + 2, "no piece was sent");
            await Task.Delay(2000, TestContext.Current.CancellationToken);
        }
    }

    [Fact]
    public async Task Phone_that_is_nearly_full_says_so_before_anything_is_lost()
    {
        await _phone.PairAsync(_program, await _workshop.Page.Context.NewPageAsync());
        await Page.AddInitScriptAsync("navigator.storage.estimate = async () => ({ quota: 80_000_000, usage: 60_000_000 });");

        await OpenBenchAsync("plug-condition");

        await Expect(Page.Locator("#nearly-full")).ToHaveTextAsync(
            "This device is nearly full: while the network is gone it has room for about 3 photos. Free some room on it.");
        Assert.Empty(await Accessibility.FaultsAsync(Page));
    }

    [Fact]
    public async Task Phone_without_the_certificate_works_and_says_what_is_missing()
    {
        await using var other = await Phone.StartAsync(fixture.Playwright, _folder.Path, trusts: false);
        await other.PairAsync(_program, await _workshop.Page.Context.NewPageAsync());

        await other.Page.GotoAsync(new Uri(_program.Phones!, "/now").ToString());

        await Expect(other.Page.Locator("#bench")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Icon_on_the_phone_opens_the_open_inspection()
    {
        await _phone.PairAsync(_program, await _workshop.Page.Context.NewPageAsync());

        await Page.GotoAsync(new Uri(_program.Phones!, "/now").ToString());

        await Expect(Page.Locator("#bench")).ToBeVisibleAsync();
        Assert.Equal(new Uri(_workshop.Page.Url).AbsolutePath, new Uri(Page.Url).AbsolutePath);
    }

    private async Task OpenBenchAsync(string check)
    {
        await Page.GotoAsync(new Uri(_program.Phones!, $"{new Uri(_workshop.Page.Url).AbsolutePath}?check={check}").ToString());
        await Page.UntilAsync("document.readyState === 'complete'");
    }
}

using InspectLog.Browser.Tests.Support;
using static Microsoft.Playwright.Assertions;

namespace InspectLog.Browser.Tests;

/// <summary>What the device itself says of a value that waits: only whether it lies between the limits, and nothing where it
/// is not sure what was typed.</summary>
public sealed class OfflineLimitsTests(BrowserFixture fixture) : BenchTests(fixture)
{
    [Fact]
    public async Task Typed_values_are_held_against_the_limits_or_left_alone()
    {
        await OpenAsync("coil-secondary-resistance", 390, 844);
        var said = await Page.EvaluateAsync<string[]>(
            """
            async () => {
              const { $offline_limits: offline } = await import(document.querySelector("script[type=module]").src);
              const form = document.querySelector("#measure form");
              return ["9.4", "9.4k", "9.4 kΩ", "13", "13.1", "9400", "9.4; 14", "0.4; 14", "9,4", "-9.4", "", "nine", "9.4 V"]
                .map((typed) => offline.againstLimits(form, typed, "kΩ")?.split(" the ")[0] ?? "nothing")
                .concat(offline.againstLimits(form, "9400", "Ω"));
            }
            """);

        Assert.Equal(
            [
                "between", "between", "between", "between", "not between", "not between", "partly between", "not between",
                "nothing", "not between", "nothing", "nothing", "nothing", said[^1],
            ],
            said);
        Assert.StartsWith("between the limits (", said[^1], StringComparison.Ordinal);

        await OpenAsync("plug-condition", 390, 844);
        await Expect(Page.Locator("[data-limits]")).ToHaveCountAsync(0);
    }
}

using Deque.AxeCore.Commons;
using Microsoft.Playwright;

namespace InspectLog.Browser.Tests.Support;

/// <summary>What axe-core finds wrong with a page.</summary>
/// <remarks>It runs in the page itself, which has no frames: the library's own way opens a second page for every run and
/// sends every node that passed there and back, which takes many times as long.</remarks>
internal static class Accessibility
{
    private static readonly string Axe = new BundledAxeScriptProvider().GetScript();

    public static async Task<IReadOnlyList<string>> FaultsAsync(IPage page)
    {
        if (!await page.EvaluateAsync<bool>("'axe' in globalThis"))
        {
            await page.EvaluateAsync(Axe);
        }

        return await page.EvaluateAsync<string[]>("""
            async () => {
              const { violations } = await axe.run(document, {
                resultTypes: ["violations"],
                rules: { "target-size": { enabled: true } },
              });
              return violations.flatMap(fault => fault.nodes.map(node =>
                `${fault.id} (${fault.impact}) at ${node.target}: ${fault.help}\n${node.failureSummary}\n${node.html}`));
            }
            """);
    }
}

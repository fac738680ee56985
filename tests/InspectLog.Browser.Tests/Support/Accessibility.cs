using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace InspectLog.Browser.Tests.Support;

/// <summary>What axe-core finds wrong with a page.</summary>
internal static class Accessibility
{
    public static async Task<IReadOnlyList<string>> FaultsAsync(IPage page)
    {
        var result = await page.RunAxe();
        return [.. result.Violations.SelectMany(Lines)];
    }

    private static IEnumerable<string> Lines(AxeResultItem fault) =>
        fault.Nodes.Select(node => $"{fault.Id} ({fault.Impact}) at {node.Target}: {fault.Help}\n{node.Html}");
}

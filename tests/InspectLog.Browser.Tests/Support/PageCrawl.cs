using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace InspectLog.Browser.Tests.Support;

/// <summary>Finds every page of the program by following its links.</summary>
internal static partial class PageCrawl
{
    /// <summary>Addresses that links lead to, one for each sort of page and each check, in the order found.</summary>
    /// <param name="page">Where to look.</param>
    /// <param name="starts">Addresses to begin with; all of them are among the answer.</param>
    public static async Task<IReadOnlyList<string>> AddressesAsync(IPage page, params string[] starts)
    {
        var found = starts.ToDictionary(start => start);
        var next = new Queue<string>(starts);
        while (next.TryDequeue(out var address))
        {
            await page.GotoAsync(address);
            var links = await page.EvaluateAsync<string[]>(
                "[...document.querySelectorAll('a[href]')].filter(a => a.origin === location.origin).map(a => a.pathname + a.search)");
            foreach (var link in links.Where(IsPage))
            {
                if (found.TryAdd(SortOf(link), link))
                {
                    next.Enqueue(link);
                }
            }
        }

        return [.. found.Values];
    }

    private static bool IsPage(string link) =>
        !link.StartsWith("/media/", StringComparison.Ordinal) && !link.StartsWith("/photos/", StringComparison.Ordinal);

    /// <summary>Pages that differ in their vehicle, number or place only are of one sort, and so are the trends of
    /// different checks; every check of the bench counts.</summary>
    private static string SortOf(string address) =>
        Place().Replace(Trend().Replace(Number().Replace(Vehicle().Replace(address, "/vehicles/V"), "/N"), "/trends/T"), "");

    [GeneratedRegex("/vehicles/(?!new$)[^/?]+")]
    private static partial Regex Vehicle();

    [GeneratedRegex(@"/\d+")]
    private static partial Regex Number();

    [GeneratedRegex(@"/trends/[^?]+")]
    private static partial Regex Trend();

    [GeneratedRegex(@"&place=\d+")]
    private static partial Regex Place();
}

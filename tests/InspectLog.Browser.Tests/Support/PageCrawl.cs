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
                "[...document.querySelectorAll('a[href]:not([download])')].filter(a => a.origin === location.origin).map(a => a.pathname + a.search)");
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

    // A panel that is open from the start, as it is without scripts, lies over the page until that is scrolled; the page
    // itself is looked at with the panel shut.
    private static bool IsPage(string link) =>
        !link.StartsWith("/media/", StringComparison.Ordinal)
        && !link.StartsWith("/photos/", StringComparison.Ordinal)
        && !link.Contains("unfolded=", StringComparison.Ordinal);

    /// <summary>Pages that differ in their vehicle, number, place, part, photo beside, way back or what is marked on them only are of one sort,
    /// and so are the trends of different checks; every check of the bench counts.</summary>
    private static string SortOf(string address) => Stretch().Match(address) is { Success: true } stretch
        ? stretch.Value
        : Place().Replace(Beside().Replace(Trend().Replace(Number().Replace(Vehicle().Replace(address, "/vehicles/V"), "/N"), "/trends/T"), "$1"), "");

    /// <summary>Another stretch of the journal or of what was captured: one of each is enough.</summary>
    [GeneratedRegex(@"[?&](upto|stream|show)=")]
    private static partial Regex Stretch();

    /// <summary>A photo and a working look the same whatever check they were opened from.</summary>
    [GeneratedRegex(@"(/photos/N|/workings/[^?]+)\?.*")]
    private static partial Regex Beside();

    [GeneratedRegex("/vehicles/(?!new$)[^/?]+")]
    private static partial Regex Vehicle();

    [GeneratedRegex(@"/\d+")]
    private static partial Regex Number();

    [GeneratedRegex(@"/trends/[^?]+")]
    private static partial Regex Trend();

    [GeneratedRegex(@"[?&](place|at|to|found|here|back|kept|from|with|like|part)=[^&]*")]
    private static partial Regex Place();
}

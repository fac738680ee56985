using Microsoft.Playwright;

namespace InspectLog.Browser.Tests.Support;

/// <summary>Which controls of a page are too small for a finger in a glove or for their own words, or lie over each
/// other. Links within a text are not counted.</summary>
internal static class PressTargets
{
    private const int Least = 44;

    public static async Task<IReadOnlyList<string>> FaultsAsync(IPage page) => await page.EvaluateAsync<string[]>(
        """
        (least) => {
          const place = (one) => one.matches("input[type=checkbox], input[type=radio], input[type=file]") ? one.closest("label") ?? one : one;
          // What scrolls sideways shows of it only what is between its own edges.
          const shown = (one) => {
            const row = one.closest(".places, .numbers, .table-room")?.getBoundingClientRect();
            const { left, right, top, bottom } = one.getBoundingClientRect();
            return { left: Math.max(left, row?.left ?? left), right: Math.min(right, row?.right ?? right), top, bottom };
          };
          const unseen = (one, box) => !one.checkVisibility({ visibilityProperty: true }) || box.width <= 1 || box.height <= 1;
          const cut = (one) => one.matches("button, summary, a") && one.scrollWidth > one.clientWidth + 1;
          const bar = ({ one }) => one.closest(".tools");
          const overlap = (from, to, otherFrom, otherTo) => Math.min(to, otherTo) - Math.max(from, otherFrom) > 1;
          const across = (a, b) => bar(a) === bar(b) && !a.one.contains(b.one) && !b.one.contains(a.one)
            && overlap(a.shown.left, a.shown.right, b.shown.left, b.shown.right) && overlap(a.box.top, a.box.bottom, b.box.top, b.box.bottom);
          const controls = [...document.querySelectorAll("button, summary, select, textarea, input:not([type=hidden]), a[href]")]
            .filter(one => one.tagName !== "A" || getComputedStyle(one).display !== "inline")
            .map(place)
            .map(one => ({ one, box: one.getBoundingClientRect(), shown: shown(one) }))
            .filter(({ one, box }) => !unseen(one, box));
          return [
            ...controls
              .filter(({ box }) => Math.min(box.width, box.height) < least - 0.5)
              .map(({ one, box }) => `${Math.round(box.width)} by ${Math.round(box.height)} px is too small to press:\n${one.outerHTML.slice(0, 200)}`),
            ...controls
              .filter(({ one }) => cut(one))
              .map(({ one }) => `its words need ${one.scrollWidth} px and have ${one.clientWidth}:\n${one.outerHTML.slice(0, 200)}`),
            ...controls
              .filter((one, at) => controls.slice(at + 1).some(other => across(one, other)))
              .map(({ one }) => `another control lies over it:\n${one.outerHTML.slice(0, 200)}`),
          ];
        }
        """,
        Least);
}

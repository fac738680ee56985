using Microsoft.Playwright;

namespace InspectLog.Browser.Tests.Support;

/// <summary>A small window, or one with large text, in which every control must still be whole and free.</summary>
/// <param name="Width">Pixels.</param>
/// <param name="Height">Pixels.</param>
/// <param name="Text">How many times as large as usual the text is.</param>
internal sealed record Window(int Width, int Height, int Text = 1)
{
    /// <summary>A small phone, a phone lying, one with its keyboard up, and one with text twice as large.</summary>
    public static IReadOnlyList<Window> Small { get; } = [new(360, 640), new(844, 390), new(390, 300), new(390, 844, Text: 2)];

    /// <summary>Gives an open page this window, without loading it again.</summary>
    public async Task TakeOnAsync(IPage page)
    {
        await page.SetViewportSizeAsync(Width, Height);
        await page.EvaluateAsync("text => { document.documentElement.style.fontSize = text === 1 ? '' : `${100 * text}%`; }", Text);
    }

    /// <summary>Controls that cannot be pressed where they are once the page is moved to them: beside the window, under
    /// something else, or cut off by what they stand in.</summary>
    public static async Task<IReadOnlyList<string>> HiddenAsync(IPage page) => await page.EvaluateAsync<string[]>(
        """
        () => {
          const place = (one) => one.matches("input[type=checkbox], input[type=radio], input[type=file]") ? one.closest("label") ?? one : one;
          const isSeen = (one) => one.checkVisibility({ visibilityProperty: true }) && one.getBoundingClientRect().width > 1 && one.getBoundingClientRect().height > 1;
          const says = (one) => one.outerHTML.slice(0, 160);
          const faults = [];
          for (const one of new Set([...document.querySelectorAll("button, summary, select, textarea, input:not([type=hidden]), a[href]:not(.skip)")].map(place).filter(isSeen))) {
            one.scrollIntoView({ block: "center", inline: "center", behavior: "instant" });
            const box = [...one.getClientRects()].reduce((large, next) => next.width * next.height > large.width * large.height ? next : large);
            const at = document.elementFromPoint(box.left + box.width / 2, box.top + box.height / 2);
            if (box.left < -1 || box.right > innerWidth + 1) {
              faults.push(`it stands beside the window, ${Math.round(box.left)} to ${Math.round(box.right)} px:\n${says(one)}`);
            } else if (!at || !(one.contains(at) || at.contains(one) && at.matches("label, a, button, summary"))) {
              faults.push(`it cannot be pressed, under it lies ${at ? says(at).slice(0, 60) : "nothing"}:\n${says(one)}`);
            }
          }

          scrollTo({ top: 0, behavior: "instant" });
          return faults;
        }
        """);

    public override string ToString() => $"{Width} × {Height} px{(Text == 1 ? "" : $", text {100 * Text} %")}";
}

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

    /// <summary>Words that are broken within, with all folds open. What has no words to break at, as a hash, may be.</summary>
    public static async Task<IReadOnlyList<string>> BrokenWordsAsync(IPage page) => await page.EvaluateAsync<string[]>(
        """
        () => {
          document.querySelectorAll("details:not(.tool-box)").forEach((fold) => { fold.open = true; });
          const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
          const range = document.createRange();
          const faults = [];
          while (texts.nextNode()) {
            const text = texts.currentNode;
            const around = text.parentElement;
            if (!around.checkVisibility() || around.closest("script, svg, option, .unseen, .hash, code, pre, .fingerprint") || around.getBoundingClientRect().width <= 1) {
              continue;
            }

            // A name like Some.Library.For.Something is longer than a line, and has to be broken somewhere.
            const longest = 16;
            const isPartOfLong = (at) => /\S*$/.exec(text.data.slice(0, at))[0].length + /^\S*/.exec(text.data.slice(at))[0].length > longest;
            for (const word of text.data.matchAll(/[\p{L}\p{N}]{2,}/gu)) {
              if (isPartOfLong(word.index)) {
                continue;
              }

              range.setStart(text, word.index);
              range.setEnd(text, word.index + word[0].length);
              const lines = new Set([...range.getClientRects()].filter(({ width }) => width > 0).map(({ top }) => Math.round(top)));
              if (lines.size > 1) {
                faults.push(`“${word[0]}” is broken:\n${around.outerHTML.slice(0, 160)}`);
              }
            }
          }

          return faults;
        }
        """);

    public override string ToString() => $"{Width} × {Height} px{(Text == 1 ? "" : $", text {100 * Text} %")}";
}

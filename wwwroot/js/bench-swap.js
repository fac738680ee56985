// Teaches htmx the swap style "bench": answers are put in place part by part.

import { replace } from "./morph.js";

// Pages none of whose parts are exchanged come without htmx.
globalThis.htmx?.defineExtension("bench", {
  isInlineSwap: (style) => style === "bench",
  handleSwap(style, target, fragment) {
    return style === "bench" ? Array.from(replace(target, fragment.children)) : false;
  },
});

// News of what was pressed can come before its answer and take the pressed form away. Of a form that is gone htmx does not
// know how its answer is put in place, and would put one bench into the other.
document.addEventListener("htmx:beforeSwap", (event) => {
  const { target, detail } = event;
  const pressed = detail.requestConfig?.elt;
  if (target.id === "bench" && pressed && !pressed.isConnected && detail.shouldSwap) {
    detail.shouldSwap = false;
    const fresh = new DOMParser().parseFromString(detail.xhr.responseText, "text/html").getElementById("bench");
    if (fresh) {
      replace(target, fresh);
      const bench = document.getElementById("bench");
      htmx.process(bench);
      bench.dispatchEvent(new CustomEvent("htmx:afterSettle", { bubbles: true, detail }));
    }
  }
});

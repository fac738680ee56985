// Teaches htmx the swap style "bench": answers are put in place part by part.

import { replace } from "./morph.js";

htmx.defineExtension("bench", {
  isInlineSwap: (style) => style === "bench",
  handleSwap(style, target, fragment) {
    return style === "bench" ? Array.from(replace(target, fragment.children)) : false;
  },
});

// A note that is begun outlives the page: a phone throws away pages that it does not show, and a reload is a slip away.

import { markInUse } from "./morph.js";

const key = `draft ${location.pathname}`;
const field = () => document.getElementById("note-text");

if (field()) {
  try {
    if (sessionStorage[key]) {
      field().value ||= sessionStorage[key];
      markInUse(field().form);
    }
  } catch {
    // Private windows may not keep anything.
  }

  document.addEventListener("input", keep);
  document.addEventListener("bench:fresh", keep);
  document.addEventListener("reset", () => setTimeout(keep));
}

function keep() {
  try {
    sessionStorage[key] = field()?.value ?? "";
  } catch {
    // As above.
  }
}

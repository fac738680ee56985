// The tools of the bar and the folds of the bench: one tool is open at a time, and what opens has the focus in its field.

import { bringIntoView, focusStill, whenWhole } from "./place.js";

document.addEventListener("toggle", ({ target }) => {
  if (target.matches?.("details.tool-box[open]")) {
    closeOtherTools(target);
    focusFirstField(target);
  } else if (target.matches?.("details.undo[open]") && target.querySelector("summary") === document.activeElement) {
    const field = target.querySelector("[data-first]");
    if (field) {
      field.focus({ preventScroll: true });
      bringIntoView(target); // the bar may cover what opened
    }
  }
}, true);

document.addEventListener("keydown", (key) => {
  if (key.key === "Escape") {
    const open = document.querySelector("details.tool-box[open]");
    if (open) {
      open.open = false;
      summaryOf(open)?.focus();
    }
  }
});

// Of a check that is read with gauges or a meter, one panel leads to the other.
document.addEventListener("click", (press) => {
  const other = press.target.closest?.("[data-opens-tool]");
  if (other) {
    press.preventDefault();
    openTool(other.dataset.opensTool);
  }
});

// A tool pressed before this script had arrived is open by now, its summary still in focus.
const pressedEarly = document.activeElement?.closest("details.tool-box[open]");
if (pressedEarly && document.activeElement.matches("summary")) {
  focusFirstField(pressedEarly);
}

// A link that led here by its address to a tool opens it. Until the page is whole the browser itself goes to the address,
// and takes the focus away in doing so.
if (location.hash) {
  whenWhole(() => openTool(location.hash.slice(1)));
}

export function focusFirstField(tool) {
  const field = tool.querySelector("[data-first]") ?? tool.querySelector("input:not([type=hidden], [type=radio]), select, textarea");
  // The panel lies over the page: only what is in it need move, if it does not fit. Where it goes with the page, that does.
  focusStill(field);
  field?.select?.();
  if (field) {
    bringIntoView(field);
  }
}

export function openTool(id) {
  const tool = document.getElementById(id);
  if (tool?.matches("details.tool-box")) {
    tool.open = true;
    focusFirstField(tool);
  }
}

/** What opens a tool again: of two that share a place in the bar, the one that is seen there. */
export function summaryOf(tool) {
  return [...tool.parentElement.querySelectorAll(":scope > details > summary")].find((one) => one.checkVisibility()) ?? tool.querySelector("summary");
}

function closeOtherTools(open) {
  document.querySelectorAll("details.tool-box[open]").forEach((tool) => {
    if (tool !== open) {
      tool.open = false;
    }
  });
}

// What every form needs: to say when nothing was saved, and to put the focus where the answer is.

import { announce } from "./announce.js";
import { markInUse } from "./morph.js";
import { hideTrouble, showTrouble } from "./trouble.js";

let pressed = null;

document.addEventListener("htmx:beforeRequest", (event) => {
  hideTrouble();
  const { elt, requestConfig } = event.detail;
  pressed = placeOf(requestConfig.triggeringEvent?.submitter ?? document.activeElement, elt);
});
document.addEventListener("htmx:responseError", (event) => failed(event, `The program answered ${event.detail.xhr.status}.`));
document.addEventListener("htmx:sendError", (event) => failed(event, "InspectLog did not answer. See that it is still running."));
document.addEventListener("htmx:timeout", (event) => failed(event, "InspectLog took too long to answer."));
document.addEventListener("htmx:afterSettle", settled);
document.addEventListener("input", ({ target }) => {
  const form = target.closest?.("#bench form");
  if (form && !target.matches("[type=radio], [type=checkbox], [type=file]")) {
    markInUse(form);
  }
});

document.addEventListener("toggle", ({ target }) => {
  if (target.matches?.("details.tool-box[open]")) {
    closeOtherTools(target);
    focusFirstField(target);
  }
}, true);

document.addEventListener("keydown", (key) => {
  if (key.key === "Escape") {
    const open = document.querySelector("details.tool-box[open]");
    if (open) {
      open.open = false;
      open.querySelector("summary").focus();
    }
  }
});

// A link that led here by its address to a tool opens it.
if (location.hash) {
  openTool(location.hash.slice(1));
}

document.addEventListener("click", ({ target }) => {
  if (target.closest?.("[data-print]")) {
    print();
  }
});

function failed(event, why) {
  const isSend = event.detail.requestConfig?.verb === "post";
  const { elt } = event.detail;
  showTrouble(isSend ? `This was not saved. ${why} What you typed is still here.` : `This could not be shown. ${why}`, () => {
    if (elt.isConnected && elt.tagName === "FORM") {
      elt.requestSubmit();
    } else if (elt.isConnected) {
      elt.click();
    }
  });
}

/** Where the focus was: the capture it was in, or the list and how far down. */
function placeOf(element, sender) {
  const list = element?.closest?.("[data-list]");
  return {
    item: element?.closest?.("#captures > li")?.id,
    list: list?.id,
    index: list ? [...list.querySelectorAll("[data-step]")].findIndex((step) => step.contains(element)) : -1,
    tool: sender?.closest?.("details.tool-box")?.id,
    isLink: sender?.matches?.("a"),
    opens: sender?.dataset?.opens,
  };
}

function settled() {
  const wrong = document.querySelector("#bench .problems, #bench [data-question]");
  if (wrong) {
    wrong.focus();
    return;
  }

  if (pressed?.tool) {
    answered(document.getElementById(pressed.tool));
  } else if (pressed?.opens) {
    openTool(pressed.opens);
  } else if (pressed?.isLink) {
    document.getElementById("check").scrollTop = 0;
    focus(document.getElementById("check-title"));
  } else if (document.activeElement === document.body || document.activeElement === null) {
    stayNear();
  }

  pressed = null;
}

/** A tool whose form was taken closes, or, with places left to fill, waits for the next one. */
function answered(tool) {
  if (!tool) {
    return;
  }

  const result = document.getElementById("result")?.dataset.sentence;
  if (result) {
    announce(result);
  }

  tool.open = "stays" in tool.dataset;
  if (tool.open) {
    focusFirstField(tool);
  } else {
    focus(document.getElementById("result") ?? document.getElementById("check-title"));
  }
}

/** The element that had the focus is gone: go to what waits next in the same capture, or to what took its place in
    its list; else to a heading. Never to Drop, which a second press would then set off. */
function stayNear() {
  const waiting = pressed?.item && document.getElementById(pressed.item)?.querySelector(".card button.main");
  const list = pressed?.list && document.getElementById(pressed.list);
  const steps = list ? [...list.querySelectorAll("[data-step]")] : [];
  const next = steps[Math.min(pressed?.index ?? 0, steps.length - 1)];
  const heading = pressed?.item ? "captures-title" : `${pressed?.list}-title`;
  focus(waiting ?? next?.querySelector("button") ?? document.getElementById(heading) ?? document.getElementById("check-title"));
}

function focus(element) {
  element?.focus();
}

function focusFirstField(tool) {
  const field = tool.querySelector("[data-first]") ?? tool.querySelector("input:not([type=hidden], [type=radio]), select, textarea");
  // The panel stays in view by itself; the page behind it need not move.
  field?.focus({ preventScroll: true });
  field?.select?.();
}

function openTool(id) {
  const tool = document.getElementById(id);
  if (tool?.matches("details.tool-box")) {
    tool.open = true;
    focusFirstField(tool);
  }
}

function closeOtherTools(open) {
  document.querySelectorAll("details.tool-box[open]").forEach((tool) => {
    if (tool !== open) {
      tool.open = false;
    }
  });
}

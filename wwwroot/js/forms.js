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

/** Where the focus was: the list it was in and how far down. */
function placeOf(element, sender) {
  const list = element?.closest?.("[data-list]");
  const tool = sender?.closest?.("details.tool-box");
  return {
    list: list?.id,
    index: list ? [...list.querySelectorAll("[data-step]")].findIndex((step) => step.contains(element)) : -1,
    tool: tool?.id,
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

/** The element that had the focus is gone: go to what took its place, else to the heading of its list. */
function stayNear() {
  const list = pressed?.list && document.getElementById(pressed.list);
  const steps = list ? [...list.querySelectorAll("[data-step]")] : [];
  const next = steps[Math.min(pressed?.index ?? 0, steps.length - 1)];
  focus(next?.querySelector("button, a[href], input") ?? document.getElementById(`${pressed?.list}-title`) ?? document.getElementById("check-title"));
}

function focus(element) {
  element?.focus({ preventScroll: false });
}

function focusFirstField(tool) {
  const field = tool.querySelector("[data-first]") ?? tool.querySelector("input:not([type=hidden], [type=radio]), select, textarea");
  field?.focus();
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

// What every form needs: to say when nothing was saved, and to put the focus where the answer is.

import { announce } from "./announce.js";
import { sayWhatItDid, whatItDid } from "./did.js";
import { markInUse } from "./morph.js";
import { keepOffline } from "./offline-forms.js";
import { bringIntoView, focusStill, isInView, keepPlace, placeOf } from "./place.js";
import { markAnswered, markSent, sendAgain } from "./sent-once.js";
import { focusFirstField, openTool } from "./tools.js";
import { hideTrouble, showTrouble } from "./trouble.js";

// A network that swallows what is sent, as where its edge is, breaks no connection: what has no answer by then waits on
// this device, and is sent from there.
const patience = 20_000;
const patienceForPhotos = 45_000;

let pressed = null;

document.addEventListener("htmx:beforeRequest", (event) => {
  hideTrouble();
  const { elt, requestConfig } = event.detail;
  pressed = whereWas(requestConfig.triggeringEvent?.submitter ?? document.activeElement, elt);
  if (requestConfig.verb === "post") {
    markSent(elt);
    event.detail.xhr.timeout = elt.enctype === "multipart/form-data" ? patienceForPhotos : patience;
  }
});
document.addEventListener("htmx:beforeSwap", () => {
  // Measured at the last moment: the person may have moved the page while the answer was on its way.
  if (pressed) {
    pressed.around = placeOf(pressed.element && pressed.sender.contains(pressed.element) ? pressed.element : pressed.sender);
    pressed.said = whatItDid();
  }
});
document.addEventListener("htmx:responseError", (event) => failed(event, `The program answered ${event.detail.xhr.status}.`));
document.addEventListener("htmx:sendError", (event) => keepOffline(event) || failed(event, "InspectLog did not answer. See that it is still running."));
document.addEventListener("htmx:timeout", (event) => keepOffline(event) || failed(event, "InspectLog took too long to answer."));
document.addEventListener("htmx:afterSettle", settled);
document.addEventListener("input", ({ target }) => {
  const form = target.closest?.("#bench form");
  if (form && !target.matches("[type=radio], [type=checkbox], [type=file]")) {
    markInUse(form);
    if ("sent" in form.dataset && target.matches("textarea")) {
      form.dataset.changed = "";
    }
  }
});

document.addEventListener("click", ({ target }) => {
  if (target.closest?.("[data-print]")) {
    print();
  }
});

function failed(event, why) {
  const { elt, requestConfig, xhr } = event.detail;
  const isSend = requestConfig?.verb === "post";
  if (xhr?.status >= 400 && xhr.status < 500) {
    markAnswered(elt);
  }

  showTrouble(isSend ? `This was not saved. ${why} What you typed is still here.` : `This could not be shown. ${why}`, () => {
    if (elt.isConnected && elt.tagName === "FORM") {
      sendAgain(elt, requestConfig);
    } else if (elt.isConnected) {
      elt.click();
    }
  });
}

/** Where the press was: the capture it was in, or the list and how far down. */
function whereWas(element, sender) {
  const list = element?.closest?.("[data-list]");
  return {
    element,
    words: element?.textContent,
    sender,
    around: [],
    said: "",
    item: element?.closest?.("#captures > li")?.id,
    list: list?.id,
    index: list ? [...list.querySelectorAll("[data-step]")].findIndex((step) => step.contains(element)) : -1,
    tool: sender?.closest?.("details.tool-box")?.id,
    isLink: sender?.matches?.("a"),
    isNear: Boolean(sender?.closest?.(".places, #stream")),
    isHeard: Boolean(element?.closest?.("#heard")),
    opens: sender?.dataset?.opens,
  };
}

function settled() {
  const press = pressed;
  pressed = null;
  if (!press || press.isLink) {
    opened(press);
    return;
  }

  keepPlace(press.around);
  sayWhatItDid(press.said, press.around);
  const wrong = document.querySelector("#bench .problems, #bench [data-question]") ?? document.querySelector("#bench [aria-invalid=true]");
  if (wrong) {
    focusStill(wrong);
    bringIntoView(wrong);
  } else if (press.tool && isElsewhere(press.tool)) {
    announceResult();
  } else if (press.tool === "write") {
    written(document.getElementById(press.tool), press.sender.getAttribute("action").endsWith("/notes"));
  } else if (press.tool) {
    answered(document.getElementById(press.tool));
  } else if (document.activeElement === document.body || document.activeElement === null || document.activeElement === press.element) {
    stayNear(press);
  }
}

/** A link opened another check or place. */
function opened(link) {
  if (link?.opens) {
    keepPlace(link.isNear ? link.around : []);
    openTool(link.opens);
  } else if (link?.isNear) {
    keepPlace(link.around);
    focusStill(link.around.find(({ at, id }) => at.isConnected && at.id === id)?.at);
  } else if (link) {
    document.getElementById("check").scrollTop = 0;
    focus(document.getElementById("check-title"));
  }
}

/** Whether the person went on to another tool while the answer was on its way: then that one stays open, and the focus in
    it. */
function isElsewhere(tool) {
  return document.querySelector(`details.tool-box[open]:not(#${tool})`) !== null;
}

function announceResult() {
  const result = document.getElementById("result")?.dataset.sentence;
  if (result) {
    announce(result);
  }
}

/** A tool whose form was taken closes, or, with places left to fill, waits for the next one. */
function answered(tool) {
  if (!tool) {
    return;
  }

  announceResult();
  tool.open = "stays" in tool.dataset;
  if (tool.open) {
    focusFirstField(tool);
  } else {
    focus(document.getElementById("result") ?? document.getElementById("check-title"));
  }
}

/** What was written is kept: the panel closes, and what a note seems to say comes into view to be settled. */
function written(panel, isNote) {
  if (panel.querySelector("form[data-in-use] textarea")?.value) {
    return; // The next note is begun already.
  }

  panel.open = false;
  const finding = isNote && document.querySelector("#captures > li:first-child .card[id^=finding-]");
  const heard = document.getElementById("heard");
  if (finding && heard?.checkVisibility()) {
    focusStill(heard);
  } else if (finding) {
    bringIntoView(finding);
    focusStill(finding);
  } else {
    panel.querySelector("summary").focus({ preventScroll: true });
  }
}

/** The focus stays on what was pressed. Where that is gone: on what waits next in the same capture, or on what took its
    place in its list, if it can be seen; else on what it stood in. Never on Drop, which a second press would then set
    off. */
function stayNear(press) {
  const item = press.item && document.getElementById(press.item);
  const list = press.list && document.getElementById(press.list);
  const steps = list ? [...list.querySelectorAll("[data-step]")] : [];
  const next = steps[Math.min(press.index, steps.length - 1)];
  const around = press.around.find(({ at, id }) => at.isConnected && id && at.id === id)?.at;
  const heading = document.getElementById(press.item ? "captures-title" : `${press.list}-title`);
  const same = press.element?.isConnected && press.element.matches("button, input") && press.element.textContent === press.words && !isDrop(press.element) ? press.element : null;
  const heard = press.isHeard && document.getElementById("heard");
  const near = press.isHeard ? [heard] : [same, item?.querySelector(".card button.main"), next?.querySelector("button"), around, item, heading];
  focusStill(near.find(isInView) ?? near.find(Boolean) ?? document.getElementById("did"));
}

function isDrop(button) {
  return button.form?.getAttribute("action").endsWith("/drop");
}

function focus(element) {
  element?.focus();
}

// A form of the bench that could not be sent goes into the outbox, as it was filled in and with the id of its capture. The
// form itself is ready for the next.

import { beginClock } from "./offline-clock.js";
import { againstLimits } from "./offline-limits.js";
import { keepForm } from "./outbox.js";
import { focusStill } from "./place.js";
import { markAnswered } from "./sent-once.js";

/** Takes over a form whose sending failed; false where it is none that can wait. */
export function keepOffline({ detail: { elt, requestConfig } }) {
  if (requestConfig?.verb !== "post" || !elt.matches?.("#bench form") || !requestConfig.formData?.get("capture")) {
    return false;
  }

  const fields = [...requestConfig.formData.entries()];
  const words = wordsOf(elt, requestConfig);
  beginClock(pressedOf(elt, requestConfig), requestConfig.formData.get("capture"));
  markAnswered(elt);
  elt.reset();
  delete elt.dataset.inUse;
  elt.elements.capture.value = crypto.randomUUID();
  keepFields({ address: requestConfig.path, fields, hasFiles: elt.enctype === "multipart/form-data", words });
  return true;
}

async function keepFields(form) {
  const copying = Promise.all(form.fields.map(async ([name, value]) => [name, value instanceof File ? await copyOf(value) : value]));
  const kept = await keepForm(form, copying);
  if (kept) {
    const says = kept.isKept ? `Kept on this device: ${form.words}.` : "This device cannot keep it. Leave the page open.";
    offerUndo(says, kept);
  }
}

/** One press takes back what was pressed by mistake, as long as it waits here. */
function offerUndo(says, { isHere, takeBack }) {
  const line = document.getElementById("did");
  const undo = document.createElement("button");
  Object.assign(undo, { type: "button", id: "did-undo", textContent: "Undo" });
  undo.addEventListener("click", () => { takeBack(); line.textContent = "Taken back."; focusStill(line); });
  document.addEventListener("outbox:changed", () => isHere() || undo.remove());
  document.getElementById("did-undo")?.remove();
  line.textContent = says;
  line.after(undo);
}

/** A photo lies in a file of the camera's, which may be gone or another by the time it is sent. */
async function copyOf(file) {
  return new File([await file.arrayBuffer()], file.name, { type: file.type });
}

function pressedOf(form, { triggeringEvent }) {
  return triggeringEvent?.submitter ?? form.querySelector("button[type=submit]");
}

/** What a press means: "It is so now" says nothing by itself. */
function wordsOfPress(button) {
  return `“${button?.dataset.what ?? button?.innerText.replace(/\s+/g, " ").trim()}”`;
}

/** What it is, for a person who looks through what waits. */
function wordsOf(form, { formData, triggeringEvent }) {
  const check = document.getElementById("check-title")?.textContent.trim();
  const typed = formData.get("value") || formData.get("text");
  const photos = formData.getAll("photo").filter((file) => file.size > 0).length;
  const places = formData.getAll("cylinder").filter(Boolean).join(", ");
  const what = photos > 0 ? `${photos === 1 ? "Photo" : `${photos} photos`}`
    : typed ? `“${typed}”`
    : wordsOfPress(pressedOf(form, { triggeringEvent }));
  const limits = formData.get("value") && againstLimits(form, formData.get("value"), formData.get("unit"));
  const where = formData.get("follows") ? "filed by what waits before it" : check;
  return [[what, where, places].filter(Boolean).join(", "), limits].filter(Boolean).join(": ");
}

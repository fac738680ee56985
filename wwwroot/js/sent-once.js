// A form goes with the id it came with and the time of the press, so that one that is sent again, because its answer got
// lost, is the same capture. Without scripts the id alone does that.

import { localTime } from "./local-time.js";

// A page or a check that is shown again from what the device keeps, because the network is gone, brings the same ids again:
// what is captured on it is other captures all the same.
let showing = part();
document.addEventListener("bench:fresh", () => { showing = part(); });

function part() {
  return crypto.randomUUID().slice(0, 8);
}

document.addEventListener("formdata", ({ target, formData }) => {
  if (formData.has("capture")) {
    const isSentAgain = "captured" in target.dataset;
    formData.set("captured", isSentAgain ? target.dataset.captured : localTime());
    formData.set("capture", isSentAgain ? formData.get("capture") : `${formData.get("capture")}-${showing}`);
  }
});

/** Marks a form as on its way: until it is answered, news from elsewhere leave it and its id alone. */
export function markSent(form) {
  if (form.matches("form")) {
    form.dataset.sent = "";
    form.querySelectorAll("textarea").forEach((field) => { field.sentText = field.value; });
  }
}

/** The form got an answer, though none that shows it anew: what is sent next is another capture of the same form. */
export function markAnswered(form) {
  delete form.dataset.sent;
}

/** Sends a form again as it was sent before: with the same id, the same time and the same button. */
export function sendAgain(form, { parameters, triggeringEvent }) {
  const field = form.querySelector("input[name=capture]");
  if (field && parameters.capture) {
    field.value = parameters.capture;
    form.dataset.captured = parameters.captured;
  }

  const button = triggeringEvent?.submitter;
  // htmx knows the button of a form by the click on it.
  if (button?.isConnected && button.form === form) {
    button.click();
  } else {
    form.requestSubmit();
  }

  delete form.dataset.captured;
}

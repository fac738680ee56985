// Photos: sent as soon as they are chosen, several at once, with their progress, to where the person stands.

import { announce } from "./announce.js";
import { standing } from "./standing.js";
import { hideTrouble, showTrouble } from "./trouble.js";

const largest = 25_000_000;
const types = ["image/jpeg", "image/png"];

/** Photos that were taken while others are on their way. */
let next;
let isOnItsWay = false;

document.addEventListener("change", ({ target }) => {
  const form = target.closest?.("form.photo-form");
  if (form && target.type === "file" && target.files.length > 0) {
    hideTrouble();
    const problem = problemOf([...target.files]);
    if (problem) {
      showTrouble(problem);
      target.value = "";
    } else if (isOnItsWay) {
      next ??= new DataTransfer();
      [...target.files].forEach((file) => next.items.add(file));
    } else {
      form.requestSubmit();
    }
  }
});

document.addEventListener("htmx:configRequest", ({ detail }) => {
  if (detail.elt.matches?.("form.photo-form")) {
    const { check, places, shows, follows } = standing();
    const { formData } = detail;
    if (check) {
      formData.set("check", check);
    }

    formData.delete("cylinder");
    places.forEach((place) => formData.append("cylinder", place));
    if (shows) {
      formData.set("shows", shows);
    }

    if (follows) {
      formData.set("follows", "newest");
    }
  }
});

// What was pressed about a photo is gone once it is answered: the focus stays with that photo.
let about = null;
document.addEventListener("htmx:beforeRequest", ({ detail }) => {
  about = detail.elt.closest?.("[data-photo-actions]")?.id;
  if (detail.elt.matches?.("form.photo-form")) {
    isOnItsWay = true;
    detail.xhr.addEventListener("loadend", () => {
      isOnItsWay = false;
      setTimeout(sendNext, 100); // once the answer stands
    });
  }
});
document.addEventListener("htmx:afterSwap", ({ detail }) => {
  // Not every browser gives the focus to what is pressed; without it, it would be put at the top of the page.
  if (detail.requestConfig?.elt?.matches?.("form.photo-form") && (document.activeElement ?? document.body) === document.body) {
    document.getElementById("photo-photo")?.focus({ preventScroll: true });
  }

  const actions = about && document.getElementById(about);
  about = null;
  if (actions && !actions.querySelector("[aria-invalid=true]")) {
    actions.querySelectorAll("details[open]").forEach((fold) => { fold.open = false; });
    actions.querySelector("summary, button")?.focus({ preventScroll: true });
    announce(actions.dataset.sentence ?? "Done.");
  }
});

document.addEventListener("htmx:xhr:progress", ({ target, detail }) => {
  if (target.matches?.("form.photo-form") && detail.lengthComputable) {
    status(detail.loaded < detail.total ? `Sending photos: ${Math.round(100 * detail.loaded / detail.total)} %` : "Photos are being looked at…");
  }
});

// The answer can have taken the form's place; htmx then tells it of what stands around it, so the form is asked of the request.
document.addEventListener("htmx:afterRequest", ({ detail }) => {
  const form = detail.requestConfig?.elt;
  if (form?.matches?.("form.photo-form")) {
    status("");
    // A refusal (422) is shown like an answer, so it counts as a success elsewhere.
    if (detail.successful && detail.xhr.status < 300) {
      form.reset();
      announce(document.getElementById("photo-kept")?.dataset.sentence ?? "Photos kept.");
    }
  }
});

function sendNext() {
  const field = document.getElementById("photo-photo");
  if (next && field) {
    field.files = next.files;
    next = undefined;
    field.form.elements.capture.value = crypto.randomUUID(); // another capture, whether the answer is shown already or not
    field.form.requestSubmit();
  }
}

function problemOf(files) {
  for (const file of files) {
    if (!types.includes(file.type)) {
      return `"${file.name}" is neither JPEG nor PNG, so it was not sent. Set the camera to JPEG, or save a copy as JPEG, and choose that.`;
    }

    if (file.size > largest) {
      return `"${file.name}" is larger than 25 MB, so it was not sent. Choose a smaller copy of it.`;
    }
  }

  return null;
}

function status(text) {
  const place = document.getElementById("sending");
  if (place) {
    place.textContent = text;
  }
}

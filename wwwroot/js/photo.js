// Photos: sent as soon as they are chosen, several at once, with their progress.

import { announce } from "./announce.js";
import { hideTrouble, showTrouble } from "./trouble.js";

const largest = 25_000_000;
const types = ["image/jpeg", "image/png"];

document.addEventListener("change", ({ target }) => {
  const form = target.closest?.("form.photo-form");
  if (form && target.type === "file" && target.files.length > 0) {
    hideTrouble();
    const problem = problemOf([...target.files]);
    if (problem) {
      showTrouble(problem);
      target.value = "";
    } else {
      form.requestSubmit();
    }
  }
});

document.addEventListener("htmx:xhr:progress", ({ target, detail }) => {
  if (target.matches?.("form.photo-form") && detail.lengthComputable) {
    status(detail.loaded < detail.total ? `Sending photos: ${Math.round(100 * detail.loaded / detail.total)} %` : "Photos are being looked at…");
  }
});

document.addEventListener("htmx:afterRequest", ({ target, detail }) => {
  if (target.matches?.("form.photo-form")) {
    status("");
    // A refusal (422) is shown like an answer, so it counts as a success elsewhere.
    if (detail.successful && detail.xhr.status < 300) {
      target.reset();
      announce("Photos kept.");
    }
  }
});

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

// Closing: one reason for every check that has none yet.

import { announce } from "./announce.js";

const usual = document.getElementById("usual-reasons");
const row = document.getElementById("fill-reasons");

if (usual) {
  usual.hidden = false;
  usual.addEventListener("click", ({ target }) => {
    const button = target.closest("[data-fill]");
    if (button) {
      fill(button.dataset.fill);
    }
  });
}

if (row) {
  const reason = document.getElementById("fill-reason");
  row.hidden = false;
  document.getElementById("fill").addEventListener("click", () => fill(reason.value));
  reason.addEventListener("keydown", (key) => {
    if (key.key === "Enter") {
      key.preventDefault();
      fill(reason.value);
    }
  });
}

function fill(reason) {
  const empty = [...usual.closest("form").querySelectorAll("input[name^='reason-']")].filter((field) => field.value.trim() === "");
  empty.forEach((field) => { field.value = reason; });
  announce(`Put into ${empty.length === 1 ? "1 field" : `${empty.length} fields`}.`);
}

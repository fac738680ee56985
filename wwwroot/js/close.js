// Closing: one reason for every check that has none yet.

import { announce } from "./announce.js";

const row = document.getElementById("fill-reasons");

if (row) {
  const reason = document.getElementById("fill-reason");
  row.hidden = false;
  document.getElementById("fill").addEventListener("click", fill);
  reason.addEventListener("keydown", (key) => {
    if (key.key === "Enter") {
      key.preventDefault();
      fill();
    }
  });

  function fill() {
    const empty = [...row.closest("form").querySelectorAll("input[name^='reason-']")].filter((field) => field.value.trim() === "");
    empty.forEach((field) => { field.value = reason.value; });
    announce(`Put into ${empty.length} fields.`);
  }
}

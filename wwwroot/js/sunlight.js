// Colours for bright sunlight: the browser remembers the choice, and the page stays as it is meanwhile.

import { announce } from "./announce.js";
import { hideTrouble, showTrouble } from "./trouble.js";

document.addEventListener("submit", async (event) => {
  const form = event.target.closest?.("form.sunlight");
  if (!form) {
    return;
  }

  event.preventDefault();
  hideTrouble();
  const button = form.querySelector("button");
  const isOn = button.value === "true";
  show(button, isOn);
  try {
    const answer = await fetch(form.action, { method: "POST", body: new URLSearchParams({ on: isOn }), redirect: "manual" });
    if (answer.type !== "opaqueredirect" && !answer.ok) {
      throw new Error(String(answer.status));
    }

    announce(isOn ? "Colours for bright sunlight." : "Usual colours.");
  } catch {
    show(button, !isOn);
    showTrouble("The colours could not be changed. InspectLog did not answer. See that it is still running.", () => form.requestSubmit(button));
  }
});

function show(button, isOn) {
  document.documentElement.toggleAttribute("data-sunlight", isOn);
  if (isOn) {
    document.documentElement.dataset.sunlight = "on";
  }

  button.value = String(!isOn);
  button.setAttribute("aria-pressed", String(isOn));
}

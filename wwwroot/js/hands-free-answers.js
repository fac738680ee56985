// What the bench answers to what was said hands-free: read aloud, obeyed where it opens a check or ends the listening.

import { now } from "./hands-free-session.js";

/** Deals with the answers to what was said here, in the order of speaking; one that is still thought about holds up
    those behind it. */
export function answer() {
  const mine = now.session;
  if (!mine) {
    return;
  }

  for (const recording of [...mine.turns].sort((a, b) => a - b)) {
    if (mine.answered.has(recording)) {
      continue;
    }

    const turn = document.querySelector(`#hands-free-turns [data-turn="${recording}"]`);
    if (!turn && isPast(recording)) {
      mine.answered.add(recording);
      continue;
    }

    if (!turn || "thinking" in turn.dataset) {
      return;
    }

    mine.answered.add(recording);
    if ("stops" in turn.dataset) {
      mine.stop();
      return;
    }

    if (turn.dataset.go) {
      open(turn.dataset.go);
    }

    if (turn.dataset.say) {
      mine.voice.say(turn.dataset.say);
    }
  }
}

/** Whether the page no longer lists a turn because newer ones took its place. */
function isPast(recording) {
  const oldest = document.querySelector("#hands-free-turns li:last-child")?.dataset.turn;
  return oldest !== undefined && recording < Number(oldest);
}

/** Opens a check as its link in the sheet would. */
function open(address) {
  [...document.querySelectorAll("#sheet a")].find((link) => link.getAttribute("href") === address)?.click();
}

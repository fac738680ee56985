// The hands-free panel: what it shows of the listening.

import { ReadBack } from "./read-back.js";

const words = {
  starting: "Starting",
  listening: "Listening",
  hearing: "Hearing you",
  speaking: "Speaking",
  waiting: "Microphone taken",
};
const quietPeak = 0.005;
const quietFor = 8000;

/** Shows what it is at: one of the words above. */
export function show(next) {
  if (document.body.dataset.handsFree !== next) {
    document.body.dataset.handsFree = next;
    document.getElementById("hands-free-word").textContent = words[next];
  }
}

/** Says something below it; an empty text takes it away. */
export function hint(text) {
  const line = document.getElementById("hands-free-hint");
  if (line) {
    line.textContent = text;
    delete line.dataset.silence;
  }
}

/** Shows whether answers can be read aloud here. */
export function showVoice() {
  document.getElementById("hands-free-aloud").disabled = !ReadBack.isPossible;
  document.getElementById("hands-free-no-voice").hidden = ReadBack.isPossible;
}

/** Shows how many notes are not sent yet. */
export function showUnsent(count) {
  const line = document.getElementById("hands-free-unsent");
  if (line) {
    line.hidden = count === 0;
    line.textContent = `${count} not sent yet`;
  }
}

/** Says so where nothing is heard for long. */
export function noticeSilence(mine, peak) {
  mine.loudest = Math.max(mine.loudest, peak);
  const line = document.getElementById("hands-free-hint");
  if (mine.loudest < quietPeak && performance.now() - mine.began > quietFor) {
    hint("Nothing is heard. Is the microphone muted?");
    line.dataset.silence = "";
  } else if (mine.loudest >= quietPeak && "silence" in line.dataset) {
    hint("");
  }
}

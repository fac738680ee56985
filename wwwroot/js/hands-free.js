// Hands-free listening: the microphone stays open, utterances are cut at the pauses, each is sent as a note of its own,
// and the answers that come back with the bench are shown large and read aloud. The page never listens to itself.

import { announce } from "./announce.js";
import { answer } from "./hands-free-answers.js";
import { keep, speaking, state, take, taken } from "./hands-free-hearing.js";
import { hint, show, showUnsent, showVoice } from "./hands-free-panel.js";
import { begin, now } from "./hands-free-session.js";
import { microphoneProblem } from "./microphone.js";
import { ReadBack } from "./read-back.js";
import { hideTrouble, showTrouble } from "./trouble.js";
import { UtteranceCutter } from "./utterance-cutter.js";
import { keepScreenOn, letScreenSleep } from "./wake-lock.js";

const name = "Hands-free";

const startButton = document.getElementById("hands-free-start");

if (startButton) {
  startButton.disabled = false;
  startButton.addEventListener("click", () => (now.session ? stop() : start()));
  document.getElementById("hands-free-stop").addEventListener("click", stop);
  const aloud = document.getElementById("hands-free-aloud");
  aloud.checked = ReadBack.isOn;
  showVoice();
  globalThis.speechSynthesis?.addEventListener("voiceschanged", showVoice);
  aloud.addEventListener("change", () => {
    ReadBack.isOn = aloud.checked;
    if (!aloud.checked) {
      now.session?.voice.hush();
    }
  });
  document.addEventListener("bench:fresh", fresh);
  document.addEventListener("outbox:changed", ({ detail }) => showUnsent(detail.unsent));
  addEventListener("beforeunload", (leaving) => {
    if (now.session?.cutter?.isHearing) {
      leaving.preventDefault();
    }
  });
}

async function start() {
  if (now.session) {
    return;
  }

  hideTrouble();
  const mine = begin(stop);
  document.getElementById("say").disabled = true;
  startButton.setAttribute("aria-checked", "true");
  show("starting");
  document.getElementById("hands-free-stop").focus({ preventScroll: true });
  mine.voice.mayspeak = () => !mine.cutter?.isHearing;
  mine.voice.onspeaking = speaking;
  mine.microphone.onblock = (block) => take(mine, block);
  mine.microphone.onlost = lost;
  mine.microphone.ontaken = (isTaken) => taken(mine, isTaken);
  try {
    await mine.microphone.open();
  } catch (problem) {
    if (now.session === mine) {
      end();
      showTrouble(microphoneProblem(problem, name), start);
    }

    return;
  }

  if (now.session !== mine) {
    // Stopped while the browser still asked for leave.
    await mine.microphone.close();
    return;
  }

  mine.cutter = new UtteranceCutter(mine.microphone.rate);
  mine.began = performance.now();
  state();
  announce("Listening, hands-free.");
  if (!await keepScreenOn()) {
    hint("This browser cannot keep the screen on. Set the screen not to go dark by itself.");
  }
}

async function stop() {
  const mine = now.session;
  if (!mine) {
    return;
  }

  end();
  announce("Stopped listening.");
  const left = mine.cutter?.flush();
  if (left) {
    keep(mine, left);
  }

  await mine.microphone.close();
}

/** The page's side of stopping: at once, whatever the microphone does. */
function end() {
  now.session?.voice.hush();
  now.session = null;
  delete document.body.dataset.handsFree;
  hint("");
  letScreenSleep();
  startButton.setAttribute("aria-checked", "false");
  const say = document.getElementById("say");
  if (say) {
    say.disabled = false;
  }

  startButton.focus({ preventScroll: true });
}

async function lost() {
  await stop();
  showTrouble(`The microphone went away, so nothing is heard any more. What was said before is kept. Plug it in again, then press ${name} again.`, start);
}

function fresh() {
  if (now.session && !document.getElementById("hands-free")) {
    // The inspection was closed.
    stop();
    return;
  }

  answer();
}

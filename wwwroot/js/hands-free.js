// Hands-free listening: the microphone stays open, utterances are cut at the pauses, each is sent as a note of its own,
// and the answers that come back with the bench are shown large and read aloud. The page never listens to itself.

import { announce } from "./announce.js";
import { LevelMeter } from "./level.js";
import { Microphone, microphoneProblem } from "./microphone.js";
import { postInLine } from "./outbox.js";
import { ReadBack } from "./read-back.js";
import { peakOf } from "./recorder.js";
import { hideTrouble, showTrouble } from "./trouble.js";
import { UtteranceCutter } from "./utterance-cutter.js";
import { keepScreenOn, letScreenSleep } from "./wake-lock.js";
import { encodeWav, resample } from "./wav.js";

const words = {
  starting: "Starting",
  listening: "Listening",
  hearing: "Hearing you",
  speaking: "Speaking",
  waiting: "Microphone taken",
};
const name = "Hands-free";
const roomDiesAway = 350; // milliseconds after the page has spoken
const quietPeak = 0.005;
const quietFor = 8000;

const startButton = document.getElementById("hands-free-start");
let session = null;

if (startButton) {
  startButton.hidden = false;
  startButton.addEventListener("click", start);
  document.getElementById("hands-free-stop").addEventListener("click", stop);
  const aloud = document.getElementById("hands-free-aloud");
  aloud.checked = ReadBack.isOn;
  showVoice();
  globalThis.speechSynthesis?.addEventListener("voiceschanged", showVoice);
  aloud.addEventListener("change", () => {
    ReadBack.isOn = aloud.checked;
    if (!aloud.checked) {
      session?.voice.hush();
    }
  });
  document.addEventListener("bench:fresh", fresh);
  document.addEventListener("outbox:changed", ({ detail }) => showUnsent(detail.unsent));
  addEventListener("beforeunload", (leaving) => {
    if (session?.cutter?.isHearing) {
      leaving.preventDefault();
    }
  });
}

async function start() {
  if (session) {
    return;
  }

  hideTrouble();
  const mine = session = {
    microphone: new Microphone(),
    voice: new ReadBack(),
    meter: new LevelMeter(document.getElementById("hands-free-level")),
    sending: Promise.resolve(),
    turns: new Set(),
    answered: new Set(),
    deafUntil: 0,
    isTaken: false,
    began: performance.now(),
    loudest: 0,
    address: addressOf(),
  };
  document.getElementById("say").disabled = true;
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
    if (session === mine) {
      end();
      showTrouble(microphoneProblem(problem, name), start);
    }

    return;
  }

  if (session !== mine) {
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
  const mine = session;
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
  session?.voice.hush();
  session = null;
  delete document.body.dataset.handsFree;
  hint("");
  letScreenSleep();
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

function taken(mine, isTaken) {
  if (session !== mine || !mine.cutter || mine.isTaken === isTaken) {
    return;
  }

  mine.isTaken = isTaken;
  if (isTaken) {
    const left = mine.cutter.flush();
    if (left) {
      keep(mine, left);
    }

    hint("Something else has it, such as a phone call. Listening goes on by itself when it is free.");
    announce("The microphone is taken by something else.");
  } else {
    hint("");
    announce("Listening again.");
  }

  state();
}

function take(mine, block) {
  if (session !== mine || !mine.cutter) {
    return;
  }

  const peak = peakOf(block);
  mine.meter.add(peak);
  noticeSilence(mine, peak);
  if (mine.voice.isSpeaking || performance.now() < mine.deafUntil) {
    mine.cutter.forget();
    return;
  }

  for (const happened of mine.cutter.push(block)) {
    if (happened.kind === "began") {
      mine.address = addressOf();
    } else if (happened.kind === "ended") {
      keep(mine, happened.samples);
    }
  }

  state();
  mine.voice.next();
}

/** Sends an utterance with the check that was open when it began, and in the order of speaking. */
function keep(mine, samples) {
  const address = mine.address;
  const rate = mine.microphone.rate;
  mine.sending = mine.sending.then(async () => {
    const wav = encodeWav(await resample(samples, rate));
    postInLine(wav, address).then((recording) => {
      if (recording) {
        mine.turns.add(recording);
        answer();
      }
    });
  });
}

function fresh() {
  if (session && !document.getElementById("hands-free")) {
    // The inspection was closed.
    stop();
    return;
  }

  answer();
}

/** Deals with the answers to what was said here, in the order of speaking; one that is still thought about holds up
    those behind it. */
function answer() {
  const mine = session;
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
      stop();
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

function speaking(isSpeaking) {
  if (!session) {
    return;
  }

  if (!isSpeaking) {
    session.deafUntil = performance.now() + roomDiesAway;
  }

  state();
}

function noticeSilence(mine, peak) {
  mine.loudest = Math.max(mine.loudest, peak);
  const line = document.getElementById("hands-free-hint");
  if (mine.loudest < quietPeak && performance.now() - mine.began > quietFor) {
    hint("Nothing is heard. Is the microphone muted?");
    line.dataset.silence = "";
  } else if (mine.loudest >= quietPeak && "silence" in line.dataset) {
    hint("");
  }
}

function state() {
  const mine = session;
  show(mine.isTaken ? "waiting" : mine.voice.isSpeaking ? "speaking" : mine.cutter?.isHearing ? "hearing" : "listening");
}

function show(next) {
  if (document.body.dataset.handsFree !== next) {
    document.body.dataset.handsFree = next;
    document.getElementById("hands-free-word").textContent = words[next];
  }
}

function hint(text) {
  const line = document.getElementById("hands-free-hint");
  if (line) {
    line.textContent = text;
    delete line.dataset.silence;
  }
}

function showVoice() {
  document.getElementById("hands-free-aloud").disabled = !ReadBack.isPossible;
  document.getElementById("hands-free-no-voice").hidden = ReadBack.isPossible;
}

function showUnsent(count) {
  const line = document.getElementById("hands-free-unsent");
  if (line) {
    line.hidden = count === 0;
    line.textContent = `${count} not sent yet`;
  }
}

function addressOf() {
  const { base, check } = document.getElementById("bench").dataset;
  return `${base}/recordings?check=${encodeURIComponent(check)}&handsFree=true`;
}

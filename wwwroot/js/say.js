// The Say button: hold it and speak, or tap it, speak, and tap again. The space bar does the same.

import { announce } from "./announce.js";
import { LevelMeter } from "./level.js";
import { microphoneProblem } from "./microphone.js";
import { post } from "./outbox.js";
import { Recorder } from "./recorder.js";
import { addressOf } from "./recording-address.js";
import { hideTrouble, showTrouble } from "./trouble.js";
import { encodeWav, longestSeconds, resample } from "./wav.js";

const holdLongerThan = 450;
const quietPeak = 0.01;
const quietFor = 3;
const shortest = 0.3;

const button = document.getElementById("say");
const listening = document.getElementById("listening");
const meter = button && new LevelMeter(document.getElementById("level"));

let recorder = null;
let state = "ready";
let pressedAt = 0;
let loudest = 0;
let stopWhenStarted = false;
let address = "";
let began = new Date();

if (button) {
  button.hidden = false;
  button.addEventListener("pointerdown", (press) => {
    // A browser takes a finger beside a button for one on it; what is beside this one records nothing.
    if (press.button === 0 && button.contains(document.elementFromPoint(press.clientX, press.clientY))) {
      button.setPointerCapture(press.pointerId);
      pressed();
    }
  });
  button.addEventListener("pointerup", released);
  button.addEventListener("pointercancel", released);
  button.addEventListener("contextmenu", (menu) => menu.preventDefault());
  // Keyboards and assistive technology press by click alone; a pointer's click has been dealt with already.
  button.addEventListener("click", (click) => {
    if (click.detail === 0) {
      pressedAt = performance.now();
      toggle();
    }
  });
  addEventListener("keydown", spaceDown);
  addEventListener("keyup", spaceUp);
  addEventListener("beforeunload", (leaving) => {
    if (state !== "ready") {
      leaving.preventDefault();
    }
  });
}

function spaceDown(key) {
  if (key.code !== "Space" || key.ctrlKey || key.altKey || key.metaKey || hasOwnUseForSpace(key.target)) {
    return;
  }

  key.preventDefault();
  if (!key.repeat) {
    pressed();
  }
}

function spaceUp(key) {
  if (key.code === "Space" && !hasOwnUseForSpace(key.target)) {
    key.preventDefault();
    released();
  }
}

/** Fields take a space, and buttons, links and folds are worked with it; everywhere else it means Say. */
function hasOwnUseForSpace(element) {
  const worked = element.closest?.("input, textarea, select, button, a[href], summary, audio, [contenteditable]");
  return Boolean(worked) && worked !== button;
}

function pressed() {
  if (button.disabled) {
    return;
  }

  pressedAt = performance.now();
  if (state === "ready") {
    start();
  } else {
    pressedAt = 0;
    stop();
  }
}

/** Letting go ends a recording that was held; while the browser still asks for leave it counts as a tap. */
function released() {
  const held = pressedAt > 0 && performance.now() - pressedAt > holdLongerThan;
  pressedAt = 0;
  if (held && state === "listening") {
    stop();
  }
}

function toggle() {
  if (state === "ready") {
    start();
  } else {
    stop();
  }
}

async function start() {
  hideTrouble();
  show("starting", "Starting…");
  address = addressOf();
  began = new Date();
  stopWhenStarted = false;
  loudest = 0;
  meter.clear();
  recorder = new Recorder();
  recorder.onlevel = level;
  recorder.onfull = () => { announce("Ten minutes are full."); stop(); };
  recorder.onlost = stop;
  try {
    await recorder.start();
  } catch (problem) {
    show("ready");
    showTrouble(microphoneProblem(problem, "Say"));
    return;
  }

  show("listening", "0:00");
  announce("Listening.");
  if (stopWhenStarted) {
    stop();
  }
}

async function stop() {
  if (state === "starting") {
    stopWhenStarted = true;
    return;
  }

  if (state !== "listening") {
    return;
  }

  show("closing", "Sending…");
  const { samples, rate: recordedAt } = await recorder.stop();
  if (samples.length < shortest * recordedAt) {
    show("ready");
    showTrouble("That was too short to hear anything. Hold Say while you speak, or tap it, speak, and tap again.");
    return;
  }

  const wav = encodeWav(await resample(samples, recordedAt));
  show("ready");
  await post(wav, address, began);
}

function level(peak, seconds) {
  meter.add(peak);
  loudest = Math.max(loudest, peak);
  button.querySelector(".time").textContent = clock(seconds);
  document.getElementById("hear").textContent =
    loudest < quietPeak && seconds > quietFor ? "Nothing is heard. Is the microphone muted?"
    : seconds > longestSeconds - 30 ? `Stops at ${clock(longestSeconds)}`
    : "Press again to stop";
}

function show(next, time) {
  state = next;
  button.dataset.state = next;
  button.setAttribute("aria-pressed", String(next === "listening"));
  button.querySelector(".word").textContent = next === "listening" ? "Listening" : "Say";
  button.querySelector(".time").textContent = time ?? "";
  button.querySelector("kbd").hidden = next !== "ready";
  listening.hidden = next !== "listening";
}

function clock(seconds) {
  const whole = Math.floor(seconds);
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, "0")}`;
}

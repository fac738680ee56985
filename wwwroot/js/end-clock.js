// The clock of a loose end that may stay so for a limited time only, as an ignition that is on: it runs, warns a little
// before the limit, and when the time is over sounds until the end is tied or somebody makes it quiet.

import { announce } from "./announce.js";
import { isSomebodySpeaking, letGo, prepare, ring, sayAloud } from "./end-alarm.js";
import { forgetAllBut, isQuiet, keepQuiet } from "./quiet-ends.js";

const second = 1000;
const warnedBefore = 20; // seconds
const ringsEach = 30; // seconds

/** What was told of each end on this page, by its number. */
const told = new Map();

let ahead = 0; // milliseconds by which the program's clock is ahead of this device's
let rendered = "";
let timer = 0;

if (document.getElementById("ends")) {
  document.addEventListener("bench:fresh", fresh);
  document.addEventListener("bench:clock", tick);
  document.addEventListener("visibilitychange", tick);
  document.addEventListener("click", pressed);
  fresh();
}

/** The bench says something new: other ends may be open, and what the program's clock shows is known anew. */
function fresh() {
  const { now } = document.getElementById("ends")?.dataset ?? {};
  if (now && now !== rendered) {
    rendered = now;
    ahead = Date.parse(now) - Date.now();
  }

  const open = limited().map((row) => row.dataset.end);
  forgetAllBut(open);
  for (const end of [...told.keys()].filter((one) => !open.includes(one))) {
    told.delete(end);
  }

  if (open.length === 0) {
    letGo();
  }

  tick();
}

function limited() {
  return [...document.querySelectorAll("#ends-over [data-limit-seconds]")];
}

function tick() {
  clearTimeout(timer);
  const rows = limited();
  if (rows.length === 0) {
    return;
  }

  const now = Date.now() + ahead;
  const over = rows.filter((row) => look(row, now));
  document.getElementById("ends").toggleAttribute("data-over", over.length > 0);
  timer = setTimeout(tick, untilNextSecond(rows[0], now));
}

function untilNextSecond(row, now) {
  const open = now - Date.parse(row.dataset.opened);
  return second - (((open % second) + second) % second);
}

/** Shows how long an end is open, and tells what there is to tell; gives whether its time is over. */
function look(row, now) {
  const { end, opened, limitSeconds, what, tie, ownClock } = row.dataset;
  const here = ownClock === undefined ? now : now - ahead;
  const seconds = Math.max(0, Math.floor((here - Date.parse(opened)) / second));
  const left = Number(limitSeconds) - seconds;
  const isOver = left <= 0;
  for (const face of document.querySelectorAll(`#ends [data-end-clock="${end}"]`)) {
    face.querySelector(".elapsed").textContent = clock(seconds);
    face.querySelector(".late").hidden = !isOver;
    face.toggleAttribute("data-over", isOver);
  }

  row.hidden = !isOver;
  const before = told.get(end) ?? { warned: false, over: false, aloud: false, rings: 0 };
  told.set(end, isOver ? tellOver(row, before, seconds) : tellSoon(before, left, what, tie, Number(limitSeconds)));
  return isOver;
}

function tellSoon(before, left, what, tie, limit) {
  if (left > warnedBefore || limit <= warnedBefore || before.warned) {
    return before;
  }

  announce(`${what}: ${left === 1 ? "1 second" : `${left} seconds`} left. ${tie}.`);
  return { ...before, warned: true };
}

function tellOver(row, before, seconds) {
  const { end, what, tie } = row.dataset;
  const sentence = `Over its time: ${what}. ${tie}.`;
  const next = { ...before, over: true };
  showHush(row, isQuiet(end));
  if (!before.over) {
    announce(sentence);
  }

  if (!isQuiet(end) && !isSomebodySpeaking()) {
    if (seconds >= before.rings) {
      ring();
      next.rings = seconds + ringsEach;
    } else if (!before.aloud) {
      // After the tones, and then once.
      next.aloud = sayAloud(sentence);
    }
  }

  return next;
}

function showHush(row, isHushed) {
  const [button, words] = row.querySelector(".hush").children;
  button.hidden = isHushed;
  words.hidden = !isHushed;
}

function pressed({ target }) {
  if (limited().length === 0) {
    return;
  }

  prepare();
  const quiet = target.closest?.("[data-quiet]");
  if (quiet) {
    const row = quiet.closest("[data-limit-seconds]");
    keepQuiet(quiet.dataset.quiet);
    row.querySelector("button[type=submit]")?.focus({ preventScroll: true });
    showHush(row, true);
    announce("Quiet until it is put right.");
  }
}

/** As the page shows it when it comes: "1:23", "1:02:03". */
function clock(seconds) {
  const two = (number) => String(number).padStart(2, "0");
  const [hours, minutes] = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60];
  return hours > 0 ? `${hours}:${two(minutes)}:${two(seconds % 60)}` : `${minutes}:${two(seconds % 60)}`;
}

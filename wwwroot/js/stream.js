// News of the inspection: how far a transcription is, and that something changed.

import { announce } from "./announce.js";
import { refresh } from "./morph.js";

const settle = 120;
const pace = 600; // where several people work at once, all of it is read at this pace
const spread = 250; // and not by all phones at the same moment, or each would wait for the others
const bench = () => document.getElementById("bench");

let pending;
let readAt = -pace;
let reading = false;
let readAgain = false;

if (bench()) {
  const events = new EventSource(`${bench().dataset.base}/events?at=${bench().dataset.at}`);
  events.addEventListener("progress", ({ data }) => showProgress(JSON.parse(data)));
  events.addEventListener("changed", readSoon);
  events.addEventListener("open", () => online(true));
  events.addEventListener("error", () => online(false));
}

function showProgress({ recording, share }) {
  const bar = document.getElementById(`progress-${recording}`);
  if (bar) {
    bar.value = share;
  }
}

function readSoon() {
  const early = readAt + pace - performance.now();
  pending ??= setTimeout(readBench, early > settle ? early + Math.random() * spread : settle);
}

async function readBench() {
  pending = undefined;
  if (reading) {
    readAgain = true;
    return;
  }

  reading = true;
  readAgain = false;
  readAt = performance.now();
  try {
    const answer = await fetch(bench().dataset.here, { headers: { "HX-Request": "true" }, cache: "no-store" });
    if (answer.ok) {
      put(await answer.text());
    }
  } catch {
    // The event source notices the same and says so.
  }

  reading = false;
  if (readAgain) {
    readSoon();
  }
}

function put(html) {
  const fresh = new DOMParser().parseFromString(html, "text/html").getElementById("bench");
  const now = bench();
  // Another check may have been opened meanwhile; then this answer is about a page that is gone.
  if (!fresh || fresh.dataset.here !== now.dataset.here) {
    return;
  }

  const before = sentences();
  refresh(now, fresh);
  htmx.process(bench());
  const news = [...sentences()].filter((sentence) => !before.has(sentence));
  if (news.length > 0) {
    announce(news.join(" "));
  }
}

/** What the stream says of each capture, in a sentence for people who listen. */
function sentences() {
  return new Set([...document.querySelectorAll("#stream [data-news]")].map((item) => item.dataset.news));
}

function online(isOnline) {
  if (isOnline) {
    document.dispatchEvent(new Event("bench:online"));
  }

  const line = document.getElementById("offline");
  if (line) {
    line.hidden = isOnline;
  }
}

// News of the inspection: how far a transcription is, and that something changed.

import { announce } from "./announce.js";
import { refresh } from "./morph.js";

const settle = 120;
const bench = () => document.getElementById("bench");

let pending;
let reading = false;
let readAgain = false;

if (bench()) {
  const events = new EventSource(`${bench().dataset.base}/events`);
  events.addEventListener("progress", ({ data }) => showProgress(JSON.parse(data)));
  events.addEventListener("changed", () => {
    clearTimeout(pending);
    pending = setTimeout(readBench, settle);
  });
  events.addEventListener("open", () => online(true));
  events.addEventListener("error", () => online(false));
}

function showProgress({ recording, share }) {
  const bar = document.getElementById(`progress-${recording}`);
  if (bar) {
    bar.value = share;
  }
}

async function readBench() {
  if (reading) {
    readAgain = true;
    return;
  }

  reading = true;
  readAgain = false;
  try {
    const answer = await fetch(bench().dataset.here, { headers: { "HX-Request": "true" } });
    if (answer.ok) {
      put(await answer.text());
    }
  } catch {
    // The event source notices the same and says so.
  }

  reading = false;
  if (readAgain) {
    readBench();
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
  const line = document.getElementById("offline");
  if (line) {
    line.hidden = isOnline;
  }
}

// Recordings on their way to the server. One that could not be sent stays here, in memory, until it is sent,
// saved as a file or thrown away; leaving the page before that asks first.

import { announce } from "./announce.js";

const retries = [0, 1500, 4000];
const waiting = new Map();
let count = 0;

addEventListener("beforeunload", (leaving) => {
  if (waiting.size > 0) {
    leaving.preventDefault();
  }
});

/** Sends a recording; gives true once the server has it on disk. */
export async function post(wav, address) {
  const item = { id: ++count, wav, address, taken: new Date() };
  waiting.set(item.id, item);
  return send(item);
}

async function send(item) {
  item.row?.remove();
  item.row = undefined;
  status("Sending…");
  announce("Sending.");
  const outcome = await tryToSend(item);
  status("");
  if (outcome.kept) {
    waiting.delete(item.id);
    announce("Kept.");
    return true;
  }

  list(item, outcome.message);
  announce(`Not sent. ${outcome.message}`);
  return false;
}

async function tryToSend(item) {
  let message = "";
  for (const pause of retries) {
    await new Promise((resolve) => setTimeout(resolve, pause));
    try {
      const answer = await fetch(item.address, {
        method: "POST",
        headers: { "Content-Type": "audio/wav", Accept: "application/json" },
        body: item.wav,
      });
      if (answer.ok) {
        return { kept: true };
      }

      message = (await messageOf(answer)) ?? `The program answered ${answer.status}.`;
      if (answer.status < 500) {
        return { kept: false, message };
      }
    } catch {
      message = "InspectLog did not answer. See that it is still running, then send again.";
    }
  }

  return { kept: false, message };
}

async function messageOf(answer) {
  try {
    return (await answer.json()).message;
  } catch {
    return undefined;
  }
}

function list(item, message) {
  const row = document.createElement("li");
  const words = document.createElement("p");
  const time = item.taken.toLocaleTimeString("en-GB");
  words.textContent = `Voice note of ${time} is not sent. ${message}`;

  const again = button("Send again", () => send(item));
  const save = document.createElement("a");
  save.className = "button";
  save.textContent = "Save as a file";
  save.download = `voice-note-${time.replaceAll(":", "")}.wav`;
  save.href = URL.createObjectURL(item.wav);
  const drop = button("Throw away", () => {
    waiting.delete(item.id);
    URL.revokeObjectURL(save.href);
    row.remove();
  });

  row.append(words, again, save, drop);
  item.row = row;
  document.getElementById("unsent")?.append(row);
}

function button(text, action) {
  const made = document.createElement("button");
  made.type = "button";
  made.textContent = text;
  made.addEventListener("click", action);
  return made;
}

function status(text) {
  const place = document.getElementById("sending");
  if (place) {
    place.textContent = text;
  }
}

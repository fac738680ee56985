// Recordings on their way to the server. One that could not be sent stays here, in memory, until it is sent,
// saved as a file or thrown away; leaving the page before that asks first.

import { announce } from "./announce.js";

const retries = [0, 1500, 4000];
const again = 15_000;
const waiting = new Map();
const line = [];
let isLineMoving = false;
let count = 0;

addEventListener("beforeunload", (leaving) => {
  if (waiting.size > 0) {
    leaving.preventDefault();
  }
});
addEventListener("online", moveLine);
setInterval(moveLine, again);

/** Sends a recording; gives true once the server has it on disk. */
export async function post(wav, address) {
  return await send(take(wav, address)) !== null;
}

/** Sends a recording after all that were put in line before it, however long that takes: what is said hands-free can be
    a command, which must not overtake what it is about. Gives the recording's number once the server has it on disk, or
    null when it was thrown away. */
export function postInLine(wav, address) {
  return new Promise((settled) => {
    line.push(Object.assign(take(wav, address), { settled }));
    moveLine();
  });
}

async function moveLine() {
  if (isLineMoving) {
    return;
  }

  isLineMoving = true;
  while (line.length > 0) {
    const first = line[0];
    const kept = await send(first);
    if (line[0] !== first) {
      continue; // It was thrown away meanwhile.
    }

    if (!kept) {
      line.slice(1).forEach((item) => list(item, "It waits for the one before it."));
      break;
    }

    line.shift();
    first.settled(kept.recording);
  }

  isLineMoving = false;
}

function take(wav, address) {
  const item = { id: ++count, wav, address, taken: new Date() };
  waiting.set(item.id, item);
  return item;
}

/** Tries to send a recording; gives the answer once it is kept, or null where it stays here. */
async function send(item) {
  if (item.isOnItsWay) {
    return null;
  }

  const isNew = !item.row;
  item.isOnItsWay = true;
  status("Sending…");
  const outcome = await tryToSend(item);
  item.isOnItsWay = false;
  status("");
  if (outcome.kept) {
    remove(item);
    announce("Kept.");
    return outcome.kept;
  }

  list(item, outcome.message);
  if (isNew) {
    announce(`Not sent. ${outcome.message}`);
  }

  return null;
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
        // It is on disk, even where the rest of the answer got lost.
        return { kept: await answer.json().catch(() => ({})) };
      }

      message = (await messageOf(answer)) ?? `The program answered ${answer.status}.`;
      if (answer.status < 500) {
        return { message };
      }
    } catch {
      message = "InspectLog did not answer. See that it is still running, then send again.";
    }
  }

  return { message };
}

async function messageOf(answer) {
  try {
    return (await answer.json()).message;
  } catch {
    return undefined;
  }
}

/** Shows a recording that is not sent, or what is known of it now. */
function list(item, message) {
  const time = item.taken.toLocaleTimeString("en-GB");
  item.row ??= row(item, time);
  item.row.querySelector("p").textContent = `Voice note of ${time} is not sent. ${message}`;
  tell();
}

function row(item, time) {
  const made = document.createElement("li");
  const save = document.createElement("a");
  save.className = "button";
  save.textContent = "Save as a file";
  save.download = `voice-note-${time.replaceAll(":", "")}.wav`;
  save.href = URL.createObjectURL(item.wav);
  item.release = () => URL.revokeObjectURL(save.href);
  made.append(
    document.createElement("p"),
    button("Send again", () => (line.includes(item) ? moveLine() : send(item))),
    save,
    button("Throw away", () => throwAway(item)),
  );
  document.getElementById("unsent")?.append(made);
  return made;
}

function throwAway(item) {
  remove(item);
  const at = line.indexOf(item);
  if (at >= 0) {
    line.splice(at, 1);
    item.settled(null);
    moveLine();
  }
}

function remove(item) {
  waiting.delete(item.id);
  item.release?.();
  item.row?.remove();
  item.row = undefined;
  tell();
}

function tell() {
  const unsent = [...waiting.values()].filter((item) => item.row).length;
  document.dispatchEvent(new CustomEvent("outbox:changed", { detail: { unsent } }));
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

// Recordings on their way to the server, and forms that could not be sent. Each is given an id and the time it was captured
// once, and goes with both however often it is sent: from here again after an answer got lost, after a reload, from another
// tab. One that could not be sent stays until it is sent, saved as a file or thrown away.

import { announce } from "./announce.js";
import { count, list, status, unlist } from "./outbox-list.js";
import { sendOnce } from "./outbox-send.js";
import { all, forget, keep, onForgotten } from "./outbox-store.js";
import { showTrouble } from "./trouble.js";

const retries = [0, 1500, 4000];
const again = 15_000;
const waiting = new Map();
const line = [];
let isLineMoving = false;

// What the browser itself keeps is not lost by leaving.
addEventListener("beforeunload", (leaving) => {
  if ([...waiting.values()].some((item) => !item.isKept)) {
    leaving.preventDefault();
  }
});
addEventListener("online", moveLine);
document.addEventListener("bench:online", moveLine);
setInterval(moveLine, again);
onForgotten((id) => {
  if (waiting.has(id)) {
    drop(waiting.get(id), undefined);
  }
});
all().then((left) => left.forEach(takeUp));

/** Sends a recording; gives true once the server has it on disk. */
export async function post(wav, address, taken) {
  return await send(take({ wav, address, taken, isInLine: false })) !== null;
}

/** Sends a recording after all that were put in line before it, however long that takes: what is said hands-free can be
    a command, which must not overtake what it is about. Gives the recording's number once the server has it on disk, or
    null when it was thrown away. */
export function postInLine(wav, address, taken) {
  return new Promise((settled) => {
    line.push(Object.assign(take({ wav, address, taken, isInLine: true }), { settled }));
    moveLine();
  });
}

/** Keeps a form that could not be sent, behind all that were captured before it. Gives whether the browser could keep
    it, and how it is thrown away; undefined where a file in it can no longer be read. */
export async function keepForm(form, copying) {
  const item = { id: crypto.randomUUID(), ...form, taken: new Date(), isInLine: true, isKept: false, isOnItsWay: true, settled: () => {} };
  waiting.set(item.id, item);
  line.push(item);
  show(item, "Being kept…");
  if (!form.hasFiles) {
    document.dispatchEvent(new Event("outbox:kept"));
  }

  try {
    item.fields = await copying;
  } catch {
    drop(item);
    showTrouble("The photo can no longer be read, so it could not be kept. Take it again.");
    return undefined;
  }

  item.keeping = keep(item);
  item.isKept = await item.keeping;
  item.isOnItsWay = false;
  show(item, item.isKept ? "It is sent when the workshop’s computer answers." : "This device has no room to keep it: leave this page open until it is sent.");
  moveLine();
  return { isKept: item.isKept, isHere: () => waiting.has(item.id), takeBack: () => throwAway(item) };
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

    if (!kept && first.isRefused) {
      // What it says has to be looked at by a person; the others need not wait for that.
      line.shift();
      continue;
    }

    if (!kept) {
      line.slice(1).forEach((item) => show(item, "It waits for the one before it."));
      break;
    }

    line.shift();
    first.settled(kept.recording);
  }

  isLineMoving = false;
}

function take(captured) {
  const item = { id: crypto.randomUUID(), ...captured, isKept: false };
  waiting.set(item.id, item);
  item.keeping = keep(item).then((isKept) => { item.isKept = isKept; });
  return item;
}

/** Takes up what this browser kept when a page was left. */
function takeUp(left) {
  const item = { ...left, isKept: true, keeping: Promise.resolve(), settled: () => {} };
  if (waiting.has(item.id)) {
    return;
  }

  waiting.set(item.id, item);
  if (item.fields) {
    show(item, "Being sent…");
  }

  if (item.isInLine) {
    line.push(item);
    moveLine();
  } else {
    send(item);
  }
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
  item.isRefused = outcome.isRefused;
  status("");
  if (outcome.kept) {
    remove(item);
    announce("Kept.");
    return outcome.kept;
  }

  // Another tab may have sent it meanwhile.
  if (waiting.has(item.id)) {
    show(item, outcome.message);
    if (isNew) {
      announce(`Not sent. ${outcome.message}`);
      document.dispatchEvent(new Event("outbox:kept"));
    }
  }

  return null;
}

async function tryToSend(item) {
  let outcome;
  for (const pause of retries) {
    await new Promise((resolve) => setTimeout(resolve, pause));
    outcome = await sendOnce(item);
    if (outcome.kept || outcome.isRefused) {
      break;
    }
  }

  return outcome;
}

function show(item, message) {
  list(item, message, () => (line.includes(item) ? moveLine() : send(item)), () => throwAway(item));
  tell();
}

function throwAway(item) {
  remove(item);
  drop(item, null);
}

function remove(item) {
  waiting.delete(item.id);
  item.keeping.then(() => forget(item.id));
  unlist(item);
  tell();
}

/** Takes a recording out of here and out of the line, and lets those behind it go. */
function drop(item, recording) {
  waiting.delete(item.id);
  unlist(item);
  tell();
  const at = line.indexOf(item);
  if (at >= 0) {
    line.splice(at, 1);
    item.settled(recording);
    moveLine();
  }
}

function tell() {
  const unsent = [...waiting.values()].filter((item) => item.row).length;
  count(unsent, [...waiting.values()].some((item) => item.row && (item.isRefused || !item.isKept && !item.isOnItsWay)));
  document.dispatchEvent(new CustomEvent("outbox:changed", { detail: { unsent } }));
}

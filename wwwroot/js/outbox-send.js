// How what waits in the outbox is sent: a recording as it is, a form as the page would have sent it.

import { localTime } from "./local-time.js";
import { status } from "./outbox-list.js";
import { sendInPieces } from "./outbox-pieces.js";

const unanswered = "The workshop’s computer did not answer. It is sent by itself as soon as that is in reach.";
const leastWait = 5; // seconds; what is sent at once was captured when it comes

/** Sends an item once. Gives what the program answered once it has it on disk; or a message, and whether to try again by
    itself makes sense. */
export async function sendOnce(item) {
  try {
    const answer = await (item.fields ? sendForm(item) : sendRecording(item));
    if (item.fields ? isKept(answer) : answer.ok) {
      // It is on disk, even where the rest of the answer got lost.
      return { kept: item.fields ? { hash: answer.headers.get("Entry-Hash") } : await answer.json().catch(() => ({})) };
    }

    const message = (await (item.fields ? problemOf(answer) : messageOf(answer))) ?? `The program answered ${answer.status}.`;
    return { message, isRefused: answer.status < 500 && answer.status !== 429 };
  } catch {
    return { message: unanswered, isRefused: false };
  }
}

function sendRecording({ id, address, taken, wav }) {
  return fetch(waited(`${address}&capture=${id}&captured=${encodeURIComponent(localTime(taken))}`, taken), {
    method: "POST",
    headers: { "Content-Type": "audio/wav", Accept: "application/json" },
    body: wav,
  });
}

/** Says how long it waited here, which a clock that is set wrong knows too. */
function waited(address, taken) {
  const seconds = Math.round((Date.now() - taken) / 1000);
  return seconds >= leastWait ? `${address}${address.includes("?") ? "&" : "?"}waited=${seconds}` : address;
}

async function sendForm({ address, fields, hasFiles, taken }) {
  const body = hasFiles ? new FormData() : new URLSearchParams();
  for (const [name, value] of fields) {
    const piece = value instanceof File ? await sendInPieces(address, value, (part) => status(`Sending… ${Math.floor(100 * part)} %`)) : null;
    body.append(...(piece ? ["piece", piece] : [name, value]));
  }

  return fetch(waited(address, taken), { method: "POST", headers: { "HX-Request": "true" }, body });
}

/** Only the hash of its entry tells that a form is in the journal. */
function isKept(answer) {
  return answer.ok && answer.headers.has("Entry-Hash");
}

async function messageOf(answer) {
  try {
    return (await answer.json()).message;
  } catch {
    return undefined;
  }
}

/** What the page would show above the form. */
async function problemOf(answer) {
  const page = new DOMParser().parseFromString(await answer.text(), "text/html");
  const said = page.querySelector(".problems ul, .problems p, [data-question] p, main .large")?.textContent;
  return said?.replace(/\s+/g, " ").trim();
}

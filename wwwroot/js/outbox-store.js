// Recordings and forms that are not sent yet, kept by the browser itself, so that neither a reload nor a crash loses one, and
// another tab can send it as well. Each goes by its id.

const name = "outbox";
const channel = new BroadcastChannel(name);
const database = new Promise((opened) => {
  try {
    const request = indexedDB.open(name, 1);
    request.onupgradeneeded = () => request.result.createObjectStore(name, { keyPath: "id" });
    request.onsuccess = () => opened(request.result);
    request.onerror = () => opened(null);
  } catch {
    opened(null);
  }
});

/** Keeps a recording or a form; gives whether the browser could. */
export async function keep({ id, wav, fields, hasFiles, words, address, taken, isInLine }) {
  // A browser may throw away what it was not asked to keep.
  navigator.storage?.persist?.();
  return await run("readwrite", (store) => store.put({ id, wav, fields, hasFiles, words, address, taken, isInLine })) !== undefined;
}

/** Forgets one that is sent or thrown away, and tells the other tabs. */
export async function forget(id) {
  await run("readwrite", (store) => store.delete(id));
  channel.postMessage(id);
}

/** All that are kept, in the order they were taken. */
export async function all() {
  const kept = await run("readonly", (store) => store.getAll()) ?? [];
  return kept.sort((a, b) => a.taken - b.taken);
}

/** Tells when another tab sent one or threw it away. */
export function onForgotten(tell) {
  channel.addEventListener("message", ({ data }) => tell(data));
}

/** Asks the database; undefined where it cannot: a browser may refuse to keep anything. */
async function run(mode, ask) {
  const open = await database;
  return open ? await new Promise((answered) => {
    try {
      const asked = ask(open.transaction(name, mode).objectStore(name));
      asked.transaction.oncomplete = () => answered(asked.result ?? null);
      asked.transaction.onabort = () => answered(undefined);
    } catch {
      answered(undefined);
    }
  }) : undefined;
}

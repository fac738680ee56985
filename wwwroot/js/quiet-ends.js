// The loose ends whose alarm somebody silenced. The browser remembers them until they are tied.

const remembered = "inspectlog.quiet-ends";

const base = () => document.getElementById("bench").dataset.base;
const keyOf = (end) => `${base()}#${end}`;

export function isQuiet(end) {
  return read().includes(keyOf(end));
}

export function keepQuiet(end) {
  write([...new Set([...read(), keyOf(end)])]);
}

/** Forgets those of this inspection that are open no more: an end that is opened again is heard again. */
export function forgetAllBut(open) {
  const keys = open.map(keyOf);
  const all = read();
  const kept = all.filter((key) => !key.startsWith(`${base()}#`) || keys.includes(key));
  if (kept.length < all.length) {
    write(kept);
  }
}

let untilReload = [];

function read() {
  try {
    const kept = JSON.parse(localStorage.getItem(remembered) ?? "[]");
    return Array.isArray(kept) ? kept : [];
  } catch {
    return untilReload;
  }
}

function write(keys) {
  untilReload = keys;
  try {
    localStorage.setItem(remembered, JSON.stringify(keys));
  } catch {
    // A browser that remembers nothing still does it for now.
  }
}

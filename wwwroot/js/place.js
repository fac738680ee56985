// One keeps one's place: after a press the part of the page that was pressed stays where it was on the screen, whatever
// the answer put above it.

const saved = "bench-place";
const columns = ["sheet", "check", "stream"];

/** Notes where an element stands, with all around it that has a name, should the answer take it away. */
export function placeOf(element) {
  const around = [];
  for (let at = element; at && at.id !== "bench" && at !== document.body; at = at.parentElement) {
    // The bar does not move with the page.
    if (at.id === "tools") {
      return [];
    }

    if (at === element || at.id || at.tagName === "FORM") {
      around.push({ at, id: at.id, top: at.getBoundingClientRect().top });
    }
  }

  return around;
}

/** Brings back to its place on the screen what is still there of it. */
export function keepPlace(around) {
  const still = around.find(({ at, id }) => isShown(at) && at.id === id);
  if (still) {
    scrollerOf(still.at).scrollTop += still.at.getBoundingClientRect().top - still.top;
  }
}

/** Whether an element can be seen now, above the bar. */
export function isInView(element) {
  if (!element || !isShown(element)) {
    return false;
  }

  const { top, bottom } = element.getBoundingClientRect();
  const room = roomFor(element);
  return top >= room.top - 1 && bottom <= room.bottom + 1;
}

/** Moves the page no further than it takes to see an element. */
export function bringIntoView(element) {
  const { top, bottom } = element.getBoundingClientRect();
  const room = roomFor(element);
  const down = bottom > room.bottom ? Math.min(bottom - room.bottom, top - room.top) : 0;
  scrollerOf(element).scrollTop += top < room.top ? top - room.top : down;
}

/** Puts the focus on an element that may take it, without moving the page. */
export function focusStill(element) {
  if (element) {
    if (element.tabIndex < 0) {
      element.tabIndex = -1;
    }

    element.focus({ preventScroll: true });
  }
}

/** Does something once the page is whole and the browser has gone to the part its address names. */
export function whenWhole(act) {
  if (document.readyState === "complete") {
    act();
  } else {
    addEventListener("load", () => requestAnimationFrame(act));
  }
}

function isShown(element) {
  return element.isConnected && element.getClientRects().length > 0;
}

/** What of the window an element can be seen in: between the edges of its column and above the bar. */
function roomFor(element) {
  const margin = 8;
  const scroller = scrollerOf(element);
  const column = scroller === document.scrollingElement ? { top: 0, bottom: innerHeight } : scroller.getBoundingClientRect();
  const bar = document.getElementById("tools");
  const hides = bar && !bar.contains(element) && getComputedStyle(bar).position === "sticky";
  const keep = element.closest(".panel")?.querySelector(".keep");
  const foot = keep && !keep.contains(element) && getComputedStyle(keep).position === "sticky" ? keep.offsetHeight : 0;
  return { top: column.top + margin, bottom: Math.min(column.bottom - foot, hides ? bar.getBoundingClientRect().top : innerHeight) - margin };
}

function scrollerOf(element) {
  for (let at = element.parentElement; at; at = at.parentElement) {
    if (at !== document.body && at.scrollHeight > at.clientHeight && /auto|scroll/.test(getComputedStyle(at).overflowY)) {
      return at;
    }
  }

  return document.scrollingElement;
}

// A page that settles one finding comes back to the bench as it was left.
document.addEventListener("click", ({ target }) => {
  const bench = document.getElementById("bench");
  if (bench && target.closest?.("#bench a[href*='here=']")) {
    sessionStorage.setItem(saved, JSON.stringify({
      here: bench.dataset.here,
      page: scrollY,
      columns: columns.map((id) => document.getElementById(id)?.scrollTop ?? 0),
    }));
  }
});

/** Puts the bench as it was left, and what it was opened at into view. */
function comeBack() {
  const left = JSON.parse(sessionStorage.getItem(saved) ?? "null");
  const target = document.getElementById(location.hash.slice(1));
  sessionStorage.removeItem(saved);
  if (left && target && left.here === document.getElementById("bench")?.dataset.here) {
    scrollTo({ top: left.page, behavior: "instant" });
    columns.forEach((id, i) => document.getElementById(id)?.scrollTo({ top: left.columns[i], behavior: "instant" }));
    bringIntoView(target);
    focusStill(target);
  }
}

if (location.hash.startsWith("#finding-")) {
  whenWhole(comeBack);
}

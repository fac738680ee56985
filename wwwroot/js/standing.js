// Where the person stands: what is ticked, and whether something was said since. Ticks stay as the person made them until
// their own form is answered or another check is opened, whatever else the bench says meanwhile.

const stored = "standing";
const ticks = new Map();
const bench = () => document.getElementById("bench");
const keyOf = (form) => `${form.getAttribute("action")} ${form.elements.namedItem("check")?.value ?? ""}`;
const boxesOf = (form) => [...form.querySelectorAll("input[type=checkbox], input[type=radio]")];

/** Sequence of the newest capture when the person last ticked or opened something: what is said later counts more. */
let after = 0;

/** Whether something that may say a finding was kept on this device since: where it belongs is known once it is read. */
let keptSince = false;
document.addEventListener("outbox:kept", () => { keptSince = true; });

if (bench()) {
  after = remembered() ?? newest();
  remember();
}

document.addEventListener("change", ({ target, isTrusted }) => {
  const form = target.matches?.("#bench input[type=checkbox], #bench input[type=radio]") ? target.form : null;
  if (form?.hasAttribute("hx-post")) {
    if (isTrusted && !ticks.has(keyOf(form))) {
      takeBackProposed(form, target);
    }

    ticks.set(keyOf(form), new Set(boxesOf(form).filter((box) => box.checked).map(nameOf)));
    stand();
  }
});

document.addEventListener("htmx:beforeSwap", ({ detail }) => {
  const { elt } = detail.requestConfig;
  if (elt.matches("a")) {
    ticks.clear();
  } else if (elt.matches("form") && detail.xhr.status < 300) {
    ticks.delete(keyOf(elt));
  }
});

document.addEventListener("htmx:afterSwap", ({ detail }) => {
  restore();
  if (detail.requestConfig?.elt?.matches?.("a")) {
    stand();
  }
});

document.addEventListener("bench:fresh", restore);
document.addEventListener("bench:online", () => { keptSince = false; });

/** The check and places a photo taken now belongs to, and what it shows, or that it follows what waits on this device; what is
    not given stays as the form has it. */
export function standing() {
  if (keptSince) {
    return { places: [], follows: true };
  }

  const { place, spoken, spokenCheck, spokenPlace, spokenShows, waiting } = document.getElementById("photo-stands")?.dataset ?? {};
  const said = Number(spoken ?? 0) > after;
  const shows = Number(waiting ?? 0) > after ? waiting : said ? spokenShows : undefined;
  return said
    ? { check: spokenCheck, places: spokenPlace ? [spokenPlace] : [], shows }
    : { places: tickedPlaces(place), shows };
}

/** What is ticked under "What do you see?". A check that is measured has its place in front instead, until one ticks. */
function tickedPlaces(inFront) {
  const form = document.querySelector("#bench form[action$='/observations']");
  return inFront && !(form && ticks.has(keyOf(form)))
    ? [inFront]
    : [...form?.querySelectorAll("input[name=cylinder]:checked") ?? []].map((box) => box.value);
}

/** The place that the page proposes is meant until one presses another: then that one is, by itself. */
function takeBackProposed(form, pressed) {
  const others = boxesOf(form).filter((box) => box.name === "cylinder" && box !== pressed && box.checked);
  if (pressed.name === "cylinder" && pressed.checked && others.length === 1 && others[0].defaultChecked) {
    others[0].checked = false;
  }
}

function restore() {
  for (const form of document.querySelectorAll("#bench form[hx-post]")) {
    const chosen = ticks.get(keyOf(form));
    if (chosen) {
      boxesOf(form).forEach((box) => { box.checked = chosen.has(nameOf(box)); });
    }
  }
}

function nameOf(box) {
  return `${box.name}=${box.value}`;
}

function stand() {
  keptSince = false;
  after = newest();
  remember();
}

function newest() {
  return Number(document.getElementById("captures")?.dataset.newest ?? 0);
}

/** Kept over a reload of the very page; a page that is opened anew is a new place to stand. */
function remember() {
  try {
    sessionStorage.setItem(stored, JSON.stringify({ page: location.href, after }));
  } catch {
    // Private windows may not keep anything; then a reload counts as opening the check.
  }
}

function remembered() {
  try {
    const kept = JSON.parse(sessionStorage.getItem(stored));
    return kept?.page === location.href && performance.getEntriesByType("navigation")[0]?.type === "reload" ? kept.after : null;
  } catch {
    return null;
  }
}

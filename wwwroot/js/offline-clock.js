// The clock of what was switched on while the network is gone: the program does not know of it yet, but the coil gets hot all
// the same. It runs on this device alone, by its own clock, until the page is shown anew by the program.

const make = (tag, textContent = "", more) => Object.assign(document.createElement(tag), { textContent, ...more });

/** Begins it for a press that waits on this device; nothing where the sheet sets no limit of time. */
export function beginClock(button, end) {
  const { limitSeconds, what, tie } = button?.dataset ?? {};
  if (!limitSeconds) {
    return;
  }

  const strip = document.getElementById("ends");
  const clock = make("p");
  clock.dataset.endClock = end;
  clock.append(
    make("strong", "Over its time:", { className: "late", hidden: true }), " ", make("b", what), " · ", make("span", "", { className: "elapsed" }),
    ` of ${limitSeconds / 60 | 0}:${`${limitSeconds % 60}`.padStart(2, "0")}, only on this device`);
  strip.append(clock);

  const row = make("div", "", { className: "end-over", hidden: true });
  Object.assign(row.dataset, { end, opened: new Date().toISOString(), limitSeconds, what, tie, ownClock: "" });
  const told = make("p");
  told.append(make("strong", `Over its time: ${what}. ${tie}.`, { className: "late" }), " Tick it off once the network is back.");
  const quiet = make("button", "Quiet", { type: "button" });
  quiet.dataset.quiet = end;
  const hush = make("div", "", { className: "hush" });
  hush.append(quiet, make("span", "Quiet until it is put right.", { hidden: true }));
  const unfold = make("input", "", { type: "checkbox", className: "unfold" });
  unfold.setAttribute("aria-label", `Show all that is said of ${what}`);
  row.append(told, hush, unfold);
  let rows = document.getElementById("ends-over");
  if (!rows) {
    rows = make("div", "", { id: "ends-over", className: "ends-over" });
    strip.after(rows);
  }

  rows.append(row);
  document.dispatchEvent(new Event("bench:clock"));
}

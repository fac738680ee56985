// The card of what was heard last changes under the thumb once it is settled: for a moment the next one takes no press, so
// that a press made twice settles one finding only.

const moment = 350;

let shown = finding();
let waits;

document.addEventListener("bench:fresh", () => {
  const now = finding();
  // The first one to come takes the place of none.
  if (now !== shown && shown) {
    clearTimeout(waits);
    document.body.dataset.heardWaits = "";
    waits = setTimeout(() => { delete document.body.dataset.heardWaits; }, moment);
  }

  shown = now;
});

document.addEventListener("click", (press) => {
  if ("heardWaits" in document.body.dataset && press.target.closest?.("#heard")) {
    press.preventDefault();
    press.stopImmediatePropagation();
  }
}, true);

function finding() {
  return document.getElementById("heard")?.dataset.finding;
}

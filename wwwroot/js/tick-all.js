// "All 6": ticks every place of its form, and where all are ticked already, none.

document.addEventListener("click", ({ target }) => {
  const all = target.closest?.("[data-tick-all]");
  if (all) {
    const boxes = [...all.closest("fieldset").querySelectorAll("input[type=checkbox]")];
    const tick = !boxes.every((box) => box.checked);
    boxes.forEach((box) => { box.checked = tick; });
    // Heard by what keeps the ticks.
    boxes[0].dispatchEvent(new Event("change", { bubbles: true }));
  }
});

// What a measuring line needs: the fields of what is of known size, and the length, which the program works out.

const patience = 350;
const fieldset = document.querySelector("[data-measure]");
const field = (name) => fieldset.querySelector(`[data-measure-field="${name}"]`);
let waits = 0;

/** Whether a length is known or a rectangle. */
export function knownBy() {
  return fieldset.querySelector("input[name=known-by]:checked").value;
}

export function referencePoints() {
  return knownBy() === "length" ? 2 : 4;
}

export function showMeasure(isShown) {
  fieldset.hidden = !isShown;
  field("second").closest(".field").hidden = knownBy() === "length";
}

/** What the fields say, for a mark. */
export function typed() {
  const words = (name) => field(name).value.trim();
  return { known: words("known"), second: knownBy() === "length" ? "" : words("second"), tolerance: words("tolerance"), unit: words("unit"), pick: words("pick") };
}

/** Puts what a mark says into the fields. */
export function fill(mark) {
  fieldset.querySelector(`input[value=${mark.reference.length > 2 ? "rectangle" : "length"}]`).checked = true;
  ["known", "second", "tolerance", "unit", "pick"].forEach((name) => { field(name).value = mark[name] ?? ""; });
  showMeasure(true);
}

export function onTyped(changed) {
  fieldset.addEventListener("input", changed);
}

/** Has the length worked out, once nothing changed for a moment; tells what came of it. */
export function askLength(form, mark, told) {
  clearTimeout(waits);
  waits = setTimeout(async () => {
    const asked = JSON.stringify(mark);
    const [says, words] = await answered(form, asked);
    if (asked === JSON.stringify(mark)) {
      told(says, words);
    }
  }, patience);
}

async function answered(form, mark) {
  try {
    const answer = await fetch(`${form.action}/length`, { method: "POST", body: new URLSearchParams({ mark }) });
    const told = await answer.json();
    return answer.ok ? [told.says, `${told.says}. ${told.how}`] : [null, told.message];
  } catch {
    return [null, "There is no connection, so the length is not worked out yet. It is once the marks are saved."];
  }
}

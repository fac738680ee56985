// What a press did, said where one looks: in the line above the bar, and on a wide screen beside what was pressed.

const gap = 100;

/** Says it again where it is the very sentence of before: a live region is heard only when it changes. */
export function sayWhatItDid(before, around) {
  const line = document.getElementById("did");
  const words = line?.textContent.trim() ?? "";
  if (words === "") {
    return;
  }

  if (words === before) {
    line.textContent = "";
    setTimeout(() => { line.textContent ||= words; }, gap);
  }

  showBeside(around.find(({ at, id }) => at.isConnected && at.id === id)?.at, words);
}

/** The sentence of before this press. */
export function whatItDid() {
  return document.getElementById("did")?.textContent.trim() ?? "";
}

function showBeside(near, words) {
  document.querySelectorAll(".did-here").forEach((old) => old.remove());
  if (near) {
    // Said aloud by the line; this one is for the eye.
    const here = document.createElement("output");
    here.className = "did-here";
    here.setAttribute("aria-hidden", "true");
    here.textContent = words;
    const row = near.closest(".cells, .buttons") ?? near.closest("form");
    if (row) {
      row.after(here);
    } else {
      near.append(here);
    }
  }
}

// What a mark is, in words: the same as MarkWords says in reports.

const names = { arrow: "Arrow to the", ring: "Ring round the", line: "Line along the", text: "Words at the", measure: "Measured at the" };

export function wordsOf(mark) {
  const what = `${names[mark.shape]} ${partOf(mark.shape === "arrow" ? mark.points.at(-1) : middleOf(mark.points))}`;
  return [what, mark.text, mark.says].filter(Boolean).join(": ");
}

export function middleOf(points) {
  const middle = (axis) => (Math.min(...points.map((point) => point[axis])) + Math.max(...points.map((point) => point[axis]))) / 2;
  return [middle(0), middle(1)];
}

function partOf([x, y]) {
  const down = y < 1 / 3 ? "upper" : y > 2 / 3 ? "lower" : "";
  const across = x < 1 / 3 ? "left" : x > 2 / 3 ? "right" : "";
  return down && across ? `${down} ${across}` : across ? `${across} side` : down ? `${down} part` : "middle";
}

const ends = ["Pick the first end of what is to be measured.", "Pick its other end."];

const steps = {
  arrow: ["Draw from where the arrow begins to what it shows.", "Pick what the arrow shows."],
  ring: ["Draw from one corner about it to the opposite one.", "Pick the opposite corner."],
  line: ["Draw the line. By keys, place its points one by one, and the last one twice.", "Place the next point, or the last one once more."],
  text: ["Pick where the words stand."],
  length: ["Pick the first end of the known length.", "Pick its other end.", ...ends],
  rectangle: ["Pick the first corner of the rectangle.", "Pick the next corner, along the known length.", "Pick the third corner, along its other side.", "Pick the fourth corner.", ...ends],
  move: ["Pick a mark in the photo or in the list to move or change it."],
};

/** What is to be done next. */
export function stepOf(tool, placed) {
  return steps[tool][Math.min(placed, steps[tool].length - 1)];
}

// A patch of the photo about a point, magnified, so that a finger or the keys can pick it closely. It shows the same picture once
// more, which loads nothing.

import { made } from "./mark-shapes.js";

// Of a drawing a thousand units wide: forty units are about eighty pixels of the largest copies, each of them two or more here.
const patch = 40;

export class Glass {
  #svg = made("svg", { class: "marks-glass", "aria-hidden": "true" });
  #lines = [made("path", { stroke: "#fff", "stroke-width": 0.8, fill: "none" }), made("path", { stroke: "#111", "stroke-width": 0.3, fill: "none" })];

  constructor(stage, image) {
    image.id = "marks-image";
    this.#svg.append(made("use", { href: "#marks-image" }), ...this.#lines);
    this.#svg.style.display = "none";
    stage.append(this.#svg);
  }

  show([x, y], height) {
    const [atX, atY] = [1000 * x, height * y];
    this.#svg.setAttribute("viewBox", `${atX - patch / 2} ${atY - patch / 2} ${patch} ${patch}`);
    this.#lines.forEach((line) => line.setAttribute("d", `M${atX - patch} ${atY}H${atX + patch}M${atX} ${atY - patch}V${atY + patch}`));
    this.#svg.dataset.side = x < 0.5 ? "right" : "left";
    this.#svg.style.display = "";
  }

  hide() {
    this.#svg.style.display = "none";
  }
}

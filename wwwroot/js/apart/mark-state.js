// The marks as they stand on the page: what is drawn, what is picked, and what was before. It knows nothing of how they look.

const whole = -1;

/** All points of a mark that can be moved by themselves, in the order they were picked. */
export function pointsOf(mark) {
  return mark.shape === "line" ? [] : [...mark.reference ?? [], ...mark.points];
}

export class MarkState {
  marks = [];
  picked = -1;
  point = whole;
  begun = null;
  live = null;
  #past = [];

  constructor(marks) {
    this.marks = marks;
  }

  get mark() {
    return this.marks[this.picked] ?? null;
  }

  remember() {
    this.#past.push(JSON.stringify(this.marks));
  }

  /** Takes back the last point of what is being drawn, else the last change. */
  undo() {
    if (this.begun) {
      const placed = this.begun.points.length > 0 ? this.begun.points : this.begun.reference ?? [];
      placed.pop();
      this.begun = placed.length + (this.begun.reference?.length ?? 0) > 0 ? this.begun : null;
    } else if (this.#past.length > 0) {
      const now = JSON.stringify(this.marks);
      let before = this.#past.pop();
      while (before === now && this.#past.length > 0) {
        before = this.#past.pop();
      }

      this.marks = JSON.parse(before);
      this.letGo();
    }
  }

  letGo() {
    [this.picked, this.point, this.begun, this.live] = [-1, whole, null, null];
  }

  pick(index, point = 0) {
    this.letGo();
    this.picked = index;
    this.point = pointsOf(this.mark).length > 0 ? point : whole;
  }

  nextPoint() {
    this.point = this.point + 1 < pointsOf(this.mark).length ? this.point + 1 : whole;
  }

  remove() {
    if (this.mark) {
      this.remember();
      this.marks.splice(this.picked, 1);
      this.letGo();
    }
  }

  /** Moves what is picked; null where nothing is. Within the photo. */
  moveBy(across, down) {
    const moved = this.live && !this.mark ? [this.live] : this.point === whole ? [...pointsOf(this.mark), ...this.mark.shape === "line" ? this.mark.points : []] : [pointsOf(this.mark)[this.point]];
    const bound = (step, axis) => Math.min(Math.max(step, -Math.min(...moved.map((one) => one[axis]))), 1 - Math.max(...moved.map((one) => one[axis])));
    const [x, y] = [bound(across, 0), bound(down, 1)];
    moved.forEach((one) => { one[0] += x; one[1] += y; });
  }

  /** Places a point of what is being drawn; true once it is whole. */
  place(shape, at, referencePoints = 0) {
    this.begun ??= referencePoints > 0 ? { shape, points: [], reference: [] } : { shape, points: [] };
    const { points, reference } = this.begun;
    const isEndOfLine = shape === "line" && points.length > 1 && same(points.at(-1), at);
    if (!isEndOfLine) {
      (reference && reference.length < referencePoints ? reference : points).push([...at]);
    }

    return isEndOfLine || (shape !== "line" && points.length === (shape === "text" ? 1 : 2));
  }

  /** What was begun is one of the marks. */
  finish(more = {}) {
    this.remember();
    this.marks.push({ ...this.begun, ...more });
    this.pick(this.marks.length - 1, pointsOf(this.marks.at(-1)).length - 1);
  }
}

function same([x, y], [otherX, otherY]) {
  return Math.abs(x - otherX) < 1e-4 && Math.abs(y - otherY) < 1e-4;
}

/** A line with as few points as keep its way, two hundred at most (Ramer, Douglas and Peucker's way). */
export function simpler(points, most = 200) {
  let kept = points;
  for (let within = 0.0015; kept === points || kept.length > most; within *= 1.5) {
    kept = thinned(points, within);
  }

  return kept;
}

function thinned(points, within) {
  if (points.length < 3) {
    return points;
  }

  const [from, to] = [points[0], points.at(-1)];
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const off = points.map(([x, y]) => length > 0
    ? Math.abs((to[0] - from[0]) * (from[1] - y) - (from[0] - x) * (to[1] - from[1])) / length
    : Math.hypot(x - from[0], y - from[1]));
  const farthest = off.indexOf(Math.max(...off));
  return off[farthest] <= within
    ? [from, to]
    : [...thinned(points.slice(0, farthest + 1), within).slice(0, -1), ...thinned(points.slice(farthest), within)];
}

// Marks by finger, pen and mouse: what a press takes hold of, and how it is drawn.

import { pointsOf } from "./mark-state.js";

const reach = 26; // CSS pixels about a point: a finger
const leastDraw = 12; // less is a press, and the second point is pressed as well

/** @param page What it works on: its state and tool, and what to call when something changed. */
export function takePointer(stage, picture, page) {
  let drag = null;
  const at = ({ clientX, clientY }) => {
    const box = picture.getBoundingClientRect();
    return [(clientX - box.left) / box.width, (clientY - box.top) / box.height].map((share) => Math.min(1, Math.max(0, share)));
  };
  const apart = (one, other) => {
    const box = picture.getBoundingClientRect();
    return Math.hypot((one[0] - other[0]) * box.width, (one[1] - other[1]) * box.height);
  };

  stage.addEventListener("pointerdown", (down) => {
    if (!down.isPrimary || down.button !== 0) {
      return;
    }

    stage.setPointerCapture(down.pointerId);
    stage.focus({ preventScroll: true });
    drag = page.tool === "move" ? hold(page, at(down), apart) : begin(page, at(down));
    page.changed();
    down.preventDefault();
  });
  stage.addEventListener("pointermove", (move) => {
    if (drag) {
      drag.to(at(move));
      page.changed();
    }
  });
  stage.addEventListener("pointerup", (up) => {
    const ended = drag;
    drag = null;
    ended?.end(at(up), apart);
    page.changed();
  });
  stage.addEventListener("pointercancel", () => {
    drag = null;
    page.state.live = null;
    page.changed();
  });
}

/** Takes hold of the nearest point, or of a mark by its lines. */
function hold(page, at, apart) {
  const { state } = page;
  const near = state.marks.flatMap((mark, index) => pointsOf(mark).map((point, place) => ({ index, place, off: apart(point, at) - (index === state.picked ? reach / 2 : 0) })))
    .sort((one, other) => one.off - other.off)[0];
  const byLine = state.marks.findIndex((mark) => Math.min(...along(mark).map((point) => apart(point, at))) < reach);
  if (near && near.off < reach) {
    state.pick(near.index, near.place);
  } else if (byLine >= 0) {
    state.pick(byLine);
    state.point = -1;
  } else {
    state.letGo();
    return null;
  }

  state.remember();
  let last = at;
  return {
    to(now) {
      state.moveBy(now[0] - last[0], now[1] - last[1]);
      last = now;
    },
    end() {
      page.moved();
    },
  };
}

function along({ points }) {
  return points.slice(1).flatMap((to, index) => Array.from({ length: 20 }, (_, step) => points[index].map((from, axis) => from + (to[axis] - from) * step / 19)));
}

/** Draws with the tool that is chosen. */
function begin(page, at) {
  const { state } = page;
  const isDrawn = (page.tool === "arrow" || page.tool === "ring") && !state.begun;
  if (!state.begun) {
    state.letGo();
  }

  if (page.tool === "line" || isDrawn) {
    page.place(at);
  }

  state.live = [...at];
  return {
    to(now) {
      if (page.tool === "line") {
        state.begun.points.push([...now]);
      }

      state.live = [...now];
    },
    end(now, apart) {
      if (page.tool === "line") {
        page.endLine();
      } else if (!isDrawn || apart(state.begun.points[0], now) >= leastDraw) {
        page.place(now);
      } else {
        state.live = null;
      }
    },
  };
}

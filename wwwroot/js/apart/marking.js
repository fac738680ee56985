// The page on which a photo is marked: tools, keys, the list of marks, and saving. Without it marks are typed in percent.

import { Glass } from "./mark-glass.js";
import { drafted, dropDraft, keepDraft, send } from "./mark-keep.js";
import { askLength, fill, knownBy, onTyped, referencePoints, showMeasure, typed } from "./mark-measure.js";
import { takePointer } from "./mark-pointer.js";
import { draw } from "./mark-shapes.js";
import { MarkState, pointsOf, simpler } from "./mark-state.js";
import { stepOf, wordsOf } from "./mark-words.js";

const main = document.querySelector("[data-marks]");
const form = main?.querySelector("form");

if (form) {
  begin();
}

function begin() {
  const stage = form.querySelector("[data-stage]");
  const picture = stage.querySelector("svg");
  const group = picture.querySelector("[data-drawn]");
  const height = picture.viewBox.baseVal.height;
  const glass = new Glass(stage, picture.querySelector("image"));
  const says = form.querySelector("[data-marks-says]");
  const words = form.querySelector("[data-words]");
  const list = form.querySelector("[data-marks-list]");
  const saved = [...form.querySelectorAll("input[name=mark]")].map((field) => JSON.parse(field.value));
  const draft = drafted();
  const state = new MarkState(draft?.marks ?? structuredClone(saved));
  const page = { state, tool: "move", place, endLine, moved, changed };

  form.querySelectorAll("[data-marks-live]").forEach((part) => { part.hidden = false; });
  Object.assign(form.querySelector("[data-marks-plain]"), { hidden: true, disabled: true });
  form.querySelectorAll("input[name=mark]").forEach((field) => field.remove());
  Object.entries({ tabindex: "0", role: "application", "aria-label": "The photo with its marks", "aria-describedby": "marks-keys" }).forEach((one) => stage.setAttribute(...one));
  form.querySelectorAll("[data-tool]").forEach((button) => button.addEventListener("click", () => choose(button.dataset.tool)));
  form.querySelectorAll("[data-way]").forEach((button) => button.addEventListener("click", () => step(button.dataset.way, false)));
  form.querySelectorAll("[data-act]").forEach((button) => button.addEventListener("click", () => act(button.dataset.act)));
  stage.addEventListener("keydown", press);
  words.addEventListener("input", () => {
    state.mark.text = words.value.trim();
    changed();
  });
  words.addEventListener("focus", () => state.remember());
  onTyped(() => {
    const others = (state.begun ?? state.mark)?.reference;
    if (others && (state.begun ? state.begun.by !== knownBy() : others.length !== referencePoints())) {
      choose("measure");
    } else if (state.mark?.shape === "measure") {
      Object.assign(state.mark, typed());
      measure();
    }

    showMeasure(true);
    changed();
  });
  form.addEventListener("submit", save);
  takePointer(stage, picture, page);
  choose("move");
  if (draft) {
    form.elements.seen.value = draft.seen;
    tell("Marks that were not saved yet are here again.");
  }

  function choose(tool) {
    endLine();
    page.tool = tool;
    state.letGo();
    state.live = tool === "move" ? null : [0.5, 0.5];
    showMeasure(tool === "measure");
    tell(stepOf(tool === "measure" ? knownBy() : tool, 0));
    changed();
  }

  function place(at) {
    const { tool } = page;
    const isWhole = state.place(tool, at, tool === "measure" ? referencePoints() : 0);
    state.live = null;
    if (tool === "measure") {
      state.begun.by = knownBy();
    }

    if (isWhole) {
      finish(tool);
    } else {
      tell(stepOf(tool === "measure" ? knownBy() : tool, state.begun.points.length + (state.begun.reference?.length ?? 0)));
    }
  }

  function finish(shape) {
    delete state.begun.by;
    state.finish(shape === "measure" ? typed() : {});
    if (shape === "measure") {
      measure();
    } else {
      tell(`${wordsOf(state.mark)}. Say what it marks.`);
    }

    if (shape === "text") {
      changed();
      words.focus();
    }
  }

  /** A line drawn by hand is whole once the finger leaves, or another tool is taken. */
  function endLine() {
    if (state.begun?.shape === "line") {
      state.begun.points = simpler(state.begun.points);
      if (state.begun.points.length > 1) {
        finish("line");
      } else {
        state.letGo();
      }
    }
  }

  function measure() {
    const { mark } = state;
    delete mark.says;
    askLength(form, mark, (length, told) => {
      if (length) {
        mark.says = length;
      }

      tell(told);
      changed();
    });
  }

  function moved() {
    if (state.mark?.shape === "measure") {
      measure();
    }
  }

  function press(key) {
    if (key.key.startsWith("Arrow")) {
      step(key.key, key.shiftKey);
    } else if (key.key === "z" && (key.ctrlKey || key.metaKey)) {
      act("undo");
    } else {
      const does = { Enter: "place", Delete: "remove", Backspace: "remove", Escape: "letGo" }[key.key];
      if (!does) {
        return;
      }

      act(does);
    }

    key.preventDefault();
  }

  /** By one pixel of the copy where something is measured, else by a hundredth of the width. */
  function step(way, isLarge) {
    if (!state.mark && !state.live) {
      if (page.tool === "move") {
        return;
      }

      state.live = [...[...state.begun?.reference ?? [], ...state.begun?.points ?? []].at(-1) ?? [0.5, 0.5]];
    }

    const isMeasure = page.tool === "measure" || state.mark?.shape === "measure";
    const pixels = isMeasure ? (isLarge ? 10 : 1) : (isLarge ? 0.05 : 0.01) * main.dataset.copy;
    const [across, down] = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[way];
    if (state.mark && !state.begun) {
      state.live = null;
    }

    state.remember();
    state.moveBy(across * pixels / main.dataset.copy, down * pixels / main.dataset.copyHeight);
    moved();
    changed();
  }

  function act(what) {
    if (what === "place" && state.live) {
      place([...state.live]);
      state.live = state.begun ? [...[...state.begun.reference ?? [], ...state.begun.points].at(-1)] : null;
    } else if ((what === "place" || what === "next") && state.mark) {
      state.nextPoint();
    } else if (what === "remove") {
      state.remove();
    } else if (what === "undo") {
      state.undo();
    } else if (what === "letGo") {
      endLine();
      state.letGo();
    }

    changed();
  }

  /** Shows everything as it stands, and keeps it on this device. */
  function changed() {
    draw(group, height, state);
    const point = state.live ?? (state.mark?.shape === "measure" ? pointsOf(state.mark)[state.point] : null);
    if (point && (page.tool === "measure" || state.mark?.shape === "measure")) {
      glass.show(point, height);
    } else {
      glass.hide();
    }

    if (state.mark?.shape === "measure" && page.shown !== state.mark) {
      fill(state.mark);
    }

    page.shown = state.mark;
    words.disabled = !state.mark;
    if (document.activeElement !== words) {
      words.value = state.mark?.text ?? "";
    }

    form.querySelectorAll("[data-tool]").forEach((button) => button.setAttribute("aria-pressed", button.dataset.tool === page.tool));
    listMarks();
    if (JSON.stringify(state.marks) === JSON.stringify(saved)) {
      dropDraft();
    } else {
      keepDraft(form.elements.seen.value, state.marks);
    }
  }

  function listMarks() {
    const hadFocus = list.contains(document.activeElement);
    list.replaceChildren(...state.marks.map((mark, index) => {
      const [item, button] = [document.createElement("li"), document.createElement("button")];
      Object.assign(button, { type: "button", textContent: wordsOf(mark) });
      button.setAttribute("aria-pressed", index === state.picked);
      button.addEventListener("click", () => {
        page.tool = "move";
        state.pick(index);
        showMeasure(mark.shape === "measure");
        changed();
        stage.focus({ preventScroll: true });
      });
      item.append(button);
      return item;
    }));
    form.querySelector("[data-marks-none]").hidden = state.marks.length > 0;
    if (hadFocus) {
      list.querySelector("[aria-pressed=true]")?.focus();
    }
  }

  async function save(submit) {
    submit.preventDefault();
    endLine();
    const wordless = state.marks.findIndex((mark) => mark.shape === "text" && !mark.text);
    if (wordless >= 0) {
      state.pick(wordless);
      changed();
      words.focus();
      tell("Type the words that are to stand in the photo.");
      return;
    }

    const button = submit.submitter ?? form.querySelector("button.main");
    button.disabled = true;
    tell("Saving the marks…");
    const trouble = await send(form, state.marks);
    button.disabled = false;
    if (trouble) {
      tell(trouble);
      says.scrollIntoView({ block: "nearest" });
    } else {
      dropDraft();
      location.assign(main.dataset.photo);
    }
  }

  function tell(text) {
    says.textContent = text;
  }
}

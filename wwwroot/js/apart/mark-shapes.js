// Draws marks over the photo, as MarkDrawing does in reports, with the points to take hold of.

import { pointsOf } from "./mark-state.js";

const svg = "http://www.w3.org/2000/svg";
const width = 1000;
const strokes = [["#fff", 19], ["#111", 15], ["#fd0", 7]];
const lineHeight = 48;
const tick = 26;

/** Draws everything anew. */
export function draw(group, height, state) {
  const scaled = ([x, y]) => [x * width, y * height];
  const begun = state.begun && { ...state.begun, points: [...state.begun.points, ...state.live ? [state.live] : []] };
  group.replaceChildren(
    ...[...state.marks, ...begun ? [begun] : []].flatMap((mark) => shapesOf(mark, scaled, height)),
    ...(begun ? [...begun.reference ?? [], ...begun.points] : state.mark ? pointsOf(state.mark) : []).flatMap((point, index) => handle(scaled(point), !begun && index === state.point)),
    ...state.live ? cross(scaled(state.live)) : []);
}

function shapesOf(mark, scaled, height) {
  const points = mark.points.map(scaled);
  const known = (mark.reference ?? []).map(scaled);
  const path = pathOf(mark.shape, points) + pathOf(known.length > 2 ? "rectangle" : "known", known);
  const words = [...wrapped(mark.text ?? (mark.shape === "text" ? "…" : "")), ...mark.says ? [mark.says] : []];
  return [
    ...path ? strokes.map(([stroke, strokeWidth]) => made("path", { d: path, stroke, "stroke-width": strokeWidth })) : [],
    ...words.length > 0 && points.length > 0 ? [label(mark.shape, points, words, height)] : [],
  ];
}

function pathOf(shape, points) {
  if (points.length < 2) {
    return "";
  }

  const line = `M${points.map(pair).join("L")}`;
  return shape === "ring" ? ring(points)
    : shape === "arrow" ? line + head(points)
    : shape === "measure" ? line + across(points[0], points[1]) + across(points[1], points[0])
    : shape === "known" ? across(points[0], points[1]) + across(points[1], points[0])
    : shape === "rectangle" ? "" // its corners are seen as points while it is picked
    : line;
}

function head([tail, tip]) {
  const way = Math.atan2(tail[1] - tip[1], tail[0] - tip[0]);
  const length = Math.min(60, Math.max(24, Math.hypot(tail[0] - tip[0], tail[1] - tip[1]) / 2));
  const side = (turn) => pair([tip[0] + length * Math.cos(way + turn), tip[1] + length * Math.sin(way + turn)]);
  return `M${side(0.5)}L${pair(tip)}L${side(-0.5)}`;
}

function ring([from, to]) {
  const [rx, ry] = [Math.max(14, Math.abs(to[0] - from[0]) / 2), Math.max(14, Math.abs(to[1] - from[1]) / 2)];
  return `M${(from[0] + to[0]) / 2 - rx} ${(from[1] + to[1]) / 2}a${rx} ${ry} 0 1 0 ${2 * rx} 0a${rx} ${ry} 0 1 0 ${-2 * rx} 0`;
}

function across(end, other) {
  const length = Math.max(1, Math.hypot(other[0] - end[0], other[1] - end[1]));
  const [x, y] = [tick * (other[1] - end[1]) / length, tick * (end[0] - other[0]) / length];
  return `M${pair([end[0] - x, end[1] - y])}L${pair([end[0] + x, end[1] + y])}`;
}

function label(shape, points, words, height) {
  const [x, y] = placeOf(shape, points);
  const anchor = x < width / 3 ? "start" : x > width * 2 / 3 ? "end" : "middle";
  const top = Math.min(Math.max(y, lineHeight), Math.max(lineHeight, height - 16 - lineHeight * (words.length - 1)));
  const group = made("g", { "font-family": "sans-serif", "font-size": 42, "font-weight": 700, fill: "#fff", stroke: "#111", "stroke-width": 9, "paint-order": "stroke" });
  group.append(...words.map((line, index) => {
    const text = made("text", { x: Math.min(Math.max(x, 16), width - 16), y: top + index * lineHeight, "text-anchor": anchor });
    text.textContent = line;
    return text;
  }));
  return group;
}

function placeOf(shape, points) {
  const [first, last] = [points[0], points.at(-1)];
  const middle = [(first[0] + last[0]) / 2, (first[1] + last[1]) / 2];
  return shape === "arrow" ? [first[0], first[1] >= last[1] ? first[1] + lineHeight : first[1] - lineHeight / 2]
    : shape === "ring" ? [middle[0], Math.max(first[1], last[1]) + lineHeight]
    : shape === "measure" ? [middle[0], middle[1] + lineHeight + tick]
    : shape === "line" ? [first[0], first[1] + lineHeight]
    : [first[0], first[1] + lineHeight / 3];
}

function handle([cx, cy], isPicked) {
  return [made("circle", { cx, cy, r: isPicked ? 26 : 15, fill: isPicked ? "none" : "#fff", stroke: "#fff", "stroke-width": 11 }), made("circle", { cx, cy, r: isPicked ? 26 : 15, fill: "none", stroke: "#111", "stroke-width": 5 })];
}

function cross([x, y]) {
  const d = `M${x - 40} ${y}H${x + 40}M${x} ${y - 40}V${y + 40}`;
  return [made("path", { d, stroke: "#fff", "stroke-width": 9 }), made("path", { d, stroke: "#111", "stroke-width": 3 })];
}

function wrapped(text) {
  return text.split(" ").filter(Boolean).reduce((lines, word) => {
    if (lines.length > 0 && lines.at(-1).length + 1 + word.length <= 24) {
      lines.push(`${lines.pop()} ${word}`);
    } else {
      lines.push(word);
    }

    return lines;
  }, []);
}

export function made(name, attributes) {
  const element = document.createElementNS(svg, name);
  Object.entries(attributes).forEach(([attribute, value]) => element.setAttribute(attribute, value));
  return element;
}

function pair([x, y]) {
  return `${x} ${y}`;
}

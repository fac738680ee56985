// The level meter: the last few seconds as upright strokes, the newest on the right.

const strokeWidth = 3;
const gap = 3;

export class LevelMeter {
  #peaks = [];
  #canvas;

  constructor(canvas) {
    this.#canvas = canvas;
  }

  clear() {
    this.#peaks = [];
    this.#draw();
  }

  add(peak) {
    this.#peaks.push(peak);
    this.#draw();
  }

  #draw() {
    const scale = globalThis.devicePixelRatio || 1;
    const { clientWidth: width, clientHeight: height } = this.#canvas;
    this.#canvas.width = width * scale;
    this.#canvas.height = height * scale;
    const pen = this.#canvas.getContext("2d");
    pen.scale(scale, scale);
    pen.fillStyle = getComputedStyle(this.#canvas).color;

    const room = Math.floor(width / (strokeWidth + gap));
    const shown = this.#peaks.slice(-room);
    this.#peaks = shown;
    shown.forEach((peak, i) => {
      // Loudness is heard in ratios: the quietest speech still shows.
      const share = Math.max(0.04, Math.min(1, 1 + Math.log10(Math.max(peak, 1e-4)) / 2.5));
      const x = width - (shown.length - i) * (strokeWidth + gap);
      pen.fillRect(x, (height - share * height) / 2, strokeWidth, share * height);
    });
  }
}

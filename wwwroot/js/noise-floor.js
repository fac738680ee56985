// The noise of the room: how loud a frame is, and the floor that speech stands out from.

export class NoiseFloor {
  #filter = { in: 0, out: 0, share: 0 };
  #levels = [];
  #frames;
  #set;

  /** For samples of a rate; the floor looks back over so many frames. Settings: highPass, floorShare, quietest. */
  constructor(rate, frames, settings) {
    this.#frames = frames;
    this.#set = settings;
    const turn = 1 / (2 * Math.PI * settings.highPass);
    this.#filter.share = turn / (turn + 1 / rate);
  }

  /** The floor, dB below full scale. */
  get level() {
    const sorted = [...this.#levels].sort((a, b) => a - b);
    return Math.max(this.#set.quietest, sorted[Math.floor(sorted.length * this.#set.floorShare)] ?? this.#set.quietest);
  }

  /** Notes a level and gives the floor. */
  note(level) {
    this.#levels.push(level);
    if (this.#levels.length > this.#frames) {
      this.#levels.shift();
    }

    return this.level;
  }

  /** The level of a frame above hum and rumble, dB below full scale. */
  levelOf(frame) {
    let sum = 0;
    for (const sample of frame) {
      this.#filter.out = this.#filter.share * (this.#filter.out + sample - this.#filter.in);
      this.#filter.in = sample;
      sum += this.#filter.out * this.#filter.out;
    }

    return 10 * Math.log10(sum / frame.length + 1e-12);
  }
}

// One recording from the microphone.

import { Microphone } from "./microphone.js";
import { longestSeconds } from "./wav.js";

export class Recorder {
  #blocks = [];
  #length = 0;
  #microphone = new Microphone();

  /** Called with the peak level, 0 to 1, and the seconds so far, for each block. */
  onlevel = () => {};

  /** Called when the longest recording is reached. */
  onfull = () => {};

  /** Called when the microphone goes away while recording. */
  onlost = () => {};

  get seconds() {
    return this.#microphone.rate ? this.#length / this.#microphone.rate : 0;
  }

  async start() {
    this.#microphone.onblock = (block) => this.#take(block);
    this.#microphone.onlost = () => this.onlost();
    await this.#microphone.open();
  }

  /** Stops and gives what was recorded: samples and their rate. */
  async stop() {
    await this.#microphone.lastBlock();
    const rate = this.#microphone.rate;
    await this.#microphone.close();

    const samples = new Float32Array(this.#length);
    let at = 0;
    for (const block of this.#blocks) {
      samples.set(block, at);
      at += block.length;
    }

    this.#blocks = [];
    return { samples, rate };
  }

  #take(block) {
    if (this.seconds >= longestSeconds) {
      return;
    }

    const room = Math.floor(longestSeconds * this.#microphone.rate) - this.#length;
    const taken = block.length > room ? block.subarray(0, room) : block;
    this.#blocks.push(taken);
    this.#length += taken.length;
    this.onlevel(peakOf(taken), this.seconds);
    if (this.seconds >= longestSeconds) {
      this.onfull();
    }
  }
}

/** The highest level of some samples, 0 to 1. */
export function peakOf(samples) {
  return samples.reduce((peak, sample) => Math.max(peak, Math.abs(sample)), 0);
}

// Cuts a stream of samples into utterances at the pauses. Pure: samples in, events out; no browser, no clock.
//
// An energy detector over frames of 20 ms. What is loud is measured against a floor that follows the noise of the room:
// a low percentile of the last seconds, so that a compressor that starts to run is floor after a while and speech is not.
// The server's voice-activity model listens again to all that is cut here; this one only has to miss nothing.

import { NoiseFloor } from "./noise-floor.js";
import { concat, join, power } from "./samples.js";

const frameSeconds = 0.02;
const defaults = {
  highPass: 120, // Hz; hum and rumble below are not speech
  floorSeconds: 3, // how far back the floor looks
  floorShare: 0.1, // the share of frames that are quieter than the floor
  onAbove: 9, // dB above the floor that speech begins at
  offAbove: 5, // dB above the floor that it ends below
  quietest: -65, // dB below full scale; a floor is never taken to be lower
  onFrames: 3, // loud frames
  onWithin: 5, // among so many
  preRoll: 0.6, // seconds kept from before the beginning
  hangOver: 1.0, // seconds of quiet that end an utterance
  shortest: 0.3, // seconds of loud frames that an utterance has at least
  longest: 28, // seconds after which it is cut
  cutWithin: 4, // at the quietest place of the last seconds
  cutWidth: 0.2, // seconds over which that is looked for
};

export class UtteranceCutter {
  #rate;
  #set;
  #frameLength;
  #rest = new Float32Array(0);
  #floor;
  #recent = [];
  #frames = [];
  #loud = 0;
  #quiet = 0;
  #isHearing = false;

  constructor(rate, settings = {}) {
    this.#rate = rate;
    this.#set = { ...defaults, ...settings };
    this.#frameLength = Math.round(rate * frameSeconds);
    this.#floor = new NoiseFloor(rate, this.#set.floorSeconds / frameSeconds, this.#set);
  }

  /** Whether speech has begun and not ended. */
  get isHearing() {
    return this.#isHearing;
  }

  /** The floor, dB below full scale. */
  get floor() {
    return this.#floor.level;
  }

  /** Takes samples; gives what happened: { kind: "began" }, { kind: "ended", samples } or { kind: "dismissed" }. */
  push(samples) {
    const events = [];
    const all = join(this.#rest, samples);
    let at = 0;
    for (; at + this.#frameLength <= all.length; at += this.#frameLength) {
      const happened = this.#frame(all.slice(at, at + this.#frameLength));
      if (happened) {
        events.push(happened);
      }
    }

    this.#rest = all.slice(at);
    return events;
  }

  /** Ends what is being heard now; gives its samples, or null where nothing worth keeping was heard. */
  flush() {
    const kept = this.#isHearing && this.#loud * frameSeconds >= this.#set.shortest ? concat(this.#frames) : null;
    this.forget();
    return kept;
  }

  /** Forgets what was heard and keeps the floor: for the time the page itself speaks. */
  forget() {
    this.#begin([]);
    this.#rest = new Float32Array(0);
    this.#recent = [];
  }

  #begin(frames) {
    this.#frames = frames;
    this.#isHearing = false;
    this.#loud = 0;
    this.#quiet = 0;
  }

  #frame(frame) {
    const level = this.#floor.levelOf(frame);
    this.#frames.push(frame);
    return this.#isHearing ? this.#goOn(level) : this.#listen(level);
  }

  #listen(level) {
    const floor = this.#floor.note(level);
    this.#recent.push(level > floor + this.#set.onAbove);
    if (this.#recent.length > this.#set.onWithin) {
      this.#recent.shift();
    }

    const loud = this.#recent.filter(Boolean).length;
    if (loud >= this.#set.onFrames) {
      this.#isHearing = true;
      this.#loud = loud;
      this.#quiet = 0;
      this.#recent = [];
      return { kind: "began" };
    }

    const most = Math.round((this.#set.preRoll / frameSeconds));
    if (this.#frames.length > most) {
      this.#frames.shift();
    }

    return null;
  }

  #goOn(level) {
    const floor = this.#floor.note(level);
    if (level > floor + this.#set.offAbove) {
      this.#loud++;
      this.#quiet = 0;
    } else {
      this.#quiet++;
    }

    if (this.#quiet * frameSeconds >= this.#set.hangOver) {
      return this.#end();
    }

    return this.#frames.length * frameSeconds >= this.#set.longest ? this.#cut() : null;
  }

  #end() {
    const frames = this.#frames;
    const spoke = this.#loud * frameSeconds >= this.#set.shortest;
    // What is quiet at the end may be the beginning of the next.
    this.#begin(frames.slice(-Math.round(this.#set.preRoll / frameSeconds)));
    return spoke ? { kind: "ended", samples: concat(frames) } : { kind: "dismissed" };
  }

  /** Too long: cut where it is quietest near the end, and go on hearing with the rest. */
  #cut() {
    const width = Math.round(this.#set.cutWidth / frameSeconds);
    const from = this.#frames.length - Math.round(this.#set.cutWithin / frameSeconds);
    const powers = this.#frames.map(power);
    let best = this.#frames.length;
    let least = Infinity;
    for (let at = Math.max(0, from); at + width <= powers.length; at++) {
      const sum = powers.slice(at, at + width).reduce((total, one) => total + one, 0);
      if (sum < least) {
        least = sum;
        best = at + Math.floor(width / 2);
      }
    }

    const samples = concat(this.#frames.slice(0, best));
    this.#frames = this.#frames.slice(best);
    this.#loud = this.#frames.length;
    this.#quiet = 0;
    return { kind: "ended", samples, goesOn: true };
  }
}

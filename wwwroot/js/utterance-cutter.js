// Cuts a stream of samples into utterances at the pauses. Pure: samples in, events out; no browser, no clock.
//
// An energy detector over frames of 20 ms. What is loud is measured against a floor that follows the noise of the room:
// a low percentile of the last seconds, so that a compressor that starts to run is floor after a while and speech is not.
// The server's voice-activity model listens again to all that is cut here; this one only has to miss nothing.

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
  #filter = { in: 0, out: 0, share: 0 };
  #levels = [];
  #recent = [];
  #frames = [];
  #loud = 0;
  #quiet = 0;
  #isHearing = false;

  constructor(rate, settings = {}) {
    this.#rate = rate;
    this.#set = { ...defaults, ...settings };
    this.#frameLength = Math.round(rate * frameSeconds);
    const turn = 1 / (2 * Math.PI * this.#set.highPass);
    this.#filter.share = turn / (turn + 1 / rate);
  }

  /** Whether speech has begun and not ended. */
  get isHearing() {
    return this.#isHearing;
  }

  /** The floor, dB below full scale. */
  get floor() {
    return this.#floorOf();
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
    const level = this.#level(frame);
    this.#frames.push(frame);
    return this.#isHearing ? this.#goOn(level) : this.#listen(level);
  }

  #listen(level) {
    const floor = this.#note(level);
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
    const floor = this.#note(level);
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

  /** Notes a level and gives the floor. */
  #note(level) {
    this.#levels.push(level);
    if (this.#levels.length > this.#set.floorSeconds / frameSeconds) {
      this.#levels.shift();
    }

    return this.#floorOf();
  }

  #floorOf() {
    const sorted = [...this.#levels].sort((a, b) => a - b);
    return Math.max(this.#set.quietest, sorted[Math.floor(sorted.length * this.#set.floorShare)] ?? this.#set.quietest);
  }

  /** The level of a frame above hum and rumble, dB below full scale. */
  #level(frame) {
    let sum = 0;
    for (const sample of frame) {
      this.#filter.out = this.#filter.share * (this.#filter.out + sample - this.#filter.in);
      this.#filter.in = sample;
      sum += this.#filter.out * this.#filter.out;
    }

    return 10 * Math.log10(sum / frame.length + 1e-12);
  }
}

function power(frame) {
  return frame.reduce((sum, sample) => sum + sample * sample, 0);
}

function concat(frames) {
  const samples = new Float32Array(frames.reduce((length, frame) => length + frame.length, 0));
  let at = 0;
  for (const frame of frames) {
    samples.set(frame, at);
    at += frame.length;
  }

  return samples;
}

function join(first, second) {
  return first.length === 0 ? second : concat([first, second]);
}

// One time of listening, from start to stop.

import { LevelMeter } from "./level.js";
import { Microphone } from "./microphone.js";
import { ReadBack } from "./read-back.js";
import { addressOf } from "./recording-address.js";

/** The session that goes on; null while nothing listens. */
export const now = { session: null };

/** Begins one that can be ended. */
export function begin(stop) {
  now.session = {
    stop,
    microphone: new Microphone(),
    voice: new ReadBack(),
    meter: new LevelMeter(document.getElementById("hands-free-level")),
    sending: Promise.resolve(),
    turns: new Set(),
    answered: new Set(),
    deafUntil: 0,
    isTaken: false,
    began: performance.now(),
    loudest: 0,
    address: addressOf(true),
    spoken: new Date(),
  };
  return now.session;
}

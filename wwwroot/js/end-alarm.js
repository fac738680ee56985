// How a loose end that is over its time is heard and felt: two short tones, a shake, and hands-free a sentence. Where the
// browser does not let the page sound, because nobody pressed anything on it yet, it is silent and says nothing of it.

import { now as listening } from "./hands-free-session.js";

const tones = [{ at: 0, pitch: 880 }, { at: 0.24, pitch: 660 }];
const long = 0.2; // seconds, of each
const loud = 0.25;
const shake = [200, 100, 200];
const patience = 500;
const roomDiesAway = 350;

let sound = null;

/** Whether an alarm would be in the way of what is said: of a recording, an utterance, or the page's own voice. */
export function isSomebodySpeaking() {
  const said = document.getElementById("say")?.dataset.state ?? "ready";
  const mine = listening.session;
  return said !== "ready" || Boolean(mine && (mine.voice.isSpeaking || mine.cutter?.isHearing));
}

/** Sounds and shakes once. */
export async function ring() {
  if (!isPressed()) {
    return;
  }

  try {
    navigator.vibrate?.(shake);
    await awaken();
    if (sound.state === "running") {
      play();
    }
  } catch {
    // What cannot sound is seen.
  }
}

/** Says a sentence aloud where the page is worked hands-free; gives whether it is. */
export function sayAloud(sentence) {
  listening.session?.voice.say(sentence);
  return listening.session !== null;
}

/** Some browsers let sound begin in a press only: to be called in one while something may have to sound later. */
export function prepare() {
  awaken().catch(() => {});
}

/** Nothing will have to sound any more. */
export function letGo() {
  sound?.close().catch(() => {});
  sound = null;
}

/** Asked first, since a browser complains of sound before the first press. */
function isPressed() {
  return navigator.userActivation?.hasBeenActive ?? true;
}

async function awaken() {
  sound ??= new AudioContext();
  if (sound.state !== "running") {
    await Promise.race([sound.resume(), new Promise((done) => { setTimeout(done, patience); })]);
  }
}

function play() {
  const begin = sound.currentTime + 0.02;
  for (const { at, pitch } of tones) {
    const tone = new OscillatorNode(sound, { frequency: pitch });
    const level = new GainNode(sound, { gain: 0 });
    level.gain.setValueAtTime(0, begin + at);
    level.gain.linearRampToValueAtTime(loud, begin + at + 0.02);
    level.gain.linearRampToValueAtTime(0, begin + at + long);
    tone.connect(level).connect(sound.destination);
    tone.start(begin + at);
    tone.stop(begin + at + long);
  }

  if (listening.session) {
    // The page never listens to itself.
    const over = performance.now() + 1000 * (tones.at(-1).at + long) + roomDiesAway;
    listening.session.deafUntil = Math.max(listening.session.deafUntil, over);
  }
}

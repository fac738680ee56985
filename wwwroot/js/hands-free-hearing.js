// What is heard hands-free: cut into utterances, each sent as a note of its own. The page never listens to itself.

import { announce } from "./announce.js";
import { answer } from "./hands-free-answers.js";
import { hint, noticeSilence, show } from "./hands-free-panel.js";
import { now } from "./hands-free-session.js";
import { postInLine } from "./outbox.js";
import { peakOf } from "./recorder.js";
import { addressOf } from "./recording-address.js";
import { encodeWav, resample } from "./wav.js";

const roomDiesAway = 350; // milliseconds after the page has spoken

/** Something else took the microphone, or let it go. */
export function taken(mine, isTaken) {
  if (now.session !== mine || !mine.cutter || mine.isTaken === isTaken) {
    return;
  }

  mine.isTaken = isTaken;
  if (isTaken) {
    const left = mine.cutter.flush();
    if (left) {
      keep(mine, left);
    }

    hint("Something else has it, such as a phone call. Listening goes on by itself when it is free.");
    announce("The microphone is taken by something else.");
  } else {
    hint("");
    announce("Listening again.");
  }

  state();
}

/** Takes what the microphone hears. */
export function take(mine, block) {
  if (now.session !== mine || !mine.cutter) {
    return;
  }

  const peak = peakOf(block);
  mine.meter.add(peak);
  noticeSilence(mine, peak);
  if (mine.voice.isSpeaking || performance.now() < mine.deafUntil) {
    mine.cutter.forget();
    return;
  }

  for (const happened of mine.cutter.push(block)) {
    if (happened.kind === "began") {
      mine.address = addressOf(true);
      mine.spoken = new Date();
    } else if (happened.kind === "ended") {
      keep(mine, happened.samples);
      mine.spoken = new Date(); // Of what goes on without a pause.
    }
  }

  state();
  mine.voice.next();
}

/** Sends an utterance with the check that was open when it began, and in the order of speaking. */
export function keep(mine, samples) {
  const address = mine.address;
  const spoken = mine.spoken;
  const rate = mine.microphone.rate;
  mine.sending = mine.sending.then(async () => {
    const wav = encodeWav(await resample(samples, rate));
    postInLine(wav, address, spoken).then((recording) => {
      if (recording) {
        mine.turns.add(recording);
        answer();
      }
    });
  });
}

/** The page began to speak, or ended. */
export function speaking(isSpeaking) {
  if (!now.session) {
    return;
  }

  if (!isSpeaking) {
    now.session.deafUntil = performance.now() + roomDiesAway;
  }

  state();
}

/** Shows what it is at. */
export function state() {
  const mine = now.session;
  show(mine.isTaken ? "waiting" : mine.voice.isSpeaking ? "speaking" : mine.cutter?.isHearing ? "hearing" : "listening");
}

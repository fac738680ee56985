// A recording from a file, sent like one that was just made.

import { post } from "./outbox.js";
import { addressOf } from "./recording-address.js";
import { hideTrouble, showTrouble } from "./trouble.js";
import { decodeFile, encodeWav, longestSeconds, rate } from "./wav.js";

document.addEventListener("change", (change) => {
  if (change.target.id === "audio-file" && change.target.files.length > 0) {
    takeFile(change.target);
  }
});

async function takeFile(input) {
  hideTrouble();
  const file = input.files[0];
  const to = addressOf();
  try {
    const samples = await decodeFile(file);
    if (samples.length > longestSeconds * rate) {
      showTrouble(`"${file.name}" is longer than ten minutes. Cut it into shorter recordings, then choose them one by one.`);
      return;
    }

    await post(encodeWav(samples), to);
    document.getElementById("write").open = false; // how it is read stands among what was captured
  } catch {
    showTrouble(`"${file.name}" could not be read as sound. Choose a WAV, MP3, M4A, FLAC or Ogg recording.`);
  } finally {
    input.value = "";
  }
}

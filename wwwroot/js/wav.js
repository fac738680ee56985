// Mono 16-bit PCM WAV at 16 kHz: the one form of recording the program takes.

export const rate = 16000;
export const longestSeconds = 600;

/** The samples as a WAV file. */
export function encodeWav(samples) {
  const bytes = new ArrayBuffer(44 + samples.length * 2);
  const view = new DataView(bytes);
  writeText(view, 0, "RIFF");
  view.setUint32(4, 36 + samples.length * 2, true);
  writeText(view, 8, "WAVEfmt ");
  view.setUint32(16, 16, true);
  view.setUint16(20, 1, true);
  view.setUint16(22, 1, true);
  view.setUint32(24, rate, true);
  view.setUint32(28, rate * 2, true);
  view.setUint16(32, 2, true);
  view.setUint16(34, 16, true);
  writeText(view, 36, "data");
  view.setUint32(40, samples.length * 2, true);
  samples.forEach((sample, i) => view.setInt16(44 + i * 2, toInt16(sample), true));
  return new Blob([bytes], { type: "audio/wav" });
}

/** Samples of any rate as samples at 16 kHz; the browser does the filtering. */
export async function resample(samples, fromRate) {
  if (fromRate === rate || samples.length === 0) {
    return samples;
  }

  const length = Math.max(1, Math.round(samples.length * rate / fromRate));
  const offline = new OfflineAudioContext(1, length, rate);
  const buffer = offline.createBuffer(1, samples.length, fromRate);
  buffer.copyToChannel(samples, 0);
  const source = offline.createBufferSource();
  source.buffer = buffer;
  source.connect(offline.destination);
  source.start();
  return (await offline.startRendering()).getChannelData(0);
}

/** Any audio file the browser can decode, as mono samples at 16 kHz. */
export async function decodeFile(file) {
  const context = new OfflineAudioContext(1, 1, rate);
  const decoded = await context.decodeAudioData(await file.arrayBuffer());
  const mixed = new Float32Array(decoded.length);
  for (let channel = 0; channel < decoded.numberOfChannels; channel++) {
    decoded.getChannelData(channel).forEach((sample, i) => { mixed[i] += sample / decoded.numberOfChannels; });
  }

  return mixed;
}

function toInt16(sample) {
  const clipped = Math.max(-1, Math.min(1, sample));
  return Math.round(clipped * 32767);
}

function writeText(view, at, text) {
  [...text].forEach((letter, i) => view.setUint8(at + i, letter.charCodeAt(0)));
}

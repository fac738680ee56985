// Stretches of samples.

/** The sum of the squares. */
export function power(frame) {
  return frame.reduce((sum, sample) => sum + sample * sample, 0);
}

/** Several stretches as one. */
export function concat(frames) {
  const samples = new Float32Array(frames.reduce((length, frame) => length + frame.length, 0));
  let at = 0;
  for (const frame of frames) {
    samples.set(frame, at);
    at += frame.length;
  }

  return samples;
}

/** A stretch that goes on where another ended. */
export function join(first, second) {
  return first.length === 0 ? second : concat([first, second]);
}

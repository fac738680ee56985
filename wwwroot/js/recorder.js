// One recording from the microphone, as raw samples: nothing is compressed before it is transcribed.

import { longestSeconds } from "./wav.js";

const constraints = { audio: { channelCount: 1, echoCancellation: false, noiseSuppression: true, autoGainControl: true } };

export class Recorder {
  #blocks = [];
  #length = 0;
  #stream;
  #context;
  #gatherer;

  /** Called with the peak level, 0 to 1, and the seconds so far, for each block. */
  onlevel = () => {};

  /** Called when the longest recording is reached. */
  onfull = () => {};

  /** Called when the microphone goes away while recording. */
  onlost = () => {};

  get seconds() {
    return this.#context ? this.#length / this.#context.sampleRate : 0;
  }

  async start() {
    if (!navigator.mediaDevices?.getUserMedia || !globalThis.AudioWorkletNode) {
      throw new Error("This browser gives pages no microphone here.");
    }

    this.#stream = await navigator.mediaDevices.getUserMedia(constraints);
    try {
      this.#context = new AudioContext();
      await this.#context.audioWorklet.addModule(new URL("./recorder-worklet.js", import.meta.url));
      await this.#context.resume();
      this.#gatherer = new AudioWorkletNode(this.#context, "gatherer", { numberOfOutputs: 0, channelCount: 1, channelCountMode: "explicit" });
      this.#gatherer.port.onmessage = ({ data }) => this.#take(data);
      this.#stream.getAudioTracks()[0].addEventListener("ended", () => this.onlost());
      this.#context.createMediaStreamSource(this.#stream).connect(this.#gatherer);
    } catch (problem) {
      await this.#release();
      throw problem;
    }
  }

  /** Stops and gives what was recorded: samples and their rate. */
  async stop() {
    await this.#lastBlock();
    const rate = this.#context.sampleRate;
    await this.#release();

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
    if (typeof block === "string" || this.seconds >= longestSeconds) {
      return;
    }

    const room = Math.floor(longestSeconds * this.#context.sampleRate) - this.#length;
    const taken = block.length > room ? block.subarray(0, room) : block;
    this.#blocks.push(taken);
    this.#length += taken.length;
    this.onlevel(taken.reduce((peak, sample) => Math.max(peak, Math.abs(sample)), 0), this.seconds);
    if (this.seconds >= longestSeconds) {
      this.onfull();
    }
  }

  /** Asks the audio thread for what it has not sent yet; goes on without it if it does not answer. */
  #lastBlock() {
    return new Promise((resolve) => {
      const patience = setTimeout(resolve, 300);
      this.#gatherer.port.onmessage = ({ data }) => {
        this.#take(data);
        if (data === "stopped") {
          clearTimeout(patience);
          resolve();
        }
      };
      this.#gatherer.port.postMessage("stop");
    });
  }

  async #release() {
    this.#stream?.getTracks().forEach((track) => track.stop());
    if (this.#context && this.#context.state !== "closed") {
      await this.#context.close();
    }
  }
}

/** What went wrong with the microphone and what to do, for people. */
export function microphoneProblem(problem) {
  const else_ = "You can also choose an audio file or type a note in the list of captures.";
  switch (problem?.name) {
    case "NotAllowedError":
    case "SecurityError":
      return `The browser was not allowed to use the microphone. Allow it for this page in the browser's site settings, then press Say again. ${else_}`;
    case "NotFoundError":
    case "OverconstrainedError":
      return `No microphone was found. Plug one in, then press Say again. ${else_}`;
    case "NotReadableError":
      return `The microphone is in use by another program, or did not start. Close that program, then press Say again. ${else_}`;
    default:
      return `The microphone could not be used: ${problem?.message ?? "no reason was given"} ${else_}`;
  }
}

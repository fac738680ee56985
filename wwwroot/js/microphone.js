// The microphone as raw samples: nothing is compressed before it is transcribed.

const constraints = { audio: { channelCount: 1, echoCancellation: false, noiseSuppression: true, autoGainControl: true } };

const soundStartsWithin = 8000; // milliseconds

export class Microphone {
  #stream;
  #context;
  #gatherer;

  /** Called with each block of samples. */
  onblock = () => {};

  /** Called when the microphone goes away. */
  onlost = () => {};

  /** Called with true while something else has the microphone, such as a phone call, and with false after it. */
  ontaken = () => {};

  /** Samples a second; 0 while closed. */
  get rate() {
    return this.#context?.sampleRate ?? 0;
  }

  async open() {
    if (!navigator.mediaDevices?.getUserMedia || !globalThis.AudioWorkletNode) {
      throw new Error(isSecureContext
        ? "This browser gives pages no microphone."
        : "Browsers give the microphone only to pages of this machine itself (127.0.0.1 or localhost) or with an address that begins with https.");
    }

    this.#stream = await navigator.mediaDevices.getUserMedia(constraints);
    try {
      this.#context = new AudioContext();
      await this.#context.audioWorklet.addModule("/js/recorder-worklet.js");
      await begun(this.#context);
      this.#gatherer = new AudioWorkletNode(this.#context, "gatherer", { numberOfOutputs: 0, channelCount: 1, channelCountMode: "explicit" });
      this.#gatherer.port.onmessage = ({ data }) => this.onblock(data);
      this.#watch(this.#stream.getAudioTracks()[0]);
      this.#context.createMediaStreamSource(this.#stream).connect(this.#gatherer);
    } catch (problem) {
      await this.close();
      throw problem;
    }
  }

  /** Asks the audio thread for what it has not sent yet, which comes as a block; goes on without it if it does not
      answer. */
  lastBlock() {
    return new Promise((resolve) => {
      const patience = setTimeout(resolve, 300);
      this.#gatherer.port.onmessage = ({ data }) => {
        if (data === "stopped") {
          clearTimeout(patience);
          resolve();
        } else {
          this.onblock(data);
        }
      };
      this.#gatherer.port.postMessage("stop");
    });
  }

  async close() {
    const context = this.#context;
    this.#stream?.getTracks().forEach((track) => track.stop());
    if (context && context.state !== "closed") {
      context.onstatechange = null;
      await context.close();
    }
  }

  #watch(track) {
    track.addEventListener("ended", () => this.onlost());
    track.addEventListener("mute", () => this.ontaken(true));
    track.addEventListener("unmute", () => this.ontaken(false));
    this.#context.onstatechange = () => {
      const runs = this.#context.state === "running";
      this.ontaken(!runs);
      if (!runs && this.#context.state !== "closed") {
        this.#context.resume().catch(() => {});
      }
    };
  }
}

/** A browser that finds no device for sound says nothing of it and goes on starting. */
function begun(context) {
  const late = new DOMException("The sound did not start.", "TimeoutError");
  return Promise.race([context.resume(), new Promise((_, reject) => setTimeout(reject, soundStartsWithin, late))]);
}

/** What went wrong with the microphone and what to do, for people.
    @param again what to press once it is put right. */
export function microphoneProblem(problem, again) {
  const else_ = "You can also choose an audio file or type a note in the list of captures.";
  switch (problem?.name) {
    case "NotAllowedError":
    case "SecurityError":
      return `The browser was not allowed to use the microphone. Allow it for this page in the browser's site settings, then press ${again} again. ${else_}`;
    case "NotFoundError":
    case "OverconstrainedError":
      return `No microphone was found. Plug one in, then press ${again} again. ${else_}`;
    case "NotReadableError":
      return `The microphone is in use by another program, or did not start. Close that program, then press ${again} again. ${else_}`;
    case "TimeoutError":
      return `The sound of this machine did not start. See that a device for sound is there, or start the browser anew, then press ${again} again. ${else_}`;
    default:
      return `The microphone could not be used: ${problem?.message ?? "no reason was given"} ${else_}`;
  }
}

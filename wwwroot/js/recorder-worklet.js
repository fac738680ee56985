// Runs on the audio thread: gathers the microphone's samples into blocks and sends them to the page.

const blockLength = 2048;

class Gatherer extends AudioWorkletProcessor {
  #block = new Float32Array(blockLength);
  #filled = 0;
  #stopped = false;

  constructor() {
    super();
    this.port.onmessage = () => {
      this.#stopped = true;
      this.#send(this.#block.slice(0, this.#filled));
      this.port.postMessage("stopped");
    };
  }

  process([input]) {
    const samples = input[0];
    if (this.#stopped) {
      return false;
    }

    for (let i = 0; samples && i < samples.length; i++) {
      this.#block[this.#filled++] = samples[i];
      if (this.#filled === blockLength) {
        this.#send(this.#block);
        this.#block = new Float32Array(blockLength);
        this.#filled = 0;
      }
    }

    return true;
  }

  #send(block) {
    if (block.length > 0) {
      this.port.postMessage(block, [block.buffer]);
    }
  }
}

registerProcessor("gatherer", Gatherer);

// Says answers aloud with the browser's own voice, one after the other. Whether it does is remembered.

const remembered = "inspectlog.answers-aloud";
const language = "en-GB";

/** A voice that never says it has ended is not waited for longer than this. */
const patience = (text) => 3000 + 120 * text.length;

export class ReadBack {
  #waiting = [];
  #isSpeaking = false;

  /** Asked before each answer; while it gives false nothing is said. */
  mayspeak = () => true;

  /** Called with true when the voice begins, and with false when it has ended. */
  onspeaking = () => {};

  static get isPossible() {
    return "speechSynthesis" in globalThis && speechSynthesis.getVoices().length > 0;
  }

  static get isOn() {
    try {
      return localStorage.getItem(remembered) !== "off";
    } catch {
      return true;
    }
  }

  static set isOn(on) {
    try {
      localStorage.setItem(remembered, on ? "on" : "off");
    } catch {
      // A browser that remembers nothing still does it for now.
    }
  }

  get isSpeaking() {
    return this.#isSpeaking;
  }

  say(text) {
    this.#waiting.push(text);
    this.next();
  }

  /** Says the next answer, if it is time. Called again whenever that may have changed. */
  next() {
    if (!ReadBack.isOn || !ReadBack.isPossible) {
      this.#waiting = [];
    } else if (!this.#isSpeaking && this.#waiting.length > 0 && this.mayspeak()) {
      this.#speak(this.#waiting.shift());
    }
  }

  hush() {
    this.#waiting = [];
    if ("speechSynthesis" in globalThis) {
      speechSynthesis.cancel();
    }
  }

  #speak(text) {
    this.#isSpeaking = true;
    this.onspeaking(true);
    const words = new SpeechSynthesisUtterance(text);
    words.lang = language;
    const ended = () => {
      clearTimeout(limit);
      words.onend = words.onerror = null;
      this.#isSpeaking = false;
      this.onspeaking(false);
      this.next();
    };
    const limit = setTimeout(() => { speechSynthesis.cancel(); ended(); }, patience(text));
    words.onend = words.onerror = ended;
    speechSynthesis.speak(words);
  }
}

// What the page shows of what is not sent.

/** Shows something that is not sent, or what is known of it now. */
export function list(item, message, again, throwAway) {
  const time = item.taken.toLocaleTimeString("en-GB");
  item.row ??= row(item, time, again, throwAway);
  item.row.querySelector("p").textContent = item.fields ? `${item.words}, ${time}: only on this device. ${message}` : `Voice note of ${time} is not sent. ${message}`;
}

/** Takes it away again. */
export function unlist(item) {
  item.release?.();
  item.row?.remove();
  item.row = undefined;
}

/** Says how many wait, listed where there is room for it, and where one of them needs a person. */
export function count(unsent, needsPerson) {
  const fold = document.getElementById("unsent-fold");
  if (fold) {
    fold.open ||= needsPerson || (fold.hidden && matchMedia("(min-width: 48rem) and (min-height: 40rem)").matches);
    fold.hidden = unsent === 0;
    document.getElementById("unsent-count").textContent = unsent === 0 ? "Nothing waits on this device" : `${unsent} only on this device`;
  }
}

/** Says what is being sent. */
export function status(text) {
  const place = document.getElementById("sending");
  if (place) {
    place.textContent = text;
  }
}

function row(item, time, again, throwAway) {
  const made = document.createElement("li");
  made.append(document.createElement("p"), button("Send again", again));
  if (item.wav) {
    made.append(saving(item, time));
  }

  made.append(button("Throw away", throwAway));
  document.getElementById("unsent")?.append(made);
  return made;
}

function saving(item, time) {
  const save = document.createElement("a");
  save.className = "button";
  save.textContent = "Save as a file";
  save.download = `voice-note-${time.replaceAll(":", "")}.wav`;
  save.href = URL.createObjectURL(item.wav);
  item.release = () => URL.revokeObjectURL(save.href);
  return save;
}

function button(text, action) {
  const made = document.createElement("button");
  made.type = "button";
  made.textContent = text;
  made.addEventListener("click", action);
  return made;
}

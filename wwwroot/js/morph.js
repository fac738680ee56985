// Puts a new bench in place of the old one, part by part, so that what a person is in the middle of stays as it is:
// focus, scroll position, a note that plays, a recording that runs, a form that is half filled in.

/** As an answer to something the person did: forms show what the server says, but for what was begun since in another. */
export function replace(old, fresh) {
  const notes = begunNotes();
  document.querySelectorAll("form[data-changed]").forEach(goOnAfterSent);
  const beforeNodeMorphed = (node, next) => keep(node, next) && !isBegun(node, next);
  const nodes = Idiomorph.morph(old, fresh, { morphStyle: "outerHTML", callbacks: { beforeNodeMorphed, beforeNodeRemoved: (node) => !isBeingAmended(node), beforeAttributeUpdated: keepOpen } });
  notes.forEach(goOnWith);
  return tell(nodes);
}

/** As news from elsewhere: forms that are being filled in, and what is wrong with them, are left alone. */
export function refresh(old, fresh) {
  const beforeNodeMorphed = (node, next) => keep(node, next) && !isInUse(node) && !isSent(node, next) && !isSaid(node);
  const beforeNodeRemoved = (node) => !isUnanswered(node) && !isBeingAmended(node) && !isSaid(node);
  return tell(Idiomorph.morph(old, fresh, { morphStyle: "outerHTML", ignoreActiveValue: true, callbacks: { beforeNodeMorphed, beforeNodeRemoved, beforeAttributeUpdated: keepOpen } }));
}

/** A form that is half filled in, not sent, and about the check that stays open. */
function isBegun(node, next) {
  return node.tagName === "FORM" && node.hasAttribute("data-in-use") && !node.hasAttribute("data-sent")
    && node.getAttribute("action") === next.getAttribute?.("action") && checkOf(node) === checkOf(next);
}

/** What was typed into a form while it was on its way is the beginning of the next: what it was sent with is kept by now. */
function goOnAfterSent(form) {
  delete form.dataset.changed;
  delete form.dataset.sent;
  for (const field of form.querySelectorAll("textarea")) {
    field.value = field.value.startsWith(field.sentText) ? field.value.slice(field.sentText.length).trimStart() : field.value;
  }

  const id = form.querySelector("input[name=capture]");
  if (id) {
    id.value = crypto.randomUUID();
  }
}

function checkOf(form) {
  return form.querySelector("input[name=check]")?.value;
}

/** What was written and not sent. It is of the vehicle and not of the check, so it stays when another check is opened. */
function begunNotes() {
  return [...document.querySelectorAll("#write form[data-in-use]:not([data-sent]) textarea")].map(({ id, value }) => ({ id, value }));
}

function goOnWith({ id, value }) {
  const field = document.getElementById(id);
  if (field && field.value === "") {
    field.value = value;
    markInUse(field.form);
  }
}

/** Marks a form as half filled in. */
export function markInUse(form) {
  form.dataset.inUse = "";
}

/** Tells who wants to know that the bench says something new. */
function tell(nodes) {
  // Once the swap that this is a part of is through.
  setTimeout(() => document.dispatchEvent(new Event("bench:fresh")));
  return nodes;
}

function keep(node, next) {
  if (node.nodeType === Node.ELEMENT_NODE) {
    node.nextId = next.id;
    if (node.hasAttribute("data-keep") || isPlaying(node, next)) {
      return false;
    }
  }

  return true;
}

function isPlaying(node, next) {
  return node.tagName === "AUDIO" && node.getAttribute("src") === next.getAttribute?.("src");
}

/** What a person unfolded stays unfolded, unless the server folds that very part by answering it; and what a script gave
    the focus to can still have it. */
function keepOpen(attribute, node, kind) {
  if (attribute === "tabindex" && node === document.activeElement) {
    return false;
  }

  const isFold = attribute === "open" && node.tagName === "DETAILS";
  return !(isFold && kind === "remove" && node.id && node.id === node.nextId && !node.hasAttribute("data-answered"));
}

function isInUse(node) {
  return node.tagName === "FORM" && (node.hasAttribute("data-in-use") || node.querySelector("[aria-invalid=true]") !== null || (node.contains(document.activeElement) && document.activeElement.matches("input:not([type=radio], [type=checkbox]), textarea, select")));
}

/** A form that is on its way: it keeps the id it was sent with, should it have to be sent again. */
function isSent(node, next) {
  return node.tagName === "FORM" && node.hasAttribute("data-sent") && node.getAttribute("action") === next.getAttribute?.("action");
}

/** What the last press did stays said until the next. */
function isSaid(node) {
  return node.nodeType === Node.ELEMENT_NODE && node.matches("#did, #did-undo, .did-here");
}

/** A refusal or a question that the person has not dealt with yet. */
function isUnanswered(node) {
  return node.nodeType === Node.ELEMENT_NODE && node.matches(".problems, [data-question]");
}

/** A form that puts an entry right was opened in the page alone: the server does not know of it until it is sent. */
function isBeingAmended(node) {
  return node.nodeType === Node.ELEMENT_NODE && node.hasAttribute("data-amending") && !node.hasAttribute("data-sent");
}

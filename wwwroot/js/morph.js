// Puts a new bench in place of the old one, part by part, so that what a person is in the middle of stays as it is:
// focus, scroll position, a note that plays, a recording that runs, a form that is half filled in.

/** As an answer to something the person did: forms show what the server says. */
export function replace(old, fresh) {
  return tell(Idiomorph.morph(old, fresh, { morphStyle: "outerHTML", callbacks: { beforeNodeMorphed: keep, beforeAttributeUpdated: keepOpen } }));
}

/** As news from elsewhere: forms that are being filled in, and what is wrong with them, are left alone. */
export function refresh(old, fresh) {
  const beforeNodeMorphed = (node, next) => keep(node, next) && !isInUse(node);
  const beforeNodeRemoved = (node) => !isUnanswered(node);
  return tell(Idiomorph.morph(old, fresh, { morphStyle: "outerHTML", ignoreActiveValue: true, callbacks: { beforeNodeMorphed, beforeNodeRemoved, beforeAttributeUpdated: keepOpen } }));
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

/** What a person unfolded stays unfolded, unless the server folds that very part by answering it. */
function keepOpen(attribute, node, kind) {
  const isFold = attribute === "open" && node.tagName === "DETAILS";
  return !(isFold && kind === "remove" && node.id && node.id === node.nextId && !node.hasAttribute("data-answered"));
}

function isInUse(node) {
  return node.tagName === "FORM" && (node.hasAttribute("data-in-use") || node.querySelector("[aria-invalid=true]") !== null || (node.contains(document.activeElement) && document.activeElement.matches("input:not([type=radio], [type=checkbox]), textarea, select")));
}

/** A refusal or a question that the person has not dealt with yet. */
function isUnanswered(node) {
  return node.nodeType === Node.ELEMENT_NODE && node.matches(".problems, [data-question]");
}

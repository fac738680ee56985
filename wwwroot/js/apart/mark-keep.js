// Marks that are not saved yet outlive the page, and marks that could not be sent stay on it.

const key = `marks ${location.pathname}`;

/** What was drawn here and not saved; null where nothing was. */
export function drafted() {
  try {
    return JSON.parse(sessionStorage.getItem(key));
  } catch {
    return null; // Private windows may not keep anything.
  }
}

export function keepDraft(seen, marks) {
  try {
    sessionStorage.setItem(key, JSON.stringify({ seen, marks }));
  } catch {
    // As above.
  }
}

export function dropDraft() {
  try {
    sessionStorage.removeItem(key);
  } catch {
    // As above.
  }
}

/** Sends the form; says what is wrong, or nothing once the marks are in the journal. */
export async function send(form, marks) {
  const fields = new FormData(form);
  fields.delete("mark");
  fields.delete("known-by");
  marks.forEach((mark) => fields.append("mark", JSON.stringify(mark)));
  let answer;
  try {
    answer = await fetch(form.action, { method: "POST", body: new URLSearchParams(fields), headers: { "HX-Request": "true" } });
  } catch {
    return "There is no connection, so the marks were not saved. They stay on this page: save them again once there is one.";
  }

  if (answer.ok && answer.headers.has("Entry-Hash")) {
    return "";
  }

  const page = new DOMParser().parseFromString(await answer.text(), "text/html");
  const seen = page.querySelector("input[name=seen]");
  form.elements.seen.value = seen ? seen.value : form.elements.seen.value;
  return page.querySelector(".problems li")?.textContent.trim() || `The marks were not saved (${answer.status}). They stay on this page.`;
}

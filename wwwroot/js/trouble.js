// The message that something was not saved. It stays until it is dismissed or the thing succeeds.

export function showTrouble(message, again) {
  hideTrouble();
  const box = document.createElement("div");
  box.className = "trouble";
  box.id = "trouble";
  box.setAttribute("role", "alert");

  const words = document.createElement("p");
  words.textContent = message;
  box.append(words);

  if (again) {
    box.append(button("Try again", () => { hideTrouble(); again(); }, "main"));
  }

  box.append(button("Close this message", hideTrouble));
  document.body.append(box);
}

export function hideTrouble() {
  document.getElementById("trouble")?.remove();
}

function button(text, action, look) {
  const made = document.createElement("button");
  made.type = "button";
  made.textContent = text;
  made.className = look ?? "";
  made.addEventListener("click", action);
  return made;
}

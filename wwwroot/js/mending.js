// Putting entries right where they stand: the form that opens below an entry gets the focus, and once the entry is put
// right, withdrawn or restored, the focus stays with it.

let sent = null;

document.addEventListener("htmx:beforeRequest", ({ detail: { elt, requestConfig } }) => {
  const mended = elt.closest?.("[data-mends]");
  sent = mended && requestConfig.verb === "post" ? { entry: mended.dataset.mends, at: mended.dataset.mendsAt ?? "captured" } : null;
  document.querySelectorAll("[data-amending]").forEach((form) => form.toggleAttribute("data-sent", form === mended));
});

document.addEventListener("htmx:afterSettle", ({ target }) => {
  if (target.matches?.(".amend-slot")) {
    opened(target.firstElementChild);
  } else if (sent && !document.querySelector("#bench .problems, #bench [data-question], #bench [aria-invalid=true]")) {
    (document.getElementById(`undo-${sent.entry}`) ?? document.getElementById(`change-${sent.at}-${sent.entry}`))?.focus();
    sent = null;
  }
});

document.addEventListener("click", (event) => {
  const leave = event.target.closest?.("#bench [data-leave-amend]");
  if (leave) {
    event.preventDefault();
    const { mends, mendsAt } = leave.closest("[data-amending]").dataset;
    leave.closest("[data-amending]").remove();
    document.getElementById(`change-${mendsAt}-${mends}`)?.focus();
  }
});

// The reasons open below the press, where the bar along the bottom may cover them.
document.addEventListener("toggle", ({ target }) => {
  if (target.matches?.("details[data-mends][open]")) {
    target.scrollIntoView({ block: "center" });
  }
}, true);

function opened(form) {
  const field = form.querySelector("[data-first]");
  form.scrollIntoView({ block: "nearest" });
  field?.focus({ preventScroll: true });
  field?.select?.();
  // The bar along the bottom covers what is merely in view.
  field?.scrollIntoView({ block: "center" });
}

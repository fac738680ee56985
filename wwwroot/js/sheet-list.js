// On a phone the list of checks lies over the page: it goes as soon as a check is chosen.

document.addEventListener("htmx:beforeRequest", ({ detail: { elt } }) => {
  const list = elt.closest?.("#sheet");
  if (list?.matches(":popover-open")) {
    list.hidePopover();
  }
});

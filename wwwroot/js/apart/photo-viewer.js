// The page of a photo: arrow keys and a swipe turn to the next and the previous one, Escape leads back.

const viewer = document.querySelector("[data-photo-viewer]");
const leastSwipe = 60;

if (viewer) {
  document.addEventListener("keydown", turnByKey);
  swipe(viewer.querySelector(".photo-large"));
}

function turnByKey(key) {
  if (key.defaultPrevented || key.altKey || key.ctrlKey || key.metaKey || key.shiftKey || key.target.closest("input, select, textarea")) {
    return;
  }

  const link = { ArrowLeft: "a[rel=prev]", ArrowRight: "a[rel=next]", Escape: "#photo-back" }[key.key];
  go(link && viewer.querySelector(link));
}

function swipe(picture) {
  let from = null;
  picture.addEventListener("pointerdown", (down) => { from = down.isPrimary && down.pointerType !== "mouse" ? down : null; });
  picture.addEventListener("pointercancel", () => { from = null; });
  picture.addEventListener("pointerup", (up) => {
    const [across, down] = from ? [up.clientX - from.clientX, up.clientY - from.clientY] : [0, 0];
    from = null;
    // A page that is zoomed in is being moved, not turned.
    if (Math.abs(across) > leastSwipe && Math.abs(across) > 2 * Math.abs(down) && (visualViewport?.scale ?? 1) < 1.1) {
      go(viewer.querySelector(across < 0 ? "a[rel=next]" : "a[rel=prev]"));
    }
  });
}

function go(link) {
  link?.click();
}

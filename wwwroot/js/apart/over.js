// Then and now: the handle that says how much of the earlier photo is seen, by touch, mouse and keys.

const over = document.querySelector("[data-over]");

if (over) {
  const picture = over.querySelector("svg");
  const share = over.querySelector("input[type=range]");
  share.addEventListener("input", () => show(picture, share));
  over.querySelectorAll("input[name=look]").forEach((choice) => choice.addEventListener("change", () => {
    picture.dataset.look = choice.value;
    over.querySelector("[data-over-says]").hidden = choice.value !== "changed";
    show(picture, share);
  }));
  drag(picture, share);
  // A page that is shown again keeps what was chosen in it.
  picture.dataset.look = over.querySelector("input[name=look]:checked").value;
  over.querySelector("[data-over-says]").hidden = picture.dataset.look !== "changed";
  show(picture, share);
}

function show(picture, share) {
  const part = share.value / 100;
  const width = picture.viewBox.baseVal.width;
  const edge = picture.querySelector(".over-edge");
  edge.setAttribute("x1", width * part);
  edge.setAttribute("x2", width * part);
  const wipes = picture.dataset.look === "wipe";
  picture.querySelector("#over-clip rect").setAttribute("width", wipes ? width * part : width);
  picture.style.setProperty("--share", part);
  picture.style.setProperty("--strength", 1 + 6 * part);
}

function drag(picture, share) {
  const follow = (at) => {
    const box = picture.getBoundingClientRect();
    share.value = 100 * (at.clientX - box.left) / box.width;
    show(picture, share);
  };
  picture.addEventListener("pointerdown", (down) => {
    if (down.isPrimary && down.button === 0) {
      picture.setPointerCapture(down.pointerId);
      follow(down);
    }
  });
  picture.addEventListener("pointermove", (move) => {
    if (picture.hasPointerCapture(move.pointerId)) {
      follow(move);
    }
  });
}

// The camera's picture under an earlier photo. Without a camera the page has its file field, as without scripts.

const page = document.querySelector("[data-again]");
const frame = page?.querySelector(".again-frame");
let taken = null;

if (frame && page.querySelector("form") && navigator.mediaDevices?.getUserMedia) {
  begin();
}

async function begin() {
  const video = frame.querySelector("video");
  try {
    video.srcObject = await navigator.mediaDevices.getUserMedia({ video: { facingMode: "environment", width: { ideal: 4096 }, height: { ideal: 3072 } } });
    await video.play();
  } catch {
    say("The camera cannot be used from this page. Take the photo with the device's own camera, or choose it here.");
    return;
  }

  video.hidden = false;
  page.querySelectorAll("[data-again-live]").forEach((part) => { part.hidden = false; });
  page.querySelector("[data-again-file]").hidden = true;
  const ghost = frame.querySelector("img");
  const share = page.querySelector("input[type=range]");
  const fade = () => { ghost.style.opacity = share.value / 100; };
  share.addEventListener("input", fade);
  fade();
  frame.classList.add("live");
  page.querySelector("[data-shutter]").addEventListener("click", () => press(video));
  page.querySelector("[data-again-save]").addEventListener("click", save);
  page.querySelector("[data-again-other]").addEventListener("click", retake);
  addEventListener("pagehide", () => video.srcObject.getTracks().forEach((track) => track.stop()));
  addEventListener("beforeunload", (leaving) => taken && leaving.preventDefault());
}

async function press(video) {
  const shutter = page.querySelector("[data-shutter]");
  shutter.disabled = true;
  if (!taken) {
    try {
      taken = await picture(video);
    } catch {
      say("The camera gave no picture. Press once more, or take the photo with the device's own camera.");
    }
  }

  if (taken) {
    await trySending(shutter);
  }

  shutter.disabled = false;
}

async function trySending(shutter) {
  say("Sending the photo…");
  let trouble;
  try {
    trouble = await send(taken);
  } catch {
    trouble = "There is no connection, so the photo was not sent.";
  }

  if (trouble) {
    say(`${trouble} It is still here: send it again, or keep it on this device and choose it later.`);
    shutter.textContent = "Send it again";
    page.querySelectorAll("[data-again-kept]").forEach((part) => { part.hidden = false; });
  } else {
    taken = null;
    location.assign(page.dataset.bench);
  }
}

/** Another one is taken in place of the one that is here. */
function retake() {
  taken = null;
  page.querySelector("[data-shutter]").textContent = "Take the photo";
  page.querySelectorAll("[data-again-kept]").forEach((part) => { part.hidden = true; });
  say("");
}

/** As large as the camera gives it: as a photo where the browser can, else as a frame of what is seen. */
async function picture(video) {
  if ("ImageCapture" in window) {
    try {
      const photo = await new ImageCapture(video.srcObject.getVideoTracks()[0]).takePhoto();
      if (photo.type === "image/jpeg" || photo.type === "image/png") {
        return photo;
      }
    } catch {
      // Some cameras give frames only.
    }
  }

  const canvas = document.createElement("canvas");
  Object.assign(canvas, { width: video.videoWidth, height: video.videoHeight });
  canvas.getContext("2d").drawImage(video, 0, 0);
  return new Promise((done, fail) => canvas.toBlob((blob) => blob ? done(blob) : fail(new Error("no picture")), "image/jpeg", 0.92));
}

/** Sends it; says what is wrong, or nothing once it is in the journal. */
async function send(photo) {
  const form = page.querySelector("form");
  const fields = new FormData(form);
  fields.set("photo", photo, photo.type === "image/png" ? "photo.png" : "photo.jpg");
  const answer = await fetch(form.action, { method: "POST", body: fields, headers: { "HX-Request": "true" } });
  if (answer.ok && answer.headers.has("Entry-Hash")) {
    return "";
  }

  const refusal = new DOMParser().parseFromString(await answer.text(), "text/html").querySelector(".problems li");
  return refusal?.textContent.trim() || `The photo was not taken in (${answer.status}).`;
}

function save() {
  const link = document.createElement("a");
  Object.assign(link, { href: URL.createObjectURL(taken), download: "photo.jpg" });
  link.click();
}

function say(text) {
  page.querySelector("[data-again-says]").textContent = text;
}

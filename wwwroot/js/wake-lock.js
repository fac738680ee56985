// Keeps the screen on while the page listens. The browser lets go when the page is hidden; it is asked again after.

let wanted = false;
let held = null;

document.addEventListener("visibilitychange", () => {
  if (wanted && document.visibilityState === "visible") {
    ask();
  }
});

/** Keeps the screen on; gives false where the browser cannot. */
export async function keepScreenOn() {
  wanted = true;
  return ask();
}

export async function letScreenSleep() {
  wanted = false;
  await held?.release().catch(() => {});
  held = null;
}

async function ask() {
  try {
    held = await navigator.wakeLock.request("screen");
    if (!wanted) {
      await letScreenSleep();
    }

    return true;
  } catch {
    // Not supported, or refused to save the battery.
    return false;
  }
}

// Says something to people who listen to the page instead of looking at it.

const gap = 100;

export function announce(sentence) {
  const region = document.getElementById("announcements");
  if (!region) {
    return;
  }

  // Emptied first, so that the same sentence is said again.
  region.textContent = "";
  setTimeout(() => { region.textContent = sentence; }, gap);
}

// A phone that is full can keep nothing while the network is gone. That is said while there still is room.

const photo = 6_000_000;
const few = 30;
const line = document.getElementById("nearly-full");

if (line && navigator.storage?.estimate && document.body.dataset.may) {
  look();
  document.addEventListener("outbox:changed", look);
}

async function look() {
  const { quota, usage } = await navigator.storage.estimate();
  const photos = Math.floor(Math.max(0, quota - usage) / photo);
  line.hidden = !(photos < few);
  line.textContent = photos < few ? `This device is nearly full: while the network is gone it has room for about ${photos} ${photos === 1 ? "photo" : "photos"}. Free some room on it.` : "";
}

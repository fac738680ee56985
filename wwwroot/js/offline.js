// What is needed to go on without the network: the worker that keeps pages and scripts on the device. It works where the
// device trusts the workshop's certificate; where it does not, that is said.

import { whenWhole } from "./place.js";

const bench = document.getElementById("bench");

// The workshop's own computer needs none: it is the network.
if (location.protocol === "https:" && document.body.dataset.may) {
  if (navigator.serviceWorker) {
    navigator.serviceWorker.register("/sw.js").then(keepChecks, sayWhatIsMissing);
  } else {
    sayWhatIsMissing();
  }
}

whenWhole(openWanted); // before, a press would go to the page instead of exchanging the bench

/** Without the network the worker shows the page of a check it keeps, and says which one was asked for. */
function openWanted() {
  const wanted = location.hash.startsWith("#open=") && new URLSearchParams(decodeURIComponent(location.hash.slice("#open=".length))).get("check");
  if (wanted) {
    history.replaceState(history.state, "", location.pathname + location.search);
    const links = globalThis.htmx ? [...document.querySelectorAll("#sheet a[hx-get]")] : [];
    links.find((link) => new URL(link.href).searchParams.get("check") === wanted)?.click();
  }
}

/** Has the worker keep every check of the open sheet, so that one can go on to any of them. */
async function keepChecks() {
  const { active } = await navigator.serviceWorker.ready;
  if (!navigator.serviceWorker.controller) {
    // A page that was on its way while the worker began its work is not its page yet.
    active.postMessage({ claim: true });
  }

  if (bench) {
    const links = new Set([...document.querySelectorAll("#sheet a[hx-get]")].map((link) => link.href));
    active.postMessage({ keep: [location.href, ...links] });
  }
}

function sayWhatIsMissing() {
  const line = document.getElementById("untrusted");
  if (line) {
    line.hidden = false;
  }
}

// Keeps on the device what the bench needs when the network is gone. The network comes first: what is kept is shown only
// where it does not answer. What is sent goes by the outbox of the page, never by here.

const files = "files";
const pages = "pages";
const patience = 4000;

self.addEventListener("install", (event) => event.waitUntil(keepFiles().then(() => self.skipWaiting())));
self.addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));

self.addEventListener("message", (event) => {
  const { data } = event;
  if (data?.claim) {
    event.waitUntil(self.clients.claim());
  }

  if (data?.keep) {
    keepPages(data.keep);
  }
});

self.addEventListener("fetch", (event) => {
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  // What asks for news wants none that is kept.
  if (request.method !== "GET" || origin !== location.origin || request.cache === "no-store") {
    return;
  }

  if (pathname.startsWith("/assets/")) {
    event.respondWith(keptFirst(request));
  } else if (/^\/js\/|^\/icon/.test(pathname)) {
    event.respondWith(networkFirst(request, files));
  } else if (request.mode === "navigate" || request.headers.has("HX-Request") && isBench(pathname)) {
    event.respondWith(networkFirst(request, pages));
  }
});

/** Named after what is in it: what is kept under the name is what the network would bring. */
async function keptFirst(request) {
  const cache = await caches.open(files);
  const kept = await cache.match(request, { ignoreVary: true });
  if (kept) {
    return kept;
  }

  const answer = await fetch(request);
  if (answer.ok) {
    await cache.put(request, answer.clone());
  }

  return answer;
}

async function networkFirst(request, name) {
  const cache = await caches.open(name);
  try {
    const answer = await fetch(request, request.mode === "navigate" ? {} : { signal: AbortSignal.timeout(patience) });
    if (answer.status === 401 || answer.status === 403) {
      // A device that was shut out keeps nothing of the workshop's.
      await caches.delete(pages);
    } else if (answer.ok && !answer.redirected && (name === files || isWorthKeeping(request))) {
      await cache.put(keyOf(request), answer.clone());
    }

    return answer;
  } catch (problem) {
    const kept = await cache.match(keyOf(request), { ignoreVary: true })
      ?? (request.mode === "navigate" && isBench(new URL(request.url).pathname) ? await anyCheck(cache, request) : undefined);
    if (kept) {
      return kept;
    }

    if (request.mode === "navigate") {
      return notHere();
    }

    throw problem;
  }
}

/** The fragment of a check and its page have one address: they are kept under two. */
function keyOf(request) {
  const { url } = request;
  return request.headers.has("HX-Request") ? `${url}${url.includes("?") ? "&" : "?"}fragment` : url;
}

function isWorthKeeping(request) {
  const { pathname } = new URL(request.url);
  return pathname === "/" || isBench(pathname) || /^\/vehicles\/[^/]+$/.test(pathname);
}

function isBench(pathname) {
  return /^\/vehicles\/[^/]+\/inspections\/\d+$/.test(pathname);
}

/** Another check's page, which then shows the check that was asked for: of those only the part that differs is kept. */
async function anyCheck(cache, request) {
  const { origin, pathname, search } = new URL(request.url);
  const keys = await cache.keys();
  const same = keys.find((key) => {
    const url = new URL(key.url);
    return url.origin === origin && url.pathname === pathname && !url.search.includes("fragment");
  });
  return same && Response.redirect(`${same.url}#open=${encodeURIComponent(search)}`);
}

async function keepFiles() {
  const answer = await fetch("/offline-files");
  if (answer.ok) {
    await (await caches.open(files)).addAll(await answer.json());
  }
}

/** With a new version of the program the files of the old one go, and the pages that were made for them. */
async function renewFiles() {
  const answer = await fetch("/offline-files");
  if (answer.ok) {
    const cache = await caches.open(files);
    const wanted = new Set((await answer.json()).map((path) => new URL(path, location.origin).href));
    const kept = (await cache.keys()).map(({ url }) => url);
    const old = kept.filter((url) => new URL(url).pathname.startsWith("/assets/") && !wanted.has(url));
    if (old.length > 0) {
      await caches.delete(pages);
      await Promise.all(old.map((url) => cache.delete(url)));
    }

    await cache.addAll([...wanted].filter((url) => !kept.includes(url)));
  }
}

/** One after the other: the workshop's computer has other things to do. */
async function keepPages([page, ...links]) {
  await renewFiles().catch(() => {}); // without the network what is kept stays
  const cache = await caches.open(pages);
  await keepOne(cache, new Request(page));
  for (const link of links) {
    await keepOne(cache, new Request(link, { headers: { "HX-Request": "true" } }));
  }
}

async function keepOne(cache, request) {
  try {
    const answer = await fetch(request);
    if (answer.ok && !answer.redirected) {
      await cache.put(keyOf(request), answer);
    }
  } catch {
    // The next visit keeps it.
  }
}

async function notHere() {
  const style = (await (await caches.open(files)).keys()).find(({ url }) => url.endsWith(".css"))?.url ?? "";
  return new Response(
    "<!DOCTYPE html><html lang=\"en\"><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"><title>Not connected</title>"
      + "<link rel=\"stylesheet\" href=\"" + style + "\"><main class=\"page narrow\"><h1>Not connected</h1>"
      + "<p>The workshop’s computer does not answer, and this page is not kept on this device. What you captured is still here: it is sent when the computer answers.</p>"
      + "<p><a href=\"/\">Try the garage</a></p></main></html>",
    { status: 503, headers: { "Content-Type": "text/html; charset=utf-8" } });
}

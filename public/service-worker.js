// Keeps one whole build of the app for use offline.
//
// The build puts two constants in front of this script: BUILD, the name of the build, and FILES,
// a list of [address, SHA-256] for everything it consists of. A build is kept entirely or not at
// all: a file counts only with exactly the bytes it was built with, so that no page of an error,
// no cut-off download and no file of another build can get in.

const PREFIX = `brimwright ${registration.scope} `;
const CACHE = PREFIX + BUILD;
const PAGE = new URL("./", registration.scope).href;
const KEPT = new Set(FILES.map(([address]) => new URL(address, registration.scope).href));

addEventListener("install", (event) => event.waitUntil(keepBuild()));
addEventListener("activate", (event) => event.waitUntil(takeOver()));
addEventListener("fetch", (event) => {
  const address = addressKept(event.request);
  if (address) event.respondWith(answer(address, event.request));
});
// A new version waits until the person agrees.
addEventListener("message", (event) => {
  if (event.data?.type === "accept-update") event.waitUntil(skipWaiting());
});

async function keepBuild() {
  try {
    const read = await languagesRead();
    const cache = await caches.open(CACHE);
    const wanted = FILES.filter(([address]) => !languageOf(address) || read.has(languageOf(address)));
    await Promise.all(wanted.map(([address, hash]) => keepFile(cache, address, hash)));
  } catch (error) {
    await caches.delete(CACHE);
    throw error;
  }
}

// The language of a table of texts.
function languageOf(address) {
  return /\/words-([\w-]+)-(first|rest)-[^/]*$/.exec(address)?.[1];
}

// The languages of which a build before keeps tables; with the first build that of the browser.
async function languagesRead() {
  const read = new Set();
  for (const name of await caches.keys()) {
    if (!name.startsWith(PREFIX)) continue;
    for (const { url } of await (await caches.open(name)).keys()) read.add(languageOf(url));
  }
  read.delete(undefined);
  return read.size ? read : new Set([languageHere()]);
}

// By the same rule as first.js.
function languageHere() {
  const base = (tag) => tag.split("-")[0];
  const tags = FILES.map(([address]) => languageOf(address)).filter(Boolean);
  const nearest = navigator.languages.map((wanted) => tags.find((tag) => base(tag) === base(wanted)));
  return nearest.find(Boolean) ?? "en-US";
}

async function keepFile(cache, address, hash) {
  const url = new URL(address, registration.scope).href;
  const response = await fetch(url, { cache: "reload", redirect: "error" });
  const type = response.headers.get("content-type") ?? "";
  const copy = response.clone();
  if (!response.ok || (url !== PAGE && type.startsWith("text/html"))) {
    throw new Error(`${url} was answered with ${response.status} ${type}`);
  }
  const digest = await crypto.subtle.digest("SHA-256", await response.arrayBuffer());
  const hex = Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, "0"));
  if (hex.join("") !== hash) throw new Error(`${url} is not the file of this build`);
  await cache.put(url, copy);
}

async function takeOver() {
  await clients.claim();
  // While a newer build arrives, its cache is not ours to judge; it will tidy up itself.
  if (registration.installing || registration.waiting) return;
  for (const name of await caches.keys()) {
    if (name.startsWith(PREFIX) && name !== CACHE) await caches.delete(name);
  }
}

function addressKept(request) {
  if (request.method !== "GET") return null;
  const url = new URL(request.url);
  url.hash = "";
  if (request.mode === "navigate") {
    url.search = "";
    if (url.href === PAGE + "index.html") return PAGE;
  }
  return KEPT.has(url.href) ? url.href : null;
}

async function answer(address, request) {
  const cache = await caches.open(CACHE);
  const kept = await cache.match(address);
  if (kept || !languageOf(address)) return kept ?? fetch(request);
  const [file, hash] = FILES.find(([file]) => new URL(file, registration.scope).href === address);
  await keepFile(cache, file, hash);
  return cache.match(address);
}

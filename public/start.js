// Starts the app, says so in plain words when that fails, and looks after new versions.
//
// With the app it speaks by three events on `window`:
//   brimwright-kept           from here: the whole build is kept on this device
//   brimwright-update-ready   from here: a new version waits until the person agrees
//   brimwright-accept-update  from the app: the person agrees

// The build puts TEXTS in front of this script: the addresses of the two tables of each language.

const workers = navigator.serviceWorker;
const language = document.documentElement.lang;
let registration;
let agreed = false;
let replaced = false;

const fetched = new Map();

// One of the two tables of a language; one that could not be had is asked for again.
function table(language, part) {
  const address = TEXTS[language][part];
  if (!fetched.has(address)) fetched.set(address, fetchTable(language, part));
  fetched.get(address).catch(() => fetched.delete(address));
  return fetched.get(address);
}

async function fetchTable(language, part) {
  const response = await fetch(new URL(TEXTS[language][part], import.meta.url));
  const text = await response.text();
  if (!text.startsWith(`brimwright ${language} ${part} `)) throw new Error(`${response.url} is not a table of texts`);
  return text;
}

async function startApp() {
  const coming = table(language, "first");
  const app = await import("./brimwright.js");
  const first = await coming;
  globalThis.brimwrightTexts = { language: () => language, first: () => first, table };
  await app.default({ module_or_path: new URL("./brimwright_bg.wasm", import.meta.url) });
}

function sayItCouldNotStart(error) {
  console.error(error);
  document.documentElement.classList.add("start-failed");
  const failed = document.getElementById("start-failed");
  failed.hidden = false;
  failed.querySelector("button").addEventListener("click", loadAgain);
}

// A waiting version may be the cure; pressing the button agrees to it.
function loadAgain() {
  if (registration?.waiting) acceptUpdate();
  else location.reload();
}

// The worker keeps the tables when it hands them out. What could not be had now is asked for when
// it is needed.
async function sayItIsKept() {
  await Promise.allSettled([fetchTable(language, "first"), fetchTable(language, "rest")]);
  window.dispatchEvent(new CustomEvent("brimwright-kept"));
}

function sayUpdateIsReady() {
  window.dispatchEvent(new CustomEvent("brimwright-update-ready"));
}

function acceptUpdate() {
  // Another tab may have agreed before.
  if (replaced) return location.reload();
  if (!registration?.waiting) return;
  agreed = true;
  registration.waiting.postMessage({ type: "accept-update" });
}

async function lookAfterVersions() {
  const first = !workers.controller;
  let taken = false;
  if (!first) sayItIsKept();
  workers.addEventListener("controllerchange", () => {
    if (agreed) {
      agreed = false;
      location.reload();
    } else if (first && !taken) {
      // The first worker takes charge of a page that loaded without one: nothing is new.
      taken = true;
      sayItIsKept();
    } else {
      replaced = true;
      sayUpdateIsReady();
    }
  });
  registration = await workers.register("./service-worker.js", { updateViaCache: "none" });
  if (registration.waiting) sayUpdateIsReady();
  registration.addEventListener("updatefound", () => {
    const coming = registration.installing;
    coming?.addEventListener("statechange", () => {
      if (coming.state === "installed" && registration.active) sayUpdateIsReady();
    });
  });
  // An installed app stays open for days: look for a new version when it is taken up again.
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "visible") registration.update().catch(() => {});
  });
}

window.addEventListener("brimwright-accept-update", acceptUpdate);

try {
  await startApp();
} catch (error) {
  sayItCouldNotStart(error);
}

// Without https there are no service workers: the app works, but not offline.
if (workers) lookAfterVersions().catch((error) => console.error(error));

// Starts the app, says so in plain words when that fails, and looks after new versions.
//
// With the app it speaks by three events on `window`:
//   brimwright-kept           from here: the whole build is kept on this device
//   brimwright-update-ready   from here: a new version waits until the person agrees
//   brimwright-accept-update  from the app: the person agrees

import "./kept.js";

// The build puts two constants in front of this script: TEXTS, the addresses of the two tables of
// each language, and TEXTS_BUILD, which stands in the first line of each.

const workers = navigator.serviceWorker;
let language = document.documentElement.lang;
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

// The second table comes with the rest of the style: without both nothing of the second part is shown.
async function fetchTable(language, part) {
  if (part === "first") return wholeTable(language, part);
  const { addStyle } = await import("./rest.js");
  return (await Promise.all([wholeTable(language, part), addStyle()]))[0];
}

// What the browser keeps may be what a faulty answer left, so a file that is no table is asked for
// once more past it.
async function wholeTable(language, part) {
  const address = new URL(TEXTS[language][part], import.meta.url);
  for (const cache of ["default", "reload"]) {
    const text = await (await fetch(address, { cache })).text();
    if (isWhole(text, `brimwright ${language} ${part} ${TEXTS_BUILD}`)) return text;
  }
  throw Error(`${address}: no whole table`);
}

// The first line of a table ends in the number of those that follow.
function isWhole(text, begin) {
  const lines = text.split("\n");
  return lines[0] === `${begin} ${lines.length - 2}` && lines.at(-1) === "";
}

// The texts of the first screen. Where those of the person's language cannot be had, as offline
// before they were ever fetched, it is English, or else any language whose texts are here.
async function firstTexts() {
  const chosen = language;
  let missing;
  for (const tag of new Set([chosen, "en-US", ...Object.keys(TEXTS)])) {
    try {
      const texts = await table(tag, "first");
      language = tag;
      return texts;
    } catch (error) {
      console.error(error);
      missing ??= error;
      // English that is there and wrong is no reason for another language.
      if (tag === "en-US" && !(error instanceof TypeError)) break;
    }
  }
  throw missing;
}

// What the app asks of Intl for the first screen; rest.js has more. A region is a tag, or nothing for
// the browser's own.
globalThis.brimwrightIntl = {
  parts: (region, number, style, currency) =>
    new Intl.NumberFormat(region, { style, currency }).formatToParts(number).flatMap(({ type, value }) => [type, value]),
  // The likeliest country where the tag names none.
  country(region) {
    try {
      return new Intl.Locale(region ?? navigator.language).maximize().region ?? "US";
    } catch {
      return "US";
    }
  },
};

// Puts the words of the page into the language of its texts; the build says on which line each is.
function sayFirstWords(texts) {
  const lines = texts.split("\n");
  for (const element of document.querySelectorAll("[data-line]")) {
    element.textContent = lines[+element.dataset.line + 1];
  }
  document.documentElement.classList.remove("words-coming");
}

async function startApp() {
  const coming = firstTexts();
  if (language !== "en-US") coming.then(sayFirstWords, () => {});
  const app = await import("./brimwright.js");
  const first = await coming;
  globalThis.brimwrightTexts = { language: () => language, first: () => first, table };
  await app.default({ module_or_path: new URL("./brimwright_bg.wasm", import.meta.url) });
}

function sayItCouldNotStart(error) {
  console.error(error);
  document.documentElement.classList.remove("words-coming");
  document.documentElement.classList.add("start-failed");
  const failed = document.getElementById("start-failed");
  failed.hidden = false;
  failed.scrollIntoView({ block: "center" });
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

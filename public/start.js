// Starts the app, says so in plain words when that fails, and looks after new versions.
//
// With the app it speaks by three events on `window`:
//   brimwright-kept           from here: the whole build is kept on this device
//   brimwright-update-ready   from here: a new version waits until the person agrees
//   brimwright-accept-update  from the app: the person agrees

const workers = navigator.serviceWorker;
let registration;
let agreed = false;
let replaced = false;

async function startApp() {
  const app = await import("./brimwright.js");
  await app.default({ module_or_path: new URL("./brimwright_bg.wasm", import.meta.url) });
}

function sayItCouldNotStart(error) {
  console.error(error);
  const start = document.getElementById("start");
  if (!start) return;
  start.classList.add("start-failed");
  const sentence = document.createElement("p");
  sentence.setAttribute("role", "alert");
  sentence.textContent =
    "Brimwright could not start. Check the connection and load the page again. " +
    "Your data is untouched on this device.";
  const again = document.createElement("button");
  again.type = "button";
  again.textContent = "Load again";
  again.addEventListener("click", loadAgain);
  start.append(sentence, again);
}

// A waiting version may be the cure; pressing the button agrees to it.
function loadAgain() {
  if (registration?.waiting) acceptUpdate();
  else location.reload();
}

function sayItIsKept() {
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
  document.getElementById("start")?.remove();
} catch (error) {
  sayItCouldNotStart(error);
}

// Without https there are no service workers: the app works, but not offline.
if (workers) lookAfterVersions().catch((error) => console.error(error));

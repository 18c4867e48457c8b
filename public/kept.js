// What a person chose on a screen, and how far they had scrolled: Back brings it again, and so does
// loading the page anew. Each entry of the browser's history is a visit of a screen, with a number;
// what belongs to a visit is kept for as long as the tab is open.

// So many visits are kept.
const MOST = 200;
// How long a screen may take to become as high as it was, in milliseconds.
const PATIENCE = 1000;

// What is shown where no address is given.
const FIRST = "#/drinks";

const memory = new Map();

// The storage of the tab; the memory of the page where the browser gives none.
function read(name) {
  try {
    return sessionStorage.getItem(`brimwright.${name}`);
  } catch {
    return memory.get(name) ?? null;
  }
}

function write(name, text) {
  memory.set(name, text);
  try {
    sessionStorage.setItem(`brimwright.${name}`, text);
  } catch {}
}

function forget(name) {
  memory.delete(name);
  try {
    sessionStorage.removeItem(`brimwright.${name}`);
  } catch {}
}

const visitOf = (number) => JSON.parse(read(`visit.${number}`) ?? "{}");
const keep = (number, change) => write(`visit.${number}`, JSON.stringify({ ...visitOf(number), ...change }));

// The number of the visit that goes on, and how far its screen is yet to be scrolled.
let now;
let top;

// Notices that another entry of the history is open. A new one has no number yet.
function visit() {
  let number = history.state?.visit;
  if (number === undefined) {
    number = Number(read("visits") ?? 0) + 1;
    write("visits", String(number));
    forget(`visit.${number - MOST}`);
    history.replaceState({ visit: number }, "");
    keep(number, { at: location.hash || FIRST, from: now === undefined ? null : visitOf(now).at });
  }
  if (number !== now) {
    now = number;
    top = visitOf(number).top ?? 0;
  }
  return number;
}

// The screen is as far as it was once it is high enough for that, unless the person scrolls first.
function settle() {
  visit();
  const until = performance.now() + PATIENCE;
  (function step() {
    if (top === undefined) return;
    const wanted = top;
    scrollTo(0, wanted);
    if (scrollY >= wanted - 1 || performance.now() > until) top = undefined;
    else requestAnimationFrame(step);
  })();
}

history.scrollRestoration = "manual";
for (const hand of ["wheel", "touchmove", "keydown", "pointerdown"]) {
  addEventListener(hand, () => (top = undefined), { passive: true });
}
addEventListener("scroll", () => visit() && top === undefined && keep(now, { top: Math.round(scrollY) }), { passive: true });

globalThis.brimwrightVisit = {
  settle,
  visit,
  from: () => visitOf(visit()).from,
  choice: (name) => visitOf(visit()).choices?.[name],
  choose: (number, name, value) => keep(number, { choices: { ...visitOf(number).choices, [name]: value } }),
  // Goes to an address: back, where the person came from there.
  back(address) {
    const arrive = () => location.hash === address || (location.hash = address);
    if (visitOf(visit()).from !== address) return arrive();
    addEventListener("popstate", arrive, { once: true });
    history.back();
  },
};

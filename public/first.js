// The first words, before the app is here: in the person's language, and of the open book where
// there is one. It runs before the page is painted; the build puts it into the page.

{
  const root = document.documentElement;

  // What the app noted for the first paint; nothing where the browser gives no storage.
  function noted(name) {
    try {
      return JSON.parse(localStorage.getItem(`brimwright.${name}`));
    } catch {
      return null;
    }
  }

  const base = (tag) => tag.split("-")[0];
  // The languages there are, and those of all whose letters run from right to left.
  const languages = root.dataset.languages.split(" ");
  const rightToLeft = root.dataset.rightToLeft.split(" ");

  // The language that was chosen here, or else the first one of the browser's that there is.
  function languageHere() {
    const nearest = navigator.languages.map((wanted) => languages.find((tag) => base(tag) === base(wanted)));
    return [noted("language"), ...nearest].find((tag) => languages.includes(tag)) ?? "en-US";
  }

  // The language that the page is read in, and the way its letters run. The app calls it, too.
  globalThis.brimwrightReadIn = (language) => {
    root.lang = language;
    root.dir = rightToLeft.includes(base(language)) ? "rtl" : "ltr";
    return root.dir === "rtl";
  };

  const density = noted("density");
  if (density) root.dataset.density = density;
  brimwrightReadIn(languageHere());
  // The page has English words; those of another language are put in when its table is here.
  if (root.lang !== "en-US") root.classList.add("words-coming");
  if (noted("started")) {
    root.classList.add("started");
    document.getElementById("start-name").textContent = noted("open-name") ?? "Brimwright";
  }

  // The app is large, and would be in the way of the first words: it is asked for once they are
  // painted. A page that nobody sees is not painted, nor are words that come with the app.
  const askForApp = () => document.head.append(document.getElementById("app").content);
  if (document.hidden || root.lang !== "en-US") askForApp();
  else {
    new PerformanceObserver(askForApp).observe({ type: "paint", buffered: true });
    // Not every browser says when it painted.
    setTimeout(askForApp, 1000);
  }
}
